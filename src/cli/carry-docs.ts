import type { Command } from 'commander';
import { carryDocs, type DocsReport } from '../commands/carry-docs.ts';
import { readCrosswalk } from '../commands/read-crosswalk.ts';
import { OUTCOMES } from '../model/citation.ts';
import { listEditions } from '../store/names.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CarryDocsOptions {
  readonly from: string;
  readonly to: string;
  readonly out: string;
  readonly json?: boolean;
}

export function addCarryDocs(carry: Command): void {
  carry
    .command('docs')
    .description('Carry the numbers cited in texts: certain ones in place, all others set out for review')
    .argument('<file...>', 'Markdown or plain text')
    .requiredOption('--from <edition>', 'the edition that the texts cite, where they do not say')
    .requiredOption('--to <edition>', 'the edition to carry them to')
    .requiredOption('--out <dir>', 'folder for the carried copies, review.md and review.json')
    .option('--json', 'report as JSON')
    .addHelpText('after', '\nExample:\n  fishplate carry docs lesson.md quiz.md --from 2018 --to 2024 --out carried')
    .action(async (inputs: string[], options: CarryDocsOptions, command: Command) => {
      const catalog = await readingCatalog(command);
      const { joint, marks } = await readCrosswalk(catalog, options.from, options.to);
      const editions = (await listEditions(catalog)).map(h => h.name);
      const report = await carryDocs(portsOf(command), joint, marks, { inputs, outDir: options.out, editions });
      if (options.json) printJson(report);
      else printLines(docsLines(report, options.out));
      reportFindings(report.findings);
    });
}

/** What happened to documents, a line each. */
export function docsLines(report: DocsReport, outDir: string): string[] {
  return [
    ...report.documents.map(d => {
      if (d.leftAlone) return `${d.input}: carried already and untouched since; left alone.`;
      const outcomes = OUTCOMES.filter(o => d.outcomes[o] > 0).map(o => `${o} ${d.outcomes[o]}`);
      return `${d.input} → ${d.out}: ${outcomes.join(', ') || 'nothing cited'}${d.record ? '; a signed record, copied as it is' : `; ${count(d.rewritten, 'number')} rewritten`}.`;
    }),
    ...(report.review.length > 0
      ? [`${count(report.review.length, 'citation')} for a person to look at, in ${outDir}: review.md and review.json.`]
      : []),
  ];
}
