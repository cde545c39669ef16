// The viewer under load: 200 requests a second for ten seconds from this process to one that serves a catalog of 3,000
// requirements, pages and suggestions mixed; against a bare express that sends the same bytes from memory, in a process
// of its own as well. Needs a built dist/. Only loopback is asked, 2,000 times each.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { Agent, get } from 'node:http';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { settings } from './bench-settings.mjs';

const DIST = process.env.FISHPLATE_DIST ?? join(import.meta.dirname, '..', '..', 'dist');
const SELF = fileURLToPath(import.meta.url);
const A_SECOND = 200;
const SECONDS = 10;
const PARTS = 12;
const WORKS = 25;
const EACH = 10;
const PATHS = [
  '/',
  '/search?q=3.4.2',
  '/search?q=bracket+joint',
  '/suggest?q=3.4',
  '/suggest?q=requirement+2',
  '/at/2018/3.4.2',
  '/at/2024/5.1.1',
  '/edition/2024',
  '/crosswalk/2018/2024',
  '/crosswalk/2018/2024?mark=reworded',
  '/crosswalk/2018/2024?page=12',
  '/style.css',
];

/** @returns {Promise<{name: string, ours: number, rival: number, ratio: number, note: string}>} seconds, p99 */
export async function run() {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-viewer-'));
  const running = [];
  try {
    const dir = await makeCatalog(join(folder, 'catalog.git'));
    const viewer = start([join(DIST, 'cli', 'main.js'), 'serve', '--port', '0', '--catalog', dir]);
    running.push(viewer);
    const began = performance.now();
    const ours = await viewer.address;
    const ready = (performance.now() - began) / 1000;
    const pages = {};
    for (const path of PATHS) {
      const { body, type } = await ask(ours, path);
      pages[path] = { type, body: body.toString() };
    }
    const lookup = await ask(ours, '/lookup');
    const file = join(folder, 'pages.json');
    writeFileSync(file, JSON.stringify(pages));
    const copy = start([SELF, file]);
    running.push(copy);
    const theirs = await copy.address;

    const busy = loadavg()[0];
    const [us, them] = [await load(ours), await load(theirs)];
    const told = ({ failed, seconds, p50, p99, most }) =>
      `${failed} of ${A_SECOND * SECONDS} failed, ${seconds.toFixed(1)} s, p50 ${ms(p50)}, p99 ${ms(p99)}, longest ${ms(most)}`;
    const weight = path => `${path} ${kB(pages[path].body.length)} kB`;
    return {
      name: `the viewer, ${A_SECOND} requests a second, ${PARTS * WORKS * EACH} requirements, p99`,
      ours: us.p99,
      rival: them.p99,
      ratio: us.p99 / them.p99,
      note: `ours ${told(us)}; bare express with the same bytes ${told(them)}; ratio of p50 ${(us.p50 / them.p50).toFixed(1)}; listens after ${ready.toFixed(1)} s; ${weight('/crosswalk/2018/2024')}, ${weight('/at/2018/3.4.2')}, /lookup ${kB(lookup.body.length)} kB made in ${(lookup.took / 1000).toFixed(1)} s; load before ${busy.toFixed(1)}`,
    };
  } finally {
    for (const { stop } of running) stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Sends at the rate that was asked for, whether or not answers keep up: waiting for them would hide a slow server. */
async function load(address) {
  const agent = new Agent({ keepAlive: true, maxSockets: 64 });
  const asked = [];
  const began = performance.now();
  for (let sent = 0; sent < A_SECOND * SECONDS; sent++) {
    const due = began + (sent * 1000) / A_SECOND;
    const wait = due - performance.now();
    if (wait > 0) await new Promise(resolve => setTimeout(resolve, wait));
    asked.push(ask(address, PATHS[sent % PATHS.length], agent).catch(() => ({ status: 0, took: 0 })));
  }
  const answers = await Promise.all(asked);
  const seconds = (performance.now() - began) / 1000;
  agent.destroy();
  const times = answers.map(a => a.took / 1000).sort((a, b) => a - b);
  const at = share => times[Math.min(times.length - 1, Math.floor(times.length * share))];
  return { failed: answers.filter(a => a.status !== 200).length, seconds, p50: at(0.5), p99: at(0.99), most: at(1) };
}

function ask(address, path, agent) {
  const began = performance.now();
  return new Promise((resolve, reject) => {
    get(`${address.replace(/\/$/, '')}${path}`, { agent }, response => {
      const parts = [];
      response.on('data', part => parts.push(part));
      response.on('end', () =>
        resolve({
          status: response.statusCode,
          type: response.headers['content-type'],
          took: performance.now() - began,
          body: Buffer.concat(parts),
        }),
      );
    }).on('error', reject);
  });
}

/** A process that prints its address when it listens. */
function start(args) {
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'ignore'] });
  const address = new Promise((resolve, reject) => {
    child.stdout.on('data', text => {
      const found = /http:\/\/\S+/.exec(text);
      if (found) resolve(found[0]);
    });
    child.on('exit', code => reject(new Error(`${args.join(' ')} ended with ${code}`)));
  });
  return { address, stop: () => child.kill() };
}

