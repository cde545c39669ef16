import { describe, expect, it } from 'vitest';
import { readCrosswalk } from '../../../src/commands/read-crosswalk.ts';
import { openCatalog } from '../../../src/store/open.ts';
import { readItems } from '../../../src/store/read.ts';
import { demoCatalog } from '../../demo-catalog.ts';
import { judge } from './judge.ts';
import { pairOfTables } from './pair-of-tables.ts';

describe('stale content of labelled passages', () => {
  it('is found in lessons of the demo catalog, on which the finder was shaped', async () => {
    const catalog = await openCatalog(await demoCatalog());
    const { joint, marks } = await readCrosswalk(catalog, '2018', '2024');
    const ids = (entries: typeof joint.from.entries) => entries.map(e => e.id);
    const [from, to] = [
      await readItems(catalog, joint.from, joint.old, ids(joint.from.entries)),
      await readItems(catalog, joint.to, joint.new, ids(joint.to.entries)),
    ];
    const judged = await judge('rainwater.jsonl', joint, marks, {
      from: id => from.get(id)?.text,
      to: id => to.get(id)?.text,
    });
    // 29 of 29 are found, and 2 findings are false: a label that is missing, and another book's section.
    expect(judged.told.length, judged.told.join('\n')).toBeLessThanOrEqual(2);
    expect([judged.right, judged.wanted]).toEqual([29, 29]);
  });

  it('is found in lessons of another trade, whose misses nobody read', async () => {
    const { joint, marks, texts } = pairOfTables('lifts');
    const judged = await judge('lifts.jsonl', joint, marks, texts);
    expect(judged).toMatchObject({ right: 22, wanted: 22, found: 23, trapped: 1, traps: 22 });
  });
});
