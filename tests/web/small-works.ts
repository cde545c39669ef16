import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDraft } from '../../src/commands/drafts/open-draft.ts';
import type { Item } from '../../src/model/item.ts';
import type { NumberStyle, Settings } from '../../src/model/settings.ts';
import { openOrCreate } from '../../src/store/open.ts';
import { publishEdition } from '../../src/store/publish.ts';
import { testPorts } from '../demo-catalog.ts';

/** Titles of requirements that stories name; all others are called by their number. */
const TITLES: Readonly<Record<string, string>> = {
  '1.2.1': 'Outlet',
  '1.2.2': "Neighbour's land",
  '2.1.1': 'Place of the pits',
};

/**
 * A catalog that is quick to work on: three parts with two work items of three requirements each, the edition 2018 with
 * printed numbers, 2024 that says the same and is numbered by place, and a draft 2030. Remove the folder around it.
 */
export async function smallWorks(): Promise<string> {
  const dir = join(mkdtempSync(join(tmpdir(), 'fishplate-small-')), 'works.git');
  const catalog = await openOrCreate(dir);
  const author = { name: 'Steward', email: 'steward@example.org', date: new Date('2024-01-01T00:00:00Z') };
  const edition = { items: [...items()], lineage: [], decisions: [], oldFileOf: (id: string) => id };
  const first = { ...edition, name: '2018', replaces: null, dates: { published: '2018-01-01' } };
  await publishEdition(catalog, { ...first, settings: settings('printed') }, author, 'Edition 2018');
  const second = { ...edition, name: '2024', replaces: '2018', dates: { published: '2024-01-01' } };
  await publishEdition(catalog, { ...second, settings: settings('decimal') }, author, 'Edition 2024');
  await openDraft(testPorts(), catalog, { name: '2030' });
  return dir;
}

const settings = (style: NumberStyle): Settings => ({
  title: 'Small works',
  language: 'en',
  levels: [{ name: 'Part' }, { name: 'Work item' }, { name: 'Requirement', obliges: true }],
  fileLevel: 2,
  numbering: { levels: [1, 2, 3].map(n => (n === 1 ? { style } : { style, separator: '.' })), numbersUnique: true },
  installationTypes: [
    { id: 'house', name: 'House lot' },
    { id: 'terrace', name: 'Terrace row' },
  ],
  withdrawalReasons: [{ code: 'obsolete', meaning: 'no longer used' }],
});

function* items(): Generator<Item> {
  const three = [1, 2, 3];
  for (const part of three) {
    const a = String(part);
    yield { id: `p${a}`, number: a, level: 1, parent: null, title: `Part ${a}` };
    for (const work of [1, 2]) {
      const b = `${a}.${work}`;
      yield { id: `w${b}`, number: b, level: 2, parent: `p${a}`, title: `Work ${b}` };
      for (const line of three) {
        const c = `${b}.${line}`;
        const text = `Set bracket ${line} of work ${b} at least ${line}0 mm deep.`;
        yield { id: `r${c}`, number: c, level: 3, parent: `w${b}`, title: TITLES[c] ?? `Bracket ${c}`, text };
      }
    }
  }
}
