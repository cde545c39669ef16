import type { FollowedReports } from '../../commands/intake/intake-count.ts';
import { underLevel } from '../../commands/intake/intake-count.ts';
import type { IntakeRecord } from '../../model/intake.ts';
import { counted, dateWords } from '../../model/said-words.ts';
import { levelName } from '../../model/settings.ts';
import {
  type CauseCount,
  countIntake,
  type FollowedReport,
  type IntakeCounts,
  type IntakeLine,
} from '../../release/intake.ts';
import { deskLink, editionLink, intakeCsvLink, intakeLink, itemLink, type Query, workItemLink } from '../links.ts';

export interface IntakeFilter {
  /** Empty = all of them. */
  readonly cause: string;
  /** Count under the items of this level, from 1; 0 = under each item itself. */
  readonly level: number;
}

/** Where the next edition has to work: what was reported, by item and by cause. */
export interface IntakePage {
  readonly edition: string;
  readonly sentence: string;
  /** Empty for a published edition. */
  readonly deskHref: string;
  readonly action: string;
  readonly causes: readonly { readonly value: string; readonly word: string; readonly chosen: boolean }[];
  readonly levels: readonly { readonly value: number; readonly word: string; readonly chosen: boolean }[];
  readonly shown: string;
  readonly csvHref: string;
  readonly standing: readonly LineShown[];
  readonly ended: readonly LineShown[];
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  /** The edition whose items take new reports. */
  readonly addHref: string;
}

interface LineShown {
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly told: string;
  readonly why: string;
  readonly reports: readonly { readonly head: string; readonly text: string }[];
  readonly addHref: string;
}

const A_PAGE = 40;

export interface IntakePageRequest {
  readonly filter: IntakeFilter;
  readonly page: number;
  /** The newest edition that is published. */
  readonly newest: string;
}

export function intakePage(found: FollowedReports, { filter, page: asked, newest }: IntakePageRequest): IntakePage {
  const { header, settings } = found.index;
  const edition = header.name;
  const all = countIntake(found.followed, found.index.entries);
  const { counts, under } = countsOf(found, filter);
  const pages = Math.max(1, Math.ceil(counts.lines.length / A_PAGE));
  const page = Math.min(asked, pages);
  const lines = counts.lines.slice((page - 1) * A_PAGE, page * A_PAGE);
  const query = intakeQuery(filter);
  const atPage = (n: number) => intakeLink(edition, [...query, ['page', String(n)]]);
  const shown = (line: IntakeLine) => lineShown(line, under(line), header);
  return {
    edition,
    sentence: sentenceOf(edition, all),
    deskHref: header.state === 'draft' ? deskLink(edition) : '',
    action: intakeLink(edition),
    causes: all.causes.map(({ cause, reports }) => ({
      value: cause,
      word: `${cause} (${reports.toLocaleString('en')})`,
      chosen: cause === filter.cause,
    })),
    levels: [0, ...settings.levels.map((_, at) => at + 1)].map(value => ({
      value,
      word: value === 0 ? 'the item itself' : levelName(settings, value).toLowerCase(),
      chosen: value === filter.level,
    })),
    shown: `${counted(counts.reports, 'report')} on ${counted(counts.lines.length, 'item')}`,
    csvHref: intakeCsvLink(edition, query),
    standing: lines.filter(l => l.endedAfter === undefined).map(shown),
    ended: lines.filter(l => l.endedAfter !== undefined).map(shown),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    addHref: editionLink(newest),
  };
}

/** The counts that a choice shows, and the reports behind a line of them. */
export function countsOf(
  { index, followed }: FollowedReports,
  { cause, level }: IntakeFilter,
): { readonly counts: IntakeCounts; readonly under: (line: IntakeLine) => readonly IntakeRecord[] } {
  const rollUp = underLevel(index, level === 0 ? undefined : level);
  const chosen = followed.filter(f => cause === '' || f.record.cause === cause);
  const isUnder = ({ record, now }: FollowedReport, line: IntakeLine) =>
    line.endedAfter === undefined
      ? now.some(e => rollUp(e).id === line.id)
      : now.length === 0 && record.item === line.id && record.edition === line.endedAfter;
  return {
    counts: countIntake(chosen, index.entries, rollUp),
    under: line => chosen.filter(f => isUnder(f, line)).map(f => f.record),
  };
}

export function intakeQuery({ cause, level }: IntakeFilter): Query {
  return [
    ...(cause === '' ? [] : [['cause', cause] as const]),
    ...(level === 0 ? [] : [['level', String(level)] as const]),
  ];
}

function sentenceOf(edition: string, { reports, lines, causes }: IntakeCounts): string {
  const [most] = causes;
  if (!most) return 'Nothing was reported from the work yet.';
  const ended = lines.filter(l => l.endedAfter !== undefined).length;
  const gone = ended > 0 ? `, ${ended} of which ${edition} does not have` : '';
  return `${counted(reports, 'report')} came in on ${counted(lines.length, 'item')}${gone}; the commonest cause is "${most.cause}" (${most.reports}).`;
}

function lineShown(
  line: IntakeLine,
  records: readonly IntakeRecord[],
  { name: edition, state }: FollowedReports['index']['header'],
): LineShown {
  const isDraft = state === 'draft';
  const { id, number, title, endedAfter, why, reports, shared, causes } = line;
  const [newest] = [...records].reverse();
  // A note is left where the item is published; a draft's item is worked on at the desk.
  const noted = newest ? itemLink(newest.item, newest.edition) : itemLink(id, endedAfter ?? edition);
  return {
    number: endedAfter === undefined ? number : `${endedAfter} ${number}`,
    title,
    href:
      endedAfter !== undefined ? itemLink(id, endedAfter) : isDraft ? workItemLink(edition, id) : itemLink(id, edition),
    told: `${counted(reports, 'report')}: ${inWords(causes)}${shared > 0 ? `; ${shared} counted under other items as well` : ''}`,
    why: endedAfter === undefined ? '' : why ? `Withdrawn: ${why}` : 'Withdrawn; no reason is on record.',
    reports: [...records].reverse().map(r => ({
      head: `${dateWords(r.date)}, ${r.from}, ${r.kind} on ${r.edition} ${r.number}: ${r.cause}`,
      text: r.text,
    })),
    addHref: `${noted}#notes`,
  };
}

/** `unclear 2, too strict 1`; a single cause needs no number beside the count of reports. */
const inWords = (causes: readonly CauseCount[]) =>
  causes.length === 1 ? causes[0]!.cause : causes.map(c => `${c.cause} ${c.reports}`).join(', ');
