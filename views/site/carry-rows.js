// Lines that open, of which the lists of this page are made, and two texts beside each other. Texts of files are put in as
// texts, never as markup.
(() => {
  const element = (name, text, className) => {
    const made = document.createElement(name);
    if (text !== undefined) made.textContent = text;
    if (className) made.className = className;
    return made;
  };
  const counted = (n, one, many) => `${n.toLocaleString('en')} ${n === 1 ? one : many}`;

  /**
   * A line that opens: what it is about, how it stands, and the rest below, which is made when it is first opened:
   * hundreds of fields that nobody looks at would be slow to lay out.
   */
  const row = (about, stands, body) => {
    const item = element('li');
    const details = element('details', undefined, 'row');
    const summary = element('summary');
    const [words, state] = [element('span', undefined, 'about'), element('span', stands, 'stands')];
    words.append(...about.filter(part => part.textContent !== ''));
    summary.append(words, state);
    details.append(summary);
    const fill = () => details.childElementCount === 1 && details.append(body());
    details.addEventListener('toggle', () => details.open && fill());
    item.append(details);
    return {
      item,
      details,
      state,
      open: () => {
        fill();
        details.open = true;
      },
    };
  };

  /** The old text, and what stands in its place. */
  const texts = (old, now) => {
    const place = element('div', undefined, 'texts');
    const side = (className, { head, text }) => {
      const box = element('div', undefined, className);
      box.append(element('h3', head), element('p', text || 'It has no text.', 'text'));
      place.append(box);
    };
    if (old) side('was', old);
    for (const one of now) side('now', one);
    return place;
  };

  /** A list of lines, some at a time. @param make the line of one entry, by its place */
  const list = (place, button, atOnce, words) => {
    let [entries, make, rows] = [[], undefined, []];
    const more = () => {
      const at = rows.length;
      rows.push(...entries.slice(at, at + atOnce).map((entry, n) => make(entry, at + n)));
      place.append(...rows.slice(at).map(r => r.item));
      const left = entries.length - rows.length;
      button.hidden = left === 0;
      // For paper, where no button can be pressed.
      place.dataset.left = left === 0 ? '' : `${left.toLocaleString('en')} more stand in the files.`;
      button.textContent = `Show ${counted(Math.min(left, atOnce), `more ${words[0]}`, `more ${words[1]}`)} of ${left.toLocaleString('en')}`;
      return rows[at];
    };
    button.addEventListener('click', () => more()?.details.querySelector('summary').focus());
    return {
      rows: () => rows,
      more,
      fill: (all, maker) => {
        [entries, make, rows] = [all, maker, []];
        place.replaceChildren();
        more();
      },
    };
  };

  // Closed lines would not be printed.
  const opened = [];
  window.addEventListener('beforeprint', () => {
    for (const details of document.querySelectorAll('details.row:not([open])')) {
      details.open = true;
      // The event of its own comes too late for the printer.
      details.dispatchEvent(new Event('toggle'));
      opened.push(details);
    }
  });
  window.addEventListener('afterprint', () => {
    for (const details of opened.splice(0)) details.open = false;
  });

  window.FISHPLATE_ROWS = { element, counted, row, texts, list };
})();
