// What people decide by case: the questions with the texts beside, and the answers, which stay in this browser for the
// next file. An answer holds as long as the texts that it was given on.
(() => {
  const { element, counted, row, texts, list } = window.FISHPLATE_ROWS;
  const data = window.FISHPLATE_CARRY_DATA;
  const byId = id => document.getElementById(id);
  const to = data.to.header.name;

  const said = new Map();
  const textsOf = edition => {
    if (!said.has(edition)) {
      const at = data.ways.findIndex(way => way.from.header.name === edition);
      said.set(edition, new Map(edition === to ? data.texts.to : at < 0 ? [] : data.texts.from[at].said));
    }
    return said.get(edition);
  };

  // --- Answers: rows of the questionnaire by case. One that bears no name yet has the day on which it was given.
  const KEPT = `fishplate answers: ${data.to.settings.title}, ${to}`;
  const answers = new Map();
  const keyOf = ([, number, type, state, edition, title]) => JSON.stringify([number, type, state, edition, title]);
  const name = byId('by');
  const load = () => {
    answers.clear();
    try {
      const kept = JSON.parse(localStorage.getItem(KEPT) ?? '{}');
      name.value ||= kept.by ?? '';
      for (const entry of kept.answers ?? []) answers.set(keyOf(entry.cells), entry);
    } catch {
      // A browser may refuse to keep anything; answers then last as long as the page.
    }
  };
  const keep = () => {
    try {
      localStorage.setItem(KEPT, JSON.stringify({ by: name.value.trim(), answers: [...answers.values()] }));
    } catch {
      // See above.
    }
  };
  const today = () => {
    const now = new Date();
    return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(n => String(n).padStart(2, '0')).join('-');
  };

  // --- The questions of the file at hand.
  let told = { questions: [], questionColumns: [] };
  let from = '';
  let changed = false;
  let onChange = () => {};
  const cell = (question, column) => question.cells[told.questionColumns.indexOf(column)] ?? '';
  const isJobs = () => told.kind === 'jobs';
  const units = n => (isJobs() ? counted(n, 'line', 'lines') : counted(n, 'place', 'places'));
  const sum = some => some.reduce((n, q) => n + Number(cell(q, 'lines')), 0);
  const numberOf = question => cell(question, 'number').slice(0, 80) || 'no number';

  const OPEN = { answer: '', heir: '', because: '', by: '' };
  const given = question => {
    const kept = answers.get(keyOf(question.cells));
    if (kept?.cells[told.questionColumns.indexOf('asked_on')] !== cell(question, 'asked_on')) return OPEN;
    const [answer, heir, because, by] = kept.cells.slice(-4);
    return { answer, heir, because, by };
  };
  /** What of a typed number the newer edition does not have, or has more than once. */
  const counts = new Map();
  for (const { number } of data.to.entries) counts.set(number, (counts.get(number) ?? 0) + 1);
  const lacking = heir =>
    heir
      .split('|')
      .map(number => number.trim())
      .filter(number => number !== '' && number !== to && counts.get(number) !== 1)
      .join(', ');
  const isDecided = question => given(question).answer !== '' && lacking(given(question).heir) === '';
  const standsAs = question => {
    const { answer, heir } = given(question);
    if (answer === '') return 'open';
    if (answer === 'carry') return lacking(heir) === '' ? `→ ${heir.replaceAll(' | ', ', ') || 'all that is offered'}` : `${heir}: no such number`;
    return answer === 'stay' ? `stays ${cell(question, 'edition')}` : 'taken out';
  };
  const decide = (question, { answer, heir, because }) => {
    const key = keyOf(question.cells);
    const cells = [...question.cells.slice(0, -4), answer, answer === 'carry' ? heir.trim() : '', because.trim(), ''];
    // Carried to nothing would mean: to all that is offered.
    if (answer === '' || (answer === 'carry' && cells.at(-3) === '')) answers.delete(key);
    else answers.set(key, { cells, on: today() });
    changed = true;
    keep();
    tell();
    onChange();
  };

  const mark = made => {
    made.state.textContent = standsAs(made.question);
    made.details.classList.toggle('decided', isDecided(made.question));
  };
  const oneCase = (question, at) => {
    const edition = cell(question, 'edition');
    const kind = [question.typeName, edition === from || question.isMark ? '' : `edition ${edition}`, units(Number(cell(question, 'lines')))];
    const about = [
      element('b', numberOf(question), 'n'),
      element('span', question.from?.title ?? cell(question, 'title_beside')),
      element('span', kind.filter(Boolean).join(' · '), 'quiet'),
    ];
    const made = row(about, '', () => body(question, at, made));
    made.details.classList.add('case');
    made.question = question;
    mark(made);
    return made;
  };

  const bothTexts = question => {
    const edition = cell(question, 'edition');
    const old = question.from && {
      head: `${edition}: ${numberOf(question)} ${question.from.title}`,
      text: textsOf(edition).get(question.from.id),
    };
    const now = question.heirs.filter(h => h.id !== '').map(h => ({ head: `${to}: ${h.number} ${h.title}`, text: textsOf(to).get(h.id) }));
    return old || now.length > 0 ? [texts(old, now)] : [];
  };

  const body = (question, at, made) => {
    const field = element('fieldset');
    field.append(element('legend', `What becomes of ${numberOf(question)}`, 'said'));
    field.append(element('p', cell(question, 'question')), element('p', cell(question, 'to_do'), 'quiet'));
    const beside = cell(question, 'title_beside');
    if (beside && beside.toLowerCase() !== question.from?.title.toLowerCase()) field.append(element('p', `The title beside it is ${beside}.`, 'quiet'));
    const before = given(question);
    const choice = { ...before };
    const decidedBy = element('p', before.by && `Decided by ${before.by}.`, 'quiet');
    const because = reason(at, choice, () => {
      decidedBy.textContent = '';
      decide(question, choice);
    });
    because.hidden = choice.answer === '';
    const ways = offered(question, at, choice, () => {
      because.hidden = choice.answer === '';
      decidedBy.textContent = '';
      decide(question, choice);
      mark(made);
    });
    field.append(...bothTexts(question), ways, because, decidedBy);
    if (at + 1 < told.questions.length) field.append(nextButton(at, made));
    return field;
  };

  /** What can be answered, one of it chosen. */
  const offered = (question, at, choice, chosen) => {
    const place = element('div', undefined, 'ways');
    const edition = cell(question, 'edition');
    const number = text => element('b', text, 'n');
    const way = (answer, heirOf, words, isChosen) => {
      const label = element('label', undefined, 'way');
      const radio = element('input');
      Object.assign(radio, { type: 'radio', name: `case-${at}`, checked: isChosen });
      radio.addEventListener('change', () => {
        Object.assign(choice, { answer, heir: heirOf() });
        chosen();
      });
      const text = element('span');
      text.append(...words);
      label.append(radio, text);
      place.append(label);
      return radio;
    };
    const heirs = question.heirs.filter(h => h.number !== '');
    const write = isJobs() ? 'Carry to' : 'Write';
    const all = heirs.map(h => h.number).join(' | ');
    const carried = heir => choice.answer === 'carry' && choice.heir === heir;
    if (heirs.length > 1) {
      const numbers = heirs.flatMap((h, n) => [n > 0 ? ', ' : '', number(h.number)]);
      way('carry', () => all, [`${write} all of these: `, ...numbers], carried(all));
    }
    for (const h of heirs) way('carry', () => h.number, [`${write} `, number(h.number), ` ${h.title}`], carried(h.number));
    if (!question.isMark) {
      const other = element('input');
      Object.assign(other, { type: 'text', maxLength: 60 });
      other.setAttribute('aria-label', `Another number for ${numberOf(question)}`);
      const isOther = choice.answer === 'carry' && ![all, ...heirs.map(h => h.number)].includes(choice.heir);
      if (isOther) other.value = choice.heir;
      const lacks = element('span', '', 'lacks');
      const radio = way('carry', () => other.value, [`${write} another number: `, other, lacks], isOther);
      const judge = () => {
        const unknown = lacking(other.value);
        other.setAttribute('aria-invalid', String(unknown !== ''));
        lacks.textContent = unknown === '' ? '' : `${unknown} is no number of ${to}, or not of one thing alone.`;
      };
      judge();
      other.addEventListener('change', judge);
      other.addEventListener('input', () => {
        if (lacks.textContent !== '') judge();
        radio.checked = true;
        radio.dispatchEvent(new Event('change'));
      });
    }
    const stay = isJobs() ? `Leave the line as it stands under ${edition}` : question.isMark ? 'Leave it as it is' : `Leave the number, as one of ${edition}`;
    way('stay', () => '', [stay], choice.answer === 'stay');
    if (!question.isMark) way('drop', () => '', [isJobs() ? 'Take the line out of the job' : 'Take it out; it is listed for you to do by hand'], choice.answer === 'drop');
    way('', () => '', ['Leave it open'], choice.answer === '').parentElement.classList.add('leave');
    return place;
  };

  const reason = (at, choice, changedWords) => {
    const because = element('p', undefined, 'why-so');
    const label = element('label', 'Because (if you want to say)');
    const words = element('input');
    Object.assign(words, { type: 'text', maxLength: 300, id: `because-${at}`, value: choice.because });
    label.htmlFor = words.id;
    words.addEventListener('input', () => {
      choice.because = words.value;
      changedWords();
    });
    because.append(label, words);
    return because;
  };

  const nextButton = (at, made) => {
    const next = element('button', 'Next case', 'light');
    next.type = 'button';
    next.addEventListener('click', () => {
      const after = cases.rows()[at + 1] ?? cases.more();
      made.details.open = false;
      after.open();
      after.details.querySelector('summary').focus();
    });
    return next;
  };

  const cases = list(byId('cases'), byId('more'), 10, ['case', 'cases']);

  const tell = () => {
    const { questions } = told;
    const decided = questions.filter(isDecided);
    const what = isJobs() ? 'open lines of its case' : 'places of its case';
    const done = decided.length === 0 ? 'None is decided yet.' : `Decided: ${decided.length.toLocaleString('en')}, with ${units(sum(decided))}.`;
    byId('decide').querySelector('.says').textContent = `${counted(questions.length, 'case', 'cases')} with ${units(sum(questions))}, the largest first; an answer holds for all ${what}. ${done}`;
    byId('kept').hidden = answers.size === 0;
    byId('kept-says').textContent = `${counted(answers.size, 'answer is', 'answers are')} kept in this browser, also for your next file.`;
    byId('forget').textContent = 'Forget them';
  };

  byId('forget').addEventListener('click', () => {
    // What took an afternoon is not gone by one slip.
    if (byId('forget').textContent === 'Forget them') {
      byId('forget').textContent = 'Really forget all of them?';
      return;
    }
    answers.clear();
    keep();
    changed = true;
    cases.fill(told.questions, oneCase);
    tell();
    onChange();
    byId('by').focus();
  });
  name.addEventListener('input', keep);
  load();

  window.FISHPLATE_CASES = {
    /** Shows the questions of an answer. @param isNew whether they are others than before */
    show: (answer, edition, isNew) => {
      [told, from] = [answer, edition];
      changed = answer.questions.some(q => given(q).answer !== '' && given(q).by === '');
      if (isNew) {
        cases.fill(answer.questions, oneCase);
        cases.rows()[0]?.open();
      }
      byId('decide').hidden = answer.questions.length === 0;
      if (answer.questions.length > 0) tell();
    },
    onChange: told => {
      onChange = told;
    },
    /** How many questions of the file have no answer. */
    open: () => told.questions.filter(q => !isDecided(q)).length,
    isChanged: () => changed,
    /** The rows with a name, as the questionnaire has them. */
    rows: () => [...answers.values()].map(a => a.cells).filter(cells => cells.at(-1) !== ''),
    /** Takes up the answers of a questionnaire. */
    take: rows => {
      for (const cells of rows) answers.set(keyOf(cells), { cells });
      keep();
    },
    /** Puts the name and the day to what was answered since; false where there is no name. */
    sign: () => {
      const by = name.value.trim();
      const unsigned = [...answers.values()].filter(a => a.cells.at(-1) === '');
      const lacks = by === '' && unsigned.length > 0;
      name.setAttribute('aria-invalid', String(lacks));
      byId('by-lacks').textContent = lacks ? 'Write your name: an answer without one does not count.' : '';
      if (lacks) {
        name.focus();
        return false;
      }
      for (const { cells, on } of unsigned) answers.set(keyOf(cells), { cells: [...cells.slice(0, -1), `${by}, ${on}`] });
      keep();
      return true;
    },
  };
})();
