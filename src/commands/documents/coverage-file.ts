import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { CoverageLine, ToTeach } from '../../carryover/lessons/coverage.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { fillTemplate } from '../../exports/fill-template.ts';
import type { Entry } from '../../model/edition.ts';
import { type CoverageMark, type CoverageRow, coveragePicture } from '../../pictures/coverage-picture.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';
import { PACKAGE_ROOT } from '../package-root.ts';
import type { CoverageReport } from './cover-lessons.ts';

export const KINDS_OF_COVERAGE = /\.(csv|xlsx|html)$/i;

const VIEWS = join(PACKAGE_ROOT, 'views', 'lessons');

/** A coverage report as a file: a table, or a page with a picture that needs nothing beside it. */
export async function coverageFile(name: string, joint: Joint, report: CoverageReport): Promise<string | Uint8Array> {
  const [header, ...rows] = tableOf(report);
  if (/\.csv$/i.test(name)) return writeCsv([header!, ...rows]);
  if (/\.xlsx$/i.test(name)) return writeXlsx([{ name: 'Coverage', header: header!, rows }]);
  const files = ['coverage.ejs', 'coverage.css'];
  const templates = new Map(
    await Promise.all(files.map(async file => [file, await readFile(join(VIEWS, file), 'utf8')] as const)),
  );
  return fillTemplate(templates, 'coverage', { ...pageOf(joint, report), style: templates.get('coverage.css') });
}

function tableOf({ lines, from, to }: CoverageReport): string[][] {
  return [
    ['lessons', 'how', `number_${from}`, `title_${from}`, `number_${to}`, `title_${to}`, 'to_do', 'duty', 'why'],
    ...lines.map(l => [
      l.lessons.join('; '),
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

/** The groups of the table, in the order in which a trainer works through them. */
const GROUPS: readonly (readonly [ToTeach, string])[] = [
  ['reopen', 'Reopen: what is asked has changed, or may have'],
  ['drop', 'Take out: no longer asked'],
  ['keep-law', 'Keep teaching, due under what governs instead'],
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
    lead: `Of the ${taughtNew.size} requirements of ${to}, the lessons teach ${newOf('keep', 'reopen')}: ${newOf('keep')} stay as they are, ${newOf('reopen')} have to be reopened. Nobody teaches the other ${newOf('teach')}.`,
    told: lines.filter(l => l.how === 'told').length,
    old: coveragePicture(rowsOf(joint.from.entries, e => joint.old.part(e.id), oldMarks(lines))),
    now: coveragePicture(rowsOf(joint.to.entries, e => joint.new.part(e.id), newMarks(taughtNew))),
    time:
      minutes.length === 0
        ? 'No lesson states its time.'
        : `${minutes.map(m => `${basename(m.lesson)} ${m.minutes} min`).join(', ')}; together ${total} minutes.`,
    groups: GROUPS.map(([toDo, heading]) => ({ toDo, heading, lines: lines.filter(l => l.toDo === toDo) }))
      .filter(g => g.lines.length > 0)
      .map(g => ({ ...g, lines: g.lines.map(l => ({ ...l, lessons: l.lessons.map(name => basename(name)) })) })),
  };
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
    if (!from || shapes.get(from.id) === 'full') continue;
    shapes.set(from.id, to ? 'full' : toDo === 'keep-law' ? 'dot' : toDo === 'person' ? 'empty' : 'crossed');
  }
  return shapes;
}

function newMarks(taught: ReadonlyMap<string, ToTeach>): Map<string, CoverageMark['shape']> {
  const shape = (toDo: ToTeach) => (toDo === 'keep' ? 'full' : toDo === 'reopen' ? 'half' : 'empty');
  return new Map([...taught].map(([id, toDo]) => [id, shape(toDo)]));
}
