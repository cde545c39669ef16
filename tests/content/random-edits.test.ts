import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { readTable } from '../../src/tables/read-table.ts';

/** Requirements of the demo: prose of a trade that the labelled pairs do not speak of. */
const texts = ['2018/3-storage.csv', '2024/4-storage.csv', '2024/5-infiltration.csv']
  .flatMap(name => {
    const file = join(import.meta.dirname, '../../catalog', name);
    return readTable(name, readFileSync(file)).rows.map(r => r.cells.get('text') ?? '');
  })
  .filter(text => text.length > 30);

/** How often each verdict falls after an edit; texts that the edit does not fit are left out. */
function verdicts(title: string, edit: (text: string) => string | undefined): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const text of texts) {
    const edited = edit(text);
    if (edited === undefined || edited === text) continue;
    const { duty } = compareTexts(text, edited);
    counts[duty] = (counts[duty] ?? 0) + 1;
  }
  const all = Object.values(counts).reduce((sum, n) => sum + n, 0);
  expect(all, title).toBeGreaterThan(9);
  process.stdout.write(`${title}: ${JSON.stringify(counts)}\n`);
  return Object.fromEntries(Object.entries(counts).map(([duty, n]) => [duty, n / all]));
}

const OPENERS = /\b(unless|except|where|when|if|before|after|same|also)\s/;
const MINIMUM = /(at least|not less than) (\d+)(?= ?(?:mm|m|L|kg|days|hours|minutes)\b)/;

describe('an edit of real requirements whose direction is known', () => {
  it('a sentence more is stricter and a sentence less relaxed, whatever it speaks of', () => {
    const sentence = ' Hinges shall be greased.';
    expect(verdicts('sentence added', t => t + sentence).stricter).toBeGreaterThan(0.98);
    const dropped = texts.map(t => compareTexts(t + sentence, t).duty);
    expect(dropped.filter(d => d === 'relaxed').length).toBeGreaterThan(0.98 * dropped.length);
    expect(compareTexts('Fit the lid.', 'Fit the lid. Hinges may be greased.').duty).toBe('relaxed');
  });

  it('a higher minimum is stricter', () => {
    const raised = (t: string) => t.replace(MINIMUM, (_, words, n) => `${words} ${2 * Number(n)}`);
    expect(verdicts('minimum raised', raised).stricter).toBeGreaterThan(0.95);
  });

  it('"unless" at the end is relaxed', () => {
    const plain = /^(?!.*\b(?:unless|except|may|need not|if|where|when|permitted|accept))[^.]*\.$/i;
    const edit = (t: string) => (plain.test(t) ? t.replace(/\.$/, ' unless the owner agrees otherwise.') : undefined);
    expect(verdicts('"unless" added', edit).relaxed).toBeGreaterThan(0.9);
  });

  it('"should" in the place of "shall" is relaxed', () => {
    const edit = (t: string) => (t.match(/\bshall\b/g)?.length === 1 ? t.replace('shall', 'should') : undefined);
    expect(verdicts('"shall" became "should"', edit).relaxed).toBeGreaterThan(0.9);
  });

  it('is never the same where a word that sets the case is left out', () => {
    expect(verdicts('word of a case left out', t => t.replace(OPENERS, '')).same ?? 0).toBe(0);
  });
});
