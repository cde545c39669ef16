import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { CoverageLine, ToTeach } from '../../carryover/lessons/coverage.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { fillTemplate } from '../../exports/fill-template.ts';
import type { Entry } from '../../model/edition.ts';
import { type CoverageMark, type CoverageRow, coveragePicture } from '../../pictures/coverage-picture.ts';
import type { PlainSheet } from '../../tables/plain-sheet.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';
import { PACKAGE_ROOT } from '../package-root.ts';
import type { CoverageReport } from './cover-lessons.ts';

export const KINDS_OF_COVERAGE = /\.(csv|xlsx|html)$/i;

const VIEWS = join(PACKAGE_ROOT, 'views', 'lessons');

/** A coverage report as a file: a table, or a page with a picture that needs nothing beside it. */
export async function coverageFile(name: string, joint: Joint, report: CoverageReport): Promise<string | Uint8Array> {
  const [header, ...rows] = tableOf(report);
  if (/\.csv$/i.test(name)) return writeCsv([header!, ...rows].map(row => row.map(String)));
  if (/\.xlsx$/i.test(name)) {
    return writeXlsx([{ name: 'Coverage', header: header!.map(String), rows }, lessonsSheet(report)]);
  }
  const files = ['coverage.ejs', 'coverage.css'];
  const templates = new Map(
    await Promise.all(files.map(async file => [file, await readFile(join(VIEWS, file), 'utf8')] as const)),
  );
  return fillTemplate(templates, 'coverage', { ...pageOf(joint, report), style: templates.get('coverage.css') });
}

function tableOf({ lines, from, to, minutes }: CoverageReport): (string | number)[][] {
  return [
    [
      'lessons',
      'minutes_of_lessons',
      'how',
      `number_${from}`,
      `title_${from}`,
      `number_${to}`,
      `title_${to}`,
      'to_do',
      'duty',
      'why',
    ],
    ...lines.map(l => [
      l.lessons.join('; '),
      minutesOf(l.lessons, minutes) ?? '',
      l.how ?? '',
      l.from?.number ?? '',
      l.from?.title ?? '',
      l.to?.number ?? '',
      l.to?.title ?? '',
      l.toDo,
      l.duty ?? '',
      l.why,
    ]),
  ];
}

/** What the lessons of a line state together, of those that state anything: they teach other things in it as well. */
function minutesOf(lessons: readonly string[], minutes: CoverageReport['minutes']): number | undefined {
  const stated = minutes.filter(m => lessons.includes(m.lesson));
  return stated.length === 0 ? undefined : stated.reduce((sum, m) => sum + m.minutes, 0);
}

const OF_LESSONS: readonly ToTeach[] = ['keep', 'reopen', 'drop', 'keep-law', 'person', 'mentioned'];

function lessonsSheet({ lines, minutes, lessons }: CoverageReport): PlainSheet {
  return {
    name: 'Lessons',
    header: ['lesson', 'minutes', ...OF_LESSONS],
    rows: lessons.map(lesson => [
      lesson,
      minutesOf([lesson], minutes) ?? '',
      ...OF_LESSONS.map(toDo => lines.filter(l => l.toDo === toDo && l.lessons.includes(lesson)).length),
    ]),
  };
}

/** The groups of the table, in the order in which a trainer works through them. */
const GROUPS: readonly (readonly [ToTeach, string])[] = [
  ['reopen', 'Reopen: what is asked has changed, or may have'],
  ['drop', 'Take out: no longer asked'],
  ['keep-law', 'Keep teaching, due under what governs instead'],
  ['mentioned', 'Mentioned with their whole part, and no nearer'],
  ['teach', 'Nobody teaches it'],
  ['person', 'No record says what became of it'],
  ['keep', 'Keep: asks the same'],
];

function pageOf(joint: Joint, report: CoverageReport) {
  const { from, to, lines, minutes } = report;
  const taughtNew = new Map<string, ToTeach>();
  for (const { to: entry, toDo } of lines) {
    // Of several old ones that lead here, one that changed is enough to open the lesson.
    if (entry && (toDo === 'reopen' || !taughtNew.has(entry.id))) taughtNew.set(entry.id, toDo);
  }
  const newOf = (...toDos: ToTeach[]) => [...taughtNew.values()].filter(t => toDos.includes(t)).length;
  const total = minutes.reduce((sum, m) => sum + m.minutes, 0);
  return {
    catalog: joint.to.settings.title,
    from,
    to,
    lead: `Of the ${taughtNew.size} requirements of ${to}, the lessons teach ${newOf('keep', 'reopen')}: ${newOf('keep')} stay as they are, ${newOf('reopen')} have to be reopened. Nobody teaches the other ${newOf('teach', 'mentioned')}${newOf('mentioned') === 0 ? '' : `; of ${newOf('mentioned')} of them a lesson mentions the whole part`}.`,
    told: lines.filter(l => l.how === 'told').length,
    old: coveragePicture(rowsOf(joint.from.entries, e => joint.old.part(e.id), oldMarks(lines))),
    now: coveragePicture(rowsOf(joint.to.entries, e => joint.new.part(e.id), newMarks(taughtNew))),
    time:
      minutes.length === 0
        ? 'No lesson states its time.'
        : `${minutes.map(m => `${basename(m.lesson)} ${m.minutes} min`).join(', ')}; together ${total} minutes.`,
    groups: GROUPS.map(([toDo, heading]) => ({ toDo, heading, lines: lines.filter(l => l.toDo === toDo) }))
      .filter(g => g.lines.length > 0)
      .map(g => ({
        ...g,
        lines: g.lines.map(l => ({ ...l, lessons: l.lessons.map(name => withTime(name, minutes)) })),
      })),
  };
}

function withTime(lesson: string, minutes: CoverageReport['minutes']): string {
  const stated = minutesOf([lesson], minutes);
  return `${basename(lesson)}${stated === undefined ? '' : ` (${stated} min)`}`;
}

function rowsOf(
  entries: readonly Entry[],
  partOf: (entry: Entry) => Entry | undefined,
  shapes: ReadonlyMap<string, CoverageMark['shape']>,
): readonly CoverageRow[] {
  const rows = new Map<Entry | undefined, CoverageMark[]>();
  for (const entry of entries) {
    const shape = shapes.get(entry.id);
    if (!shape) continue;
    const part = partOf(entry);
    const mark = { shape, said: `${entry.number} ${entry.title}`.trim() };
    rows.set(part, [...(rows.get(part) ?? []), mark]);
  }
  return [...rows].map(([part, marks]) => ({ label: part ? `${part.number} ${part.title}`.trim() : '', marks }));
}

/** Old requirements that are taught: one that goes on somewhere goes on. */
function oldMarks(lines: readonly CoverageLine[]): Map<string, CoverageMark['shape']> {
  const shapes = new Map<string, CoverageMark['shape']>();
  for (const { from, to, toDo } of lines) {
    if (!from || toDo === 'mentioned' || shapes.get(from.id) === 'full') continue;
    shapes.set(from.id, to ? 'full' : toDo === 'keep-law' ? 'dot' : toDo === 'person' ? 'empty' : 'crossed');
  }
  return shapes;
}

function newMarks(taught: ReadonlyMap<string, ToTeach>): Map<string, CoverageMark['shape']> {
  const shape = (toDo: ToTeach) =>
    toDo === 'keep' ? 'full' : toDo === 'reopen' ? 'half' : toDo === 'mentioned' ? 'dot' : 'empty';
  return new Map([...taught].map(([id, toDo]) => [id, shape(toDo)]));
}
