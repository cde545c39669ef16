import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Command } from 'commander';
import { carryDocs } from '../commands/documents/carry-docs.ts';
import { DEMO_SOURCE, makeDemo } from '../commands/importing/make-demo.ts';
import { carryJobs } from '../commands/jobs/carry-jobs.ts';
import { readEditionTexts } from '../commands/reading/edition-texts.ts';
import { readCrosswalk } from '../commands/reading/read-crosswalk.ts';
import { crosswalkStatistics } from '../crosswalk/statistics.ts';
import { writeCrosswalkCsv } from '../exports/crosswalk-csv.ts';
import { crosswalkLines } from '../exports/crosswalk-lines.ts';
import { CatalogError } from '../model/errors.ts';
import { openCatalog } from '../store/open.ts';
import { docsLines } from './carry-docs.ts';
import { jobsLines } from './carry-jobs.ts';
import { portsOf } from './context.ts';
import { statisticsLines } from './crosswalk.ts';
import { printLines } from './print.ts';

const COURSE = [
  'course/1-storage.md',
  'course/1-handout.docx',
  'course/2-infiltration.html',
  'course/3-paving.docx',
  'course/4-roofs.pptx',
  'course/quiz.md',
  'record/inspection-record.md',
  'checklist/site-checklist.txt',
];

export function addDemo(program: Command): void {
  program
    .command('demo')
    .description('Make the invented demo catalog in a folder and run the main job on it')
    .argument('<dir>', 'folder for it; a demo that is there already is made anew')
    .action(async (dir: string, _options: unknown, command: Command) => {
      const ports = portsOf(command);
      const [works, out] = [join(dir, 'catalog.git'), join(dir, 'out')];
      await makeRoom(dir, [works, out]);
      const editions = await makeDemo(ports, works);
      printLines([
        `The demo catalog (all of it invented) is in ${works}:`,
        ...editions.map(e => `  ${e.edition}: ${e.items} items, ${e.requirements} requirements`),
        '',
      ]);

      const catalog = await openCatalog(works);
      const { joint, marks, findings } = await readCrosswalk(catalog, '2018', '2024');
      const crosswalk = join(out, 'crosswalk-2018-2024.csv');
      await ports.files.write(crosswalk, writeCrosswalkCsv(crosswalkLines(joint, marks)));
      printLines([
        `Crosswalk → ${crosswalk}`,
        ...statisticsLines(crosswalkStatistics(joint)).map(l => `  ${l}`),
        ...findings.map(f => `  Not carried over: ${f.message}`),
        '',
      ]);

      for (const agency of ['upper-vale', 'lower-vale']) {
        const input = join(DEMO_SOURCE, 'jobs', `${agency}.csv`);
        printLines(jobsLines(await carryJobs(ports, joint, marks, { input, out: join(out, `${agency}-2024.csv`) })));
      }
      const lessons = join(out, 'lessons');
      const inputs = COURSE.map(name => join(DEMO_SOURCE, name));
      const docs = await carryDocs(ports, joint, marks, {
        inputs,
        outDir: lessons,
        editions: editions.map(e => e.edition),
        texts: await readEditionTexts(catalog, joint),
      });
      printLines(['', ...docsLines(docs, lessons)]);
    });
}

/** Makes the demo's own folders anew, and touches nothing in a folder that no demo has made. */
async function makeRoom(dir: string, own: readonly string[]): Promise<void> {
  const marker = join(dir, 'made-by-fishplate-demo');
  const names: string[] = await readdir(dir).catch(() => []);
  if (names.length > 0 && !names.includes('made-by-fishplate-demo')) {
    throw new CatalogError('NotEmpty', `${dir} holds other files; name a new or empty folder for the demo.`, { dir });
  }
  for (const folder of own) await rm(folder, { recursive: true, force: true });
  await mkdir(own[1]!, { recursive: true });
  await writeFile(marker, '');
}
