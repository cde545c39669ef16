import { describe, expect, it } from 'vitest';
import { isPair, marksOf } from '../../src/content/links/marks.ts';
import { tellEvidence } from '../../src/model/duty-evidence.ts';
import { smallEditions } from '../audit/small-editions.ts';

const POSTS = 'Posts shall be of robinia or oak heartwood.';
const SHOES = 'Posts shall stand on a steel shoe that keeps the wood 50 mm above the ground.';
const BOTH =
  'Posts shall be of robinia or oak heartwood and shall stand on a galvanised steel shoe 80 mm above the ground.';

/** The duty and the told evidence of each old item of a merge, by its id. */
function toldOf(olds: readonly [string, string, string][], now: string) {
  const { joint, texts } = smallEditions(
    olds,
    [['n', 'Posts', now]],
    olds.map(([id]) => [id, 'n'] as const),
  );
  const pairs = joint.crosswalk.links.filter(isPair);
  return Object.fromEntries(
    pairs.map(link => {
      const { duty, evidence } = marksOf(joint, link, texts);
      return [link.from, { duty, told: evidence.map(tellEvidence), words: evidence.map(e => e.from).join(' ') }];
    }),
  );
}

describe('items that went into one', () => {
  it('are told by words of their own, not by those of their siblings', () => {
    const told = toldOf(
      [
        ['1', 'Wood', POSTS],
        ['2', 'Shoes', SHOES],
      ],
      BOTH,
    );
    expect(told['1']!.words).not.toMatch(/keeps|wood|50/);
    expect(told['2']!.told.join()).toMatch(/50 mm/);
    expect(told['1']!.duty).not.toBe('relaxed');
  });

  it('are told in one line', () => {
    const told = toldOf(
      [
        ['1', 'Caps', 'Nuts shall bear caps.'],
        ['2', 'Splinters', 'Seats shall be smooth.'],
      ],
      'Whatever a child can reach is to do it no harm.',
    );
    const all = Object.values(told).flatMap(t => t.told);
    expect(all.length).toBeGreaterThan(0);
    expect(all.join(' ')).not.toMatch(/\n/);
  });
});
