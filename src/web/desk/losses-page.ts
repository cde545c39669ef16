import type { AuditLine, AuditReport } from '../../commands/audit/audit-editions.ts';
import { isSamePerson } from '../../commands/audit/settle-losses.ts';
import { troubleSigning, type Verdict } from '../../commands/audit/settle-one-loss.ts';
import { type Person, writtenAs } from '../../commands/people.ts';
import { counted, dateWords, inWords, MOMENT_WORDS, sentence } from '../../model/said-words.ts';
import { crosswalkLink, lossesCsvLink, lossesLink, lossLink, placeLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';
import {
  filterLosses,
  KIND_WORDS,
  type LossesFilter,
  type LossesOptions,
  type LossStage,
  lossesOptions,
  lossesQuery,
  namesOfTypes,
  stageOf,
} from './losses-filter.ts';

export interface LossesPage {
  readonly from: string;
  readonly to: string;
  readonly sentence: string;
  readonly more: readonly string[];
  readonly options: LossesOptions;
  readonly filtered: boolean;
  readonly action: string;
  readonly shown: string;
  readonly losses: readonly Loss[];
  readonly csvHref: string;
  readonly crosswalkHref: string;
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  /** What was done by the form before; empty where nothing was. */
  readonly done: string;
  /** Why the form before was refused. */
  readonly trouble: string;
  readonly signIn: string;
  /** Absent for a reader. */
  readonly csrf?: FormField;
}

interface Loss {
  readonly anchor: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly types: string;
  readonly said: string;
  readonly kind: string;
  readonly old: readonly { readonly text: string; readonly lost: boolean }[];
  readonly heirs: readonly {
    readonly number: string;
    readonly title: string;
    readonly href: string;
    readonly text: string;
  }[];
  readonly stage: LossStage;
  readonly changedBy: string;
  /** What was answered, or why nothing has to be. */
  readonly answered: string;
  readonly again: boolean;
  readonly settleHref: string;
  readonly signHref: string;
  /** Why this person cannot settle or sign it; empty where they can. */
  readonly cannotSettle: string;
  readonly cannotSign: string;
  /** What was typed into a form that was refused. */
  readonly typed: { readonly verdict: string; readonly because: string };
}

export interface LossesRequest {
  readonly filter: LossesFilter;
  readonly page: number;
  readonly person?: Person | undefined;
  readonly csrf?: FormField | undefined;
  readonly done?: string | undefined;
  readonly refused?: (Verdict & { readonly trouble: string }) | undefined;
  readonly here: string;
  readonly signIn: (back: string) => string;
  /** Whether an edition has pages; a draft has none. */
  readonly published: (edition: string) => boolean;
}

/** Texts of both editions stand with each: more of them are a page that nobody reads to its end. */
const A_PAGE = 20;

/** The losses between two editions as a list to work off. */
export function lossesPage(report: AuditReport, request: LossesRequest): LossesPage {
  const { from, to } = report;
  const found = filterLosses(report, request.filter);
  const pages = Math.max(1, Math.ceil(found.length / A_PAGE));
  const page = Math.min(request.page, pages);
  const query = lossesQuery(request.filter);
  const atPage = (n: number) => lossesLink(from, to, [...query, ['page', String(n)]]);
  const ofPage = found.slice((page - 1) * A_PAGE, page * A_PAGE);
  // A form that was refused is shown again even where the filter has moved on.
  const refused = report.lines.find(l => l.key !== '' && l.key === request.refused?.key);
  const shown = refused && !ofPage.includes(refused) ? [refused, ...ofPage] : ofPage;
  return {
    from,
    to,
    ...progressOf(report),
    options: lossesOptions(report, request.filter),
    filtered: query.length > 0,
    action: lossesLink(from, to),
    shown: counted(found.length, 'loss', 'losses'),
    losses: shown.map((line, at) => lossOf(report, line, at, request)),
    csvHref: lossesCsvLink(from, to, query),
    crosswalkHref: crosswalkLink(from, to),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    done: doneWords(report, request.done),
    trouble: request.refused?.trouble ?? '',
    signIn: request.signIn(request.here),
    ...(request.csrf ? { csrf: request.csrf } : {}),
  };
}

/** How far the work has come, in words. */
function progressOf({ lines }: AuditReport): Pick<LossesPage, 'sentence' | 'more'> {
  const count = (...stages: LossStage[]) => lines.filter(l => stages.includes(stageOf(l))).length;
  const [todo, settled, signed] = [count('todo'), count('settled', 'signed'), count('signed')];
  const all = todo + settled;
  const again = lines.filter(l => l.state === 'again').length;
  const told =
    all === 0
      ? 'Nothing that the old texts say is lost.'
      : settled === 0
        ? `None of ${counted(all, 'loss', 'losses')} is settled yet.`
        : todo === 0
          ? `All ${counted(all, 'loss', 'losses')} are settled.`
          : `${settled.toLocaleString('en')} of ${counted(all, 'loss', 'losses')} ${settled === 1 ? 'is' : 'are'} settled; ${todo.toLocaleString('en')} ${todo === 1 ? 'is' : 'are'} left to work off.`;
  return {
    sentence: told,
    more: [
      settled > 0 && `${signed} of the ${settled} settled ${settled === 1 ? 'is' : 'are'} signed by a second person.`,
      again > 0 && `${again} ${again === 1 ? 'was' : 'were'} settled before a text changed, and ask again.`,
      count('decision') > 0 && `${count('decision')} more are covered by a decision of the whole edition.`,
      count('anew') > 0 && `${counted(count('anew'), 'value')} stated anew: a change of what is asked, and no loss.`,
    ].filter(text => text !== false),
  };
}

function lossOf(report: AuditReport, line: AuditLine, at: number, request: LossesRequest): Loss {
  const { joint, from, to } = report;
  const query = lossesQuery(request.filter);
  const by = request.person && writtenAs(request.person);
  const link = (edition: string, entry: { readonly number: string; readonly id: string }) =>
    request.published(edition) ? placeLink(edition, entry) : '';
  const names = namesOfTypes(report, line.types);
  const refused = request.refused?.key === line.key ? request.refused : undefined;
  return {
    anchor: line.key === '' ? `anew-${at}` : `loss-${line.key}`,
    number: line.number,
    title: line.title,
    href: link(from, joint.old.get(line.item)!),
    types: names.length === joint.from.settings.installationTypes.length ? '' : inWords(names),
    said: saidOf(line, to, inWords(names)),
    kind: KIND_WORDS[line.kind],
    old: line.kind === 'type' ? [{ text: line.oldText, lost: false }] : markedIn(line),
    heirs: line.heirs.map(({ id, number, title }) => ({
      number,
      title,
      href: link(to, { id, number }),
      text: textsOf(report, id),
    })),
    stage: stageOf(line),
    changedBy: line.changedBy.replace(/\s*<.*/, ''),
    answered: answeredBy(line),
    again: line.state === 'again',
    settleHref: lossLink(from, to, line.key, query),
    signHref: lossLink(from, to, `${line.key}/sign`, query),
    cannotSettle:
      by !== undefined && isSamePerson(line.changedBy, by)
        ? 'You made this change; somebody else has to settle it.'
        : '',
    cannotSign: by === undefined ? '' : (troubleSigning(line, by) ?? ''),
    typed: { verdict: refused?.verdict ?? '', because: refused?.because ?? '' },
  };
}

function saidOf({ kind, text, becomes, heirs }: AuditLine, to: string, types: string): string {
  if (kind === 'type') return `Nothing in ${to} takes it over for ${types || text}, and no withdrawal says so.`;
  if (kind === 'changed') return `“${text}” became “${becomes}”.`;
  return `${heirs.length === 1 ? 'Its heir does not say' : 'None of its heirs says'} “${text}”.`;
}

function markedIn({ oldText, start, text }: AuditLine): Loss['old'] {
  const end = start + text.length;
  return [
    { text: oldText.slice(0, start), lost: false },
    { text: oldText.slice(start, end), lost: true },
    { text: oldText.slice(end), lost: false },
  ].filter(part => part.text !== '');
}

function textsOf({ heirs }: AuditReport, id: string): string {
  const item = heirs.get(id);
  return [
    item?.text,
    item?.outcome,
    item?.caution,
    ...(item?.verified ?? []).map(v => v.how && `${MOMENT_WORDS[v.when]}: ${v.how}`),
  ]
    .filter(Boolean)
    .join('\n');
}

const VERDICT_WORDS = {
  restored: 'put back into the catalog',
  stated: 'said by an heir in other words',
  dropped: 'dropped on purpose',
} as const;

function answeredBy({ state, answer, decision }: AuditLine): string {
  if (state === 'decision') return `Covered by the decision ${sentence(decision)}`;
  if (!answer) return '';
  const because = answer.because ? `: ${sentence(answer.because)}` : '.';
  const second = answer.second ? ` Signed by ${nameOf(answer.second.by)} on ${dateWords(answer.second.date)}.` : '';
  return `Settled by ${nameOf(answer.by)} on ${dateWords(answer.date)} as ${VERDICT_WORDS[answer.verdict]}${because}${second}`;
}

const nameOf = (by: string) => by.replace(/\s*<.*/, '');

function doneWords({ lines }: AuditReport, key: string | undefined): string {
  const line = lines.find(l => l.key !== '' && l.key === key);
  return line && line.state === 'settled' ? `Kept: ${line.number} “${line.text}”. ${answeredBy(line)}` : '';
}
