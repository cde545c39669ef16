import { appliesSometimes } from './applies-sometimes.ts';
import { bareReference } from './bare-reference.ts';
import { choosesWork } from './chooses-work.ts';
import { deprecatedTerm } from './deprecated-term.ts';
import { hardToRead } from './hard-to-read.ts';
import { longSentence } from './long-sentence.ts';
import { mixedModals } from './mixed-modals.ts';
import { moreThanOneThing } from './more-than-one-thing.ts';
import { notVerifiable } from './not-verifiable.ts';
import { passiveWithoutActor } from './passive-without-actor.ts';
import { purposeTwice } from './purpose-twice.ts';
import type { ReadText } from './read-text.ts';
import type { DraftContext, Remark, Rule } from './rule.ts';
import { undefinedTerm } from './undefined-term.ts';
import { vagueWord } from './vague-word.ts';
import { workerSafety } from './worker-safety.ts';

/** The questions that are asked of one text at a time. near-duplicates.ts asks of all texts together. */
export const DRAFTING_RULES: readonly Rule[] = [
  moreThanOneThing,
  passiveWithoutActor,
  vagueWord,
  undefinedTerm,
  deprecatedTerm,
  mixedModals,
  notVerifiable,
  choosesWork,
  workerSafety,
  bareReference,
  purposeTwice,
  appliesSometimes,
  longSentence,
  hardToRead,
];

/** Everything that the rules say of a text, in the order of its places. Of overlapping places of one rule the longest stays. */
export function remarksOn(text: ReadText, context: DraftContext = {}): Remark[] {
  return DRAFTING_RULES.flatMap(rule =>
    withoutOverlaps(rule.find(text, context)).map(spot => ({
      rule: rule.name,
      ...spot,
      words: text.text.slice(spot.start, spot.end),
    })),
  ).sort((a, b) => a.start - b.start || a.end - b.end || (a.rule < b.rule ? -1 : 1));
}

function withoutOverlaps<T extends { start: number; end: number }>(spots: readonly T[]): T[] {
  const kept: T[] = [];
  let reached = -1;
  for (const spot of [...spots].sort((a, b) => a.start - b.start || b.end - a.end)) {
    if (spot.start < reached) continue;
    kept.push(spot);
    reached = spot.end;
  }
  return kept;
}
