import { sameTitle } from '../../citing/titles.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Citation, Outcome } from '../../model/citation.ts';
import type { AnswerWords, Decisions } from '../decisions.ts';
import { askedOn, type CaseKey, isQuestion, largestFirst, type Question } from '../questions.ts';
import { citedNumber } from './carry-citation.ts';
import type { CarriedCitation } from './passages.ts';

/** What stands under `state` for places in texts. No line of a job has this state, so answers for the two never mix. */
export const IN_TEXTS = 'text';

/** What answers mean for places in texts. */
export const OF_TEXTS: AnswerWords = {
  stay: edition => `Leave the number, and say beside it that it is of edition ${edition} where the text does not.`,
  drop: 'Take this citation out, with what the text says of it.',
  idle: number => `No text cites ${number} as it was decided for.`,
};

/** The outcome of a citation as a person decided it; as it was, where nobody did. */
export type DecideText = (citation: Citation, outcome: Outcome) => Outcome;

/**
 * Applies decisions to the citations of a document. An answer for all texts has `text` under its state; one that has the
 * document's name there, as the review list writes it, is for this document alone and goes before the other.
 */
export function textDecider(joint: Joint, decisions: Decisions, document: string): DecideText {
  return (citation, outcome) => {
    if (!isQuestion(outcome)) return outcome;
    const [own, all] = [document, IN_TEXTS].map(state => caseOf(joint, citation, state));
    return decisions.apply(joint, decisions.known(own!) ? own! : all!, outcome);
  };
}

/** Where a case stands in texts; more places are counted and not named. */
const SHOWN = 3;

/**
 * What people have to be asked about documents, each once; those with the most places first. Places where it is unsure
 * whether the number is cited at all are not among them: there the question is another one at each.
 */
export function textQuestions(
  joint: Joint,
  documents: readonly { readonly name: string; readonly citations: readonly CarriedCitation[] }[],
): readonly Question[] {
  const asked = new Map<string, { question: Question; places: string[] }>();
  for (const { name, citations } of documents) {
    for (const { citation, undecided, place } of citations) {
      if (!undecided) continue;
      const [found, mark] = [caseOf(joint, citation, IN_TEXTS), askedOn(joint, undecided)];
      const key = JSON.stringify([found.number, found.edition, found.title ?? null, mark]);
      const known = asked.get(key) ?? {
        question: { ...found, outcome: undecided, askedOn: mark, lines: 0 },
        places: [],
      };
      asked.set(key, { ...known, question: { ...known.question, lines: known.question.lines + 1 } });
      if (known.places.length < SHOWN) known.places.push(`${name} ${place}`);
    }
  }
  return largestFirst(
    [...asked.values()].map(({ question, places }) => {
      const more = question.lines > places.length ? ` and ${question.lines - places.length} more` : '';
      const why = `${question.outcome.why} Cited in: ${places.join('; ')}${more}.`;
      return { ...question, outcome: { ...question.outcome, why } };
    }),
  );
}

/** "3.2.1" and "3.2.1 Overflow capacity" are one case where the number bears this title anyway. */
function caseOf(joint: Joint, citation: Citation, state: string): CaseKey {
  const { edition, title } = citation;
  const bearers = joint.old.withNumber(citation.number);
  const isOwn = title !== undefined && bearers.length === 1 && sameTitle(bearers[0]!.title, title);
  return { number: citedNumber(citation), type: undefined, state, edition, title: isOwn ? undefined : title };
}
