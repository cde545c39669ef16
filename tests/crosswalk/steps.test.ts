import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveCitation } from '../../src/carryover/resolve.ts';
import { composeSteps } from '../../src/crosswalk/compose-steps.ts';
import { type Joint, joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import type { LineageRecord, Marks } from '../../src/model/crosswalk.ts';
import type { EditionIndex } from '../../src/model/edition.ts';
import { edition, lineage } from './arbitraries.ts';

const SAME: Marks = {
  renumbered: false,
  moved: false,
  wording: 'same',
  duty: 'same',
  appliesTo: 'same',
  dutyByType: [],
  evidence: [],
};

const stepOf = (from: EditionIndex, to: EditionIndex, records: readonly LineageRecord[]) => {
  const links = linkByLineage(from.entries, to.entries, records);
  return joinEditions(from, to, { from: from.header.name, to: to.header.name, links });
};
const composed = (steps: readonly Joint[]) => joinEditions(steps[0]!.from, steps.at(-1)!.to, composeSteps(steps));

/** What a job of one type meets: heirs at the end, ends with their reasons, `lost` where a step says nothing. */
function met([joint, ...more]: readonly Joint[], id: string, type: string): string[] {
  if (!joint) return [id];
  const links = joint
    .leaving(id)
    .filter(l => (l.to === null ? (l.types?.includes(type) ?? true) : joint.new.types(l.to).includes(type)));
  if (links.length === 0) return ['lost'];
  return links.flatMap(l => (l.to === null ? [`ends: ${l.reason}`] : met(more, l.to, type)));
}
const ends = (list: readonly string[]) => [...new Set(list.filter(m => m.startsWith('ends: ')))].sort();

const steps = fc
  .tuple(edition('e1'), edition('e2'), edition('e3'), edition('e4'))
  .chain(([a, b, c, d]) =>
    fc
      .tuple(lineage(a, b), lineage(b, c), lineage(c, d))
      .map(([ab, bc, cd]) => [stepOf(a, b, ab), stepOf(b, c, bc), stepOf(c, d, cd)]),
  );

describe('editions passed through', () => {
  it('say for each type what the steps say one after the other: the same ends for the same reasons, every heir', () => {
    let ended = 0;
    fc.assert(
      fc.property(steps, all => {
        const whole = composed(all);
        const wrong: unknown[] = [];
        for (const { id, number } of all[0]!.from.entries) {
          for (const type of whole.old.types(id)) {
            const [taken, said] = [met(all, id, type), met([whole], id, type)];
            const outcome = resolveCitation(whole, () => SAME, { number, type });
            const onlyEnd = said.length === 1 ? ends(said)[0] : undefined;
            if (onlyEnd) ended++;
            if (
              (!taken.includes('lost') && String(ends(said)) !== String(ends(taken))) ||
              taken.some(m => m !== 'lost' && !said.includes(m)) ||
              (ends(taken).length > 0 && outcome.kind === 'unknown') ||
              (onlyEnd && !outcome.why.includes(onlyEnd.slice('ends: '.length)))
            )
              wrong.push({ id, type, taken, said, outcome });
          }
        }
        expect(wrong).toEqual([]);
      }),
      { numRuns: 200 },
    );
    // Or the law was not tried.
    expect(ended).toBeGreaterThan(100);
  });
});

const TYPES = ['house', 'roof', 'street'];
const index = (name: string, items: Readonly<Record<string, readonly string[]>>): EditionIndex => ({
  header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
  settings: {
    title: '',
    language: 'en',
    levels: [{ name: 'Requirement' }],
    fileLevel: 1,
    numbering: { levels: [{ style: 'decimal' }], numbersUnique: true },
    installationTypes: TYPES.map(id => ({ id, name: id })),
    withdrawalReasons: [],
  },
  entries: Object.entries(items).map(([id, appliesTo], at) => ({
    id,
    number: String(at + 1),
    parent: null,
    level: 1,
    title: id,
    hash: id,
    obliges: true,
    appliesTo,
  })),
});
const said = (from: string, heirs: readonly string[], more: Partial<LineageRecord>): LineageRecord => ({
  from,
  heirs: heirs.map(to => ({ to, fromExtent: 'part', toExtent: 'all' })),
  basis: 'declared',
  ...more,
});
const told = (joint: Joint, type: string) => resolveCitation(joint, () => SAME, { number: '1', type });

describe('an item that ends for one type after the other', () => {
  const first = index('E1', { a: TYPES });
  const second = index('E2', { a: ['house', 'roof'] });
  const one = stepOf(first, second, [said('a', ['a'], { withdrawnFor: ['street'], reason: 'too-narrow' })]);

  it('is told to a job of each type with the reason for that type', () => {
    const third = index('E3', { a: ['house'] });
    const two = stepOf(second, third, [said('a', ['a'], { withdrawnFor: ['roof'], reason: 'obsolete' })]);
    const whole = composed([one, two]);
    expect(told(whole, 'street').why).toContain('too-narrow');
    expect(told(whole, 'roof').why).toContain('obsolete');
    expect(told(whole, 'house').kind).toBe('kept');
  });

  it('is told so where the rest ends at last', () => {
    const two = stepOf(second, index('E3', {}), [said('a', [], { reason: 'obsolete' })]);
    const whole = composed([one, two]);
    expect(TYPES.map(type => told(whole, type).why.split(': ')[1])).toEqual(['obsolete.', 'obsolete.', 'too-narrow.']);
  });

  it('was divided by type, and lost one half: the other half goes on without a doubt', () => {
    const halves = index('E2', { x: ['house'], y: ['roof', 'street'] });
    const split = stepOf(first, halves, [said('a', ['x', 'y'], {})]);
    const half = stepOf(halves, index('E3', { x: ['house'] }), [said('y', [], { reason: 'obsolete' })]);
    const whole = composed([split, half]);
    expect(TYPES.map(type => told(whole, type).kind)).toEqual(['kept', 'withdrawn', 'withdrawn']);
    expect(whole.leaving('a').find(l => l.to === null)?.types).toEqual(['roof', 'street']);
  });
});
