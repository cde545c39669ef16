import type { FieldText } from '../../commands/drafts/compare-items.ts';
import type { DeskReview, MatchDesk } from '../../commands/matching/match-desk.ts';
import type { AskedQuestion, Progress } from '../../commands/matching/review-calls.ts';
import type { ReviewSide } from '../../commands/matching/review-question.ts';
import { counted } from '../../model/said-words.ts';
import type { ReviewOnDesk } from '../desk/desk-page.ts';
import type { FormField } from '../signed-in.ts';
import { matchLink, questionLink } from './match-links.ts';
import {
  answerSentence,
  linkedSentence,
  percent,
  progressSentence,
  REASON_WORDS,
  signed,
} from './match-review-words.ts';

/** The page that asks about one link, or says that nothing is left to ask. */
export interface MatchReviewPage {
  readonly from: string;
  readonly to: string;
  readonly csrf: FormField;
  /** How much is done and left, in words. */
  readonly progress: string;
  readonly done: number;
  readonly of: number;
  readonly left: number;
  readonly onHref: string;
  /** Offer to match anew: how many answers it does not know yet, and how long it will take. */
  readonly rematch?: { readonly sentence: string; readonly pressing: boolean; readonly action: string };
  /** What this person answered last, for taking it back. */
  readonly last?: { readonly said: string; readonly asked: string; readonly action: string };
  readonly question?: ShownLink;
  /** The file that all answers go to. */
  readonly file: string;
  readonly csvHref: string;
  /** Where links become lineage; absent where the tables are no editions of a catalog. */
  readonly recordHref?: string;
  /** The command that uses the answers. */
  readonly command: string;
  /** What was recorded just now; empty where nothing was. */
  readonly recorded: string;
}

export interface ShownLink {
  readonly action: string;
  readonly heading: string;
  readonly kind: AskedQuestion['kind'];
  readonly old?: ReviewSide;
  readonly new?: ReviewSide;
  readonly fields: readonly FieldText[];
  /** How sure the matcher is, and what hangs on the answer. */
  readonly plate: readonly string[];
  /** Other links of either row: an answer may make it a merge or a split. */
  readonly linked: readonly string[];
  readonly reasons: readonly Reason[];
  readonly sum: string;
  readonly buttons: readonly Button[];
  readonly other: {
    readonly legend: string;
    readonly label: string;
    readonly choices: readonly Choice[];
    readonly also: boolean;
  };
  readonly answered: string;
  readonly previous?: string;
  readonly next?: string;
  readonly trouble: string;
  readonly because: string;
  readonly number: string;
  readonly seen: string;
}

interface Reason {
  readonly direction: 'for' | 'against';
  readonly what: string;
  readonly value: string;
}

interface Button {
  readonly value: string;
  readonly word: string;
  readonly key: string;
}

interface Choice {
  readonly row: number;
  readonly number: string;
  readonly title: string;
  readonly text: string;
  readonly sure: string;
  readonly chosen: boolean;
}

/** What was sent and could not be used, shown again. */
export interface Tried {
  readonly trouble: string;
  readonly because: string;
  readonly number: string;
  readonly row?: number;
}

/** After this many answers the page asks outright to match anew. */
const PRESSING = 10;
const SMALLEST_PART = 0.1;

export interface AskedPage {
  /** The question; absent for the page behind the last one. */
  readonly code: string | undefined;
  readonly tried: Tried | undefined;
  readonly recorded: string;
  /** Who looks at it, as it is written under answers. */
  readonly by: string;
  readonly csrf: FormField;
}

export async function matchReviewPage(
  at: DeskReview,
  { code, tried, recorded, by, csrf }: AskedPage,
): Promise<{ readonly page: MatchReviewPage; readonly title: string } | undefined> {
  const { review, key } = at;
  const question = code === undefined ? undefined : await review.question(code);
  if (code !== undefined && !question) return undefined;
  const [progress, last] = [await review.progress(), await review.last(by)];
  const { from, to } = review.names;
  const rematch = rematchOf(progress);
  const shown = question && showLink(at, question, tried);
  const page: MatchReviewPage = {
    from,
    to,
    csrf,
    progress: progressSentence(progress),
    done: progress.answered,
    of: progress.answered + progress.left,
    left: progress.left,
    onHref: matchLink(key),
    ...(rematch ? { rematch: { ...rematch, action: matchLink(key, 'rematch') } } : {}),
    ...(last[0] ? { last: { said: answerSentence(last), asked: last[0].asked, action: matchLink(key, 'undo') } } : {}),
    ...(shown ? { question: shown } : {}),
    // Nobody at a browser needs the path of the server.
    file: review.file.replace(/^.*[/\\]/, ''),
    csvHref: matchLink(key, 'crosswalk.csv'),
    ...(at.told.catalog === undefined ? {} : { recordHref: matchLink(key, 'record') }),
    command: at.command,
    recorded,
  };
  return {
    page,
    title: shown?.heading ?? (progress.left > 0 ? 'What is left to look at' : 'Nothing is left to look at'),
  };
}

