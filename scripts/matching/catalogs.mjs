// Pairs of editions with their true crosswalk, on which the matcher is fitted and judged. Each is
// { name, group, from, to, truth }: rows as src/matching takes them, and old position → list of new positions (empty:
// withdrawn). Pairs of one group share a catalog and are left out together.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';

const root = join(import.meta.dirname, '..', '..');
const PAIRS = join(root, 'tests', 'matching', 'pairs');

export function allCatalogs() {
  const published = readdirSync(PAIRS)
    .filter(name => existsSync(join(PAIRS, name, 'truth.csv')))
    .map(name => ({ name, group: name.startsWith('naics') ? 'naics' : name, ...readPair(join(PAIRS, name)) }));
  return [...published, ecma262(), eslint(), ...demo()].filter(Boolean).map(pair => ({ ...pair, plain: true }));
}

const csv = path => parse(readFileSync(path, 'utf8'), { bom: true, columns: true });

export function readPair(folder) {
  const [from, to] = ['old', 'new'].map(side => rowsOf(csv(join(folder, `${side}.csv`))));
  const truth = new Map();
  for (const { old_number, new_number } of csv(join(folder, 'truth.csv'))) {
    if (old_number)
      link(
        truth,
        from.findIndex(r => r.number === old_number),
        to.findIndex(r => r.number === new_number),
      );
  }
  return { from, to, truth };
}

function rowsOf(records, table = 0, first = 0) {
  const at = new Map(records.map((r, i) => [r.number, first + i]));
  return records.map(({ number, level, parent, title = '', text = '' }) => ({
    number,
    level: level ?? '',
    parent: parent && parent !== number ? (at.get(parent) ?? -1) : -1,
    title,
    text,
    table,
  }));
}

function link(truth, from, to) {
  if (from < 0) return;
  const heirs = truth.get(from) ?? [];
  if (to >= 0) heirs.push(to);
  truth.set(from, heirs);
}

/** @tc39/ecma262-biblio 2.0.2285 → 2.2.3180, ids hidden: numbers and titles only; equal ids are the truth. */
function ecma262() {
  const clauses = alias => {
    const { entries } = JSON.parse(readFileSync(createRequire(import.meta.url).resolve(alias), 'utf8'));
    return entries.filter(e => e.type === 'clause');
  };
  const [old, next] = [clauses('ecma262-2022'), clauses('ecma262-2025c')];
  const table = list =>
    rowsOf(
      list.map(c => ({
        number: c.number,
        level: '',
        parent: c.number.split('.').slice(0, -1).join('.'),
        title: c.title,
      })),
    );
  const respelt = id => id.replace(/@@(\w+)/g, '%symbol.$1%').toLowerCase();
  const at = new Map(next.map((c, i) => [respelt(c.id), i]));
  const truth = new Map();
  old.forEach((c, i) => {
    // This id was used again for another clause.
    if (c.id !== 'sec-uint8array') link(truth, i, at.get(respelt(c.id)) ?? -1);
  });
  return { name: 'ecma262', group: 'ecma262', from: table(old), to: table(next), truth };
}

