import type { Answer } from './answers.ts';
import type { BareRow } from './bare-row.ts';
import { type Believed, believe, calibrated, type Learned, type Prepared, prepare, ROUNDS } from './believe.ts';
import { FEATURES, type Reason } from './features.ts';
import { type Silent, silentOf } from './silent.ts';
import { partsOf } from './trees.ts';
import { wordsAgree } from './words-agree.ts';

/** `accept`: right in 98 of 100 on most catalogs that it was tried on (README.md beside this file says where not). `look`: a person decides. */
export type Band = 'accept' | 'look';

export interface MatchedLink {
  /** Positions; null on one side for withdrawn and new. */
  readonly from: number | null;
  readonly to: number | null;
  /** Probability that the link is right. */
  readonly confidence: number;
  readonly band: Band;
  /** The person's words where the link was answered. */
  readonly answered?: string;
}

/** A part of the log-odds of a link. Parts and base add up to it. */
export interface Part {
  readonly reason: Reason;
  readonly value: number;
}

export interface Candidate {
  readonly from: number;
  readonly to: number;
  /** At most MOST_SILENT where no word speaks for the pair, whatever the sum says. */
  readonly confidence: number;
  readonly silent: boolean;
  readonly base: number;
  /** Largest first. */
  readonly parts: readonly Part[];
}

export interface Matching {
  /** In the order of the old rows, new ones last. Every row of both sides stands in at least one. */
  readonly links: readonly MatchedLink[];
  /** Rows that share no word with the other side and have none that is known: only place and numbers were used. */
  readonly unknown: Silent['unknown'];
  explain(from: number, to: number): Candidate | undefined;
  /** Candidates of an old row, likeliest first. */
  runnersUp(from: number, most: number): readonly Candidate[];
}

/** A pair is a link from here on. On catalogs not fitted on, F1 hardly changes between 0.25 and 0.55. */
const LINK = 0.42;
/**
 * What a person's yes counts for at least while beliefs spread; afterwards the pair is certain. Spread as certain, it
 * would take the other heirs away from a row that was split: rivals of a sure link are held for wrong.
 */
const YES_SPREADS = 0.65;
/** Links from here on are accepted, and withdrawn or new rows whose best pair is at most the rest likely. */
const ACCEPT = 0.98;
/** More is never shown where no word speaks for a pair: between two languages place alone made wrong links 99 % likely. */
export const MOST_SILENT = 0.9;
/** What `matchRows` tells of before it is done. */
export const MATCHING_STEPS = 3 + ROUNDS.length;

/**
 * The crosswalk of two editions that share no ids. The same rows give the same links, always.
 *
 * Links are chosen by what each is worth, not by grouping: a chain of weak links would otherwise draw half a catalog
 * into one merge.
 *
 * @param tell called before each of its steps with what it does
 */
export function matchRows(
  from: readonly BareRow[],
  to: readonly BareRow[],
  learned: Learned,
  answers: readonly Answer[] = [],
  tell: (step: string) => void = () => {},
): Matching {
  const prepared = prepare(from, to, answeredPairs(answers), tell);
  const told = new Map<string, Answer>(answers.map(a => [answerKey(a), a]));
  const settled = settledBeliefs(prepared, answers);
  let rounds = 0;
  const { beliefs, evidence } = believe(prepared, learned, round => {
    if (rounds++ < ROUNDS.length) tell(`weighing what speaks for each, round ${rounds} of ${ROUNDS.length}`);
    for (const [p, belief] of settled) round[p] = belief === 1 ? Math.max(round[p]!, YES_SPREADS) : belief;
    return round;
  });
  for (const [p, belief] of settled) beliefs[p] = belief;
  const believed = { beliefs: beliefs.map(belief => calibrated(belief, learned.calibration)), evidence };
  const silent = silentOf(prepared);
  const explain = (i: number, j: number) => {
    const p = prepared.pairs.find(i, j);
    return p < 0 ? undefined : candidate(prepared, believed, learned, silent, p);
  };
  return {
    links: chosenLinks(prepared, believed, learned, told, silent),
    unknown: silent.unknown,
    explain,
    runnersUp: (i, most) => {
      const { starts } = prepared.pairs;
      const list = Array.from({ length: starts[i + 1]! - starts[i]! }, (_, at) => starts[i]! + at);
      list.sort((a, b) => believed.beliefs[b]! - believed.beliefs[a]! || a - b);
      return list.slice(0, most).map(p => candidate(prepared, believed, learned, silent, p));
    },
  };
}

