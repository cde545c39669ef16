// Shows the answers to the number that is typed, and offers what begins so or bears these words in its title. The answers
// stand in the page itself, so it works without this as well.
(() => {
  const OFFERED = 8;
  const FEW = 12;
  const [form, input, state, begins] = ['ask', 'asked', 'state', 'begins'].map(id => document.getElementById(id));
  const fold = text =>
    text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\u2010-\u2015\u2212]/g, '-')
      .trim();
  const answers = document.getElementById('answers');
  const sections = [...answers.querySelectorAll('section')].map(section => {
    const edition = section.querySelector('h2').textContent.replace(/^Edition /, '');
    const answers = [...section.querySelectorAll('.a')].map(place => {
      const printed = place.querySelector('b').textContent;
      const title = place.querySelector('h3').textContent.slice(printed.length).trim();
      return { place, edition, printed, title, number: fold(printed), words: fold(title), id: fold(place.dataset.id ?? '') };
    });
    return { section, answers };
  });
  const all = sections.flatMap(s => s.answers);

  const hitsOf = typed => {
    if (typed === '') return [];
    const begin = all.filter(a => a.id === typed || (a.number !== '' && a.number.startsWith(typed)));
    if (begin.length > 0 || typed.length < 3) return begin;
    const words = typed.split(/\s+/);
    return all.filter(a => words.every(word => a.words.includes(word)));
  };

  const element = (name, text) => {
    const made = document.createElement(name);
    made.textContent = text;
    return made;
  };
  // One number may name another thing in each edition: all of them stand beside it.
  const offer = hits => {
    const known = new Map();
    for (const { printed, title, edition } of hits) {
      if (printed !== '') known.set(printed, [...(known.get(printed) ?? []), { title, edition }]);
    }
    const shown = [...known].slice(0, OFFERED);
    begins.replaceChildren(
      ...shown.map(([printed, titles]) => {
        const item = document.createElement('li');
        const button = document.createElement('button');
        button.type = 'button';
        button.append(element('b', printed));
        for (const { title, edition } of titles) button.append(' ', element('span', `${title} (${edition})`));
        button.addEventListener('click', () => {
          input.value = printed;
          show();
          // The answer takes the place of the offers; a finger or a key goes on from the field.
          input.focus();
        });
        item.append(button);
        return item;
      }),
    );
    begins.hidden = shown.length === 0;
    return { all: known.size, left: known.size - shown.length };
  };

  const show = () => {
    const plain = fold(input.value).replace(/[.,\s-]+$/, '');
    // The keypad of a phone has a comma and no point.
    const isNumber = /^(?:\p{L}|\p{N}+)(?:(?:[.,-]\p{N}+)+|(?:\s+\p{N}+)+)$/u.test(plain);
    const typed = isNumber && hitsOf(plain).length === 0 ? plain.replace(/[,\s-]+/g, '.') : plain;
    // Of a number that nobody prints, what stands beside it: 4.1.9 leads to those below 4.1.
    let near = typed;
    while (isNumber && hitsOf(near).length === 0 && near.includes('.')) near = near.slice(0, near.lastIndexOf('.'));
    const beside = near === typed ? [] : hitsOf(near);
    const hits = hitsOf(typed);
    const exact = hits.filter(a => a.number === typed || a.id === typed);
    const answered = new Set(exact.length > 0 ? exact : hits.length <= FEW ? hits : []);
    // Nothing typed: the edition that was chosen from the list of them, whole.
    const whole = typed === '' ? location.hash.slice(1) : '';
    for (const { section, answers } of sections) {
      const all = section.id === whole;
      for (const a of answers) a.place.hidden = !all && !answered.has(a);
      section.hidden = !all && !answers.some(a => answered.has(a));
    }
    const longer = hits.filter(a => !exact.includes(a));
    const { all: offered, left } = offer(beside.length > 0 ? beside : answered.size > 0 && exact.length === 0 ? [] : longer);
    const more = left > 0 ? `, ${OFFERED} of them listed; go on typing for the others` : '';
    // An answer comes first; without one, what could be meant.
    if (exact.length > 0) answers.after(begins);
    else state.after(begins);
    state.textContent =
      typed === ''
        ? ''
        : exact.length > 0
          ? `${exact.length} found, by edition${offered > 0 ? `. ${offered === 1 ? 'One longer number begins' : `${offered} longer numbers begin`} so${more}` : ''}.`
          : hits.length > 0
            ? hits[0].number.startsWith(typed)
            ? `${offered || hits.length} ${(offered || hits.length) === 1 ? 'begins' : 'begin'} so${more}.`
            : `${offered || hits.length} ${(offered || hits.length) === 1 ? 'has' : 'have'} that in the title${more}.`
            : `No edition has ${input.value.trim()}.${beside.length > 0 ? ` Beside it, below ${near}:` : ''}`;
  };
  form.hidden = false;
  form.addEventListener('submit', event => event.preventDefault());
  input.addEventListener('input', show);
  // Chosen a second time, an edition changes no address; so the click counts, and it comes before the address.
  document.querySelector('.by-edition').addEventListener('click', event => {
    if (!event.target.closest('a')) return;
    input.value = '';
    setTimeout(() => {
      show();
      document.getElementById(location.hash.slice(1))?.scrollIntoView();
    });
  });
  show();
})();
