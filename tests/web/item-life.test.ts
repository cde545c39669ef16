import { expect, it } from 'vitest';
import { lifeOf } from '../../src/web/reading/item-life.ts';
import { publishedDemo } from '../demo-catalog.ts';

it('the life of an item says which step made it stricter, and says nothing where it asks the same', async () => {
  const published = await (await publishedDemo())();
  const { lines } = await published.crosswalk('2018', '2024');
  const changeOf = async (duty: string) => {
    const line = lines.find(l => l.fate === 'kept' && l.duty === duty && l.to !== undefined)!;
    const { stages } = await lifeOf(published, '2018', line.from!);
    return stages.find(s => s.edition === '2024')!.steps.map(s => `${s.fate} ${s.change}`.trim());
  };
  expect(await changeOf('stricter')).toEqual(['kept asks more since then']);
  expect(await changeOf('same')).toEqual(['kept']);
}, 60_000);