const answerKey = (a: Answer) =>
  a.kind === 'withdrawn' ? `${a.from}>` : a.kind === 'new' ? `>${a.to}` : `${a.from}>${a.to}`;

function answeredPairs(answers: readonly Answer[]): [number, number][] {
  return answers.flatMap((a): [number, number][] => (a.kind === 'yes' ? [[a.from, a.to]] : []));
}

function settledBeliefs({ pairs }: Prepared, answers: readonly Answer[]): Map<number, number> {
  const settled = new Map<number, number>();
  for (const a of answers) {
    if (a.kind === 'withdrawn')
      for (let p = pairs.starts[a.from]!; p < pairs.starts[a.from + 1]!; p++) settled.set(p, 0);
    else if (a.kind === 'new') for (const p of pairs.ofNew[a.to]!) settled.set(p, 0);
  }
  for (const a of answers) {
    if (a.kind !== 'yes' && a.kind !== 'no') continue;
    const p = pairs.find(a.from, a.to);
    if (p >= 0) settled.set(p, a.kind === 'yes' ? 1 : 0);
  }
  return settled;
}

function chosenLinks(
  prepared: Prepared,
  believed: Believed,
  learned: Learned,
  told: ReadonlyMap<string, Answer>,
  silent: Silent,
): MatchedLink[] {
  const { sides, pairs } = prepared;
  const { beliefs } = believed;
  const links: MatchedLink[] = [];
  const reached = new Uint8Array(sides.to.rows.length);
  const none = new Float64Array(sides.to.rows.length).fill(1);
  const link = (from: number | null, to: number | null, belief: number, mute: boolean, agreed = true): MatchedLink => {
    const answer = told.get(`${from ?? ''}>${to ?? ''}`);
    if (answer) return { from, to, confidence: 1, band: 'accept', answered: answer.because };
    const confidence = mute ? Math.min(belief, MOST_SILENT) : belief;
    return { from, to, confidence, band: agreed && confidence >= ACCEPT ? 'accept' : 'look' };
  };
  for (let i = 0; i < sides.from.rows.length; i++) {
    let alone = 1;
    const before = links.length;
    for (let p = pairs.starts[i]!; p < pairs.starts[i + 1]!; p++) {
      alone *= 1 - beliefs[p]!;
      none[pairs.to[p]!]! *= 1 - beliefs[p]!;
      if (beliefs[p]! < LINK) continue;
      reached[pairs.to[p]!] = 1;
      const agreed = beliefs[p]! >= ACCEPT && wordsAgree(prepared, believed.evidence, learned, p);
      links.push(link(i, pairs.to[p]!, beliefs[p]!, silent.pair(p), agreed));
    }
    if (links.length === before) links.push(link(i, null, alone, silent.from.has(i)));
  }
  for (let j = 0; j < sides.to.rows.length; j++) if (!reached[j]) links.push(link(null, j, none[j]!, silent.to.has(j)));
  return links;
}

function candidate(
  { pairs }: Prepared,
  { beliefs, evidence }: Believed,
  learned: Learned,
  silent: Silent,
  p: number,
): Candidate {
  const { slope, shift } = learned.calibration;
  const { base, parts } = partsOf(learned.last, evidence, p);
  const sums = new Map<Reason, number>();
  for (const [name, , reason] of FEATURES) {
    const value = parts.get(name);
    if (value !== undefined) sums.set(reason, (sums.get(reason) ?? 0) + slope * value);
  }
  return {
    from: pairs.from[p]!,
    to: pairs.to[p]!,
    // A person's yes is certain, whatever the words say.
    confidence: silent.pair(p) && beliefs[p]! < 1 ? Math.min(beliefs[p]!, MOST_SILENT) : beliefs[p]!,
    silent: silent.pair(p),
    base: slope * base + shift,
    parts: [...sums]
      .map(([reason, value]) => ({ reason, value }))
      .sort((a, b) => Math.abs(b.value) - Math.abs(a.value) || (a.reason < b.reason ? -1 : 1)),
  };
}
