import { CommanderError } from 'commander';
import { CatalogError } from '../model/errors.ts';
import { EXIT } from './exit-codes.ts';
import { printFindings } from './print.ts';
import { buildProgram } from './program.ts';

/** Runs one command line; the exit code is left in `process.exitCode`. */
export async function run(args: readonly string[]): Promise<void> {
  try {
    const program = await buildProgram(args);
    await program.parseAsync(args, { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) {
      // Help and version come here as well, with code 0; the message is printed already.
      process.exitCode = error.exitCode === 0 ? EXIT.done : EXIT.couldNot;
    } else if (error instanceof CatalogError) {
      printFindings(error.findings);
      process.stderr.write(`fishplate: ${error.message}\n`);
      process.exitCode = EXIT.couldNot;
    } else {
      process.stderr.write(`fishplate: this is a defect, please report it\n${(error as Error).stack ?? error}\n`);
      process.exitCode = EXIT.defect;
    }
  }
}
