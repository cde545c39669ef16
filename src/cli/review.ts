import type { Command } from 'commander';
import { acceptProposal, proposals } from '../commands/drafts/propose-operations.ts';
import { answerFixedQuestions, readGivenAnswers } from '../commands/releasing/answer-fixed-questions.ts';
import { askFixedQuestions } from '../commands/releasing/ask-fixed-questions.ts';
import { fixedQuestionCsv } from '../commands/releasing/fixed-question-table.ts';
import { type FixedQuestionLine, fixedQuestionProgress } from '../release/fixed-question-lines.ts';
import { REVIEW_QUESTIONS } from '../release/fixed-questions.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { isoDate } from './dates.ts';
import { count, printFindings, printJson, printLines } from './print.ts';

const SHOWN = 15;

/** The fixed questions of an edition review. */
export function addReview(program: Command): void {
  const review = program
    .command('review')
    .description('The fixed questions about every requirement and work item, with the evidence beside each')
    .addHelpText(
      'after',
      `
Examples:
  fishplate review list 2030
  fishplate review list 2030 --part 4 --out part-4.csv      fill in answer and because, then:
  fishplate review read part-4.csv --edition 2030
  fishplate review answer 4.2.3 singular yes --because "one act with two tools" --edition 2030
  fishplate review propose`,
    );

  review
    .command('list <edition>')
    .description('The questions, those first on which an answer is worth most, and how far the review is')
    .option('--part <part>', 'only this part, by its number')
    .option('--open', 'only what nobody has answered')
    .option('--jobs <file>', 'csv with number and state, to count where a requirement did not apply')
    .option('--out <file.csv>', 'write all of them here, to be filled in')
    .option('--json', 'as JSON')
    .action(async (edition: string, options: ListOptions, command: Command) => {
      const ports = portsOf(command);
      const { jobs } = options;
      const read = await askFixedQuestions(ports, await readingCatalog(command), {
        edition,
        ...(jobs ? { jobs } : {}),
      });
      const lines = read.lines
        .filter(l => options.part === undefined || l.part.split(' ')[0] === options.part)
        .filter(l => !options.open || l.state === 'open' || l.state === 'again');
      const progress = fixedQuestionProgress(read.lines);
      printFindings(read.findings);
      if (options.out !== undefined) await ports.files.write(options.out, fixedQuestionCsv(lines));
      if (options.json) return printJson({ progress, lines });
      printLines([
        `${progress.answered} of ${count(progress.asked, 'question')} answered.`,
        ...progress.parts.map(p => `  ${p.answered} of ${p.asked}  ${p.part}`),
        ...progress.reviewers.map(r => `  ${r.answered} by ${r.by}`),
        ...(options.out === undefined
          ? [
              '',
              ...lines.slice(0, SHOWN).flatMap(told),
              ...(lines.length > SHOWN ? [`… and ${lines.length - SHOWN} more; --out writes all.`] : []),
            ]
          : [`${count(lines.length, 'question')} written to ${options.out}.`]),
      ]);
    });

  review
    .command('answer <item> <question> <answer>')
    .description(
      'Answer one question with yes or no, or a drafting rule with intended, under your name, on the texts as they stand',
    )
    .requiredOption('--edition <edition>', 'the draft or edition')
    .option('--because <text>', 'why; a no needs it, and a yes against which something speaks', '')
    .action(
      async (
        item: string,
        question: string,
        answer: string,
        options: { edition: string; because: string },
        command: Command,
      ) => {
        const given = [{ item, question, answer, because: options.because }];
        const { spoke } = await answerFixedQuestions(
          portsOf(command),
          await writingCatalog(command),
          options.edition,
          given,
        );
        const asked = REVIEW_QUESTIONS.find(q => q.rules.includes(question));
        printLines([
          `${item} ${question}: ${answer}.`,
          ...(asked
            ? [`That answers "${asked.asks}" (${asked.code}), against which spoke:`, ...spoke.map(s => `  ${s}`)]
            : []),
        ]);
      },
    );

  review
    .command('read <file>')
    .description('Keep the answers that were filled in to a table of review list --out')
    .requiredOption('--edition <edition>', 'the draft or edition')
    .action(async (file: string, options: { edition: string }, command: Command) => {
      const ports = portsOf(command);
      const given = await readGivenAnswers(ports, file);
      const { answered } = await answerFixedQuestions(ports, await writingCatalog(command), options.edition, given);
      printLines([`${count(answered, 'answer')} kept.`]);
    });

  review
    .command('propose')
    .description('What the evidence suggests to do to a draft, each to be accepted by its key')
    .option('--in <draft>', 'the draft, or a branch of it (default: the only draft)')
    .option('--json', 'as JSON')
    .action(async (options: { in?: string; json?: boolean }, command: Command) => {
      const found = await proposals(portsOf(command), await readingCatalog(command), options.in);
      if (options.json) return printJson(found);
      printLines(
        found.proposals.length === 0
          ? ['Nothing is proposed.']
          : [...found.proposals.map(p => `${p.key}  ${p.told}`), '', 'Do one with: fishplate review accept KEY'],
      );
    });

  review
    .command('accept <key>')
    .description('Do what a proposal says, in one step, under your name')
    .option('--in <draft>', 'the draft, or a branch of it (default: the only draft)')
    .option('--text <text>', 'of a combination: its words instead of all their words')
    .option('--title <title>', 'of a combination: its title')
    .option('--governs <text>', 'of a withdrawal: what governs instead')
    .option('--checked <date>', 'the day on which that was read')
    .addHelpText(
      'after',
      '\nExample:\n  fishplate review accept 3fa21c09 --text "Gutters fall at least 1:200 toward the outlet."',
    )
    .action(async (key: string, options: AcceptOptions, command: Command) => {
      const { text, title, governs, checked } = options;
      const additions = {
        ...(text === undefined ? {} : { text }),
        ...(title === undefined ? {} : { title }),
        ...(governs === undefined ? {} : { governs }),
        ...(checked === undefined ? {} : { governsChecked: isoDate(checked) }),
      };
      const done = await acceptProposal(portsOf(command), await writingCatalog(command), {
        ...(options.in === undefined ? {} : { draft: options.in }),
        key,
        additions,
      });
      printLines(done.done.map(line => `${line}.`));
    });
}

interface ListOptions {
  readonly part?: string;
  readonly open?: boolean;
  readonly jobs?: string;
  readonly out?: string;
  readonly json?: boolean;
}

interface AcceptOptions {
  readonly in?: string;
  readonly text?: string;
  readonly title?: string;
  readonly governs?: string;
  readonly checked?: string;
}

function told(line: FixedQuestionLine): string[] {
  const state =
    line.state === 'again' ? ' (answered, and the text has changed since)' : line.state === 'no' ? ' (no)' : '';
  return [
    `${line.number} ${line.title}: ${line.question.code}${state}. ${line.question.asks}`,
    ...line.evidence.slice(0, 4).map(e => `    ${e}`),
    ...(line.evidence.length > 4 ? [`    … and ${line.evidence.length - 4} more`] : []),
  ];
}
