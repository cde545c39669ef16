// Offers what begins as typed under the look-up box: a combobox with a list (WAI-ARIA Authoring Practices). Without this
// the box is a plain form, and so it stays where the list cannot be had.
(() => {
  const input = document.getElementById('q');
  if (!input) return;
  const part = (tag, className, text) => Object.assign(document.createElement(tag), { className, textContent: text });
  const panel = part('div', 'offers', '');
  const list = Object.assign(document.createElement('ul'), { id: 'offers', className: 'plain', hidden: true });
  const note = part('p', 'quiet', '');
  list.setAttribute('role', 'listbox');
  list.setAttribute('aria-label', 'Begins as typed');
  note.setAttribute('role', 'status');
  const attributes = { role: 'combobox', 'aria-autocomplete': 'list', 'aria-expanded': 'false', 'aria-controls': 'offers' };
  for (const [name, value] of Object.entries(attributes)) input.setAttribute(name, value);
  panel.append(list, note);
  input.parentElement.append(panel);

  let at = -1;
  let asked;
  let waiting;

  const close = () => {
    list.hidden = true;
    note.textContent = '';
    input.setAttribute('aria-expanded', 'false');
    choose(-1);
  };
  const choose = next => {
    const options = [...list.children];
    options[at]?.setAttribute('aria-selected', 'false');
    at = next;
    if (at < 0 || !options[at]) input.removeAttribute('aria-activedescendant');
    else {
      options[at].setAttribute('aria-selected', 'true');
      options[at].scrollIntoView({ block: 'nearest' });
      input.setAttribute('aria-activedescendant', options[at].id);
    }
  };
  const show = ({ suggestions, note: said }) => {
    list.replaceChildren(
      ...suggestions.map((offer, i) => {
        const option = document.createElement('li');
        option.id = `offer-${i}`;
        option.dataset.href = offer.href;
        option.setAttribute('role', 'option');
        option.setAttribute('aria-selected', 'false');
        option.append(part('b', 'n', offer.number), ` ${offer.title} `, part('span', 'quiet', offer.edition));
        option.append(part('span', 'became-line', offer.became));
        return option;
      }),
    );
    close();
    const open = suggestions.length > 0 && document.activeElement === input;
    list.hidden = !open;
    input.setAttribute('aria-expanded', String(open));
    note.textContent = said || (open ? `${suggestions.length} offered; arrow keys choose one.` : '');
  };
  const ask = async () => {
    asked?.abort();
    asked = new AbortController();
    try {
      const response = await fetch(`/suggest?q=${encodeURIComponent(input.value.slice(0, 200))}`, { signal: asked.signal });
      if (response.ok) show(await response.json());
    } catch {
      // A newer letter, or no connection: the form still works.
    }
  };
  const go = option => location.assign(option.dataset.href);

  input.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(ask, 120);
  });
  input.addEventListener('blur', close);
  input.addEventListener('keydown', event => {
    const last = list.children.length - 1;
    if (event.key === 'Escape' && !list.hidden) close();
    else if (event.key === 'Enter' && at >= 0) go(list.children[at]);
    else if (event.key === 'ArrowDown' && last >= 0) {
      list.hidden = false;
      input.setAttribute('aria-expanded', 'true');
      choose(at >= last ? -1 : at + 1);
    } else if (event.key === 'ArrowUp' && !list.hidden) choose(at < 0 ? last : at - 1);
    else return;
    event.preventDefault();
  });
  // Pressing must not take the focus, or the list closes before the click arrives.
  list.addEventListener('pointerdown', event => event.preventDefault());
  list.addEventListener('click', event => {
    const option = event.target.closest('[role=option]');
    if (option) go(option);
  });
})();
