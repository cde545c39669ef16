// A synthetic catalog: 100,000 items in 15,000 files, and a second edition that rewords one requirement in each of 500
// files. It is made once and kept in .cache/bench, since making it takes longer than all that is measured.
import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { settings } from './bench-settings.mjs';
import { againstRivals } from './crosswalk-rivals.mjs';
import { root } from './measure.mjs';

const FILES = 15_000;
const ITEMS = 100_000;
const PARTS = 100;
const CHANGED = 500;

export async function run() {
  const dir = join(root, '.cache', 'bench', `catalog-${ITEMS}.git`);
  if (!existsSync(dir)) await make(dir);
  return againstRivals('100,000 items, 500 files changed', dir, '2018', '2024');
}

async function make(dir) {
  const { openOrCreate } = await import('../../dist/store/open.js');
  const { publishEdition } = await import('../../dist/store/publish.js');
  const unfinished = `${dir}.unfinished`;
  rmSync(unfinished, { recursive: true, force: true });
  const catalog = await openOrCreate(unfinished);
  const author = { name: 'Bench', email: '', date: new Date('2024-01-01T00:00:00Z') };
  const shared = { settings, dates: { published: '2018-01-01' }, lineage: [], decisions: [], oldFileOf: id => id };
  const old = [...items(() => '')];
  await publishEdition(catalog, { ...shared, name: '2018', replaces: null, items: old }, author, 'Edition 2018');
  const every = Math.floor((FILES - PARTS) / CHANGED);
  const reworded = (work, requirement) =>
    requirement === 1 && work % every === 0 && work / every < CHANGED ? ' Twice.' : '';
  const next = [...items(reworded)];
  await publishEdition(catalog, { ...shared, name: '2024', replaces: '2018', items: next }, author, 'Edition 2024');
  renameSync(unfinished, dir);
}

function* items(suffix) {
  const perPart = (FILES - PARTS) / PARTS;
  let left = ITEMS - FILES;
  let work = 0;
  for (let p = 1; p <= PARTS; p++) {
    yield { id: `p${p}`, number: `${p}`, level: 1, parent: null, title: `Part ${p}` };
    for (let w = 1; w <= perPart; w++, work++) {
      const id = `w${work}`;
      yield { id, number: `${p}.${w}`, level: 2, parent: `p${p}`, title: `Work item ${work}` };
      const here = Math.round(left / (FILES - PARTS - work));
      left -= here;
      for (let r = 1; r <= here; r++) {
        const title = `Requirement ${r} of ${work}`;
        const text = `Fix the bracket within ${r * 10} mm of the joint of run ${work}.${suffix(work, r)}`;
        yield { id: `r${work}-${r}`, number: `${p}.${w}.${r}`, level: 3, parent: id, title, text };
      }
    }
  }
}