/** How far each review is, for the desk. */
export async function reviewsOnDesk(desk: MatchDesk | undefined): Promise<ReviewOnDesk[]> {
  return Promise.all(
    (desk?.reviews ?? []).map(async (at): Promise<ReviewOnDesk> => {
      const { key, review } = at;
      const state = at.state();
      const about = { ...review.names, href: matchLink(key) };
      if (state === 'matching') return { ...about, said: 'The two are being matched; it can be opened in a moment.' };
      if (state !== 'open') return { ...about, said: state.failed };
      return { ...about, said: progressSentence(await review.progress()), csvHref: matchLink(key, 'crosswalk.csv') };
    }),
  );
}

function rematchOf({ sinceMatching, matchingSeconds, left }: Progress) {
  if (sinceMatching === 0) return undefined;
  const takes = matchingSeconds < 1.5 ? 'about a second' : `about ${Math.round(matchingSeconds)} seconds`;
  return {
    sentence: `${counted(sinceMatching, 'answer')} can improve the ${left > 0 ? 'links that are left' : 'other links'}. It takes ${takes}.`,
    pressing: sinceMatching >= PRESSING || left === 0,
  };
}

function showLink({ review: { names }, key }: DeskReview, q: AskedQuestion, tried: Tried | undefined): ShownLink {
  const { old, new: next, kind, sum, others } = q;
  const name = (side: ReviewSide | undefined) =>
    side ? side.number || `“${side.title || side.text.slice(0, 40)}”` : '';
  const heading = {
    pair: `Did ${name(old)} become ${name(next)}${old?.number === next?.number ? ` of ${names.to}` : ''}?`,
    ended: `Did ${name(old)} end?`,
    new: `Is ${name(next)} new?`,
  }[kind];
  const choices = others.map(o => ({
    row: o.row,
    number: o.number,
    title: o.title,
    text: o.text.length > 300 ? `${o.text.slice(0, 300)} …` : o.text,
    sure: percent(o.sure),
    chosen: tried?.row === o.row,
  }));
  return {
    action: questionLink(key, q.code),
    heading,
    kind,
    ...(old ? { old } : {}),
    ...(next ? { new: next } : {}),
    fields: q.fields,
    plate: [
      `${percent(q.confidence)} sure`,
      ...(q.hanging > 0
        ? [`${counted(q.hanging, 'other link')} in doubt ${q.hanging === 1 ? 'hangs' : 'hang'} on it`]
        : []),
    ],
    linked: [
      linkedSentence(old, next, `${name(old)} of ${names.from} is also linked to`),
      linkedSentence(next, old, `${name(next)} of ${names.to} is also linked from`),
    ].filter(Boolean),
    reasons: (sum?.parts ?? [])
      .filter(part => Math.abs(part.value) >= SMALLEST_PART)
      .map(part => ({
        direction: part.value > 0 ? 'for' : 'against',
        what: REASON_WORDS[part.reason] ?? part.reason,
        value: signed(part.value),
      })),
    sum: sum
      ? `${[`start ${signed(sum.base)}`, ...sum.parts.map(p => `${p.reason} ${signed(p.value)}`)].join(', ')} = ${signed(sum.base + sum.parts.reduce((total, p) => total + p.value, 0))} in log-odds, ${sum.silent ? 'but no word speaks for the pair, so what is shown is at most 90 %' : `that is ${percent(sum.confidence)}`}.`
      : '',
    buttons: BUTTONS[kind],
    other: {
      legend: kind === 'pair' ? 'Another one instead' : kind === 'ended' ? 'No, it became' : 'No, it comes from',
      label: kind === 'new' ? `Number in ${names.from}` : `Number in ${names.to}`,
      choices,
      also: kind === 'pair',
    },
    answered: q.answered.length > 0 ? answerSentence(q.answered) : '',
    ...(q.previous === undefined ? {} : { previous: questionLink(key, q.previous) }),
    ...(q.next === undefined ? {} : { next: questionLink(key, q.next) }),
    trouble: tried?.trouble ?? '',
    because: tried?.because ?? q.answered[0]?.because ?? '',
    number: tried?.number ?? '',
    seen: q.seen,
  };
}

const BUTTONS: Readonly<Record<AskedQuestion['kind'], readonly Button[]>> = {
  pair: [
    { value: 'yes', word: 'Yes', key: 'y' },
    { value: 'no', word: 'No', key: 'n' },
    { value: 'withdrawn', word: 'It ended', key: 'w' },
  ],
  ended: [{ value: 'yes', word: 'Yes, it ended', key: 'y' }],
  new: [{ value: 'yes', word: 'Yes, it is new', key: 'y' }],
};
