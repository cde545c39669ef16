import { describe, expect, it } from 'vitest';
import { withChanges } from '../../../src/carryover/stale/changed-texts.ts';
import { valuesByType } from '../../../src/carryover/stale/type-values.ts';
import { carryDocs } from '../../../src/commands/documents/carry-docs.ts';
import { marksOf } from '../../../src/content/links/marks.ts';
import { joinEditions } from '../../../src/crosswalk/joint.ts';
import type { EditionIndex } from '../../../src/model/edition.ts';
import type { Item } from '../../../src/model/item.ts';
import { memoryFiles } from '../memory-files.ts';

const NAMES = [
  { id: 'h', name: 'House lot' },
  { id: 't', name: 'Terrace row' },
  { id: 'c', name: 'Courtyard block' },
];
const told = (text: string, value: string, applies = ['h', 't', 'c']) =>
  Object.fromEntries(valuesByType(text, value, NAMES, applies).map(v => [v.types.join(' '), v.to]));

describe('the values of a sentence by installation type', () => {
  it.each([
    ['Place at least 500 mm of soil, or 450 mm on a house lot.', { h: '450 mm', 't c': 'at least 500 mm' }],
    ['Set it true within 10 mm (5 mm in courtyard blocks or terrace rows).', { 't c': '5 mm', h: 'within 10 mm' }],
    [
      'Dig at least 350 mm on House Lots and terrace rows, 400 mm (500 mm in lanes) in courtyard blocks.',
      { 'h t': 'at least 350 mm' },
    ],
    [
      'Walk at least 30 minutes on a house lot, 45 minutes for a terrace row, 60 minutes in a courtyard block.',
      { h: 'at least 30 minutes', t: '45 minutes', c: '60 minutes' },
    ],
    ['Put pipes 50 mm in, or 60 mm on a courtyard block, and a 10 mm gap.', { c: '60 mm', 'h t': '50 mm' }],
    ['Lay drainage board at least 25 mm high.', {}],
    ['In a house lot, lay it 25 mm high. Fix it 30 mm deep.', {}],
    ['Make it 300 mm wide; 50 mm deep on a house lot.', {}],
  ])('are told apart: %s', (text, wanted) => {
    const first = /(?:at least |within )?\d+ (?:mm|minutes)/.exec(text)![0];
    expect(told(text, first)).toEqual(wanted);
  });

  it('are the same whichever of them is asked for, and none for types that the text is not about', () => {
    const text = 'Place at least 500 mm of soil, or 450 mm on a house lot.';
    expect(told(text, '450 mm')).toEqual(told(text, 'at least 500 mm'));
    expect(told(text, '450 mm', ['t', 'c'])).toEqual({});
    expect(told(text, '450 mm', ['h'])).toEqual({ h: '450 mm' });
  });
});

/** Two editions with one item for all types that became two, one of them with a value for house lots. */
function smallWay() {
  const item = (id: string, number: string, text: string, appliesTo: readonly string[]): Item => ({
    ...{ id, number, text, appliesTo, title: 'Filter soil', level: 1, parent: null },
  });
  const edition = (name: string, items: readonly Item[]): EditionIndex => ({
    header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
    settings: {
      title: 'Gardens',
      language: 'en',
      levels: [{ name: 'Requirement', obliges: true }],
      fileLevel: 1,
      numbering: { levels: [{ style: 'printed' }], numbersUnique: true },
      installationTypes: NAMES,
      withdrawalReasons: [],
    },
    entries: items.map(({ text, ...rest }) => ({ ...rest, hash: text!, obliges: true })),
  });
  const old = [item('a', '4.1.1', 'Place at least 400 mm of filter soil.', ['h', 't', 'c'])];
  const now = [
    item('b', '5.1.1', 'Place at least 500 mm of filter soil, or 450 mm on a house lot.', ['h', 't']),
    item('c', '5.1.2', 'Place at least 600 mm of filter soil.', ['c']),
  ];
  const link = { fromExtent: 'part', toExtent: 'all', basis: 'declared', confidence: 1, from: 'a' } as const;
  const links = ['b', 'c'].map(to => ({ ...link, to }));
  const joint = joinEditions(edition('2018', old), edition('2024', now), { from: '2018', to: '2024', links });
  const textIn = (items: readonly Item[]) => (id: string) => items.find(i => i.id === id)?.text;
  const itemIn = (items: readonly Item[]) => (id: string) => items.find(i => i.id === id);
  const marks = (l: Parameters<typeof marksOf>[1]) => marksOf(joint, l, { from: itemIn(old), to: itemIn(now) });
  return { joint, marks, texts: withChanges(joint, { from: textIn(old), to: textIn(now) }) };
}

describe('a stale value', () => {
  const { joint, marks, texts } = smallWay();
  const review = async (text: string) => {
    const { files } = memoryFiles({ '/in/a.md': text });
    const options = { inputs: ['/in/a.md'], outDir: '/out', texts };
    return (await carryDocs({ files, progress: () => {} }, joint, marks, options)).stale;
  };

  it('is told with the new values by type, and with the one that the sentence is about', async () => {
    const [stale] = await review('Filter soil: 400 mm on a house lot (4.1.1 Filter soil).\n');
    expect(stale).toMatchObject({
      why: '"400 mm" is a value of 4.1.1 Filter soil of 2018; 2024 states values by installation type in its place: "at least 500 mm" for Terrace row; "450 mm" for House lot; "at least 600 mm" for Courtyard block.',
      toDo: 'Read the new text; if it is about the same thing, write "450 mm", the value for House lot.',
    });
    expect(stale!.values).toContainEqual({ types: ['Courtyard block'], to: 'at least 600 mm' });
  });

  it.each(['', ' on house lots and terrace rows'])('leaves the type to a person where it stands%s', async where => {
    const [stale] = await review(`Filter soil: 400 mm${where} (4.1.1 Filter soil).\n`);
    expect(stale!.toDo).toBe(
      'Read the new text; if it is about the same thing, write the value of the type that is meant.',
    );
  });
});
