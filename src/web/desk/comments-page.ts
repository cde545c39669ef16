import { answerKey, type DeskComments, nameIn, type TypedAnswer } from '../../commands/comments/comments-desk.ts';
import type { ReadFormsReport } from '../../commands/comments/comments-read.ts';
import { DISPOSITIONS } from '../../model/comment.ts';
import { counted, dateWords } from '../../model/said-words.ts';
import { TOLD } from '../../release/comments.ts';
import { type CommentNow, toldNow } from '../../release/comments-now.ts';
import {
  commentFormsLink,
  commentLink,
  commentsLink,
  deskLink,
  itemLink,
  packLink,
  replyLink,
  workItemLink,
} from '../links.ts';
import type { FormField } from '../signed-in.ts';
import {
  type CommentsFilter,
  type CommentsOptions,
  commentsOptions,
  commentsQuery,
  filterComments,
  stateOf,
  TYPE_WORDS,
} from './comments-filter.ts';

/** The committee's comments as a list to work off. */
export interface CommentsPage {
  readonly edition: string;
  readonly sentence: string;
  readonly more: readonly string[];
  /** What stops the draft; empty for a published edition. */
  readonly deskHref: string;
  readonly action: string;
  readonly options: CommentsOptions;
  readonly filtered: boolean;
  /** The one item that the comments shown are about; absent: any. */
  readonly about?: { readonly id: string; readonly name: string; readonly without: string };
  readonly shown: string;
  readonly comments: readonly CommentShown[];
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  readonly csrf: FormField;
  readonly dispositions: readonly { readonly value: string; readonly word: string }[];
  /** One reply for each commenter. */
  readonly replies: readonly {
    readonly by: string;
    readonly told: string;
    readonly docx: string;
    readonly csv: string;
  }[];
  /** The draft for its reviewers; absent where nothing older can be laid beside it. */
  readonly pack?: { readonly action: string; readonly told: string; readonly trouble: string };
  readonly forms: {
    readonly action: string;
    readonly trouble: string;
    /** What came of a form that was just read, a sentence each; empty where none was. */
    readonly told: readonly string[];
  };
}

interface CommentShown {
  readonly anchor: string;
  readonly code: string;
  readonly by: string;
  readonly type: string;
  /** The clause as the form cites it. */
  readonly cited: string;
  /** Where it is today, in words; empty where it stands where it was cited. */
  readonly now: string;
  readonly changed: boolean;
  readonly texts: readonly {
    readonly number: string;
    readonly title: string;
    readonly text: string;
    readonly href: string;
  }[];
  /** Where the clause is read as it was, if it stands nowhere now. */
  readonly was: readonly { readonly word: string; readonly href: string }[];
  readonly comment: string;
  readonly proposed: string;
  readonly answered: string;
  /** The answer still waits for this. */
  readonly waits: string;
  readonly href: string;
  readonly needsPlace: boolean;
  readonly typed: TypedAnswer;
  readonly trouble: string;
}

export interface CommentsPageRequest {
  readonly filter: CommentsFilter;
  readonly page: number;
  readonly csrf: FormField;
  readonly refused?: TypedAnswer & { readonly code: string; readonly trouble: string };
  readonly read?: ReadFormsReport;
  readonly formTrouble?: string;
  readonly packTrouble?: string;
}

const A_PAGE = 20;
const MOST_TEXTS = 3;
const MOST_FINDINGS = 20;
const EMPTY: TypedAnswer = { disposition: '', because: '', change: '', about: '', seen: '' };

export function commentsPage(listed: DeskComments, request: CommentsPageRequest): CommentsPage {
  const { edition, records } = listed;
  const { filter, refused } = request;
  const found = filterComments(listed, filter);
  const pages = Math.max(1, Math.ceil(found.length / A_PAGE));
  const page = Math.min(request.page, pages);
  const query = commentsQuery(filter);
  const atPage = (n: number) => commentsLink(edition, [...query, ['page', String(n)]]);
  const answered = records.filter(r => r.answer).length;
  return {
    edition,
    sentence:
      records.length === 0
        ? `Nobody has commented on ${edition} yet.`
        : `${answered} of ${counted(records.length, 'comment')} on ${edition} ${answered === 1 ? 'is' : 'are'} answered.`,
    more: waitingWords(listed),
    deskHref: listed.header.state === 'draft' ? deskLink(edition) : '',
    action: commentsLink(edition),
    options: commentsOptions(listed, filter),
    filtered: stateOf(filter) !== 'todo' || filter.type !== '' || filter.by !== '' || filter.item !== '',
    ...aboutItem(listed, filter),
    shown: counted(found.length, 'comment'),
    comments: found
      .slice((page - 1) * A_PAGE, page * A_PAGE)
      .map(comment => shownComment(listed, comment, request, refused)),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    csrf: request.csrf,
    dispositions: DISPOSITIONS.map(value => ({ value, word: TOLD[value] })),
    replies: [...new Set(records.map(r => r.by))].sort().map(by => {
      const own = records.filter(r => r.by === by);
      const told = `${own.filter(r => r.answer).length} of ${own.length} answered`;
      return { by: nameIn(by), told, docx: replyLink(edition, by, 'docx'), csv: replyLink(edition, by, 'csv') };
    }),
    ...(listed.header.replaces === null
      ? {}
      : {
          pack: { action: packLink(edition), told: packWords(listed), trouble: request.packTrouble ?? '' },
        }),
    forms: {
      action: commentFormsLink(edition),
      trouble: request.formTrouble ?? '',
      told: request.read ? readWords(request.read) : [],
    },
  };
}

