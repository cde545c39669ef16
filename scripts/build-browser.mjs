// Puts the pure middle of the program into one plain script, dist/browser/carry.js, for pages that carry files over. A page
// that was opened from a folder can load neither modules nor workers, so the script sets a global to a function: the page
// takes the function's own text for a worker, or calls it where no worker can be had.
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

const root = join(import.meta.dirname, '..');

/** What node gives the csv libraries, and a browser does not. */
const INSTEAD = { stream: join(import.meta.dirname, 'browser-stream.mjs') };
const BYTES = { Buffer: ['buffer/', 'Buffer'] };

/**
 * @param {string} entry the compiled entry, or its source
 * @param {string} out
 * @returns {Promise<boolean>} false where the bundler is not installed; nothing is written then
 */
export async function buildBrowser(
  entry = join(root, 'dist', 'browser', 'carry-engine.js'),
  out = join(root, 'dist', 'browser', 'carry.js'),
) {
  if (!existsSync(join(root, 'node_modules', 'rolldown'))) return false;
  const { rolldown } = await import('rolldown');
  const bundle = await rolldown({
    input: entry,
    cwd: root,
    platform: 'browser',
    // `worker` before all: what a library has for pages may ask a document for help, and a worker has none.
    resolve: { alias: INSTEAD, conditionNames: ['worker', 'browser', 'import', 'default'] },
    transform: { inject: BYTES },
    plugins: [
      {
        // A PDF is never read there, and its reader has megabytes.
        name: 'no-pdf',
        resolveId: id => (id.startsWith('pdfjs-dist') ? { id: '\0no-pdf' } : null),
        load: id => (id === '\0no-pdf' ? 'export {};' : null),
      },
    ],
    onLog: (level, log, defaultHandler) => {
      if (log.code === 'UNRESOLVED_IMPORT') throw new Error(log.message);
      if (log.code !== 'IMPORT_IS_UNDEFINED') defaultHandler(level, log);
    },
  });
  const { output } = await bundle.generate({
    format: 'iife',
    name: 'FishplateCarry',
    minify: true,
    codeSplitting: false,
  });
  await bundle.close();
  await mkdir(dirname(out), { recursive: true });
  // No end tag can come up in it: the text stands in files of its own, never inside a page.
  await writeFile(out, `globalThis.FISHPLATE_CARRY = function () {\n${output[0].code}\nreturn FishplateCarry;\n};\n`);
  return true;
}

if (process.argv[1] === import.meta.filename) {
  if (!(await buildBrowser(...process.argv.slice(2))))
    process.stdout.write('rolldown is not installed; nothing built.\n');
}
