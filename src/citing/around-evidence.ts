import type { Books, Candidate } from './candidates.ts';
import { standsBefore } from './left-word.ts';
import { topicOf } from './topic.ts';
import { isDatedBehind, isFigure, labelOf, measures } from './traps.ts';
import { endsThere, saysSomething, startsLine } from './words-behind.ts';

/** What stands right before and behind the number, where nothing calls it anything: "shelf 3.2.1", "3.2.1 Upper Quay". */
export function aroundEvidence({ own }: Books, { group, text, before, after, cue, title }: Candidate) {
  const first = group.members[0]!;
  const numbers = group.members.map(m => m.number);
  const bare = cue === undefined;
  const left = bare ? standsBefore(own, first.number, before) : undefined;
  const lineStart = startsLine(before);
  const behind = title ? undefined : /^[ \t]+([\p{L}][\p{L}'’-]*)(?![\p{L}:'’-])/u.exec(after)?.[1];
  const goesOnPlainly = endsThere(after) || saysSomething(after);
  const bracketed = /[([]\s*$/.test(before) && /^\s*[)\]]/.test(after);
  return {
    lineStart,
    safeWord: left === 'safe' && !lineStart,
    labelled: left === 'label',
    otherWord: left === 'other' && !/\d[ \t]*$/.test(before),
    digitBefore: bare && /\d[ \t]+$/.test(before),
    bracketed,
    plainBracketed: bracketed && /^\p{N}+$/u.test(first.number),
    endsThere: endsThere(after),
    saysSomething: saysSomething(after),
    otherWordBehind: behind !== undefined && /^\p{Ll}/u.test(behind) && !goesOnPlainly,
    nameBehind: behind !== undefined && /^\p{Lu}./u.test(behind) && !topicOf(own).names(behind, numbers),
    goesOn: /^[-/#_][\p{L}\p{N}]/u.test(after),
    unitBehind: measures(after),
    trap: cue?.kind !== 'level' && labelOf({ before, after: text.slice(first.end, first.end + 160) }) !== undefined,
    figure: cue?.kind !== 'level' && isFigure(before),
    datedBehind: isDatedBehind(after),
    changed: CHANGED.test(before),
  };
}

/** The number is said to be an old one or a new one, so it is one of a thing that has editions. */
const CHANGED =
  /(?<![\p{L}])(?:old|older|former|formerly|previous|previously|ex|now|new|newer|present|current|today['’]s|renumbered|became|becomes|become|instead of|replaced by|replaces|→|->|=>)\s+(?:the\s+)?(?:\p{L}+\s+)?$/iu;