/** eslint 1.10.3 (file overviews) → 2.13.1 (descriptions): rule names hidden; equal names and official replacements. */
function eslint() {
  const folder = join(root, '.cache', 'matching');
  const release = version => {
    const at = join(folder, version);
    if (!existsSync(join(at, 'package'))) {
      mkdirSync(at, { recursive: true });
      try {
        execFileSync('npm', ['pack', '-s', `eslint@${version}`, '--pack-destination', at], {
          stdio: 'pipe',
          shell: process.platform === 'win32',
        });
        execFileSync('tar', ['xzf', join(at, `eslint-${version}.tgz`), '-C', at]);
      } catch {
        return undefined;
      }
    }
    return join(at, 'package');
  };
  const [older, newer] = [release('1.10.3'), release('2.13.1')];
  if (!older || !newer) return undefined;
  const read = (at, pattern) =>
    readdirSync(join(at, 'lib', 'rules'))
      .filter(f => f.endsWith('.js'))
      .map(f => ({
        rule: f.slice(0, -3),
        text:
          pattern
            .exec(readFileSync(join(at, 'lib', 'rules', f), 'utf8'))?.[1]
            ?.replace(/\s*\n\s*\*\s*/g, ' ')
            .trim() ?? '',
      }))
      .filter(r => r.text !== '');
  const old = read(older, /@fileoverview\s+([\s\S]*?)(?=\n\s*\*\s*@|\*\/)/);
  const next = read(newer, /description:\s*"((?:[^"\\]|\\.)*)"/);
  const { rules } = JSON.parse(readFileSync(join(newer, 'conf', 'replacements.json'), 'utf8'));
  const at = new Map(next.map((r, i) => [r.rule, i]));
  const truth = new Map();
  old.forEach(({ rule }, i) => {
    for (const heir of at.has(rule) ? [rule] : (rules[rule] ?? [''])) link(truth, i, at.get(heir) ?? -1);
  });
  const table = list =>
    list.map(({ text }, i) => ({ number: String(i + 1), level: '', parent: -1, title: '', text, table: 0 }));
  // Both lists are in the order of the hidden names; numbers in that order would give them away.
  const shuffled = shuffle(next.length, 7);
  const to = shuffled.map((i, n) => ({ ...table(next)[i], number: String(n + 1) }));
  const place = new Map(shuffled.map((i, n) => [i, n]));
  for (const [i, heirs] of truth)
    truth.set(
      i,
      heirs.map(j => place.get(j)),
    );
  return { name: 'eslint', group: 'eslint', from: table(old), to, truth };
}

/** The demo catalog (invented): 2014 → 2018 from three tables, 2018 → 2024; its lineage is the truth. */
function demo() {
  const at = (...parts) => join(root, 'catalog', ...parts);
  const tables = folder =>
    readdirSync(folder)
      .filter(f => f.endsWith('.csv'))
      .sort();
  const read = year => {
    const rows = [];
    const records = [];
    tables(at(year)).forEach((file, table) => {
      const here = csv(at(year, file));
      rows.push(...rowsOf(here, year === '2014' ? table : 0, rows.length));
      records.push(...here.map(r => ({ ...r, file: file.replace('.csv', '') })));
    });
    return { rows, records };
  };
  const editions = { 2014: read('2014'), 2018: read('2018'), 2024: read('2024') };
  const pair = (from, to) => {
    const [old, next] = [editions[from], editions[to]];
    const types = { houses: ['house'], rows: ['terrace', 'court'], streets: ['street'] };
    const findOld = (number, type) =>
      old.records.findIndex(
        r => r.number === number && (!type || !types[r.file] || types[r.file].includes(type) || r.file === type),
      );
    const truth = new Map();
    next.records.forEach((r, j) => {
      if (r.was) link(truth, findOld(r.was), j);
    });
    for (const file of tables(at(to, `from-${from}`))) {
      for (const r of csv(at(to, `from-${from}`, file))) {
        const i = findOld(r.from, r.from_type);
        const j = r.to ? next.records.findIndex(n => n.number === r.to) : -1;
        if (i >= 0 && !(truth.get(i) ?? []).includes(j)) link(truth, i, j);
      }
    }
    return { name: `demo-${from}-${to}`, group: 'demo', from: old.rows, to: next.rows, truth };
  };
  return [pair('2014', '2018'), pair('2018', '2024')];
}

/** Positions in an order that looks random and is always the same. */
export function shuffle(size, seed) {
  const random = randomFrom(seed);
  const list = Array.from({ length: size }, (_, i) => i);
  for (let i = size - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j], list[i]];
  }
  return list;
}

/** mulberry32. */
export function randomFrom(seed) {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
