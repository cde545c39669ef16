// node scripts/kill/main.mjs [KILLS=1000] [SEED=1] [--json]: kills real processes of ours while they write, and judges
// what they leave behind. Needs a built dist/. The same seed draws the same operations and the same parts of the writing
// at which to kill. Exit code 1 where anything is not as it should be.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { judge, visible } from './judge.mjs';
import { runAndKill } from './kill-once.mjs';
import { copyOf, layOut } from './operations.mjs';

const numbers = process.argv.slice(2).filter(a => /^\d+$/.test(a));
const [kills, seed] = [Number(numbers[0] ?? 1000), Number(numbers[1] ?? 1)];
const json = process.argv.includes('--json');
const folder = mkdtempSync(join(tmpdir(), 'fishplate-kill-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
const random = seeded(seed);

const operations = [];
for (const operation of layOut(folder)) operations.push(await measured(operation));

const counts = Object.fromEntries(operations.map(o => [o.name, zero()]));
const wrong = [];
for (let n = 0; n < kills; n++) {
  const operation = operations[n % operations.length];
  const part = random();
  const dead = join(folder, `dead-${n}`);
  copyOf(operation.start, dead);
  const { killed } = await runAndKill(dead, operation.args, part * operation.wrote);
  const { state, traces, lock, wrong: found } = judge(dead, operation);
  const row = counts[operation.name];
  row.kills++;
  row[state]++;
  if (killed) row.killed++;
  if (traces) row.traces++;
  if (lock) row.locks++;
  for (const what of found) wrong.push({ kill: n, operation: operation.name, part, what });
  rmSync(dead, { recursive: true, force: true });
  if (!json && (n + 1) % 100 === 0) process.stderr.write(`${n + 1} kills, ${wrong.length} wrong …\n`);
}
report();

/** An operation with what it makes of its catalog, and how long it writes (the median of three). */
async function measured(operation) {
  const before = visible(operation.start);
  const times = [];
  let after = before;
  for (let n = 0; n < 3; n++) {
    const whole = join(folder, 'whole');
    copyOf(operation.start, whole);
    const { status, wrote } = await runAndKill(whole, operation.args);
    if (status !== 0) throw new Error(`${operation.name} ended with ${status} though nothing killed it`);
    times.push(wrote);
    after = visible(whole);
    rmSync(whole, { recursive: true });
  }
  return { ...operation, before, after, wrote: times.sort((a, b) => a - b)[1] };
}

function report() {
  process.exitCode = wrong.length > 0 ? 1 : 0;
  if (json) {
    process.stdout.write(`${JSON.stringify({ kills, seed, counts, wrong }, null, 2)}\n`);
    return;
  }
  for (const { name, wrote } of operations) {
    const { kills: of, killed, before, between, after, neither, traces, locks } = counts[name];
    process.stdout.write(
      `${name}: writes for ${Math.round(wrote)} ms; ${killed} of ${of} killed before their end; ` +
        `found as before ${before}, between ${between}, as after ${after}, neither ${neither}; ` +
        `half-written files or locks left by ${traces}, locks by ${locks}\n`,
    );
  }
  for (const { kill, operation, part, what } of wrong) {
    process.stdout.write(`kill ${kill} (${operation}, at ${part.toFixed(4)} of its writing): ${what}\n`);
  }
  process.stdout.write(`${kills} kills, seed ${seed}: ${wrong.length} wrong.\n`);
}

function zero() {
  return { kills: 0, killed: 0, before: 0, between: 0, after: 0, neither: 0, traces: 0, locks: 0 };
}

/** mulberry32: numbers from 0 to 1, the same for the same seed. */
function seeded(start) {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
