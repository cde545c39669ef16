import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseEditionFiles, writeEditionFiles } from '../../src/format/edition-files.ts';
import { entriesOf, parseTable, writeTable } from '../../src/format/edition-table.ts';
import { fileNameOf } from '../../src/format/file-names.ts';
import type { Item } from '../../src/model/item.ts';
import { numberItems } from '../../src/model/numbering.ts';
import type { Settings } from '../../src/model/settings.ts';
import { deepFreeze } from '../freeze.ts';

const settings = (fileLevel: number): Settings => ({
  title: 'Works',
  language: 'en',
  levels: [{ name: 'Part' }, { name: 'Work item' }, { name: 'Requirement' }],
  fileLevel,
  numbering: { levels: [{ style: 'decimal' }, { style: 'decimal' }, { style: 'printed' }], numbersUnique: false },
  installationTypes: [{ id: 'house', name: 'House lot' }],
  withdrawalReasons: [],
});

const text = fc.string({ unit: 'grapheme', maxLength: 12 });
const content = fc.record(
  {
    title: text,
    text,
    purpose: text,
    appliesTo: fc.constant(['house']),
    verified: fc.array(fc.record({ when: fc.constant('before-covering' as const), how: text }), { maxLength: 2 }),
    references: fc.array(text, { maxLength: 2 }),
  },
  { requiredKeys: ['title'] },
);

/** An outline of three levels in document order, with numbers as the scheme gives them. */
const items = fc
  .array(fc.tuple(fc.nat(2), content, fc.string({ unit: 'grapheme', minLength: 1, maxLength: 6 })), { maxLength: 12 })
  .map(drawn => {
    const placed: Item[] = [];
    const open: (string | null)[] = [null];
    const used = new Set<string>();
    for (const [depth, said, name] of drawn) {
      const level = Math.min(depth + 1, open.length);
      const id = used.has(name) ? `${name}${used.size}` : name;
      if (used.has(id)) continue;
      used.add(id);
      placed.push({ id, number: level === 3 ? name : '', level, parent: open[level - 1] ?? null, ...said });
      open.length = level;
      open.push(id);
    }
    return placed;
  });

describe('the files of an edition', () => {
  it('come back as they were written, wherever files begin to nest', () => {
    fc.assert(
      fc.property(items, fc.integer({ min: 1, max: 3 }), (drawn, fileLevel) => {
        const scheme = settings(fileLevel);
        const numbers = numberItems(scheme, drawn);
        const edition = deepFreeze(drawn.map(i => ({ ...i, number: numbers.get(i.id)! })));
        const read = parseEditionFiles(writeEditionFiles(scheme, edition));
        expect(read.findings).toEqual([]);
        expect(read.items).toEqual(edition);
      }),
      { numRuns: 300 },
    );
  });

  it('are the same bytes for the same edition', () => {
    fc.assert(
      fc.property(items, drawn => {
        expect([...writeEditionFiles(settings(2), drawn)]).toEqual([
          ...writeEditionFiles(settings(2), structuredClone(drawn)),
        ]);
      }),
    );
  });

  it('keep the frozen table line by line', () => {
    fc.assert(
      fc.property(items, drawn => {
        const entries = entriesOf(settings(2), drawn);
        expect(parseTable('t', writeTable(entries))).toEqual(entries);
      }),
    );
  });
});

const item = (id: string, more = {}) => `${JSON.stringify({ id, title: id, ...more })}\n`;
const good = new Map([
  ['catalog.json', JSON.stringify({ ...settings(2), numbering: { levels: [], numbersUnique: true } })],
  ['outline.json', JSON.stringify([{ id: 'a', items: ['b'] }])],
  ['items/a.json', item('a', { number: '1' })],
  ['items/b.json', item('b', { number: '1.1', items: [{ id: 'c', number: '1.1.1', title: 'c', text: 'Do.' }] })],
]);

describe('damage is told, all of it, with file and place', () => {
  const cases: [string, Record<string, string | undefined>, string[]][] = [
    ['an id in two files', { 'items/x.json': item('c') }, ['id-twice']],
    ['an id twice in one file', { 'items/b.json': item('b', { items: [{ id: 'b', title: '' }] }) }, ['id-twice']],
    ['a file that is missing', { 'items/b.json': undefined }, ['no-file']],
    ['a file that no outline names', { 'items/z.json': item('z') }, ['not-in-outline']],
    ['a place named twice', { 'outline.json': JSON.stringify([{ id: 'a', items: ['b'] }, 'a']) }, ['outline-twice']],
    ['text that is not JSON', { 'items/a.json': '{"id": "a",\n "title" "x"}' }, ['invalid-json']],
    ['a native merge conflict', { 'items/a.json': '{\n<<<<<<< ours\n"id": "a"\n' }, ['merge-conflict']],
    ['a misspelt field', { 'items/a.json': item('a', { apliesTo: ['house'] }) }, ['schema']],
    ['no installation type at all', { 'items/a.json': item('a', { appliesTo: [] }) }, ['schema']],
    ['an unknown installation type', { 'items/a.json': item('a', { appliesTo: ['barn'] }) }, ['unknown-type']],
    ['one number printed twice', { 'items/a.json': item('a', { number: '1.1' }) }, ['number-twice']],
    ['settings that are missing', { 'catalog.json': undefined }, ['missing-file']],
  ];
  it.each(cases)('%s', (_name, changes, rules) => {
    const files = new Map(good);
    for (const [path, source] of Object.entries(changes)) {
      if (source === undefined) files.delete(path);
      else files.set(path, source);
    }
    expect(parseEditionFiles(files).findings.map(f => f.rule)).toEqual(rules);
  });

  it('and the undamaged files have nothing to tell', () => {
    expect(parseEditionFiles(good).findings).toEqual([]);
  });

  it('a file that is not JSON is named with line and column', () => {
    const files = new Map(good).set('items/a.json', '{"id": "a",\n "title" "x"}');
    expect(parseEditionFiles(files).findings[0]?.place).toEqual({ file: 'items/a.json', line: 2, column: 10 });
  });
});

describe('file names', () => {
  it.each([
    ['sec-%symbol.x%', 'sec-~25symbol.x~25'],
    ['Con', '~43on'],
    ['con', '_con'],
    ['aux', '_aux'],
    ['com1.txt', '_com1.txt'],
    ['.git', '_.git'],
    ['..', '_..'],
    ['a/b\\c', 'a~2fb~5cc'],
    ['house:12', 'house~3a12'],
    ['', '_'],
    ['é', '~c3~a9'],
  ])('%j is kept as %s', (id, name) => {
    expect(fileNameOf(id)).toBe(name);
  });

  it('of two ids are never the same, also where case is ignored and names are cut', () => {
    fc.assert(
      fc.property(text, text, (a, b) => {
        fc.pre(a !== b);
        expect(fileNameOf(a).toLowerCase()).not.toBe(fileNameOf(b).toLowerCase());
      }),
    );
    expect(fileNameOf('x'.repeat(200))).not.toBe(fileNameOf('x'.repeat(201)));
    expect(fileNameOf('x'.repeat(200)).length).toBeLessThanOrEqual(120);
  });
});
