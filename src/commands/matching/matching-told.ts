import { MATCHING_STEPS, type Matching } from '../../matching/match-rows.ts';
import { counted, thousands } from '../../model/counted.ts';
import type { Finding } from '../../model/finding.ts';
import type { Ports } from '../ports/ports.ts';
import type { BareEdition } from './bare-edition.ts';

/** A matching that is done sooner is told with one line only. */
const QUICK_MS = 1000;
/** Behind the steps of the matching itself comes the comparing of the texts that were linked. */
const STEPS = MATCHING_STEPS + 1;

/** Tells of the steps of a matching while it works; from the second second on each of them. */
export function tellsSteps(ports: Ports, from: BareEdition, to: BareEdition): (step: string) => void {
  ports.progress(`Matching ${thousands(from.rows.length)} with ${counted(to.rows.length, 'row')}`);
  const began = performance.now();
  let at = 0;
  return step => {
    at++;
    const seconds = (performance.now() - began) / 1000;
    if (seconds * 1000 < QUICK_MS) return;
    ports.progress(`Step ${at} of ${STEPS}, after ${seconds.toFixed(0)} s: ${step}`);
  };
}

/** What the matcher could not use: one finding for rows of whose words the other edition has none. */
export function silentRows({ unknown }: Matching, from: BareEdition, to: BareEdition): Finding[] {
  const [old, next] = [from.index.header.name, to.index.header.name];
  const sides = [
    { n: unknown.from.length, of: from.rows.length, own: old, other: next, first: firstOf(from, unknown.from) },
    { n: unknown.to.length, of: to.rows.length, own: next, other: old, first: firstOf(to, unknown.to) },
  ].filter(({ n }) => n > 0);
  if (sides.length === 0) return [];
  const [first] = sides;
  const one = sides.length === 1 && first!.n === 1;
  const rows = sides.map(({ n, of, own, other, first: named }, at) => {
    const share = at > 0 ? '' : one ? ' shares no word' : ' share no word';
    return `${thousands(n)} of the ${counted(of, 'row')} of ${own} (${named})${share} with ${other}`;
  });
  return [
    {
      rule: 'words-unknown',
      // A few such rows stand in any two editions; many mean that they speak two languages.
      severity: sides.some(({ n, of }) => n > of / 10) ? 'warning' : 'note',
      subject: first!.own,
      message: `${rows.join(', and ')}, nor ${one ? 'has it' : 'have they'} words that the matcher knows: only place and numbers were used for ${one ? 'it' : 'them'}, and ${one ? 'its' : 'their'} links are to be looked at.`,
    },
  ];
}

const SHOWN = 3;

function firstOf({ rows }: BareEdition, positions: readonly number[]): string {
  const names = positions.slice(0, SHOWN).map(at => rows[at]!.number || rows[at]!.title || rows[at]!.text.slice(0, 40));
  return `${names.join(', ')}${positions.length > SHOWN ? ' …' : ''}`;
}
