import { beforeAll, describe, expect, it } from 'vitest';
import type { PublishedCatalog } from '../../src/commands/reading/published-catalog.ts';
import { itemLocal } from '../../src/web/reading/item-local.ts';
import { demoCatalog, publishedDemo } from '../demo-catalog.ts';
import { serveForTest } from './viewer.ts';

let published: PublishedCatalog;
beforeAll(async () => {
  published = await (await publishedDemo())();
}, 60_000);

const localAt = async (edition: string, number: string, date = '2024-08-01') => {
  const { places } = await published.edition(edition);
  return itemLocal(published, edition, places.withNumber(number)[0]!, date);
};

describe('local rules and variances of an item', () => {
  it('are told with place, state and which governs, those in force first', async () => {
    const found = await localAt('2018', '4.2.1.2');
    expect(found.map(l => [l.head, l.inForce])).toEqual([
      ['Local rule, hollin: Distance of soakaways in Hollin', true],
      ['Variance, hollin: Soakaway at 7 Teasel Garth', false],
    ]);
    expect(found[0]!.state).toBe('approved, from 2019-10-01, with no end stated; cites 2018 4.2.1.2');
    expect(found[1]!.why).toContain('only asked for');
  });

  it('are followed to a newer edition and back to an older one', async () => {
    expect((await localAt('2024', '5.3.1.1')).map(l => l.head)).toContain(
      'Local rule, hollin: Distance of soakaways in Hollin',
    );
    const before = (await published.crosswalk('2014', '2018')).joint;
    const now = before.new.withNumber('4.2.1.2')[0]!;
    const old = before.arriving(now.id).flatMap(l => (l.from === null ? [] : [before.old.get(l.from)!.number]));
    expect(old.length).toBeGreaterThan(0);
    expect((await localAt('2014', old[0]!)).map(l => l.head)).toContain('Variance, hollin: Soakaway at 7 Teasel Garth');
  });

  it('stand on the page of the work item as well, with the number that they are about', async () => {
    const found = await localAt('2018', '4.2.1');
    expect(found[0]!.state).toContain('here 4.2.1.2');
  });

  it('are none where none touches it', async () => {
    expect(await localAt('2018', '2.1.1.1')).toEqual([]);
  });
});

it('the page of an item tells them, and nothing of the kind where there are none', async () => {
  const viewer = await serveForTest(await demoCatalog());
  try {
    const page = async (path: string) => (await fetch(new URL(path, viewer.address))).text();
    const told = await page('/at/2018/4.2.1.2');
    expect(told).toContain('Local rule, hollin: Distance of soakaways in Hollin');
    expect(told.replace(/\s+/g, ' ')).toContain('Not in force: The variance');
    expect(await page('/at/2018/2.1.1.1')).not.toContain('Local rules and variances');
  } finally {
    await viewer.close();
  }
});
