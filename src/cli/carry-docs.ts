import { type Command, InvalidArgumentError } from 'commander';
import { carryDocs, type DocsReport } from '../commands/carry-docs.ts';
import { readEditionTexts } from '../commands/edition-texts.ts';
import { readCrosswalk } from '../commands/read-crosswalk.ts';
import { OUTCOMES } from '../model/citation.ts';
import { listEditions } from '../store/names.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CarryDocsOptions {
  readonly from: string;
  readonly to: string;
  readonly out: string;
  readonly date?: string;
  readonly json?: boolean;
}

export function addCarryDocs(carry: Command): void {
  carry
    .command('docs')
    .description('Carry the numbers cited in texts: certain ones in place, all others set out for review')
    .argument('<file...>', 'md, txt, html, docx, pptx; a pdf is only read')
    .requiredOption('--from <edition>', 'the edition that the texts cite, where they do not say')
    .requiredOption('--to <edition>', 'the edition to carry them to')
    .requiredOption('--out <dir>', 'folder for the carried copies, review.md and review.json')
    .option('--date <when>', 'date of the changes in Word, such as 2024-03-01; without it they bear none', changeDate)
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Below the citations the list sets out stale content: values beside a number, quotations, retold sentences and answers of
a quiz that tell what the newer edition no longer asks, with the new text beside. In Word, numbers that are certain are tracked changes by Fishplate, and what a person has to decide is a comment there.

Examples:
  fishplate carry docs lesson.md quiz.md --from 2018 --to 2024 --out carried
  fishplate carry docs lesson.docx slides.pptx --from 2018 --to 2024 --out carried --date 2024-03-01`,
    )
    .action(async (inputs: string[], options: CarryDocsOptions, command: Command) => {
      const catalog = await readingCatalog(command);
      const { joint, marks } = await readCrosswalk(catalog, options.from, options.to);
      const editions = (await listEditions(catalog)).map(h => h.name);
      const report = await carryDocs(portsOf(command), joint, marks, {
        inputs,
        outDir: options.out,
        editions,
        texts: await readEditionTexts(catalog, joint),
        ...(options.date === undefined ? {} : { date: options.date }),
      });
      if (options.json) printJson(report);
      else printLines(docsLines(report, options.out));
      reportFindings(report.findings);
    });
}

function changeDate(written: string): string {
  const whole = /^\d{4}-\d\d-\d\d$/.test(written) ? `${written}T00:00:00Z` : written;
  const isDate = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/.test(whole) && !Number.isNaN(Date.parse(whole));
  if (!isDate) throw new InvalidArgumentError('Write it as 2024-03-01 or 2024-03-01T09:30:00Z.');
  return whole;
}

/** What happened to documents, a line each. */
export function docsLines(report: DocsReport, outDir: string): string[] {
  return [
    ...report.documents.map(d => {
      if (d.leftAlone) return `${d.input}: carried already and untouched since; left alone.`;
      const outcomes = OUTCOMES.filter(o => d.outcomes[o] > 0).map(o => `${o} ${d.outcomes[o]}`);
      const told = outcomes.join(', ') || 'nothing cited';
      if (d.out === undefined) return `${d.input}: ${told}; only read, what changes is in the review list.`;
      const done = d.record ? 'a signed record, copied as it is' : `${count(d.rewritten, 'number')} rewritten`;
      return `${d.input} → ${d.out}: ${told}; ${done}.`;
    }),
    ...(report.review.length > 0
      ? [`${count(report.review.length, 'citation')} for a person to look at, in ${outDir}: review.md and review.json.`]
      : []),
  ];
}
