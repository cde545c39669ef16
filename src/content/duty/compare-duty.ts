import type { Duty, Wording } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import { withCompounds } from '../reading/compounds.ts';
import { lately } from '../reading/lately.ts';
import { type Reading, readText } from '../reading/reading.ts';
import { wordingOfTexts } from '../wording/edited.ts';
import { type Atom, alignAtoms, atomsOf, type Hunk } from './atoms.ts';
import { dutyOfEvidence } from './evidence.ts';
import { exchangedValues, exchangedWords } from './exchanged.ts';
import { forceEvidence } from './force-evidence.ts';
import { leftOut } from './left-out.ts';
import { reachLeft } from './reach.ts';
import { rewrittenEvidence } from './rewritten.ts';
import { segmentEvidence, segmentsOnlyIn, turnedSegments } from './segment-evidence.ts';
import { timesReplaced } from './times-replaced.ts';
import { withoutSentences } from './whole-sentences.ts';
import { measureEvidence, withoutMoved, withoutRepeated, wordEvidence } from './word-evidence.ts';

/** What is asked more or less, and the phrases of both texts that say so. */
export interface DutyVerdict {
  readonly duty: Duty;
  readonly evidence: readonly Evidence[];
}

/** What a text asks more or less than another, by grammar and quantities; whatever they are about. */
export function compareDuty(from: string, to: string): DutyVerdict {
  const { duty, evidence } = compareWordingAndDuty(from, to);
  return { duty, evidence };
}

/** The same with the kind of the change, of which the duty depends. */
export function compareWordingAndDuty(from: string, to: string): DutyVerdict & { readonly wording: Wording } {
  return comparedLately(JSON.stringify([from, to]));
}

/** Signs of a text from which on nobody calls it a requirement; comparing takes as long as the square of its sentences. */
const TOO_LONG = 100_000;

/** Whether two texts are left to a person for their length alone. */
export function areTooLong(from: string, to: string): boolean {
  return from !== to && Math.max(from.length, to.length) > TOO_LONG;
}

const comparedLately = lately(4_000, (pair: string): DutyVerdict & { readonly wording: Wording } => {
  const [from, to] = JSON.parse(pair) as [string, string];
  if (areTooLong(from, to)) {
    const evidence: Evidence = { direction: 'unclear', what: 'too long to be compared', from: '', to: '' };
    return { wording: 'substantive', duty: 'unclear', evidence: [evidence] };
  }
  const wording = wordingOfTexts(from, to);
  if (wording !== 'substantive') return { wording, duty: 'same', evidence: [] };
  return { wording, ...dutyBetween(...withCompounds(readText(from), readText(to))) };
});

function dutyBetween(whole: Reading, heir: Reading): DutyVerdict {
  const { from, to, evidence: sentences } = withoutSentences(whole, heir, atomsOf(whole), atomsOf(heir));
  const evidence = [...sentences, ...evidenceBetween(from, to)];
  return { duty: dutyOfEvidence(evidence) ?? 'same', evidence };
}

function evidenceBetween(from: Reading, to: Reading): Evidence[] {
  const [a, b] = [atomsOf(from), atomsOf(to)];
  const { pairs, hunks } = alignAtoms(a, b);
  const told = { from: segmentsOnlyIn(from, to), to: segmentsOnlyIn(to, from) };
  const changed = withoutRepeated(withoutMoved(hunks, told), a, b);
  const rewritten = isRewritten(a.filter(isSaid), b.filter(isSaid)) || isPatchwork(changed);
  const words = rewritten ? [] : wordEvidence(from, to, changed);
  const evidence =
    rewritten || isSaidElsewhere(words)
      ? rewrittenEvidence(from, to, a, b)
      : [
          ...forceEvidence(from, to, false),
          ...segmentEvidence(from, to),
          ...measureEvidence(from, to, pairs),
          ...words,
        ];
  if (!evidence.some(e => e.direction !== 'same')) {
    const values = exchangedValues(from, to);
    // Two things that exchanged their values exchanged names as well.
    evidence.push(...turnedSegments(from, to), ...(values.length > 0 ? values : exchangedWords(from, to, hunks)));
  }
  // A value written otherwise is evidence too, and no reason to look no further.
  const isTold = evidence.some(e => e.direction !== 'same' || e.what.startsWith('example'));
  if (!isTold) evidence.push(...leftOut(from, to));
  if (evidence.every(e => e.direction === 'same')) evidence.push(...reachLeft(from, to));
  return withoutIdleLimits(timesReplaced(from, to, evidence));
}

/** A permission that came with a limit still permits what was banned; the limit tightens nothing that was there. */
function withoutIdleLimits(evidence: readonly Evidence[]): Evidence[] {
  const says = (what: string) => evidence.some(e => e.what === what);
  const idle = says('ban became a permission')
    ? 'limit of a permission added'
    : says('permission became a ban')
      ? 'limit of a permission dropped'
      : undefined;
  return evidence.filter(e => e.what !== idle);
}

/** A word less here and a word more there: what seems to loosen one thing and tighten another may be one thing in other words. */
function isSaidElsewhere(words: readonly Evidence[]): boolean {
  const [gone, come] = [words.filter(e => e.to === ''), words.filter(e => e.from === '')];
  return gone.some(g => come.some(c => g.direction !== c.direction));
}

/** Joints and small words change places in any edit. */
const isSaid = (atom: Atom) => atom.kind === 'word' || atom.kind === 'quantity';

/** Words exchanged in three places and more, in a text that has not many more places: no single edit, another wording. */
function isPatchwork(hunks: readonly Hunk[]): boolean {
  const worded = hunks.filter(h => [...h.out, ...h.in].some(x => x.kind === 'word'));
  const [out, come] = [worded.flatMap(h => h.out), worded.flatMap(h => h.in)];
  return worded.length >= 3 && out.some(x => x.kind === 'word') && come.some(x => x.kind === 'word');
}

/**
 * Whether a text was written anew rather than edited: much of it stands in another order, or little of it stands at all.
 * Then a word that is gone may be said in other words, and differences of single words prove little.
 */
function isRewritten(a: readonly Atom[], b: readonly Atom[]): boolean {
  const inOrder = alignAtoms(a, b).pairs.length;
  const left = new Map<string, number>();
  for (const { key } of b) left.set(key, (left.get(key) ?? 0) + 1);
  let common = 0;
  for (const { key } of a) {
    const n = left.get(key) ?? 0;
    if (n === 0) continue;
    common++;
    left.set(key, n - 1);
  }
  const shorter = Math.min(a.length, b.length);
  return (inOrder <= 0.75 * common && common > 2) || inOrder < 0.5 * shorter;
}
