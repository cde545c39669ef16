import { type CoverageLine, coverageOf, type Taught, type ToTeach } from '../carryover/coverage.ts';
import { minutesStated } from '../carryover/lesson-time.ts';
import { readDocument } from '../documents/read-document.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Catalog } from '../store/open.ts';
import { writeCsv } from '../tables/write-csv.ts';
import { writeXlsx } from '../tables/write-xlsx.ts';
import { citeFiles } from './cite-files.ts';
import type { Ports } from './ports.ts';
import { readCrosswalk } from './read-crosswalk.ts';

export interface CoverageReport {
  readonly from: string;
  readonly to: string;
  readonly lines: readonly CoverageLine[];
  readonly counts: Readonly<Partial<Record<ToTeach, number>>>;
  /** Minutes of the lessons that state them. */
  readonly minutes: readonly { readonly lesson: string; readonly minutes: number }[];
  readonly findings: readonly Finding[];
}

/** Sets lessons beside the requirements of two editions; a table is written to `out` (csv or xlsx) where that is given. */
export async function coverLessons(
  ports: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  {
    inputs,
    from,
    to,
    out,
  }: { readonly inputs: readonly string[]; readonly from: string; readonly to: string; readonly out?: string },
): Promise<CoverageReport> {
  if (out !== undefined && !/\.(csv|xlsx)$/i.test(out)) {
    throw new CatalogError('BadArgument', `${out} is neither csv nor xlsx; name --out coverage.csv or coverage.xlsx.`, {
      out,
    });
  }
  const { joint, marks, backwards } = await readCrosswalk(catalog, from, to);
  if (backwards)
    throw new CatalogError('BadArgument', `${to} is older than ${from}; name the older edition with --from.`, {
      from,
      to,
    });
  const cited = await citeFiles(ports, catalog, { inputs, edition: from });
  const name = joint.from.header.name;
  const taught: Taught[] = [];
  const findings: Finding[] = [];
  for (const { file, place, numbers, edition, certain, text } of cited) {
    const place1 = { file };
    if (edition !== name) {
      findings.push({
        rule: 'coverage-edition',
        severity: 'note',
        subject: text,
        message: `${place}: ${text} is cited of ${edition}, not of ${name}, and is not counted.`,
        place: place1,
      });
      continue;
    }
    if (!certain) {
      findings.push({
        rule: 'coverage-doubt',
        severity: 'warning',
        subject: text,
        message: `${place}: ${text} may be no citation and is not counted; say so beside it if it is.`,
        place: place1,
      });
      continue;
    }
    for (const number of numbers) for (const { id } of joint.old.withNumber(number)) taught.push({ lesson: file, id });
  }
  const minutes: { lesson: string; minutes: number }[] = [];
  for (const lesson of inputs) {
    const { passages } = await readDocument(lesson, await ports.files.read(lesson));
    const stated = minutesStated(passages.map(p => p.text));
    if (stated !== undefined) minutes.push({ lesson, minutes: stated });
  }
  const lines = coverageOf(joint, marks, taught);
  const counts: Partial<Record<ToTeach, number>> = {};
  for (const { toDo } of lines) counts[toDo] = (counts[toDo] ?? 0) + 1;
  if (out !== undefined) {
    const [header, ...rows] = tableOf(lines, name, joint.to.header.name);
    const table = /\.xlsx$/i.test(out)
      ? writeXlsx([{ name: 'Coverage', header: header!, rows }])
      : writeCsv([header!, ...rows]);
    await ports.files.write(out, table);
  }
  return { from: name, to: joint.to.header.name, lines, counts, minutes, findings };
}

function tableOf(lines: readonly CoverageLine[], from: string, to: string): string[][] {
  return [
    ['lessons', `number_${from}`, `title_${from}`, `number_${to}`, `title_${to}`, 'to_do', 'duty', 'why'],
    ...lines.map(l => [
      l.lessons.join('; '),
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