/** The rival: the same bytes for the same paths, and nothing else. */
async function sendCopies(file) {
  const { default: express } = await import('express');
  const pages = new Map(Object.entries(JSON.parse(readFileSync(file, 'utf8'))));
  const app = express();
  app.use((request, response) => {
    const page = pages.get(request.originalUrl);
    response.type(page.type).send(page.body);
  });
  const server = app.listen(0, '127.0.0.1', () => {
    process.stdout.write(`http://127.0.0.1:${server.address().port}\n`);
  });
}

/** Two editions; every fifth requirement is reworded in the newer one, every tenth is merged with the one before. */
async function makeCatalog(dir) {
  const load = file => import(pathToFileURL(join(DIST, file)).href);
  const [{ openOrCreate }, { publishEdition }] = [await load('store/open.js'), await load('store/publish.js')];
  const catalog = await openOrCreate(dir);
  const author = { name: 'Bench', email: '', date: new Date('2024-01-01T00:00:00Z') };
  const shared = { settings, dates: { published: '2018-01-01' }, decisions: [], oldFileOf: id => id };
  const old = [...items(false)];
  const merged = new Set(old.filter(i => i.level === 3 && i.id.endsWith('-10')).map(i => i.id));
  const lineage = [...merged].map(id => ({
    from: id,
    reason: 'one duty each',
    basis: 'declared',
    heirs: [{ to: id.replace(/-10$/, '-9'), fromExtent: 'all', toExtent: 'part' }],
  }));
  await publishEdition(catalog, { ...shared, name: '2018', replaces: null, items: old, lineage: [] }, author, '2018');
  const next = [...items(true)].filter(i => !merged.has(i.id));
  await publishEdition(catalog, { ...shared, name: '2024', replaces: '2018', items: next, lineage }, author, '2024');
  return dir;
}

function* items(newer) {
  for (let p = 1; p <= PARTS; p++) {
    yield { id: `p${p}`, number: `${p}`, level: 1, parent: null, title: `Part ${p}` };
    for (let w = 1; w <= WORKS; w++) {
      const work = `w${p}-${w}`;
      yield { id: work, number: `${p}.${w}`, level: 2, parent: `p${p}`, title: `Work item ${w} of part ${p}` };
      for (let r = 1; r <= EACH; r++) {
        const title = `Requirement ${r} of ${work}`;
        const limit = newer && r % 5 === 0 ? r * 8 : r * 10;
        const text = `Fix the bracket of run ${w} within ${limit} mm of the joint and not less than ${p * 20} mm above the channel.`;
        yield { id: `r${p}-${w}-${r}`, number: `${p}.${w}.${r}`, level: 3, parent: work, title, text };
      }
    }
  }
}

const ms = seconds => `${(seconds * 1000).toFixed(1)} ms`;
const kB = bytes => Math.round(bytes / 1000);

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (process.argv[2]) await sendCopies(process.argv[2]);
  else process.stdout.write(`${JSON.stringify(await run(), null, 2)}\n`);
}
