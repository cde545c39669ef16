import { afterAll, beforeAll, expect, test } from 'vitest';
import { lifePicture } from '../../src/pictures/life-picture.ts';
import type { Viewer } from '../../src/web/listen.ts';
import { demoCatalog } from '../demo-catalog.ts';
import { serveForTest } from './viewer.ts';

let viewer: Viewer;
beforeAll(async () => {
  viewer = await serveForTest(await demoCatalog());
});
afterAll(() => viewer.close());

const read = async (path: string) => (await (await fetch(`${viewer.address}${path}`)).text()).replaceAll('&amp;', '&');

test('each ribbon and each open end leads to as many lines as it stands for, drawn and in the table alike', async () => {
  const page = await read('crosswalk/2018/2024');
  const wide = /<svg class="rails wide".*?<\/svg>/s.exec(page)![0];
  const drawn = [...wide.matchAll(/<a href="(\?[^"#]+)#lines" aria-label="[^"]*: (\d+)">/g)].map(m => [m[1]!, m[2]!]);
  const table = /<summary>The picture as a table<\/summary>.*?<\/details>/s.exec(page)![0];
  const rows = [...table.matchAll(/<a href="(\?[^"#]+)#lines">(\d+)</g)].map(m => [m[1]!, m[2]!]);
  expect(drawn.length).toBeGreaterThan(20);
  expect(rows).toEqual(drawn);
  for (const [href, n] of drawn) {
    const found = await read(`crosswalk/2018/2024${href}`);
    expect([href, /<b>([\d,]+) lines?/.exec(found)![1]]).toEqual([href, n]);
  }
});

test('parts of both editions together are what went from the one to the other, and both stay chosen', async () => {
  const page = await read('crosswalk/2018/2024');
  const href = /href="(\?[^"#]*part=old[^"#]*part=new[^"#]*)#lines" aria-label="8[^"]*"/.exec(page)![1]!;
  const found = await read(`crosswalk/2018/2024${href}`);
  const chosen = [...found.matchAll(/<option value="((?:old|new):[^"]+)" selected>/g)].map(m => m[1]!.slice(0, 4));
  expect(chosen).toEqual(['old:', 'new:']);
  expect(await read(`crosswalk/2018/2024/lines.csv${href}`)).toContain('8.');
});

test('a page of fifty lines weighs less than 70 kB without its text', async () => {
  const page = await read('crosswalk/2018/2024');
  const text = page.replace(/<[^>]*>/g, '');
  expect(page.length - text.length).toBeLessThan(70_000);
});

test('the line of a life has a bar for each item and a plate for each set that a step joins', () => {
  const kept = { fate: 'kept' as const, alsoFrom: 0, alsoTo: 0 };
  const stages = [
    { edition: '1', items: [{ number: 'a', here: true }] },
    {
      edition: '2',
      items: [
        { number: 'b', here: false },
        { number: 'c', here: false },
      ],
    },
    { edition: '3', items: [{ number: 'd', here: false }] },
  ];
  const steps = [
    { groups: [{ ...kept, fate: 'split' as const, from: [0], to: [0, 1], alsoFrom: 2 }] },
    {
      groups: [
        { ...kept, from: [0], to: [0] },
        { ...kept, fate: 'withdrawn' as const, from: [1], to: [] },
      ],
    },
  ];
  for (const flow of ['right', 'down'] as const) {
    const picture = lifePicture({ stages, steps }, flow);
    expect(picture.bars.length).toBe(4);
    expect(picture.bars.filter(b => !b.path.endsWith('Z')).length).toBe(1);
    expect(picture.plates.length).toBe(2);
    expect(picture.joins.length).toBe(5);
    // Two others at one plate are one stub, and an open end is another.
    expect(picture.stubs.length).toBe(2);
    expect(picture.labels.filter(l => l.kind === 'fate').map(l => l.text)).toEqual(['split', 'kept', 'withdrawn']);
    for (const { x, y } of picture.labels) {
      expect([x >= 0, x <= picture.width, y >= 0, y <= picture.height]).toEqual([true, true, true, true]);
    }
  }
});
