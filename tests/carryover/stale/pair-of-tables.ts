import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { withChanges } from '../../../src/carryover/stale/changed-texts.ts';
import { marksOf } from '../../../src/content/links/marks.ts';
import { joinEditions } from '../../../src/crosswalk/joint.ts';
import type { Link } from '../../../src/model/crosswalk.ts';
import type { EditionIndex } from '../../../src/model/edition.ts';
import type { Item } from '../../../src/model/item.ts';

const FOLDER = join(import.meta.dirname, '../../matching/pairs');

/** A pair of tests/matching/pairs with its true crosswalk, as two editions named 2010 and 2020. */
export function pairOfTables(name: string) {
  const table = (file: string) =>
    parse(readFileSync(join(FOLDER, name, file)), { columns: true }) as Record<string, string>[];
  const edition = (file: string, year: string) => {
    const items = table(file).map(
      (row): Item => ({
        id: `${year}-${row.number}`,
        number: row.number!,
        level: Number(row.level),
        parent: row.parent ? `${year}-${row.parent}` : null,
        title: row.title!,
        ...(row.text ? { text: row.text } : {}),
      }),
    );
    const index: EditionIndex = {
      header: { name: year, erratum: 0, replaces: null, dates: {}, state: 'published' },
      settings: {
        title: name,
        language: 'en',
        levels: [1, 2, 3].map(level => ({ name: ['Part', 'Group', 'Requirement'][level - 1]!, obliges: level === 3 })),
        fileLevel: 2,
        numbering: {
          levels: [{ style: 'decimal' }, { style: 'decimal', separator: '.' }, { style: 'decimal', separator: '.' }],
          numbersUnique: true,
        },
        installationTypes: [],
        withdrawalReasons: [],
      },
      entries: items.map(({ text, ...item }) => ({
        ...item,
        hash: `${item.title} ${text}`,
        obliges: item.level === 3,
      })),
    };
    return { index, items: new Map(items.map(i => [i.id, i])) };
  };
  const [old, now] = [edition('old.csv', '2010'), edition('new.csv', '2020')];
  const all = { fromExtent: 'all', toExtent: 'all', basis: 'declared', confidence: 1 } as const;
  const links = table('truth.csv').map(
    (row): Link => ({
      ...all,
      from: `2010-${row.old_number}`,
      to: row.new_number ? `2020-${row.new_number}` : null,
      ...(row.new_number ? {} : { reason: row.reason! }),
    }),
  );
  const joint = joinEditions(old.index, now.index, { from: '2010', to: '2020', links });
  const items = { from: (id: string) => old.items.get(id), to: (id: string) => now.items.get(id) };
  const texts = withChanges(joint, { from: id => old.items.get(id)?.text, to: id => now.items.get(id)?.text });
  return { joint, marks: (link: Parameters<typeof marksOf>[1]) => marksOf(joint, link, items), texts };
}
