import type { Command } from 'commander';
import { coverLessons } from '../commands/documents/cover-lessons.ts';
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
    .option('--out <file>', 'a line for each requirement (csv, xlsx), or a page with a picture (html), by its ending')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Example:
  fishplate coverage lesson.md slides.pptx --from 2018 --to 2024 --out coverage.html

to_do  keep, reopen (the duty changed), teach (nobody does), drop (withdrawn), keep-law (withdrawn, still due under
       what governs instead), person (no record), mentioned (cited is its whole part, "see Part 3", and nothing
       nearer: that teaches none of its items)

A table has the minutes that the lessons of each line state together ("Time: 45 minutes", "hours: 1.5", headings such as
"Slides (1.5 h)", one below another counted once); a workbook has a sheet with a line for each lesson too.

A lesson teaches what it cites, and what it tells without a number in much the same words as the catalog; the notes say
where. What it tells in words far from the catalog's own counts as not taught.`,
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
      const told = report.lines.filter(l => l.how === 'told').length;
      const total = report.minutes.reduce((sum, m) => sum + m.minutes, 0);
      if (json) printJson(report);
      else
        printLines([
          `${report.from} → ${report.to}: ${n('keep')} to keep, ${n('reopen')} to reopen (${duties.join(', ')}), ${n('drop')} gone, ${n('keep-law')} gone but due under what governs instead, ${n('teach')} that nobody teaches, ${n('mentioned')} mentioned with their whole part only, ${n('person')} without a record.`,
          report.minutes.length === 0
            ? 'No lesson states its time.'
            : `${total} minutes stated by ${count(report.minutes.length, 'lesson')} of ${inputs.length}.`,
          ...(told === 0 ? [] : [`${count(told, 'of these is', 'of these are')} told in words, without a number.`]),
          ...(out === undefined ? [] : [`Written to ${out}.`]),
        ]);
      reportFindings(report.findings);
    });
}
