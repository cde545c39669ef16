import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { addErratum } from '../../src/commands/importing/add-erratum.ts';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import { lineageFromTables } from '../../src/editing/lineage-rows.ts';
import { placesOf } from '../../src/model/places.ts';
import { listEditions } from '../../src/store/names.ts';
import { openForWriting } from '../../src/store/open.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { testPorts } from '../demo-catalog.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { SETTINGS, smallDraft } from './small-draft.ts';

const old = placesOf(SETTINGS, smallDraft().items);
const newer = placesOf(
  SETTINGS,
  smallDraft().items.filter(i => i.id !== 'b2y'),
);

/** Lineage tables of one line or more each, under their header. */
function read(header: string, ...tables: readonly string[][]) {
  const bytes = (lines: string[]) => new TextEncoder().encode([header, ...lines].join('\n'));
  const { records, findings } = lineageFromTables(
    tables.map((lines, at) => readTable(`${at}.csv`, bytes(lines))),
    old,
    newer,
    [],
  );
  return { records, findings, told: findings.map(f => `${f.place?.file}:${f.place?.line} ${f.message}`) };
}

it('an import refuses what an erratum refuses: nothing is published', async () => {
  const dir = temporaryFolder();
  const file = (name: string, text: string) => {
    writeFileSync(join(dir, name), text);
    return join(dir, name);
  };
  const catalog = join(dir, 'works.git');
  const older = { tables: [file('1.csv', 'number,title\n1,Walls\n2,Ties\n')], edition: '1', catalog };
  const later = { tables: [file('2.csv', 'number,title,was\n1,Walls,1\n')], edition: '2', catalog };
  await importTables(testPorts(), older);
  const wrong = file('wrong.csv', 'from,to,reason\n2,,\n');
  const sentence = /The lineage of \S+ names neither an heir nor a reason\./;
  await expect(importTables(testPorts(), { ...later, lineage: [wrong] })).rejects.toThrow(sentence);
  const open = await openForWriting(catalog);
  expect((await listEditions(open)).map(e => e.name)).toEqual(['1']);
  await importTables(testPorts(), later);
  await expect(addErratum(testPorts(), open, { edition: '2', lineage: [wrong] })).rejects.toThrow(sentence);
});

