import { counted } from '../../model/said-words.ts';
import { type FixedQuestionLine, fixedQuestionProgress } from '../../release/fixed-question-lines.ts';
import { answerLink, deskLink, reviewLink, workItemLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';

export interface ReviewFilter {
  /** Number and title of a part; empty = all. */
  readonly part: string;
  /** `todo` or `all`. */
  readonly state: string;
}

/** The fixed questions as a list to work off. */
export interface ReviewPage {
  readonly draft: string;
  readonly deskHref: string;
  readonly sentence: string;
  readonly reviewers: string;
  readonly action: string;
  readonly parts: readonly { readonly part: string; readonly chosen: boolean; readonly told: string }[];
  readonly all: boolean;
  readonly shown: string;
  readonly questions: readonly {
    readonly anchor: string;
    readonly number: string;
    readonly title: string;
    /** Where it is worked on; empty where nothing can be done to it. */
    readonly itemHref: string;
    readonly asks: string;
    readonly evidence: readonly string[];
    readonly answered: string;
    readonly href: string;
    readonly typed: string;
    readonly trouble: string;
    /** A yes against which something speaks needs a reason. */
    readonly needsReason: boolean;
  }[];
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  readonly csrf: FormField;
}

export interface ReviewPageRequest {
  readonly draft: string;
  readonly filter: ReviewFilter;
  readonly page: number;
  readonly csrf: FormField;
  /** Whether it is a draft, whose items can be worked on. */
  readonly isDraft: boolean;
  readonly refused?: {
    readonly item: string;
    readonly question: string;
    readonly because: string;
    readonly trouble: string;
  };
}

const A_PAGE = 20;

export function reviewPage(lines: readonly FixedQuestionLine[], request: ReviewPageRequest): ReviewPage {
  const { draft, filter, refused } = request;
  const progress = fixedQuestionProgress(lines);
  const found = lines.filter(
    l => (filter.part === '' || l.part === filter.part) && (filter.state === 'all' || l.state !== 'yes'),
  );
  const pages = Math.max(1, Math.ceil(found.length / A_PAGE));
  const page = Math.min(request.page, pages);
  const query = reviewQuery(filter);
  const atPage = (n: number) => reviewLink(draft, [...query, ['page', String(n)]]);
  return {
    draft,
    deskHref: deskLink(draft),
    sentence: `${progress.answered} of ${counted(progress.asked, 'question', 'questions')} ${progress.answered === 1 ? 'is' : 'are'} answered.`,
    reviewers: progress.reviewers.map(r => `${r.answered} by ${r.by.replace(/ *<.*$/, '')}`).join(', '),
    action: reviewLink(draft),
    parts: progress.parts.map(p => ({
      part: p.part,
      chosen: p.part === filter.part,
      told: `${p.answered} of ${p.asked}`,
    })),
    all: filter.state === 'all',
    shown: counted(found.length, 'question', 'questions'),
    questions: found.slice((page - 1) * A_PAGE, page * A_PAGE).map(line => {
      const here = refused?.item === line.item && refused.question === line.question.code ? refused : undefined;
      return {
        anchor: `q-${line.item}-${line.question.code}`,
        number: line.number,
        title: line.title,
        itemHref: request.isDraft ? workItemLink(draft, line.item) : '',
        asks: line.question.asks,
        evidence: line.evidence,
        answered: answeredWords(line),
        href: answerLink(draft, line.item, line.question.code, query),
        typed: here?.because ?? '',
        trouble: here?.trouble ?? '',
        needsReason: line.evidence.length > 0,
      };
    }),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    csrf: request.csrf,
  };
}

export function reviewQuery({ part, state }: ReviewFilter): [string, string][] {
  return [
    ...(part ? [['part', part] as [string, string]] : []),
    ...(state === 'all' ? [['state', 'all'] as [string, string]] : []),
  ];
}

function answeredWords({ answer, state }: FixedQuestionLine): string {
  if (!answer) return '';
  const said = `${answer.answer === 'yes' ? 'Yes' : 'No'}, ${answer.by.replace(/ *<.*$/, '')} on ${answer.date}${answer.because ? `: ${answer.because}` : ''}`;
  return state === 'again' ? `${said} - the text has changed since.` : said;
}
