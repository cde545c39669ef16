import type { Command } from 'commander';
import { coverLessons } from '../commands/cover-lessons.ts';
import { portsOf, readingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface CoverageOptions {
  readonly from: string;
  readonly to: string;
  readonly out?: string;
  readonly json?: boolean;
}

export function addCoverage(program: Command): void {
  program
    .command('coverage')
    .description('Lessons against requirements: what nobody teaches, what is gone, what to reopen')
    .argument('<file...>', 'lessons: md, txt, html, docx, pptx, pdf')
    .requiredOption('--from <edition>', 'the edition that the lessons teach')
    .requiredOption('--to <edition>', 'the edition to teach from now on')
    .option('--out <file>', 'a line for each requirement (csv, or xlsx by its ending)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Example:
  fishplate coverage lesson.md slides.pptx --from 2018 --to 2024 --out coverage.xlsx

to_do  keep, reopen (the duty changed), teach (nobody does), drop (withdrawn), keep-law (withdrawn, still due under
       what governs instead), person (no record)

Only citations are seen: what a lesson teaches without a number counts as not taught.`,
    )
    .action(async (inputs: string[], { from, to, out, json }: CoverageOptions, command: Command) => {
      const report = await coverLessons(portsOf(command), await readingCatalog(command), {
        inputs,
        from,
        to,
        ...(out === undefined ? {} : { out }),
      });
      const n = (toDo: keyof typeof report.counts) => report.counts[toDo] ?? 0;
      const duties = ['stricter', 'relaxed', 'mixed', 'unclear'].map(
        d => `${d} ${report.lines.filter(l => l.toDo === 'reopen' && l.duty === d).length}`,
      );
      const total = report.minutes.reduce((sum, m) => sum + m.minutes, 0);
      if (json) printJson(report);
      else
        printLines([
          `${report.from} → ${report.to}: ${n('keep')} to keep, ${n('reopen')} to reopen (${duties.join(', ')}), ${n('drop')} gone, ${n('keep-law')} gone but due under what governs instead, ${n('teach')} that nobody teaches, ${n('person')} without a record.`,
          report.minutes.length === 0
            ? 'No lesson states its time.'
            : `${total} minutes stated by ${count(report.minutes.length, 'lesson')} of ${inputs.length}.`,
          ...(out === undefined ? [] : [`Written to ${out}.`]),
        ]);
      reportFindings(report.findings);
    });
}
