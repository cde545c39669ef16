import { type CoverageLine, coverageOf, type Taught, type ToTeach } from '../../carryover/lessons/coverage.ts';
import { minutesStated } from '../../carryover/lessons/lesson-time.ts';
import { lightReading } from '../../carryover/stale/light-reading.ts';
import { type ToldItem, toldFinder } from '../../carryover/stale/told-items.ts';
import { readDocument } from '../../documents/read-document.ts';
import type { CitedLine } from '../../exports/cited-csv.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readItems } from '../../store/read.ts';
import type { Ports } from '../ports/ports.ts';
import { type ReadCrosswalk, readCrosswalk } from '../reading/read-crosswalk.ts';
import { citeFiles } from './cite-files.ts';
import { coverageFile, KINDS_OF_COVERAGE } from './coverage-file.ts';

export interface CoverageReport {
  readonly from: string;
  readonly to: string;
  readonly lines: readonly CoverageLine[];
  readonly counts: Readonly<Partial<Record<ToTeach, number>>>;
  readonly lessons: readonly string[];
  /** Minutes of the lessons that state them. */
  readonly minutes: readonly { readonly lesson: string; readonly minutes: number }[];
  readonly findings: readonly Finding[];
}

export interface CoverLessonsOptions {
  readonly inputs: readonly string[];
  readonly from: string;
  readonly to: string;
  /** Where the table goes: csv, xlsx, or a page with a picture as html. */
  readonly out?: string;
}

/** Sets lessons beside the requirements of two editions: what they cite, and what they tell without a number. */
export async function coverLessons(
  ports: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  { inputs, from, to, out }: CoverLessonsOptions,
): Promise<CoverageReport> {
  if (out !== undefined && !KINDS_OF_COVERAGE.test(out)) {
    throw new CatalogError(
      'BadArgument',
      `${out} is neither csv, xlsx nor html; name --out coverage.csv, coverage.xlsx or coverage.html.`,
      { out },
    );
  }
  const read = await readCrosswalk(catalog, from, to);
  const { joint, marks, backwards } = read;
  if (backwards) {
    throw new CatalogError('BadArgument', `${to} is older than ${from}; name the older edition with --from.`, {
      from,
      to,
    });
  }
  const cited = await citeFiles(ports, catalog, { inputs, edition: from });
  const { taught, findings } = taughtByCiting(read, cited);
  const find = await toldIn(catalog, read);
  const minutes: { lesson: string; minutes: number }[] = [];
  for (const lesson of inputs) {
    const bytes = await ports.files.read(lesson);
    const { passages, edition } = await readDocument(lesson, bytes);
    const texts = [frontMatter(bytes), ...passages.map(p => p.text)];
    const stated = minutesStated(
      texts,
      passages.filter(p => p.level !== undefined || p.text.trim() === p.heading?.trim()),
    );
    if (stated !== undefined) minutes.push({ lesson, minutes: stated });
    // The words of a lesson of another edition teach that one.
    if (edition !== undefined && edition !== joint.from.header.name) continue;
    const known = new Set(taught.filter(t => t.lesson === lesson).map(t => t.id));
    for (const told of find(passages)) {
      if (known.has(told.id)) continue;
      known.add(told.id);
      taught.push({ lesson, id: told.id, how: 'told' });
      findings.push(toldFinding(read, lesson, told));
    }
  }
  const lines = coverageOf(joint, marks, taught);
  const counts: Partial<Record<ToTeach, number>> = {};
  for (const { toDo } of lines) counts[toDo] = (counts[toDo] ?? 0) + 1;
  const report = {
    from: joint.from.header.name,
    to: joint.to.header.name,
    lines,
    counts,
    lessons: inputs,
    minutes,
    findings,
  };
  if (out !== undefined) await ports.files.write(out, await coverageFile(out, joint, report));
  return report;
}

/** What stands between the lines --- at the beginning of a text; the readers of documents pass it over. */
function frontMatter(bytes: Uint8Array): string {
  const begin = new TextDecoder().decode(bytes.subarray(0, 4000));
  return /^\ufeff?---\r?\n([\s\S]*?)\n---/.exec(begin)?.[1] ?? '';
}

function taughtByCiting({ joint }: ReadCrosswalk, cited: readonly CitedLine[]) {
  const taught: Taught[] = [];
  const findings: Finding[] = [];
  const name = joint.from.header.name;
  for (const { file, place, numbers, edition, certain, text } of cited) {
    const about = { subject: text, place: { file } };
    if (edition !== name) {
      const message = `${place}: ${text} is cited of ${edition}, not of ${name}, and is not counted.`;
      findings.push({ rule: 'coverage-edition', severity: 'note', message, ...about });
    } else if (!certain) {
      const message = `${place}: ${text} may be no citation and is not counted; say so beside it if it is.`;
      findings.push({ rule: 'coverage-doubt', severity: 'warning', message, ...about });
    } else {
      const ids = numbers.flatMap(n => joint.old.withNumber(n).map(e => e.id));
      taught.push(...ids.map(id => ({ lesson: file, id, how: 'cited' as const })));
    }
  }
  return { taught, findings };
}

async function toldIn(catalog: Catalog, { joint }: ReadCrosswalk) {
  const obliging = joint.from.entries.filter(e => e.obliges);
  const texts = await readItems(
    catalog,
    joint.from,
    joint.old,
    obliging.map(e => e.id),
  );
  const saying = obliging.flatMap(({ id, title }) => {
    const text = texts.get(id)?.text;
    return text === undefined ? [] : [{ id, title, reading: lightReading(text) }];
  });
  const others = [joint.to.header.name, ...(await listEditions(catalog)).map(h => h.name)];
  return toldFinder(saying, joint.from.header.name, others, number => joint.old.withNumber(number).length > 0);
}

function toldFinding({ joint }: ReadCrosswalk, file: string, { id, passage, text }: ToldItem): Finding {
  const { number, title } = joint.old.get(id)!;
  const shown = text.length > 90 ? `${text.slice(0, 90)}…` : text;
  return {
    rule: 'coverage-told',
    severity: 'note',
    subject: number || title,
    message: `${passage.place ?? `line ${passage.line}`} tells ${`${number} ${title}`.trim()} without its number: ${shown}`,
    place: { file },
  };
}
