#!/usr/bin/env node
import { EXIT } from './exit-codes.ts';
import { run } from './run.ts';

process.stdout.on('error', error => {
  // A reader such as `head` that closes the pipe is no defect.
  if ((error as NodeJS.ErrnoException).code === 'EPIPE') process.exit(EXIT.done);
  throw error;
});

await run(process.argv.slice(2));
