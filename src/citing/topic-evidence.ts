import type { Candidate } from './candidates.ts';
import type { Document } from './evidence.ts';
import { labelBefore } from './left-word.ts';
import type { Topic, TopicOfText } from './topic.ts';
import { listsReleases, speaksOfOther } from './traps.ts';
import { startsLine } from './words-behind.ts';

/** Whether document, passage and sentence talk of the item that bears the number, or of things that bear such numbers too. */
export function topicEvidence(
  topic: Topic,
  document: Document,
  passage: TopicOfText,
  { group, text, passage: cell, before, cue, said }: Candidate,
) {
  const numbers = group.members.map(m => m.number);
  const sentence = document.rows.get(cell) ?? sentenceAround(text, group);
  const near = passage.nearness(numbers);
  const of = topic.of(sentence);
  const agreement = of.agreement(numbers);
  return {
    near,
    nearest: near > 0.6,
    nearSentence: of.nearness(numbers),
    nearText: passage.nearnessOfText(numbers),
    nearSentenceText: of.nearnessOfText(numbers),
    agrees: agreement ?? 0,
    // "6.1.2 cable ties": a list of something else.
    strangeLine: agreement === 0 && cue === undefined && startsLine(before),
    sameLabel: cue === undefined && (document.labels.get(labelBefore(before) ?? '') ?? 0) > 1,
    documentShare: document.share,
    trapNear: speaksOfOther(sentence) || (startsLine(before) && listsReleases(cell.heading)),
    ownHeading: cue?.kind !== 'level' && !said && numbers.some(n => document.own.has(n)),
  };
}

function sentenceAround(text: string, { start, end }: { start: number; end: number }): string {
  const from = text
    .slice(Math.max(0, start - 300), start)
    .replace(/^.*(?:[.!?]["”)]?\s+(?=["“(]?\p{Lu})|[\r\n])/su, '');
  const to = /^.*?(?:[.!?](?=\s)|[\r\n]|$)/su.exec(text.slice(end, end + 300))![0];
  return `${from} ${to}`;
}
