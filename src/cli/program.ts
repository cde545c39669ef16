import { Command } from 'commander';
import { addCrosswalk } from './crosswalk.ts';
import { addImport } from './import.ts';
import { addTrace } from './trace.ts';

/** The command line, one file for each command. */
export function buildProgram(): Command {
  const program = new Command('fishplate')
    .description('Carries a catalog of requirements, and the work that depends on it, from one edition to the next.')
    .option('--catalog <dir>', 'the catalog, a bare git repository (default: the nearest one above)')
    .option('--author <name>', 'who writes, as "Name <address>" (default: FISHPLATE_AUTHOR, or the account)')
    .option('--quiet', 'no progress messages')
    .showHelpAfterError('(add --help for examples)')
    .configureHelp({ sortSubcommands: false });
  for (const add of [addImport, addCrosswalk, addTrace]) add(program);
  return program;
}
