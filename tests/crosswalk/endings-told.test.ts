import { describe, expect, it } from 'vitest';
import { pointLocal } from '../../src/carryover/local/local-pointing.ts';
import { resolveCitation } from '../../src/carryover/resolve.ts';
import { retentionBetween } from '../../src/content/links/retention.ts';
import { tellHop } from '../../src/content/links/tell.ts';
import { traceItem } from '../../src/content/links/trace.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import { writeCrosswalkCsv } from '../../src/exports/crosswalk-csv.ts';
import { crosswalkLines } from '../../src/exports/crosswalk-lines.ts';
import { editionOfLine, type Publication } from '../../src/exports/publication.ts';
import { writeSssom } from '../../src/exports/sssom.ts';
import type { LineageRecord, Marks } from '../../src/model/crosswalk.ts';
import type { EditionIndex } from '../../src/model/edition.ts';
import { saidOfEnd, saidOfEnded } from '../../src/model/heir-words.ts';
import type { LocalRecord } from '../../src/model/local.ts';
import type { Settings } from '../../src/model/settings.ts';

const SETTINGS: Settings = {
  title: '',
  language: 'en',
  levels: [{ name: 'Requirement' }],
  fileLevel: 1,
  numbering: { levels: [{ style: 'decimal' }], numbersUnique: true },
  installationTypes: ['house', 'roof', 'street'].map(id => ({ id, name: `the ${id}` })),
  withdrawalReasons: [
    { code: 'law', meaning: 'the law says it' },
    { code: 'obsolete', meaning: 'no longer used' },
  ],
};
const index = (name: string, appliesTo: readonly string[]): EditionIndex => ({
  header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
  settings: SETTINGS,
  entries:
    appliesTo.length === 0
      ? []
      : [{ id: 'a', number: '1', parent: null, level: 1, title: 'Eaves', hash: 'a', obliges: true, appliesTo }],
});
const SAME: Marks = {
  renumbered: false,
  moved: false,
  wording: 'same',
  duty: 'same',
  appliesTo: 'same',
  dutyByType: [],
  evidence: [],
};

const ENDS = {
  withdrawnFor: ['roof'],
  reason: 'law',
  governs: 'The roof act',
  governsChecked: '2030-01-01',
  alsoEnds: [{ types: ['street'], reason: 'obsolete' }],
};
const ALL = ['house', 'roof', 'street'];
const joint = (now: readonly string[], record: Partial<LineageRecord>) => {
  const [from, to] = [index('E1', ALL), index('E2', now)];
  const heirs = now.length > 0 ? [{ to: 'a', fromExtent: 'part', toExtent: 'all' } as const] : [];
  const lineage: LineageRecord[] = [{ from: 'a', heirs, basis: 'declared', note: 'Decided twice.', ...record }];
  return joinEditions(from, to, { from: 'E1', to: 'E2', links: linkByLineage(from.entries, to.entries, lineage) });
};
const partly = joint(['house'], ENDS);
const gone = joint([], {
  ...ENDS,
  alsoEnds: [{ types: ['house', 'street'], reason: 'obsolete' }],
});
const nameOf = (type: string) => `the ${type}`;
const LAW = 'What governs now: The roof act. The law says it.';