/** What downloading the draft for its reviewers will put on record. */
function packWords({ edition, circulations, commit }: DeskComments): string {
  const last = circulations.at(-1);
  if (last?.commit === commit) {
    return `${edition} was sent out as it stands in round ${last.round}, on ${dateWords(last.date)}: the same files come again, and nothing is put on record.`;
  }
  const before = last ? ` (it has changed since round ${last.round}, of ${dateWords(last.date)})` : '';
  return `Downloading them puts round ${(last?.round ?? 0) + 1} on record${before}: what each line and clause of ${edition} means today, so that comments are found again when numbers move.`;
}

function aboutItem({ edition, items }: DeskComments, filter: CommentsFilter): Pick<CommentsPage, 'about'> {
  const item = items.get(filter.item);
  if (filter.item === '') return {};
  const name = item ? `${item.number} ${item.title}`.trim() : filter.item;
  return { about: { id: filter.item, name, without: commentsLink(edition, commentsQuery({ ...filter, item: '' })) } };
}

/** What a release waits for beside answers. */
function waitingWords({ open, records }: DeskComments): string[] {
  const waiting = (rule: string) => open.filter(f => f.rule === rule).length;
  const [without, same] = [waiting('comment-without-change'), waiting('comment-unchanged')];
  const unplaced = records.filter(r => r.unplaced).length;
  return [
    ...(without > 0 ? [`${counted(without, 'comment')} accepted, and no change answers ${it(without)} yet.`] : []),
    ...(same > 0
      ? [`${counted(same, 'comment')} accepted, and the item that is to answer ${it(same)} says what was sent out.`]
      : []),
    ...(unplaced > 0 ? [`The clause of ${counted(unplaced, 'comment')} was not found.`] : []),
  ];
}

const it = (n: number) => (n === 1 ? 'it' : 'them');

function shownComment(
  { edition, items, open, header }: DeskComments,
  comment: CommentNow,
  { filter, page }: CommentsPageRequest,
  refused: CommentsPageRequest['refused'],
): CommentShown {
  const { record, now, changed } = comment;
  const { code, by, clause, line, paragraph, type, answer } = record;
  const here = refused?.code === code ? refused : undefined;
  const stands = toldNow(comment);
  const cited = [clause ?? (line ? `line ${line}` : 'the whole'), paragraph].filter(Boolean).join(', ');
  const query = commentsQuery(filter);
  return {
    anchor: `c-${encodeURIComponent(code).replace(/%/g, '~')}`,
    code,
    by: nameIn(by),
    type: TYPE_WORDS[type ?? 'none']!,
    cited,
    now: stands === (clause ?? '') ? '' : stands,
    changed,
    texts: now.slice(0, MOST_TEXTS).map(({ id, number, title }) => ({
      number,
      title,
      text: items.get(id)?.text ?? '',
      href: header.state === 'draft' ? workItemLink(edition, id) : itemLink(id, edition),
    })),
    was: record.items
      .filter(i => now.length === 0 && i.edition !== edition)
      .map(i => ({ word: `${i.edition} ${i.number}`, href: itemLink(i.id, i.edition) })),
    comment: record.comment,
    proposed: record.proposed ?? '',
    answered: answer
      ? `${TOLD[answer.disposition]}, ${nameIn(answer.by)} on ${dateWords(answer.date)}.${answer.because ? ` ${answer.because}` : ''}`
      : '',
    waits: answer ? (open.find(f => f.subject === code)?.message.replace(/^[^:]*: /, '') ?? '') : '',
    href: commentLink(edition, code, page > 1 ? [...query, ['page', String(page)]] : query),
    needsPlace: record.unplaced === true,
    typed: { ...(here ?? { ...EMPTY, ...changeOf(answer) }), seen: answerKey(record) },
    trouble: here?.trouble ?? '',
  };
}

function changeOf(answer: DeskComments['records'][number]['answer']): Partial<TypedAnswer> {
  const change = answer?.change;
  return change ? { change: 'item' in change ? change.number || change.item : change.commit.slice(0, 9) } : {};
}

/** What came of reading a form, and what its reader has to look at. */
function readWords({ added, mended, known, answered, findings }: ReadFormsReport): string[] {
  const parts = [
    `${counted(added.length, 'comment')} read and kept`,
    ...(mended.length > 0 ? [`${mended.length} completed`] : []),
    ...(known > 0 ? [`${known} on record before`] : []),
    ...(answered > 0 ? [`${counted(answered, 'answer')} taken from the observations`] : []),
  ];
  return [
    `${parts.join(', ')}.`,
    ...findings.slice(0, MOST_FINDINGS).map(f => withoutOptions(f.message)),
    ...(findings.length > MOST_FINDINGS ? [`And ${findings.length - MOST_FINDINGS} more of this kind.`] : []),
  ];
}

/** The page has a box where the command line has an option. */
const withoutOptions = (message: string) =>
  message.replace(/read it with --with-observations\./, 'read it again with that box ticked.');
