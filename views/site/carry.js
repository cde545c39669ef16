// The page that carries files over: what was chosen, what was found, what is not sure, and the result. Nothing is sent
// anywhere: what comes out is offered as a download.
(() => {
  const { element, counted, row, texts, list } = window.FISHPLATE_ROWS;
  const worker = window.FISHPLATE_WORKER;
  const cases = window.FISHPLATE_CASES;
  const ROLES = ['number', 'type', 'state', 'job', 'title', 'edition', 'date'];
  const byId = id => document.getElementById(id);
  const [give, drop, input, from, state, failed, stop] = ['give', 'drop', 'file', 'from', 'state', 'failed', 'stop'].map(byId);
  const answerPlace = byId('answer');
  const sections = () => answerPlace.querySelectorAll(':scope > section');
  const says = (id, text) => {
    byId(id).querySelector('.says').textContent = text;
  };

  // --- What was chosen: the lessons together, each table by itself.
  let chosen = [];
  let current;
  let told;
  let extra = {};
  /** What somebody looked at and left as it was assumed. */
  const leftSo = new Set();
  let addresses = [];

  const LARGE = 2 ** 24;
  const read = async file => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
  const isLesson = async file => {
    try {
      return window.FISHPLATE_CARRY().isLesson({ name: file.name, bytes: new Uint8Array(await file.slice(0, 20_000).arrayBuffer()) });
    } catch {
      // Of no kind that is read: refused by itself, in the program's own words.
      return false;
    }
  };

  const choose = async given => {
    const files = [...(given ?? [])].filter(file => !/\.fishplate\.json$/i.test(file.name) || given.length === 1);
    if (files.length === 0) return;
    const units = [];
    if (files.length === 1) units.push({ files });
    else {
      const kinds = await Promise.all(files.map(isLesson));
      const lessons = files.filter((_, at) => kinds[at]);
      units.push(...files.filter((_, at) => !kinds[at]).map(file => ({ files: [file] })));
      if (lessons.length > 0) units.push({ files: lessons });
    }
    chosen = units;
    await take(units[0]);
  };

  const showChosen = () => {
    byId('chosen').hidden = chosen.length < 2;
    byId('units').replaceChildren(
      ...chosen.map(unit => {
        const item = element('li');
        const button = element('button', unit.files.length === 1 ? unit.files[0].name : `${unit.files.length} lessons together`, 'light');
        button.type = 'button';
        if (unit === current) button.setAttribute('aria-current', 'true');
        button.addEventListener('click', () => take(unit));
        item.append(button);
        return item;
      }),
    );
  };

  const take = async unit => {
    current = unit;
    extra = {};
    leftSo.clear();
    for (const field of byId('differently').querySelectorAll('input, select')) field.value = '';
    showChosen();
    try {
      // The engine says the same of large files, but reading them first would take the memory that it is about.
      const size = unit.files.reduce((sum, file) => sum + file.size, 0);
      if (size > LARGE && size > window.FISHPLATE_CARRY().LARGEST) {
        return refuse({ sentence: `${unit.files.length === 1 ? unit.files[0].name : 'They'} ${unit.files.length === 1 ? 'has' : 'have'} ${Math.ceil(size / 2 ** 20)} MB, more than a page can hold; split it, or have the program carry it: fishplate carry.` });
      }
      unit.given = await Promise.all(unit.files.map(read));
    } catch {
      return refuse({ sentence: `${unit.files.map(file => file.name).join(', ')} cannot be read; choose files, not a folder, and none that another program holds.` });
    }
    await run({ isNew: true });
  };

  const refuse = ({ sentence, header, asks = [] }) => {
    state.textContent = '';
    stop.hidden = true;
    failed.textContent = sentence;
    answerPlace.hidden = !header;
    byId('bar').hidden = true;
    for (const section of sections()) section.hidden = section.id !== 'found';
    if (!header) return;
    told = { kind: 'jobs' };
    byId('found').classList.add('failed-so-far');
    says('found', '');
    roles(header, {});
    showAsks(asks);
    for (const place of document.querySelectorAll('.jobs-only')) place.hidden = false;
    byId('differently').hidden = false;
    byId('differently').open = asks.length === 0;
  };

  const run = async ({ isNew }) => {
    failed.textContent = '';
    stop.hidden = false;
    const names = current.given.map(file => file.name);
    state.textContent = `Reading ${names.length === 1 ? names[0] : `${names.length} lessons`} …`;
    if (isNew) answerPlace.hidden = true;
    byId('bar').hidden = true;
    const answer = await worker.carry({ files: current.given, from: from.value, ...extra, answers: cases.rows() }, said => {
      state.textContent = `${said} …`;
    });
    stop.hidden = true;
    state.textContent = '';
    if (answer.kind === 'refused') return refuse(answer);
    if (answer.kind === 'answers') return takeAnswers(answer);
    told = answer;
    show(isNew);
  };

  /** A questionnaire is no table to carry: its answers are kept, and the other files are carried with them. */
  const takeAnswers = async ({ rows, notes }) => {
    const [{ name }] = current.given;
    cases.take(rows);
    chosen = chosen.filter(unit => unit !== current);
    const said = [rows.length === 0 ? `${name} is a list of questions without an answer; fill in answer and by.` : `${counted(rows.length, 'answer', 'answers')} of ${name} ${rows.length === 1 ? 'is' : 'are'} taken up.`, ...notes.map(n => n.message)].join(' ');
    current = undefined;
    showChosen();
    if (chosen.length > 0) await take(chosen[0]);
    state.textContent = chosen.length > 0 ? said : `${said} Now choose the file that they are for.`;
  };

  // --- What comes back.
  const show = isNew => {
    answerPlace.hidden = false;
    for (const section of sections()) section.hidden = false;
    document.querySelector('main').classList.add('has-file');
    byId('found').classList.remove('failed-so-far');
    says('found', told.found);
    says('becomes', told.said);
    byId('unit').textContent = told.kind === 'jobs' ? 'Lines' : 'Times';
    const lines = told.outcomes
      .filter(o => o.count > 0)
      .map(({ kind, count, meaning }) => {
        const line = element('tr');
        const word = element('th', kind);
        word.scope = 'row';
        line.append(word, element('td', count.toLocaleString('en'), 'count'), element('td', meaning));
        return line;
      });
    const counts = document.querySelector('.counts');
    counts.hidden = lines.length === 0;
    counts.querySelector('tbody').replaceChildren(...lines);
    notes(told.notes);
    if (isNew) {
      showAsks(told.asks ?? []);
      byId('differently').hidden = told.kind !== 'jobs';
      byId('differently').open = false;
      roles(told.header ?? [], told.columns ?? {});
    }
    cases.show(told, from.value, isNew);
    listings(isNew);
    offer();
    if (isNew) byId('found').querySelector('h2').focus();
  };

  /** Of remarks of one kind the first is shown, the others below: thirty jobs that come back say one thing. */
  const notes = all => {
    const isFirst = (note, at) => all.findIndex(n => n.rule === note.rule) === at;
    const lines = some => some.map(n => element('li', n.message));
    const more = all.filter((note, at) => !isFirst(note, at));
    byId('notes').replaceChildren(...lines(all.filter(isFirst)));
    byId('more-notes').hidden = more.length === 0;
    byId('more-notes').querySelector('summary').textContent = `${counted(more.length, 'more remark', 'more remarks')} of these kinds`;
    byId('more-notes').querySelector('ul').replaceChildren(...lines(more));
  };

  // --- What is not sure, asked before anything else.
  const labelled = (id, label, field) => {
    const place = element('div');
    const words = element('label', label);
    field.id = id;
    words.htmlFor = id;
    place.append(words, field);
    return place;
  };
  const choice = (options, value) => {
    const select = element('select');
    for (const one of options) {
      const option = element('option', one.label.slice(0, 60));
      option.value = one.value;
      select.append(option);
    }
    select.value = value;
    return select;
  };
  const showAsks = asks => {
    const open = asks.filter(ask => !leftSo.has(`${ask.field} ${ask.key}`));
    byId('asks').hidden = open.length === 0;
    byId('ask-fields').replaceChildren(
      ...open.map((ask, at) => {
        const place = ask.options.length === 0 ? element('div') : labelled(`ask-${at}`, ask.label, choice(ask.options, ask.options[0].value));
        place.prepend(element('p', ask.sentence));
        place.ask = ask;
        return place;
      }),
    );
    byId('asks').querySelector('button').hidden = open.every(ask => ask.options.length === 0);
  };
  byId('asks').addEventListener('submit', async event => {
    event.preventDefault();
    let another = false;
    for (const place of byId('ask-fields').children) {
      const { field, key, options } = place.ask;
      if (options.length === 0) continue;
      const { value } = place.querySelector('select');
      leftSo.add(`${field} ${key}`);
      if (value === options[0].value) continue;
      another = true;
      if (field === 'from') from.value = value;
      else if (key === '') extra = { ...extra, [field]: value };
      else extra = { ...extra, [field]: { ...extra[field], [key]: value } };
      if (field === 'sheet') byId('sheet').value = value;
      if (field === 'dates') byId('dates').value = value;
    }
    if (another) return run({ isNew: true });
    // Nothing was carried, and nothing is said that would change it.
    if (failed.textContent !== '') {
      leftSo.clear();
      return byId('asks').querySelector('select').focus();
    }
    byId('asks').hidden = true;
    byId('found').querySelector('h2').focus();
  });

  const roles = (header, columns) => {
    byId('roles').replaceChildren(
      ...(header.length === 0 ? [] : ROLES).map(role => {
        const at = columns[role];
        const none = at === undefined ? 'no column' : `as found: ${header[at] || `column ${at + 1}`}`;
        const options = header.map((name, n) => ({ value: String(n + 1), label: name || `column ${n + 1}` }));
        const select = choice([{ value: '', label: none }, ...options], extra.columns?.[role] ?? '');
        select.dataset.role = role;
        return labelled(`role-${role}`, `The ${role} stands in`, select);
      }),
    );
  };
  byId('differently')
    .querySelector('form')
    .addEventListener('submit', async event => {
      event.preventDefault();
      const columns = {};
      for (const select of byId('roles').querySelectorAll('select')) if (select.value) columns[select.dataset.role] = select.value;
      const policy = byId('policy').files[0] ? await read(byId('policy').files[0]) : undefined;
      const [sheet, dates] = [byId('sheet').value.trim(), byId('dates').value];
      const { stateNames, typeNames } = extra;
      extra = { ...(Object.keys(columns).length > 0 ? { columns } : {}), ...(sheet ? { sheet } : {}), ...(dates ? { dates } : {}), ...(policy ? { policy } : {}), ...(stateNames ? { stateNames } : {}), ...(typeNames ? { typeNames } : {}) };
      await run({ isNew: true });
    });

  // --- The result.
  const SAYS = {
    jobs: {
      carried: 'your table, with what became of each line beside it',
      decisions: 'the questions with your answers, to go on with later or to hand on',
      prices: 'open lines that ask more than they were ordered for',
      mark: 'keep it beside the table: it says from what it was made',
    },
    lessons: {
      all: 'all of it: the lessons under their own names, the list, the questions, and their marks',
      carried: 'the lesson with the new numbers',
      review: 'what a person has to look at, with what is out of date',
      'review-data': 'the same for a program',
      decisions: 'the questions with your answers, to go on with later or to hand on',
      mark: 'keep it beside the lesson: it says from what it was made',
    },
  };

  byId('make').addEventListener('click', async () => {
    if (!cases.sign()) return;
    await run({ isNew: false });
    byId('take').querySelector('h2').focus();
  });

  const offer = () => {
    for (const address of addresses) URL.revokeObjectURL(address);
    addresses = [];
    const isChanged = cases.isChanged();
    byId('bar').hidden = !isChanged;
    if (isChanged) {
      says('take', 'Your answers have changed since the file was made; make it anew below.');
      byId('beside').hidden = true;
      return byId('files').replaceChildren();
    }
    const open = cases.open();
    const names = current.given.map(file => file.name);
    says(
      'take',
      `${open > 0 ? `${counted(open, 'case is', 'cases are')} still open; the result says so where they stand. ` : ''}Made on this machine from ${names.length === 1 ? names[0] : `${names.length} lessons`}; your own ${names.length === 1 ? 'file is as it was' : 'files are as they were'}.`,
    );
    const links = some =>
      some.map(({ name, what, bytes }) => {
        const item = element('li');
        const link = element('a', name);
        link.download = name;
        link.href = URL.createObjectURL(new Blob([bytes], { type: 'application/octet-stream' }));
        addresses.push(link.href);
        item.append(link, element('span', SAYS[told.kind][what]));
        return item;
      });
    const isBeside = ({ what }) => what === 'mark' || what === 'review-data' || (what === 'carried' && told.files.some(f => f.what === 'all'));
    const beside = told.files.filter(isBeside);
    byId('files').replaceChildren(...links(told.files.filter(f => !isBeside(f))));
    byId('beside').hidden = beside.length === 0;
    byId('beside').querySelector('ul').replaceChildren(...links(beside));
  };
  cases.onChange(offer);

  // --- Lists.
  const stale = list(byId('stale-places'), byId('more-stale'), 10, ['place', 'places']);
  const single = list(byId('single-places'), byId('more-single'), 10, ['place', 'places']);
  const placeOf = e => (told.files.some(f => f.what === 'all') ? `${e.file}, ${e.place}` : e.place);
  /** The text around a place, with the place itself marked. */
  const quoted = (text, part) => {
    const place = element('p', undefined, 'text');
    const at = text.indexOf(part);
    if (at < 0 || part === '') place.append(text);
    else place.append(text.slice(0, at), element('mark', part), text.slice(at + part.length));
    return place;
  };
  const short = text => (text.length > 90 ? `${text.slice(0, 90)}…` : text);

  const staleRow = e =>
    row([element('span', `“${short(e.says)}”`), element('span', placeOf(e), 'quiet')], e.number, () => {
      const body = element('div');
      body.append(element('h3', 'The lesson says'), quoted(e.text, e.says), element('p', e.why), element('p', e.toDo, 'to-do'));
      body.append(texts({ head: `Before: ${e.number} ${e.title}`, text: e.was }, e.now.map(n => ({ head: `Now: ${n.number} ${n.title}`, text: n.text }))));
      return body;
    });
  const singleRow = r =>
    row([element('b', r.number, 'n'), element('span', placeOf(r), 'quiet')], r.outcome, () => {
      const body = element('div');
      body.append(quoted(r.text, r.number), element('p', r.why), element('p', r.toDo, 'to-do'));
      if (r.heirs.length > 0) body.append(element('p', `It becomes ${r.heirs.join('; ')}.`, 'quiet'));
      return body;
    });

  const MOST = 1000;
  const everyCase = () => {
    const rows = told.kind === 'jobs' ? told.cases : [];
    byId('every').hidden = rows.length === 0;
    if (rows.length === 0) return;
    const heads = ['Lines', 'Number', 'Type', 'Outcome', 'Becomes', 'Why'];
    const more = rows.length > MOST ? `; the first ${MOST.toLocaleString('en')} are shown` : '';
    byId('every').querySelector('summary').textContent = `Every case, with what becomes of it (${rows.length.toLocaleString('en')}${more})`;
    const line = (cells, name) => {
      const made = element('tr');
      made.append(
        ...cells.map((text, at) => {
          const one = element(name, text, heads[at] === 'Number' ? 'n' : undefined);
          if (name === 'th') one.scope = 'col';
          one.dataset.of = heads[at];
          return one;
        }),
      );
      return made;
    };
    byId('every').querySelector('thead').replaceChildren(line(heads, 'th'));
    const body = rows.slice(0, MOST).map(c => line([c.lines.toLocaleString('en'), c.number, c.typeName, c.outcome, c.heirs.join('; '), c.why], 'td'));
    byId('every').querySelector('tbody').replaceChildren(...body);
  };
  const listings = isNew => {
    everyCase();
    const [out, alone] = told.kind === 'lessons' ? [told.stale, told.review.filter(r => r.byItself)] : [[], []];
    byId('stale').hidden = out.length === 0;
    byId('single').hidden = alone.length === 0;
    says('stale', `${counted(out.length, 'place tells', 'places tell')} what is no longer asked; the new text stands beside. Perhaps there are more: only what is quoted, or told in much the same words, is found.`);
    says('single', `${counted(alone.length, 'place is', 'places are')} left as it stands: here the question is another one at each.`.replace('places are left as it stands', 'places are left as they stand'));
    stale.fill(out, staleRow);
    single.fill(alone, singleRow);
    if (isNew) stale.rows()[0]?.open();
  };

  // --- Hands on.
  give.hidden = false;
  give.addEventListener('submit', event => event.preventDefault());
  input.addEventListener('change', () => choose(input.files));
  from.addEventListener('change', () => current && run({ isNew: true }));
  stop.addEventListener('click', () => {
    worker.end();
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
    choose(event.dataTransfer?.files);
  });
})();
