import { Command } from 'commander';
import { addCarry } from './carry.ts';
import { addCheck } from './check.ts';
import { addCrosswalk } from './crosswalk.ts';
import { addDemo } from './demo.ts';
import { addDrafts } from './drafts.ts';
import { addEditions } from './editions.ts';
import { addImport } from './import.ts';
import { addSearch } from './search.ts';
import { addServe } from './serve.ts';
import { addTrace } from './trace.ts';

/** The command line, one file for each command. Wrong usage throws a CommanderError instead of ending the process. */
export function buildProgram(): Command {
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
  const commands = [
    addImport,
    addEditions,
    addCheck,
    addCrosswalk,
    addTrace,
    addCarry,
    addSearch,
    addServe,
    addDrafts,
    addDemo,
  ];
  for (const add of commands) add(program);
  return program;
}
