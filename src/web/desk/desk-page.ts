import type { ReleaseReport } from '../../commands/releasing/release-gate.ts';
import { counted, dateWords } from '../../model/said-words.ts';
import type { Schedule } from '../../release/schedule.ts';
import {
  commentsLink,
  daysLink,
  deskLink,
  intakeLink,
  lossesLink,
  publishLink,
  reviewLink,
  workLink,
} from '../links.ts';

/** The drafts that are worked on. */
export interface DeskPage {
  readonly drafts: readonly {
    readonly name: string;
    readonly href: string;
    /** Where else somebody wants to go at once: what stops a draft takes seconds to find. */
    readonly ways: readonly { readonly word: string; readonly href: string }[];
  }[];
  /** Published editions with comments. */
  readonly commented: readonly { readonly name: string; readonly href: string }[];
  /** Reviews of matched links. */
  readonly reviews: readonly ReviewOnDesk[];
}

export interface ReviewOnDesk {
  readonly from: string;
  readonly to: string;
  readonly href: string;
  /** How far it is. */
  readonly said: string;
  /** Absent while it is being matched. */
  readonly csvHref?: string;
}

/** What stands between a draft and its publication. */
export interface ReleasePage {
  readonly draft: string;
  readonly sentence: string;
  readonly answers: readonly {
    readonly asks: string;
    /** `STOPS`, `LOOK` or `YES`: the word is the mark, colour only repeats it. */
    readonly word: string;
    readonly told: readonly string[];
    readonly more: number;
  }[];
  readonly milestones: readonly {
    readonly words: string;
    readonly date: string;
    readonly state: string;
    readonly needs: string;
  }[];
  readonly reviewHref: string;
  readonly daysHref: string;
  readonly workHref: string;
  readonly publishHref: string;
  readonly commentsHref: string;
  readonly intakeHref: string;
  readonly lossesHref: string;
}

const SHOWN = 8;

export function deskPage(
  drafts: readonly string[],
  commented: readonly string[],
  reviews: readonly ReviewOnDesk[],
): DeskPage {
  return {
    drafts: drafts.map(name => ({
      name,
      href: deskLink(name),
      ways: [
        { word: 'Items and steps', href: workLink(name) },
        { word: 'Comments', href: commentsLink(name) },
        { word: 'What came in from the work', href: intakeLink(name) },
        { word: 'Review questions', href: reviewLink(name) },
      ],
    })),
    commented: commented.map(name => ({ name, href: commentsLink(name) })),
    reviews,
  };
}

export function releasePage(
  report: ReleaseReport,
  schedule: Schedule | undefined,
  replaces: string | null,
): ReleasePage {
  const { edition, stops, answers } = report;
  const word = (a: (typeof answers)[number]) => (a.stops > 0 ? 'STOPS' : a.findings.length > 0 ? 'LOOK' : 'YES');
  return {
    draft: edition,
    sentence:
      stops.length === 0
        ? `Nothing stops the publication of ${edition}.`
        : `${counted(stops.length, 'finding', 'findings')} ${stops.length === 1 ? 'stops' : 'stop'} the publication of ${edition}.`,
    answers: answers.map(a => ({
      asks: a.asks,
      word: word(a),
      told: a.findings.slice(0, SHOWN).map(f => f.message),
      more: Math.max(0, a.findings.length - SHOWN),
    })),
    milestones: (schedule?.milestones ?? []).map(m => ({
      words: m.words,
      date: m.date ? dateWords(m.date) : 'no day is set',
      state: m.state,
      needs: m.needs.join('; '),
    })),
    reviewHref: reviewLink(edition),
    daysHref: daysLink(edition),
    workHref: workLink(edition),
    publishHref: publishLink(edition),
    commentsHref: commentsLink(edition),
    intakeHref: intakeLink(edition),
    lossesHref: replaces === null ? '' : lossesLink(replaces, edition),
  };
}
