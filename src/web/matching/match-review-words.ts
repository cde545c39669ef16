import type { MatchAnswerRow } from '../../commands/matching/match-answers.ts';
import type { Progress } from '../../commands/matching/review-calls.ts';
import type { ReviewSide } from '../../commands/matching/review-question.ts';
import { capital, counted } from '../../model/said-words.ts';

/** What the groups of evidence are called where people read them. */
export const REASON_WORDS: Readonly<Record<string, string>> = {
  words: 'the words',
  title: 'the titles',
  containment: 'one stands inside the other',
  meaning: 'what the words are about',
  quantities: 'the quantities',
  headings: 'the headings above',
  below: 'what stands below',
  rivals: 'the other candidates',
  level: 'the level',
  length: 'the length',
  number: 'the number',
  parents: 'what stands above',
  siblings: 'what stands beside',
  part: 'the part that it stands in',
  folding: 'rows folded into one',
  neighbours: 'the neighbours',
  gain: 'what it adds to a merge or a split',
  'renamed words': 'words renamed throughout',
  'related words': 'related words',
  'one-to-one': 'the best choice one to one',
};

/** How far the review has come, and how many links are likely wrong among those left. */
export function progressSentence({ answered, left, likelyWrong }: Progress): string {
  const done = answered === 0 ? 'Nothing answered yet' : `${counted(answered, 'link')} answered`;
  const share = likelyWrong === 0 ? 'hardly any' : `about ${likelyWrong}`;
  const wrong =
    left > 0 ? `; by the matcher's own estimate ${share} of them ${likelyWrong < 2 ? 'is' : 'are'} wrong` : '';
  return `${done}, ${left} left to look at${wrong}.`;
}

/** The other links of a row, so that a yes is given with its heirs and sources in view. */
export function linkedSentence(side: ReviewSide | undefined, opposite: ReviewSide | undefined, begin: string): string {
  const rest = (side?.linked ?? []).filter(l => l.row !== opposite?.row);
  if (rest.length === 0) return '';
  const named = rest.slice(0, 5).map(l => `${l.word} (${percent(l.sure)})`);
  return `${begin} ${named.join('; ')}${rest.length > 5 ? ` and ${rest.length - 5} more` : ''}.`;
}

/** An answer as it is told behind it, with who gave it and when. */
export function answerSentence(rows: readonly MatchAnswerRow[]): string {
  const first = rows[0]!;
  const name = (number: string, title: string) => number || (title ? `“${title}”` : 'a row without a number');
  const old = first.from_row === '' ? '' : name(first.from_number, first.from_title);
  const heirs = rows.filter(r => r.answer === 'yes' && r.to_row !== '').map(r => name(r.to_number, r.to_title));
  const what =
    first.instead_row !== ''
      ? `${old} became ${name(first.instead, '')}, not ${name(first.to_number, first.to_title)}`
      : first.answer === 'no'
        ? `${old} did not become ${name(first.to_number, first.to_title)}`
        : first.answer === 'withdrawn'
          ? `${old} ended`
          : first.answer === 'new'
            ? `${name(first.to_number, first.to_title)} is new`
            : `${old} became ${heirs.join(' and ')}`;
  return capital(
    `${what}${first.because ? `, because ${first.because}` : ''} (${first.by.replace(/\s*<.*/, '')}, ${first.date}).`,
  );
}

export const percent = (p: number) => `${p > 0 && p < 0.01 ? 'under 1' : Math.round(p * 100)} %`;
export const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;
