import { describe, expect, it } from 'vitest';
import { type Answer, pairCode } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import type { Learned } from '../../src/matching/believe.ts';
import { LEARNED } from '../../src/matching/learned.ts';
import { matchRows } from '../../src/matching/match-rows.ts';
import { deepFreeze } from '../freeze.ts';
import { BELIEVING } from './believing.ts';
import { readPair } from './read-pair.ts';

const rows = (...texts: string[]): readonly BareRow[] =>
  deepFreeze(texts.map((text, at) => ({ number: `${at + 1}`, level: '', parent: -1, title: '', text, table: 0 })));

const OLD = rows(
  'The gutter shall be fixed with brackets at 600 mm centres.',
  'Downpipes shall be clipped to the wall at every joint.',
  'The inspector shall be greeted politely on arrival.',
  'Overflow pipes of house tanks shall discharge away from the foundation.',
  'Overflow pipes of terrace tanks shall discharge away from the foundation wall.',
);
const NEW = rows(
  'Discharge every tank overflow away from the foundation.',
  'Fix gutters with brackets at centres of 600 mm.',
  'Clip downpipes to the wall at each joint.',
  'Label each valve with its number.',
);

const linked = (answers: readonly Answer[] = []) =>
  matchRows(OLD, NEW, LEARNED, answers).links.map(l => `${l.from ?? '-'}>${l.to ?? '-'}`);

describe('two small editions without ids, every number re-used', () => {
  it('are linked by what they say: kept and merged', () => {
    expect(linked()).toEqual(expect.arrayContaining(['0>1', '1>2', '3>0', '4>0']));
  });

  it('never accept a link between what is merely left over on both sides', () => {
    const { links } = matchRows(OLD, NEW, LEARNED);
    expect(links.filter(l => l.from === 2 || l.to === 3).every(l => l.band === 'look')).toBe(true);
  });

  it('never accept a link for its place and number alone, where another row holds the words', () => {
    const table = (third: [string, string], ...more: [string, string][]) =>
      deepFreeze(
        [
          ['Posts', 'Posts shall be of robinia or oak heartwood.'],
          ['Shoes', 'Each post shall stand on a galvanised steel shoe 50 mm above the ground.'],
          third,
          ...more,
        ].map(([title, text], at) => ({
          number: `3.${at + 1}`,
          level: '',
          parent: -1,
          title: title!,
          text: text!,
          table: 0,
        })),
      );
    const caps = 'Every nut within reach shall bear a plastic cap.';
    const from = table(['Caps', caps], ['Surfaces', 'Surfaces shall be free of splinters.']);
    const to = table(
      ['Label', 'Each item shall bear a label with its year of making.'],
      ['Reach', `Surfaces within reach shall be free of splinters. ${caps}`],
    );
    const { links } = matchRows(from, to, BELIEVING);
    const accepted = links.filter(l => l.band === 'accept').map(l => `${l.from}>${l.to}`);
    expect(links.map(l => `${l.from}>${l.to}`)).toContain('2>2');
    expect(accepted).toEqual(expect.arrayContaining(['0>0', '1>1', '2>3', '3>3']));
    expect(accepted).not.toContain('2>2');
  });

  it('accept no link of which the texts themselves say next to nothing', () => {
    const row = (title: string, text: string) => [{ number: '1', level: '', parent: -1, title, text, table: 0 }];
    const from = row('Quarantine', 'New arrivals shall stay apart for ten days.');
    const to = row('Post', 'Parcels for the office shall stay with the porter for ten days.');
    const mute: Learned = { ...BELIEVING, last: { base: 9, trees: [] } };
    expect(matchRows(from, to, BELIEVING).links).toMatchObject([{ from: 0, to: 0, band: 'accept' }]);
    expect(matchRows(from, to, mute).links).toMatchObject([{ from: 0, to: 0, band: 'look' }]);
  });

  it('give the same links and confidences every time', () => {
    expect(matchRows(OLD, NEW, LEARNED).links).toEqual(matchRows(OLD, NEW, LEARNED).links);
  });

  it('let every row of both sides stand in a link', () => {
    const { links } = matchRows(OLD, NEW, LEARNED);
    expect(new Set(links.map(l => l.from).filter(x => x !== null)).size).toBe(OLD.length);
    expect(new Set(links.map(l => l.to).filter(x => x !== null)).size).toBe(NEW.length);
  });

  it('explain a link by parts that add up to its log-odds', () => {
    const matching = matchRows(OLD, NEW, LEARNED);
    const { base, parts, confidence } = matching.explain(0, 1)!;
    const sum = base + parts.reduce((total, part) => total + part.value, 0);
    expect(1 / (1 + Math.exp(-sum))).toBeCloseTo(confidence, 3);
  });
});

describe("a person's answer", () => {
  it('stands, even for a pair that shares no word', () => {
    expect(linked([{ kind: 'yes', from: 2, to: 3, because: 'the committee knows' }])).toContain('2>3');
  });

  it('no takes a link away', () => {
    expect(linked([{ kind: 'no', from: 4, to: 0, because: '' }])).not.toContain('4>0');
  });

  it('yes to one heir of a row that was split leaves it its other heir', () => {
    const { from, to } = readPair('pairs/kitchens');
    const [canteens, restaurants] = [0, 51];
    const [building, water] = [12, 22];
    const answers: Answer[] = [canteens, restaurants].map(i => ({ kind: 'yes', from: i, to: building, because: '' }));
    const links = matchRows(from, to, LEARNED, answers).links.map(l => `${l.from}>${l.to}`);
    expect(links).toEqual(expect.arrayContaining([`${canteens}>${water}`, `${restaurants}>${water}`]));
  });

  it('withdrawn leaves an old row without heirs, for certain', () => {
    const { links } = matchRows(OLD, NEW, LEARNED, [{ kind: 'withdrawn', from: 0, because: 'obsolete' }]);
    expect(links.filter(l => l.from === 0)).toEqual([
      { from: 0, to: null, confidence: 1, band: 'accept', answered: 'obsolete' },
    ]);
  });
});

describe('the code of a pair', () => {
  it('is a letter and hexadecimal digits, and another one as soon as a text or a place changes', () => {
    const code = pairCode(OLD[0], 0, NEW[1], 1);
    expect(code).toMatch(/^p[0-9a-f]{12}$/);
    expect(pairCode({ ...OLD[0]!, text: 'The gutter.' }, 0, NEW[1], 1)).not.toBe(code);
    expect(pairCode(OLD[0], 1, NEW[1], 1)).not.toBe(code);
    expect(pairCode(OLD[0], 0, undefined, -1)).not.toBe(pairCode(undefined, -1, NEW[0], 0));
  });
});

describe('texts in another script', () => {
  it('are linked by pairs of signs', () => {
    const old = rows('雨水槽支架间距为六百毫米', '溢流管远离基础排水');
    const next = rows('溢流管应远离房屋基础排水', '雨水槽的支架间距六百毫米');
    expect(matchRows(old, next, LEARNED).links.map(l => `${l.from}>${l.to}`)).toEqual(['0>1', '1>0']);
  });
});
