import { type Command, InvalidArgumentError } from 'commander';
import { CAUTION, type LocalVerdict } from '../carryover/governs.ts';
import type { Provision } from '../carryover/local-provisions.ts';
import { governs } from '../commands/governs.ts';
import { readingCatalog } from './context.ts';
import { printJson, printLines, reportFindings } from './print.ts';

interface GovernsOptions {
  readonly place: string;
  readonly date: string;
  readonly type?: string;
  readonly edition?: string;
  readonly json?: boolean;
}

export function addGoverns(program: Command): void {
  program
    .command('governs')
    .description('Which governs at a place on a day: the catalog, a local rule, both, or a variance')
    .argument('<number>', 'a printed number or an id')
    .requiredOption('--place <place>', 'whose local rules and variances, as in local/<place>')
    .requiredOption('--date <date>', 'the day, such as 2024-09-01', calendarDate)
    .option('--type <type>', 'only what holds for this installation type')
    .option('--edition <edition>', 'the edition of the number (default: the one in effect on the day)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Example:
  fishplate governs 4.2.1.2 --edition 2018 --place hollin --date 2023-10-01 --type house

The catalog binds the work that the program pays for. Exit code 1: done, and a person has to decide.`,
    )
    .action(async (number: string, { place, date, type, edition, json }: GovernsOptions, command: Command) => {
      const answer = await governs(await readingCatalog(command), {
        number,
        place,
        date,
        ...(type === undefined ? {} : { type }),
        ...(edition === undefined ? {} : { edition }),
      });
      const undecided = answer.verdicts.filter(v => v.inForce && v.governs === 'person');
      if (json) printJson({ ...answer, caution: CAUTION });
      else printLines([answer.lead, '', ...answer.verdicts.flatMap(told), `CAUTION: ${CAUTION}`]);
      reportFindings([
        ...answer.findings,
        ...undecided.map(v => ({
          rule: 'governs-undecided',
          severity: 'warning' as const,
          subject: v.record.id,
          message: v.why,
        })),
      ]);
    });
}

function told({ record, inForce, why, provisions }: LocalVerdict): string[] {
  return [
    `${record.kind} ${record.place}/${record.id} (${record.state}): ${why}`,
    ...(inForce ? provisions.map(line) : []),
    '',
  ];
}

const WORDS: Readonly<Record<Provision['local'], string>> = {
  stricter: 'asks more here',
  relaxed: 'asks less here',
  same: 'asks the same here',
  adds: 'adds this',
  silent: 'says nothing of this: the catalog binds',
  unclear: 'cannot be compared here: a person decides',
};

function line({ catalog, place, local, contradicts }: Provision): string {
  const sides = [catalog && `catalog "${catalog}"`, place && `local "${place}"`].filter(Boolean).join(' | ');
  return `  The local text ${contradicts ? 'contradicts the catalog: a person decides' : WORDS[local]}: ${sides}`;
}

function calendarDate(text: string): string {
  if (/^\d{4}-\d\d-\d\d$/.test(text) && new Date(`${text}T00:00:00Z`).toISOString().startsWith(text)) return text;
  throw new InvalidArgumentError('Write it as 2024-09-01.');
}
