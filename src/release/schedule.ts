import type { EditionDates, EditionHeader } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';

/** The days of an edition in their order, with what they are called. */
export const MILESTONES = [
  ['commentOpens', 'comment opens'],
  ['commentCloses', 'comment closes'],
  ['finalised', 'finalised'],
  ['published', 'published'],
  ['effective', 'effective'],
  ['transitionEnds', 'transition ends'],
  ['nextReview', 'next review'],
] as const satisfies readonly (readonly [keyof EditionDates, string])[];
export type MilestoneName = (typeof MILESTONES)[number][0];

/** What is known of an edition's progress. */
export interface ScheduleFacts {
  readonly header: EditionHeader;
  /** The edition or draft that replaces it. */
  readonly replacedBy?: string;
  /** How often the draft was sent out for comment. */
  readonly rounds: number;
  readonly comments: { readonly open: number; readonly withoutChange: number };
  /** Losses that nobody has settled, and items that nothing accounts for; both 0 for a published edition. */
  readonly losses: number;
  readonly unaccounted: number;
  /** Variances from older editions that were asked for and not decided. */
  readonly variances: number;
}

export interface Milestone {
  readonly name: MilestoneName;
  readonly words: string;
  /** Absent: no day is set. */
  readonly date?: string;
  /** `late`: its day is past and something is still needed. `ahead`: its day has not come. `unset`: it has no day. */
  readonly state: 'done' | 'ahead' | 'late' | 'unset';
  /** What has to be done for it; empty where nothing is left to do. */
  readonly needs: readonly string[];
  /** Days from the day asked about to its date; negative when it is past. */
  readonly inDays?: number;
}

export interface Schedule {
  readonly edition: string;
  readonly state: EditionHeader['state'];
  readonly milestones: readonly Milestone[];
  readonly findings: readonly Finding[];
}

/**
 * The milestones of an edition as they stand on a day.
 *
 * @param day ISO 8601 calendar date
 */
export function scheduleOf(facts: ScheduleFacts, day: string): Schedule {
  const { dates, name, state } = facts.header;
  const milestones = MILESTONES.map(([key, words]): Milestone => {
    const date = dates[key];
    const needs = needsOf(key, facts);
    if (date === undefined) return { name: key, words, state: 'unset', needs };
    const inDays = daysBetween(day, date);
    const isPast = inDays < 0;
    return { name: key, words, date, inDays, needs, state: !isPast ? 'ahead' : needs.length > 0 ? 'late' : 'done' };
  });
  const late = milestones.filter(m => m.state === 'late');
  return {
    edition: name,
    state,
    milestones,
    findings: [
      ...late.map(
        ({ words, date, needs }): Finding => ({
          rule: 'milestone-late',
          severity: 'warning',
          subject: name,
          message: `${name}: "${words}" was due on ${date}: ${needs.join('; ')}.`,
          data: { milestone: words, date },
        }),
      ),
      ...outOfOrder(name, dates),
    ],
  };
}

function needsOf(key: MilestoneName, facts: ScheduleFacts): string[] {
  const { header, comments, losses, unaccounted, variances, rounds, replacedBy } = facts;
  const isDraft = header.state === 'draft';
  switch (key) {
    case 'commentOpens':
    case 'commentCloses':
      return isDraft && rounds === 0 ? ['the draft has not been sent out'] : [];
    case 'finalised':
      return isDraft
        ? [
            ...told(comments.open, 'comment is not answered', 'comments are not answered'),
            ...told(comments.withoutChange, 'accepted comment has no change', 'accepted comments have no change'),
            ...told(losses, 'loss is not settled', 'losses are not settled'),
            ...told(
              unaccounted,
              'item has neither an heir nor a withdrawal',
              'items have neither an heir nor a withdrawal',
            ),
          ]
        : [];
    case 'published':
    case 'effective':
      return isDraft ? ['the draft is not published'] : [];
    case 'transitionEnds':
      return [
        ...(isDraft ? ['the draft is not published'] : []),
        ...told(
          variances,
          'variance from an older edition is not decided',
          'variances from older editions are not decided',
        ),
      ];
    case 'nextReview':
      return replacedBy === undefined ? ['no draft of the next edition is open'] : [];
    default:
      return [];
  }
}

function told(n: number, one: string, many: string): string[] {
  return n === 0 ? [] : [`${n} ${n === 1 ? one : many}`];
}

/** Each day against the one before it that is set; a review may come before the transition has ended. */
export function outOfOrder(name: string, dates: EditionDates): Finding[] {
  const found: Finding[] = [];
  let before: readonly [words: string, date: string] | undefined;
  for (const [key, words] of MILESTONES) {
    const date = dates[key];
    if (date === undefined) continue;
    if (before && date < before[1]) {
      found.push({
        rule: 'dates-out-of-order',
        severity: 'error',
        subject: name,
        message: `${name}: "${words}" (${date}) comes before "${before[0]}" (${before[1]}).`,
      });
    }
    if (key !== 'transitionEnds') before = [words, date];
  }
  return found;
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}
