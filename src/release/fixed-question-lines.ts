import { isRequirement } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';
import type { FixedAnswer, FixedAnswers } from '../model/fixed-answer.ts';
import { groupBy } from '../model/group-by.ts';
import type { Item, ItemId } from '../model/item.ts';
import { placesOf } from '../model/places.ts';
import type { Settings } from '../model/settings.ts';
import { type FixedQuestion, REVIEW_QUESTIONS } from './fixed-questions.ts';

/** Something that the tool has seen about an item. */
export interface FixedQuestionEvidence {
  readonly item: ItemId;
  /** A drafting rule, or `intake`. */
  readonly rule: string;
  readonly told: string;
}

/** One question about one item. */
export interface FixedQuestionLine {
  readonly item: ItemId;
  readonly number: string;
  readonly title: string;
  /** Number and title of the part that it stands in. */
  readonly part: string;
  readonly question: FixedQuestion;
  readonly evidence: readonly string[];
  /** `again`: answered, and a text has changed since. `no`: answered with no, and the text still stands. */
  readonly state: 'open' | 'again' | 'no' | 'yes';
  readonly answer?: FixedAnswer;
  /** Hash of the texts that an answer rests on. */
  readonly texts: string;
}

export interface FixedQuestionFacts {
  readonly settings: Settings;
  readonly items: readonly Item[];
  readonly evidence: readonly FixedQuestionEvidence[];
  readonly records: readonly FixedAnswers[];
  /** Of a text, 20 hex digits. */
  readonly hash: (text: string) => string;
}

/**
 * The fixed questions of every requirement and work item, those first on which an answer is worth most: a no that still
 * stands, then what happened on sites, then what the drafting rules saw, then what nothing speaks against. Within one
 * rank they follow the edition.
 */
export function fixedQuestionLines({
  settings,
  items,
  evidence,
  records,
  hash,
}: FixedQuestionFacts): readonly FixedQuestionLine[] {
  const places = placesOf(settings, items);
  const byItem = groupBy(evidence, e => e.item);
  const answers = new Map(records.map(r => [r.item, r.answers]));
  const lines = items.flatMap(item => {
    const requirements = places.children(item.id).filter(c => isRequirement(settings, c));
    const kind = isRequirement(settings, item) ? 'requirement' : requirements.length > 0 ? 'work item' : undefined;
    if (kind === undefined) return [];
    const seen = [...(byItem.get(item.id) ?? []), ...requirements.flatMap(r => byItem.get(r.id) ?? [])];
    const texts = textsAsked(item, kind === 'work item' ? requirements : [], hash);
    const part = places.part(item.id);
    return REVIEW_QUESTIONS.filter(q => q.of === kind).map((question): FixedQuestionLine => {
      const about = seen.filter(e => speaksOf(question, e, item.id));
      const answer = answers.get(item.id)?.find(a => a.question === question.code);
      const state = !answer ? 'open' : answer.texts !== texts ? 'again' : answer.answer;
      return {
        item: item.id,
        number: item.number,
        title: item.title,
        part: part ? `${part.number} ${part.title}`.trim() : '',
        question,
        evidence: [...new Set(about.map(e => e.told))],
        state,
        ...(answer ? { answer } : {}),
        texts,
      };
    });
  });
  const rank = (l: FixedQuestionLine) =>
    l.state === 'yes'
      ? -1
      : (l.state === 'no' ? 1000 : 0) + l.evidence.length * (l.question.of === 'work item' ? 3 : 1);
  return lines
    .map((line, at) => ({ line, at }))
    .sort((a, b) => rank(b.line) - rank(a.line) || a.at - b.at)
    .map(l => l.line);
}

/** Hash of the texts that an answer about an item rests on: its own, of a work item those of its requirements as well. */
export function textsAsked(item: Item, requirements: readonly Item[], hash: (text: string) => string): string {
  return hash(JSON.stringify([item, ...requirements].map(i => [i.title, i.text])));
}

/** Reports from sites ask whether a work item is enough; what a rule saw in a requirement asks about that requirement. */
function speaksOf(question: FixedQuestion, { rule, item }: FixedQuestionEvidence, about: ItemId): boolean {
  if (rule === 'intake') return question.code === 'enough';
  return question.rules.includes(rule) && (question.of === 'work item' || item === about);
}

/** How far a review is, by part and by reviewer. */
export interface FixedQuestionProgress {
  readonly answered: number;
  readonly asked: number;
  readonly parts: readonly { readonly part: string; readonly answered: number; readonly asked: number }[];
  readonly reviewers: readonly { readonly by: string; readonly answered: number }[];
}

export function fixedQuestionProgress(lines: readonly FixedQuestionLine[]): FixedQuestionProgress {
  const done = (list: readonly FixedQuestionLine[]) => list.filter(l => l.state === 'yes' || l.state === 'no').length;
  const reviewers = groupBy(
    lines.flatMap(l => (l.answer && l.state !== 'again' ? [l.answer] : [])),
    a => a.by,
  );
  const parts = [...groupBy(lines, l => l.part)].map(([part, list]) => ({
    part,
    answered: done(list),
    asked: list.length,
  }));
  return {
    answered: done(lines),
    asked: lines.length,
    parts: parts.sort((a, b) => a.part.localeCompare(b.part, 'en', { numeric: true })),
    reviewers: [...reviewers]
      .map(([by, list]) => ({ by, answered: list.length }))
      .sort((a, b) => b.answered - a.answered),
  };
}

/**
 * What a publication waits for: a no to which nothing was changed, and questions against which something speaks that
 * nobody has answered. That a question was never asked where nothing speaks against it is told once, and stops nothing.
 */
export function openFixedQuestions(lines: readonly FixedQuestionLine[], edition: string): Finding[] {
  const name = (l: FixedQuestionLine) => [l.number, l.title].filter(Boolean).join(' ');
  const stops = lines.flatMap((l): Finding[] => {
    const data = { question: l.question.code };
    if (l.state === 'no') {
      const why = l.answer?.because ? ` (${l.answer.because})` : '';
      const message = `${name(l)}: "${l.question.asks}" was answered with no${why}, and it still says the same.`;
      return [{ rule: 'review-no', severity: 'error', subject: l.item, message, data }];
    }
    if (l.state === 'yes' || l.evidence.length === 0) return [];
    const again = l.state === 'again' ? ' It was answered, and the text has changed since.' : '';
    const message = `${name(l)}: "${l.question.asks}" is not answered, and something speaks against it: ${l.evidence[0]}${again}`;
    return [{ rule: 'review-open', severity: 'error', subject: l.item, message, data }];
  });
  const rest = lines.filter(l => (l.state === 'open' || l.state === 'again') && l.evidence.length === 0).length;
  if (rest === 0) return stops;
  const message = `${rest} of ${lines.length} review questions have no answer yet; nothing speaks against a yes to them. List them with: fishplate review list ${edition} --open`;
  return [...stops, { rule: 'review-unasked', severity: 'note', subject: edition, message }];
}