describe('a line of a lineage table', () => {
  it.each([
    ['basis', 'infered', /basis is "infered"; write declared, confirmed, inferred, or nothing/],
    ['from_extent', 'hole', /from_extent is "hole"; write all, part, unknown, or nothing/],
    ['to_extent', 'al', /write all, part, unknown/],
    ['not_same', 'yess', /write yes, true, 1, no, false, 0, or nothing/],
    ['date', 'yesterday', /write the day as year-month-day/],
    ['governs_checked', '2024-02-30', /write the day as year-month-day/],
    ['withdrawn_for', 'street', /names "street", to which the old item does not apply; it applies to house, terrace/],
    ['decision', 'none', /refers to the decision none, which is not on file; give its file with --decision/],
  ])('with a wrong %s is a finding with its place, and none of its record is taken', (column, word, sentence) => {
    const { records, told } = read(`from,to,${column}`, [`a1x,a1x,${word}`]);
    expect(told).toEqual([expect.stringMatching(sentence)]);
    expect(told[0]).toMatch(/^0\.csv:2 /);
    expect(records).toEqual([]);
  });

  it('that stands twice makes one heir and is told', () => {
    const { records, findings } = read('from,to', ['a1x,a1x'], ['a1x,a1x']);
    expect(records.map(r => r.heirs.map(h => h.to))).toEqual([['a1x']]);
    expect(findings).toMatchObject([{ severity: 'warning', place: { file: '1.csv', line: 2 } }]);
    expect(findings[0]!.message).toBe('0.csv:2 says the same; it is taken once.');
  });

  it.each([
    ['other extents', 'from_extent', ['a1x,a1x,all', 'a1x,a1x,part'], /0\.csv:2 says the same with other extents/],
    [
      'another reason to end',
      'reason',
      ['b2y,,obsolete', 'b2y,,law'],
      /its reason is "law", and "obsolete" in 0\.csv:2/,
    ],
    ['something else that governs', 'governs', ['a1x,a1x,act', 'a1x,a1y,code'], /its governs is "code", and "act"/],
    ['an end beside an heir', 'note', ['a1x,a1x,', 'a1x,,gone'], /goes on; name the types .* under withdrawn_for/],
  ])('with %s than the line before it is a finding', (_, column, lines, sentence) => {
    const { told } = read(`from,to,${column}`, lines);
    expect(told[0]).toMatch(sentence);
    expect(told[0]).toMatch(/^0\.csv:3 /);
  });

  it('withdraws nothing without a reason, and nothing that goes on under its own id', () => {
    expect(read('from,to,reason', ['b2y,,']).told[0]).toMatch(/^0\.csv:2 .* names neither an heir nor a reason/);
    expect(read('from,to,reason', ['a1x,,obsolete']).told[0]).toMatch(/the item goes on/);
    expect(read('from,to,reason', ['b2y,,obsolete']).told).toEqual([]);
  });

  it('adds to what other lines say of the item: heirs, types that end, sentences; the weakest basis counts', () => {
    const { records, told } = read('from,to,withdrawn_for,reason,note,basis', [
      'a2x,a2x,,,one,declared',
      'a2x,a2y,,,two,inferred',
      'a2x,,street,obsolete,,',
      'a2x,,house,obsolete,,declared',
    ]);
    expect(told).toEqual([]);
    expect(records).toMatchObject([{ withdrawnFor: ['street', 'house'], reason: 'obsolete', note: 'one two' }]);
    expect(records).toMatchObject([{ heirs: [{ to: 'a2x' }, { to: 'a2y' }], basis: 'inferred' }]);
  });

  it('gives each type that ends the reason of its own line', () => {
    const { records, told } = read('from,to,withdrawn_for,reason,governs,governs_checked,points_to', [
      'a2x,a2x,,,,,',
      'a2x,,house,law,The act,2029-12-01,',
      'a2x,,street,obsolete,,,a2y',
    ]);
    expect(told).toEqual([]);
    expect(records).toMatchObject([
      {
        heirs: [{ to: 'a2x' }],
        withdrawnFor: ['house'],
        reason: 'law',
        governs: 'The act',
        governsChecked: '2029-12-01',
        alsoEnds: [{ types: ['street'], reason: 'obsolete', pointsTo: 'a2y' }],
      },
    ]);
    expect(records[0]).not.toHaveProperty('pointsTo');
  });

  it('that names no types, of an item that goes on nowhere, is about those that no other line names', () => {
    const { records, told } = read('from,to,withdrawn_for,reason', ['b2y,,street,law', 'b2y,,,obsolete']);
    expect(told).toEqual([]);
    expect(records).toMatchObject([
      { withdrawnFor: ['street'], reason: 'law', alsoEnds: [{ types: ['house', 'terrace'], reason: 'obsolete' }] },
    ]);
  });

  it.each([
    [
      'the same type twice',
      ['a2x,a2x,,', 'a2x,,house,law', 'a2x,,street;house,obsolete'],
      /0\.csv:3 says .* for house/,
    ],
    [
      'a type without a reason',
      ['a2x,,house,law', 'a2x,,street,obsolete', 'a2x,,terrace,'],
      /none is given for terrace/,
    ],
    ['why an heir goes on', ['a2x,a2x,,joined', 'a2x,,house,law', 'a2x,,street,obsolete'], /this line names no types/],
  ])('with several reasons to end refuses %s', (_, lines, sentence) => {
    expect(read('from,to,withdrawn_for,reason', lines).told).toEqual([expect.stringMatching(sentence)]);
  });
});
