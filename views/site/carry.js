// Carries a file that the person chose, by the program's own middle (carry-engine.js). It works in a worker made of that
// script's own text, so that the page stays alive; where no worker can be had, here. Nothing is sent anywhere: what comes
// out is offered as a download. Texts of files are put in as texts, never as markup.
(() => {
  const AT_ONCE = 15;
  const ROLES = ['number', 'type', 'state', 'job', 'title', 'edition', 'date'];
  const data = window.FISHPLATE_CARRY_DATA;
  const byId = id => document.getElementById(id);
  const [give, drop, input, from, state, failed, stop] = ['give', 'drop', 'file', 'from', 'state', 'failed', 'stop'].map(byId);
  const answerPlace = byId('answer');
  const element = (name, text, className) => {
    const made = document.createElement(name);
    if (text !== undefined) made.textContent = text;
    if (className) made.className = className;
    return made;
  };
  const counted = (n, one, many) => `${n.toLocaleString('en')} ${n === 1 ? one : many}`;

  // --- The engine: a worker, or this page.
  let worker;
  let ready = false;
  let inline;
  let last = 0;
  const waiting = new Map();

  const here = () => {
    inline ??= window.FISHPLATE_CARRY().carryEngine(data);
    for (const [ticket, { request, progress, done }] of waiting) {
      waiting.delete(ticket);
      // A breath first, so that the page shows what it is doing.
      setTimeout(() => inline(request, progress).then(done), 30);
    }
  };
  const start = () => {
    const text = `const carry = (${window.FISHPLATE_CARRY})(); postMessage({ ready: true }); onmessage = event => carry.attend(self, event.data);`;
    const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
    try {
      worker = new Worker(address);
    } catch {
      return here();
    }
    const mine = worker;
    worker.onmessage = ({ data: told }) => {
      if (told.ready) {
        ready = true;
        URL.revokeObjectURL(address);
        return;
      }
      const asked = waiting.get(told.ticket);
      if (!asked) return;
      if (told.progress) return asked.progress(told.progress);
      waiting.delete(told.ticket);
      asked.done(told.answer);
    };
    worker.onerror = event => {
      event.preventDefault();
      if (worker !== mine) return;
      if (!ready) return here();
      const asked = [...waiting.values()];
      end();
      const sentence = 'The file was too much for this browser; split it, or have it carried by the program: fishplate carry.';
      for (const { done } of asked) done({ kind: 'refused', sentence });
    };
    worker.postMessage(data);
  };
  const end = () => {
    worker?.terminate();
    worker = undefined;
    ready = false;
    waiting.clear();
  };
  const carry = (request, progress) =>
    new Promise(done => {
      // Whoever asks anew has no use for the answer before.
      if (waiting.size > 0) end();
      const ticket = ++last;
      waiting.set(ticket, { request, progress, done });
      if (inline) return here();
      if (!worker) start();
      worker?.postMessage({ ticket, request });
    });

  // --- What was chosen.
  let file;
  let told;
  let questions = [];
  let asked = new Map();
  let extra = {};
  let addresses = [];

  const read = async chosen => ({ name: chosen.name, bytes: new Uint8Array(await chosen.arrayBuffer()) });
  const choose = async chosen => {
    if (!chosen) return;
    try {
      // The engine says the same of a large file, but reading it first would take the memory that it is about.
      if (chosen.size > 2 ** 24 && chosen.size > window.FISHPLATE_CARRY().LARGEST) return refuse(`${chosen.name} has ${Math.ceil(chosen.size / 2 ** 20)} MB, more than a page can hold; split it, or have it carried by the program: fishplate carry.`);
      file = await read(chosen);
    } catch {
      return refuse(`${chosen.name} cannot be read; choose a file, not a folder, and one that no other program holds.`);
    }
    extra = {};
    for (const field of byId('differently').querySelectorAll('input, select')) field.value = '';
    await run({ fresh: true });
  };

  const refuse = (sentence, header) => {
    state.textContent = '';
    stop.hidden = true;
    failed.textContent = sentence;
    answerPlace.hidden = !header;
    for (const section of answerPlace.querySelectorAll(':scope > section')) section.hidden = section.id !== 'differently';
    if (header) {
      roles(header, {});
      byId('differently').querySelector('details').open = true;
    }
  };

  const run = async ({ fresh, answers }) => {
    failed.textContent = '';
    stop.hidden = false;
    state.textContent = `Reading ${file.name} …`;
    if (fresh) answerPlace.hidden = true;
    const request = { file, from: from.value, ...extra, ...(answers ? { answers } : {}) };
    const answer = await carry(request, said => {
      state.textContent = `${said} …`;
    });
    stop.hidden = true;
    state.textContent = '';
    if (answer.kind === 'refused') return refuse(answer.sentence, answer.header);
    told = answer;
    show(fresh);
  };

  // --- What comes back.
  const says = (id, text) => {
    byId(id).querySelector('.says').textContent = text;
  };

  const show = fresh => {
    answerPlace.hidden = false;
    for (const section of answerPlace.querySelectorAll(':scope > section')) section.hidden = false;
    says('found', told.found);
    says('becomes', told.said);
    byId('unit').textContent = told.kind === 'jobs' ? 'Lines' : 'Times';
    const rows = told.outcomes.map(({ kind, count, meaning }) => {
      const row = element('tr', undefined, count === 0 ? 'none' : '');
      const word = element('th', kind);
      word.scope = 'row';
      row.append(word, element('td', count.toLocaleString('en'), 'count'), element('td', meaning));
      return row;
    });
    document.querySelector('.counts tbody').replaceChildren(...rows);
    byId('notes').replaceChildren(...told.notes.map(n => element('li', n.message)));
    if (fresh) {
      questions = told.questions ?? [];
      asked = new Map(questions.filter(q => cell(q, 'answer') !== '').map(q => [q, answerBefore(q)]));
      outdated = false;
      byId('cases').replaceChildren();
      moreCases();
      for (const place of document.querySelectorAll('.jobs-only')) place.hidden = told.kind !== 'jobs';
      roles(told.header ?? [], told.columns ?? {});
    }
    byId('decide').hidden = questions.length === 0;
    listings(fresh);
    progressOfAnswers();
    offer();
    if (fresh) byId('found').querySelector('h2').focus();
  };

  const roles = (header, columns) => {
    byId('roles').replaceChildren(
      ...(header.length === 0 ? [] : ROLES).map(role => {
        const place = element('div');
        const label = element('label', `The ${role} stands in`);
        const select = element('select');
        select.id = `role-${role}`;
        select.dataset.role = role;
        label.htmlFor = select.id;
        const none = element('option', columns[role] === undefined ? 'no column' : 'as found');
        none.value = '';
        select.append(
          none,
          ...header.map((name, at) => {
            const option = element('option', name === '' ? `column ${at + 1}` : name.slice(0, 60));
            option.value = String(at + 1);
            return option;
          }),
        );
        if (columns[role] !== undefined) none.textContent = `as found: ${(header[columns[role]] || `column ${columns[role] + 1}`).slice(0, 40)}`;
        const before = extra.columns?.[role];
        if (before) select.value = before;
        place.append(label, select);
        return place;
      }),
    );
  };

  // --- Deciding by case.
  const moreCases = () => {
    const list = byId('cases');
    const at = list.children.length;
    list.append(...questions.slice(at, at + AT_ONCE).map((question, n) => oneCase(question, at + n)));
    const left = questions.length - list.children.length;
    byId('more').hidden = left === 0;
    byId('more').textContent = `Show ${counted(Math.min(left, AT_ONCE), 'more case', 'more cases')} of ${left.toLocaleString('en')}`;
    return list.children[at];
  };

  const answerBefore = question => ({ answer: cell(question, 'answer'), heir: cell(question, 'heir'), because: cell(question, 'because'), by: cell(question, 'by') });
  const cell = (question, name) => question.cells[told.questionColumns.indexOf(name)] ?? '';

  const oneCase = (question, at) => {
    const item = element('li');
    const field = element('fieldset', undefined, 'case');
    const legend = element('legend');
    const what = element('span', undefined, 'what');
    const lines = Number(cell(question, 'lines'));
    const edition = cell(question, 'edition');
    const kind = [question.typeName, cell(question, 'state'), edition === from.value ? '' : `edition ${edition}`].filter(Boolean).join(', ');
    what.append(element('span', cell(question, 'number').slice(0, 80) || 'no number', 'n'), element('span', question.title), element('span', kind, 'kind quiet'), element('span', counted(lines, 'line', 'lines'), 'many'));
    legend.append(what);
    const beside = cell(question, 'title_beside');
    const ways = element('div', undefined, 'ways');
    const heirs = question.heirs.filter(h => h.number !== '');
    const choice = { answer: '', heir: '', because: cell(question, 'because') };
    const way = (answer, heir, text, more) => {
      const label = element('label', undefined, 'way');
      const radio = element('input');
      radio.type = 'radio';
      radio.name = `case-${at}`;
      radio.addEventListener('change', () => {
        choice.answer = answer;
        choice.heir = more ? more.value : heir;
        because.hidden = answer === '';
        decided(question, choice);
      });
      const words = element('span');
      words.append(...(Array.isArray(text) ? text : [text]));
      label.append(radio, words);
      ways.append(label);
      return { radio, answer, heir };
    };
    const number = text => element('b', text, 'n');
    const all = heirs.map(h => h.number).join(' | ');
    const offered = [way('', '', 'Leave it open')];
    if (heirs.length > 1) offered.push(way('carry', all, ['Carry to all of these: ', ...heirs.flatMap((h, n) => [n > 0 ? ', ' : '', number(h.number)])]));
    for (const h of heirs) offered.push(way('carry', h.number, ['Carry to ', number(h.number), ` ${h.title}`]));
    const other = element('input');
    other.type = 'text';
    other.maxLength = 60;
    other.setAttribute('aria-label', `Another number for ${cell(question, 'number').slice(0, 80)}`);
    const otherWay = way('carry', '', ['Carry to another number: ', other], other);
    other.addEventListener('input', () => {
      otherWay.radio.checked = true;
      otherWay.radio.dispatchEvent(new Event('change'));
    });
    offered.push(way('stay', '', `Leave the line as it stands under ${cell(question, 'edition')}`), way('drop', '', 'Take the line out of the job'));
    const because = element('p', undefined, 'why-so');
    const label = element('label', 'Because (if you want to say)');
    const words = element('input');
    words.type = 'text';
    words.maxLength = 300;
    words.id = `because-${at}`;
    words.value = choice.because;
    label.htmlFor = words.id;
    words.addEventListener('input', () => {
      choice.because = words.value;
      decided(question, choice);
    });
    because.append(label, words);
    field.append(legend, element('p', cell(question, 'question')), element('p', cell(question, 'to_do'), 'quiet'));
    if (beside) field.append(element('p', `The title beside it is ${beside}.`, 'quiet'));
    field.append(ways, because);
    item.append(field);
    const [answer, heir] = [cell(question, 'answer'), cell(question, 'heir')];
    let given = offered.find(o => o.answer === answer && (answer !== 'carry' || o.heir === heir));
    if (!given && answer === 'carry') {
      given = otherWay;
      other.value = heir;
    }
    given ??= offered[0];
    given.radio.checked = true;
    because.hidden = given.answer === '';
    Object.assign(choice, { answer, heir });
    return item;
  };

  let outdated = false;
  const decided = (question, choice) => {
    if (choice.answer === '') asked.delete(question);
    else asked.set(question, { ...choice });
    outdated = true;
    progressOfAnswers();
    offer();
  };

  const progressOfAnswers = () => {
    if (questions.length === 0) return;
    const lines = some => some.reduce((sum, q) => sum + Number(cell(q, 'lines')), 0);
    says(
      'decide',
      `${counted(questions.length, 'case', 'cases')}, the largest first; an answer holds for all open lines of its case, ${counted(lines(questions), 'line', 'lines')} in all. ${asked.size === 0 ? 'None is decided yet.' : `Decided: ${asked.size.toLocaleString('en')}, with ${counted(lines([...asked.keys()]), 'line', 'lines')}.`} What you leave open says so in the result.`,
    );
  };

  const rowsOfAnswers = () => {
    const by = byId('by').value.trim();
    return questions.map(question => {
      const { answer, heir, because, by: before } = asked.get(question) ?? { answer: '', heir: '', because: '' };
      return [...question.cells.slice(0, -4), answer, answer === 'carry' ? heir.trim() : '', because.trim(), answer === '' ? '' : (before ?? by)];
    });
  };

  byId('make').addEventListener('click', async () => {
    const lacks = byId('by').value.trim() === '' && [...asked.values()].some(a => a.by === undefined);
    byId('by').setAttribute('aria-invalid', String(lacks));
    byId('by-lacks').textContent = lacks ? 'Write your name: an answer without one does not count.' : '';
    if (lacks) return byId('by').focus();
    outdated = false;
    await run({ answers: rowsOfAnswers() });
    byId('take').querySelector('a')?.focus();
  });

  // --- The result.
  const SAYS = {
    jobs: {
      carried: 'your table with what became of each line beside it',
      decisions: 'the questions with your answers, to go on with later or to hand on',
      prices: 'open lines that ask more than they were ordered for',
      mark: 'keep it beside the table: it says from what it was made',
    },
    lesson: {
      carried: 'your lesson with the new numbers',
      review: 'what a person has to look at',
      'review-data': 'the same for a program',
      mark: 'keep it beside the lesson: it says from what it was made',
    },
  };

  const offer = () => {
    for (const address of addresses) URL.revokeObjectURL(address);
    addresses = [];
    byId('make').hidden = !outdated;
    byId('files').replaceChildren();
    const open = questions.length - asked.size;
    if (outdated) return says('take', 'Your answers have changed since the file was made.');
    says(
      'take',
      `${told.kind === 'jobs' && open > 0 ? `${counted(open, 'case is', 'cases are')} still open. ` : ''}Made on this machine from ${file.name}; your own file is as it was.`,
    );
    byId('files').replaceChildren(
      ...told.files.map(({ name, what, bytes }) => {
        const item = element('li');
        const link = element('a', name);
        link.download = name;
        link.href = URL.createObjectURL(new Blob([bytes], { type: 'application/octet-stream' }));
        addresses.push(link.href);
        item.append(link, element('span', SAYS[told.kind][what]));
        return item;
      }),
    );
  };

  const MOST = 1000;
  const listing = (id, title, heads, rows) => {
    const section = byId(id);
    section.hidden = rows.length === 0;
    const more = rows.length > MOST ? `; the first ${MOST.toLocaleString('en')} are shown` : '';
    section.querySelector('summary').textContent = `${title} (${rows.length.toLocaleString('en')}${more})`;
    section.querySelector('.scroll').setAttribute('aria-label', title);
    const line = (cells, name, done) => {
      const row = element('tr');
      row.append(...cells.map((text, at) => done(element(name, text), heads[at])));
      return row;
    };
    const head = line(heads, 'th', made => {
      made.scope = 'col';
      return made;
    });
    section.querySelector('thead').replaceChildren(head);
    section.querySelector('tbody').replaceChildren(
      ...rows.slice(0, MOST).map(cells =>
        line(cells, 'td', (made, of) => {
          if (of === 'Number') made.className = 'n';
          made.dataset.of = of;
          return made;
        }),
      ),
    );
  };
  const listings = fresh => {
    if (told.kind === 'jobs') {
      const heads = ['Lines', 'Number', 'Type', 'Outcome', 'Becomes', 'Why'];
      const rows = told.cases.map(c => [c.lines.toLocaleString('en'), c.number, c.typeName, c.outcome, c.heirs.join('; '), c.why]);
      listing('every', 'Every case, with what becomes of it', heads, rows);
    } else {
      const heads = ['Where', 'Number', 'Outcome', 'Why, and what to do', 'Becomes', 'Text'];
      const rows = told.review.map(r => [r.place, r.number, r.outcome, `${r.why} ${r.toDo}`, r.heirs.join('; '), r.text]);
      listing('every', 'Citations for a person to look at', heads, rows);
    }
    const stale = (told.stale ?? []).map(e => [e.place, e.number, e.says, `${e.why} ${e.toDo}`, e.was, e.now.join(' ')]);
    listing('stale', 'What it still tells of the older edition', ['Where', 'Number', 'It says', 'Why, and what to do', 'Text before', 'Text now'], stale);
    if (fresh) for (const id of ['every', 'stale']) byId(id).querySelector('details').open = told.kind === 'lesson';
  };

  // --- Hands on.
  give.hidden = false;
  give.addEventListener('submit', event => event.preventDefault());
  input.addEventListener('change', () => choose(input.files[0]));
  from.addEventListener('change', () => file && run({ fresh: true }));
  byId('more').addEventListener('click', () => moreCases()?.querySelector('input:checked')?.focus());
  stop.addEventListener('click', () => {
    end();
    stop.hidden = true;
    state.textContent = 'Stopped. Choose a file to begin again.';
    input.value = '';
    input.focus();
  });
  const hover = on => event => {
    event.preventDefault();
    drop.classList.toggle('over', on);
  };
  // Dropped beside the field, a file would open in place of this page.
  document.addEventListener('dragover', hover(true));
  document.addEventListener('dragleave', hover(false));
  document.addEventListener('drop', event => {
    hover(false)(event);
    choose(event.dataTransfer?.files[0]);
  });
  byId('differently')
    .querySelector('form')
    .addEventListener('submit', async event => {
      event.preventDefault();
      const columns = {};
      for (const select of byId('roles').querySelectorAll('select')) if (select.value) columns[select.dataset.role] = select.value;
      const one = async id => (byId(id).files[0] ? await read(byId(id).files[0]) : undefined);
      const [policy, earlier] = [await one('policy'), await one('earlier')];
      const [sheet, dates] = [byId('sheet').value.trim(), byId('dates').value];
      extra = { ...(Object.keys(columns).length > 0 ? { columns } : {}), ...(sheet ? { sheet } : {}), ...(dates ? { dates } : {}), ...(policy ? { policy } : {}), ...(earlier ? { earlier } : {}) };
      await run({ fresh: true });
    });
})();
