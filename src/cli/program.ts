import { Command } from 'commander';

/** The names of each file's commands, in the order in which help lists them, and how to load it. */
const COMMANDS: readonly (readonly [names: readonly string[], load: () => Promise<(program: Command) => void>])[] = [
  [['import'], async () => (await import('./import.ts')).addImport],
  [['editions'], async () => (await import('./editions.ts')).addEditions],
  [['check'], async () => (await import('./check.ts')).addCheck],
  [['crosswalk'], async () => (await import('./crosswalk.ts')).addCrosswalk],
  [['match'], async () => (await import('./match.ts')).addMatch],
  [['bundle'], async () => (await import('./bundle.ts')).addBundle],
  [['changes'], async () => (await import('./changes.ts')).addChanges],
  [['compare'], async () => (await import('./compare.ts')).addCompare],
  [['audit'], async () => (await import('./audit.ts')).addAudit],
  [['governs'], async () => (await import('./governs.ts')).addGoverns],
  [['coverage'], async () => (await import('./coverage.ts')).addCoverage],
  [['trace'], async () => (await import('./trace.ts')).addTrace],
  [['cite'], async () => (await import('./cite.ts')).addCite],
  [['carry'], async () => (await import('./carry.ts')).addCarry],
  [['search'], async () => (await import('./search.ts')).addSearch],
  [['people'], async () => (await import('./people.ts')).addPeople],
  [['serve'], async () => (await import('./serve.ts')).addServe],
  [['draft'], async () => (await import('./draft.ts')).addDraft],
  [['publish', 'erratum', 'mint'], async () => (await import('./publishing.ts')).addPublishing],
  [['comments'], async () => (await import('./comments.ts')).addComments],
  [['intake'], async () => (await import('./intake.ts')).addIntake],
  [['review'], async () => (await import('./review.ts')).addReview],
  [['schedule'], async () => (await import('./schedule.ts')).addSchedule],
  [['demo'], async () => (await import('./demo.ts')).addDemo],
];

/**
 * The command line. Only the command that the arguments name is loaded: all of them together take longer to load than
 * a crosswalk takes to compute. Wrong usage throws a CommanderError instead of ending the process.
 */
export async function buildProgram(args: readonly string[]): Promise<Command> {
  const program = new Command('fishplate')
    .description('Carries a catalog of requirements, and the work that depends on it, from one edition to the next.')
    .option('--catalog <dir>', 'the catalog, a bare git repository (default: the nearest one above)')
    .option('--author <name>', 'who writes, as "Name <address>" (default: FISHPLATE_AUTHOR, or the account)')
    .option('--quiet', 'no progress messages')
    .addHelpText(
      'after',
      `
The job, in four lines:
  fishplate import 2018.csv --edition 2018 --catalog works.git
  fishplate import 2024.csv --edition 2024 --catalog works.git --lineage became.csv
  fishplate crosswalk 2018 2024 --catalog works.git --out crosswalk.csv
  fishplate trace 4.2.3 --catalog works.git

Exit codes: 0 done; 1 done, and there are findings; 2 could not be done; 70 a defect.`,
    )
    .showHelpAfterError('(add --help for examples)')
    .exitOverride();
  const asked = COMMANDS.filter(([names]) => names.some(name => args.includes(name)));
  // Help, and a misspelt name that deserves a suggestion, need them all.
  for (const [, load] of asked.length > 0 ? asked : COMMANDS) (await load())(program);
  for (const group of program.commands) {
    const names = group.commands.map(c => c.name());
    if (names.length > 0)
      group.showHelpAfterError(`(${group.name()} has: ${names.join(', ')}; add --help for examples)`);
  }
  return program;
}
