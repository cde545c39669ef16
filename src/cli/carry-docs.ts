import { type Command, InvalidArgumentError } from 'commander';
import { agencyDecisions } from '../commands/carrying/agency-rules.ts';
import { carryDocs, type DocsReport } from '../commands/documents/carry-docs.ts';
import { readEditionTexts } from '../commands/reading/edition-texts.ts';
import { backwardsFindings, readCrosswalk } from '../commands/reading/read-crosswalk.ts';
import { OUTCOMES } from '../model/citation.ts';
import { listEditions } from '../store/names.ts';
import { portsOf, readingCatalog } from './context.ts';
import { keepAnswered } from './keep-answered.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CarryDocsOptions {
  readonly from: string;
  readonly to: string;
  readonly out: string;
  readonly date?: string;
  readonly decisions?: string;
  readonly decisionsOut?: string;
  readonly agency?: string;
  readonly keepDecisions?: boolean;
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
    .option('--decisions-out <file>', 'write the questions, each once, the largest first: csv or xlsx')
    .option('--decisions <file>', 'apply such a file with answers: carry, stay or drop')
    .option('--agency <name>', 'apply decisions that the catalog keeps for an agency')
    .option('--keep-decisions', 'keep these answers in the catalog, for later runs with the same --agency')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Below the citations the list sets out stale content: values beside a number, quotations, retold sentences and answers of
a quiz that tell what the newer edition no longer asks, with the new text beside. In Word, numbers that are certain are tracked changes by Fishplate, and what a person has to decide is a comment there.

What has to be decided is asked once for all places that cite the same number: fill in answer, heir (numbers with | between
them: all are written), because and by, and run again on the originals. An answer is for all texts; with the name of one
in place of "text" under state it is for that one. Each place keeps the answer as a comment, or in review.md.

Examples:
  fishplate carry docs lesson.md quiz.md --from 2018 --to 2024 --out carried
  fishplate carry docs lesson.docx slides.pptx --from 2018 --to 2024 --out carried --date 2024-03-01
  fishplate carry docs *.docx *.pptx --from 2018 --to 2024 --out carried --decisions-out ask.xlsx
  fishplate carry docs *.docx *.pptx --from 2018 --to 2024 --out carried --decisions ask.xlsx`,
    )
    .action(async (inputs: string[], options: CarryDocsOptions, command: Command) => {
      const catalog = await readingCatalog(command);
      const read = await readCrosswalk(catalog, options.from, options.to);
      const { joint, marks } = read;
      const way = { from: joint.from.header.name, to: joint.to.header.name };
      const { kept, findings } = await agencyDecisions(catalog, options, way);
      const editions = (await listEditions(catalog)).map(h => h.name);
      const report = await carryDocs(portsOf(command), joint, marks, {
        inputs,
        outDir: options.out,
        editions,
        texts: await readEditionTexts(catalog, joint),
        ...(kept ? { kept } : {}),
        ...(options.date === undefined ? {} : { date: options.date }),
        ...(options.decisions === undefined ? {} : { decisions: options.decisions }),
        ...(options.decisionsOut === undefined ? {} : { decisionsOut: options.decisionsOut }),
      });
      if (options.json) printJson(report);
      else printLines(docsLines(report, options.out));
      await keepAnswered(command, options, report.answered);
      reportFindings([...backwardsFindings(read), ...findings, ...report.findings]);
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
  const asked = report.decided.length > 0 ? [] : report.questions.filter(q => q.lines > 1).slice(0, 3);
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
    ...(report.marks.length > 0
      ? [
          `${count(report.marks.length, 'place')} where a text still says that it follows ${report.from}, in the same list.`,
        ]
      : []),
    ...(report.stale.length > 0
      ? [
          `${count(report.stale.length, 'stretch', 'stretches')} that ${report.stale.length === 1 ? 'tells' : 'tell'} what ${report.to} no longer asks, below the citations in the same list.`,
        ]
      : []),
    ...(report.decided.length > 0 ? [`${count(report.decided.length, 'citation')} settled by decisions.`] : []),
    ...(asked.length > 0
      ? [
          `${count(report.questions.length, 'case')} to decide; the largest: ${asked.map(q => `${q.number} (${count(q.lines, 'place')})`).join(', ')}.`,
        ]
      : []),
  ];
}