describe('an item that ends for one type by law and for another because it is obsolete', () => {
  it.each([partly, gone])('tells a job the reason of its own type', whole => {
    const told = (type: string) => resolveCitation(whole, () => SAME, { number: '1', type });
    expect(told('roof').why).toBe('1 is withdrawn in E2: the law says it. Now The roof act governs. Decided twice.');
    expect(told('roof').toDo).toBe('Take 1 out, and follow The roof act.');
    expect(told('street').why).toBe('1 is withdrawn in E2: no longer used. Decided twice.');
    expect(told('street').toDo).toBe('Take 1 out; nothing takes its place.');
  });

  it('tells a text that names no type all of them, each with its types', () => {
    const ends = 'For the roof, 1 is withdrawn in E2: the law says it. Now The roof act governs.';
    expect(resolveCitation(partly, () => SAME, { number: '1' })).toMatchObject({
      kind: 'choose',
      why: `1 goes on as 1 Eaves, but part of it ends. ${ends} For the street, 1 is withdrawn in E2: no longer used. Decided twice.`,
    });
    expect(resolveCitation(gone, () => SAME, { number: '1' })).toMatchObject({
      kind: 'withdrawn',
      toDo: 'For the roof: take 1 out, and follow The roof act. For the house and the street: take 1 out; nothing takes its place.',
      why: `${ends} For the house and the street, 1 is withdrawn in E2: no longer used. Decided twice.`,
    });
  });

  it('is traced with the reason of the type that is asked for, or with all', () => {
    const told = (type?: string, whole = partly) =>
      tellHop(traceItem('E1', whole.from.entries[0]!, [{ joint: whole, marks: () => SAME }], undefined, type).hops[0]!);
    expect(told('street')).toBe(
      'E1 1 "Eaves" was withdrawn in E2 for the street: obsolete, no longer used. Decided twice.',
    );
    expect(told('roof')).toContain('for the roof: law, the law says it. What governs now: The roof act.');
    expect(told('roof')).not.toContain('obsolete');
    expect(told('house')).toBe('E1 1 "Eaves" is still 1 "Eaves" for the house in E2. Decided twice.');
    expect(told()).toMatch(/ends for the roof: law, .*act\. It ends for the street: obsolete, no longer used\.$/);
    expect(told(undefined, gone)).toMatch(
      /^E1 1 "Eaves" was withdrawn in E2 for the roof: law, .* It was withdrawn for the house and the street: obsolete/,
    );
  });

  it('is told on a phone with each end beside its types', () => {
    const ends = partly.leaving('a').filter(l => l.to === null);
    expect(saidOfEnded(['roof', 'street'], ends, SETTINGS.withdrawalReasons, nameOf)).toBe(
      'It ends for the roof. What governs there now: The roof act. The law says it. It ends for the street. No longer used.',
    );
    expect(saidOfEnd(gone.leaving('a'), SETTINGS.withdrawalReasons, nameOf)).toBe(
      `For the roof: ${LAW} For the house and the street: No longer used.`,
    );
    expect(saidOfEnd(gone.leaving('a').slice(0, 1), SETTINGS.withdrawalReasons, nameOf)).toBe(LAW);
  });

  it('is a line for each end in the published crosswalk, and the heir has no reason to end', () => {
    const rows = writeCrosswalkCsv(crosswalkLines(partly, () => SAME))
      .split('\r\n')
      .slice(1, 4);
    expect(rows.map(row => row.split(',').slice(17))).toEqual([
      ['', 'Decided twice.', ''],
      ['law', 'Decided twice. Ends for roof only. Now governed by The roof act.', ''],
      ['obsolete', 'Decided twice. Ends for street only.', ''],
    ]);
  });

  it('has a row of its own name for each end among the mappings, and one for its heir that names all that end', () => {
    const rows = (whole: typeof partly) => {
      const { from, to } = whole;
      const line = [editionOfLine(from), editionOfLine(to)];
      const publication = { joint: whole, marks: () => SAME, line } as unknown as Publication;
      const [head, ...lines] = writeSssom(publication)
        .split('\n')
        .filter(l => l !== '' && !l.startsWith('#'));
      const at = (name: string) => head!.split('\t').indexOf(name);
      return lines.map(l => ['record_id', 'ends_for', 'reason_code'].map(name => l.split('\t')[at(name)]));
    };
    expect(rows(partly)).toEqual([['map:a..a', 'the roof, the street', '']]);
    expect(rows(gone)).toEqual([
      ['map:a....roof', 'the roof', 'law'],
      ['map:a....house..street', 'the house, the street', 'obsolete'],
    ]);
  });

  it('is audited apart for each reason', () => {
    const item = { id: 'a', number: '1', level: 1, parent: null, title: 'Eaves', text: 'Eaves are 300 mm wide.' };
    const texts = { from: () => item, to: () => undefined };
    expect(retentionBetween(gone, texts).map(r => [r.types, r.reason])).toEqual([
      [['house', 'street'], 'obsolete'],
      [['roof'], 'law'],
    ]);
  });

  it('leaves a local rule with the end of the types that it holds for', () => {
    const record = { kind: 'rule', state: 'approved', until: null, cites: { edition: 'E1', number: '1' } };
    const point = (types: readonly string[]) => pointLocal(gone, record as unknown as LocalRecord, '2030-01-01', types);
    expect(point(['street']).toDo).toBe('Say whether the rule goes on by itself.');
    expect(point(['street']).why).not.toContain('law');
    expect(point(['roof']).toDo).toBe('Say whether the rule goes on by itself, unless it is about The roof act.');
  });
});
