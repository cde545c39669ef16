// npm run bench [NAME…]: prints the table of all benches, or of those named. Needs a built dist/; each bench stands in
// its own file and exports run(), which gives a row or several: { name, ours, rival, ratio, note, aim? }, in seconds.
import { readdirSync } from 'node:fs';
import { cpus, platform, release } from 'node:os';

const AIMS = { jobs: '1.5' };
const PARTS = ['bench-settings', 'main', 'measure', 'objects-read', 'bare-read', 'crosswalk-rivals'];
const asked = process.argv.slice(2);
const names = readdirSync(import.meta.dirname)
  .filter(file => file.endsWith('.mjs'))
  .map(file => file.slice(0, -'.mjs'.length))
  .filter(name => !PARTS.includes(name) && (asked.length === 0 || asked.includes(name)));

process.stdout.write('| work | ours | rival | ratio | aim | note |\n|---|---|---|---|---|---|\n');
for (const name of names) {
  const { run } = await import(`./${name}.mjs`);
  for (const row of [await run()].flat()) {
    const cells = [
      row.name,
      seconds(row.ours),
      seconds(row.rival),
      number(row.ratio),
      row.aim ?? AIMS[name] ?? '',
      row.note,
    ];
    process.stdout.write(`| ${cells.join(' | ')} |\n`);
  }
}
const [cpu] = cpus();
process.stdout.write(
  `\n${cpu?.model.trim()} × ${cpus().length}, ${platform()} ${release()}, node ${process.version}, ${new Date().toISOString().slice(0, 10)}. ` +
    'Medians of five where one run takes under 10 s; process cold, disk cache warm.\n',
);

function seconds(value) {
  return value === undefined ? '' : `${value.toFixed(value < 1 ? 3 : 2)} s`;
}

function number(value) {
  return value === undefined ? '' : value.toFixed(2);
}
