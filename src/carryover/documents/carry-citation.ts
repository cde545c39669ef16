import type { Joint } from '../../crosswalk/joint.ts';
import type { Citation, Outcome } from '../../model/citation.ts';
import type { Edit } from '../../model/document.ts';
import { isQuestion } from '../questions.ts';
import { type MarksOf, resolveCitation } from '../resolve.ts';
import { listed } from '../sentences.ts';
import type { Doubt } from './column-editions.ts';
import type { CarriedCitation } from './passages.ts';
import { resolveRange } from './ranges.ts';
import type { DecideText } from './text-decisions.ts';

/** Why a text leaves it open whether a number is cited at all. */
export function doubtOf({ certain, why }: Citation): Doubt | undefined {
  if (certain) return undefined;
  return {
    why: `Perhaps it is no citation: ${why}.`,
    toDo: 'Say whether the text means this item, and change the number by hand if it does.',
  };
}

const SHORT: Doubt = { why: 'It is written short.', toDo: 'Write the numbers out by hand.' };

/** What happens to a citation, before anybody looks whether its place can be changed. */
export type Answer = Pick<CarriedCitation, 'outcome' | 'edits' | 'undecided'>;

/**
 * A citation that is in doubt, or whose digits are not its whole number, is never rewritten: a person has to. Where it is
 * in doubt nobody can have decided about it together with others either.
 */
export function carryCitation(
  joint: Joint,
  marks: MarksOf,
  citation: Citation,
  doubt: Doubt | undefined,
  decide: DecideText,
): Answer {
  if (citation.evidence === 'said' && citation.edition === joint.to.header.name) {
    const already = carriedBefore(joint, citation);
    if (already) return { outcome: already, edits: [] };
  }
  const answer = answerOne(joint, marks, citation);
  if (doubt) return withDoubt(answer, doubt);
  if (!isQuestion(answer.outcome)) return citation.short ? withDoubt(answer, SHORT) : answer;
  const undecided = answer.outcome;
  const outcome = decide(citation, undecided);
  const decided = { outcome, edits: outcome.kind === 'carried' ? decidedEdits(citation, outcome) : [], undecided };
  return citation.short ? withDoubt(decided, SHORT) : decided;
}

function withDoubt(answer: Answer, { why, toDo }: Doubt): Answer {
  const { outcome } = answer;
  if (outcome.kind !== 'kept' && outcome.kind !== 'carried') return answer;
  return {
    ...answer,
    outcome: { ...outcome, kind: 'choose', cause: 'reading', why: `${why} ${outcome.why}`, toDo },
    edits: [],
  };
}

/** All numbers that a person chose take the place of the one, or of a range with all that is written in it. */
function decidedEdits(citation: Citation, { heirs }: Outcome): readonly Edit[] {
  const { start, end, through } = citation;
  const text = listed([...new Set(heirs.map(h => h.number))].filter(n => n !== ''));
  return text === '' || text === citedNumber(citation) ? [] : [{ start, end: through?.end ?? end, text }];
}

/** A number that is said to be of the newer edition stays, if that prints it. */
function carriedBefore(joint: Joint, citation: Citation): Outcome | undefined {
  const { number, through } = citation;
  const [first, last] = [number, through?.number ?? number].map(n => joint.new.withNumber(n));
  if (!first?.length || !last?.length) return undefined;
  const heirs = first.map(({ id, number: own, title }) => ({ id, number: own, title }));
  const why = `${citedNumber(citation)} is said to be of ${joint.to.header.name} already.`;
  return { kind: 'kept', cause: 'other-edition', heirs, why };
}

function answerOne(joint: Joint, marks: MarksOf, citation: Citation): { outcome: Outcome; edits: readonly Edit[] } {
  const { number, edition, title, through, start, end } = citation;
  const cited = { number, edition, ...(title === undefined ? {} : { title }) };
  if (!through) {
    const outcome = resolveCitation(joint, marks, cited);
    const to = outcome.heirs[0]?.number;
    return { outcome, edits: outcome.kind === 'carried' && to ? [{ start, end, text: to }] : [] };
  }
  const { outcome, first, last } = resolveRange(joint, marks, cited, through.number);
  if (outcome.kind !== 'carried' || first === undefined || last === undefined) return { outcome, edits: [] };
  // "3.2.1-4" keeps its short form: both ends stand under one parent, so the last segment says it all.
  const short = through.end - through.start < through.number.length;
  const text = short ? (last.split('.').at(-1) ?? last) : last;
  return {
    outcome,
    edits: [
      { start, end, text: first },
      { start: through.start, end: through.end, text },
    ],
  };
}

/** The number as it is cited, a range with both its ends. */
export function citedNumber({ number, through }: Citation): string {
  return through ? `${number} to ${through.number}` : number;
}
