import type { ReviewState } from '../../commands/matching/held-review.ts';
import type { DeskReview, MatchDesk } from '../../commands/matching/match-desk.ts';
import { counted, sentence } from '../../model/said-words.ts';
import type { FormField } from '../signed-in.ts';
import { matchLink } from './match-links.ts';

/** What of a review would become lineage, before it does. */
export interface MatchRecordPage {
  readonly heading: string;
  readonly from: string;
  readonly to: string;
  readonly sentence: string;
  readonly records: readonly {
    readonly old: Named;
    readonly heirs: readonly Named[];
    /** Why, and by whom. */
    readonly why: string;
  }[];
  readonly more: number;
  readonly action: string;
  readonly backHref: string;
  readonly command: string;
  readonly csrf: FormField;
  readonly seen: string;
  readonly trouble: string;
}

interface Named {
  readonly number: string;
  readonly title: string;
}

/** A review that cannot be asked at this moment. */
export interface MatchWaitPage {
  readonly heading: string;
  readonly sentence: string;
  readonly href: string;
  /** Whether looking again in a moment helps. */
  readonly waits: boolean;
}

const SHOWN = 200;

export function matchRecordPage(
  { review, key, command }: DeskReview,
  { records, seen }: Awaited<ReturnType<MatchDesk['lineage']>>,
  csrf: FormField,
  trouble: string,
): MatchRecordPage {
  const { from, to } = review.names;
  const ended = records.filter(r => r.heirs.length === 0).length;
  const answered = records.filter(r => r.by !== undefined).length;
  const linked = records.length - ended;
  const parts = [
    linked > 0 && `${counted(linked, 'item')} of ${from} would get ${linked === 1 ? 'its heirs' : 'their heirs'}`,
    ended > 0 && `${linked > 0 ? ended : `${counted(ended, 'item')} of ${from}`} would be withdrawn`,
  ].filter(Boolean);
  return {
    heading: `Lineage of ${to} from this review`,
    from,
    to,
    sentence:
      records.length === 0
        ? `Nothing is to be recorded: every item of ${from} has its heirs or its record, or no link that can be accepted.`
        : `${parts.join(', and ')}; ${answered === records.length ? 'people answered all of them' : `people answered ${answered} of them, and the matcher is sure of the others`}.`,
    records: records.slice(0, SHOWN).map(({ record, by, old, heirs }) => ({
      old,
      heirs,
      why: [by?.replace(/\s*<[^>]*>/g, ''), sentence(record.reason ?? record.note ?? '')].filter(Boolean).join(': '),
    })),
    more: Math.max(0, records.length - SHOWN),
    action: matchLink(key, 'record'),
    backHref: matchLink(key),
    command,
    csrf,
    seen,
    trouble,
  };
}

/** @param href where to look again */
export function matchWaitPage(
  { review }: DeskReview,
  state: Exclude<ReviewState, 'open'>,
  href: string,
): MatchWaitPage {
  const { from, to } = review.names;
  return state === 'matching'
    ? {
        heading: `${from} and ${to} are being matched.`,
        sentence: 'It takes seconds for hundreds of rows, and minutes for many thousands. No answer is lost meanwhile.',
        href,
        waits: true,
      }
    : { heading: 'This review cannot be shown', sentence: state.failed, href: '/desk', waits: false };
}
