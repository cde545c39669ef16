import type { Command } from 'commander';
import { CAUTION, type LocalVerdict } from '../carryover/local/governs.ts';
import type { Provision } from '../carryover/local/local-provisions.ts';
import { governs } from '../commands/local/governs.ts';
import { governsAll } from '../commands/local/governs-all.ts';
import { dayOf } from '../model/day.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog } from './context.ts';
import { dateOption } from './dates.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface GovernsOptions {
  readonly place?: string;
  readonly date?: string;
  readonly all?: boolean;
  readonly to?: string;
  readonly type?: string;
  readonly edition?: string;
  readonly json?: boolean;
}

export function addGoverns(program: Command): void {
  program
    .command('governs')
    .description('Which governs at a place on a day: the catalog, a local rule, both, or a variance')
    .argument('[number]', 'a printed number or an id')
    .option('--place <place>', 'whose local rules and variances, as in local/<place>')
    .option('--date <date>', 'the day, such as 2024-09-01', dateOption)
    .option('--all', 'each local rule and variance: does it still stand beside an edition (default: the newest)')
    .option('--to <edition>', 'with --all: the edition')
    .option('--type <type>', 'only what holds for this installation type')
    .option('--edition <edition>', 'the edition of the number (default: the one in effect on the day)')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate governs 4.2.1.2 --edition 2018 --place hollin --date 2023-10-01 --type house
  fishplate governs --all --to 2024 --date 2024-07-01

The catalog binds the work that the program pays for. Exit code 1: done, and a person has to decide.`,
    )
    .action(async (number: string | undefined, options: GovernsOptions, command: Command) => {
      refuseIgnored(number, options);
      if (options.all) return all(options, command);
      const { place, date, type, edition, json } = options;
      if (number === undefined || place === undefined || date === undefined) {
        throw new CatalogError(
          'BadArgument',
          'Name a number, a place and a day: governs 4.2.1.2 --place hollin --date 2023-10-01; or use --all.',
        );
      }
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

/** `--all` reads every local rule beside one edition, a number is asked of one place: neither passes over an argument. */
function refuseIgnored(number: string | undefined, { all, place, type, edition, to }: GovernsOptions): void {
  const refuse = (message: string) => {
    throw new CatalogError('BadArgument', message);
  };
  if (!all) {
    if (to !== undefined) refuse(`--to goes with --all; the edition of a number is named with --edition ${to}.`);
    return;
  }
  if (number !== undefined) refuse(`--all reads every local rule; leave out ${number}, or leave out --all.`);
  if (edition !== undefined) refuse(`With --all the edition is named with --to ${edition}; leave out --edition.`);
  for (const [name, value] of [
    ['place', place],
    ['type', type],
  ]) {
    if (value !== undefined)
      refuse(`--all reads the local rules of all places and types; leave out --${name} ${value}.`);
  }
}

async function all({ to, date, json }: GovernsOptions, command: Command): Promise<void> {
  const day = date ?? dayOf(portsOf(command).now());
  const report = await governsAll(await readingCatalog(command), { date: day, ...(to === undefined ? {} : { to }) });
  const asked = report.standings.filter(s => s.standing !== 'stands' && s.standing !== 'not in force');
  if (json) printJson(report);
  else {
    printLines([
      `On ${day}, ${asked.length} of ${count(report.standings.length, 'local rule or variance', 'local rules and variances')} need a person beside ${report.edition}.`,
      ...report.standings.map(
        ({ record, standing, why, heirs }) =>
          `${standing.padEnd(12)} ${record.place}/${record.id}  ${record.cites.edition} ${record.cites.number} → ${heirs.join(', ') || 'nothing'}  ${why}`,
      ),
    ]);
  }
  reportFindings([
    ...report.findings,
    ...asked.map(s => ({
      rule: `local-${s.standing}`,
      severity: 'warning' as const,
      subject: s.record.id,
      message: s.why,
    })),
  ]);
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
