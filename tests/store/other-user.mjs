// Runs the command lines that it is sent, one after the other, and answers each with { status, stderr }. The process is
// another user's: one for all lines, since a start takes longer than what any of them does.
import { run } from '../../dist/cli/run.js';

process.on('message', async args => {
  let stderr = '';
  process.stdout.write = () => true;
  process.stderr.write = piece => {
    stderr += piece;
    return true;
  };
  process.exitCode = 0;
  await run(['--quiet', ...args]);
  process.send({ status: process.exitCode, stderr });
});
