import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareTexts } from '../../src/content/compare-texts.ts';
import { readText } from '../../src/content/reading/reading.ts';
import type { Pair } from './measures.ts';

const read = (name: string): Pair[] => JSON.parse(readFileSync(join(import.meta.dirname, 'labelled', name), 'utf8'));
const half = (pairs: readonly Pair[], odd: number) => pairs.filter(p => Number(p.id.slice(1)) % 2 === odd);
/** Rewritings that are told to ask the same, and rightly; of both sets the half that may be looked at. */
const same = [...half(read('duty.json'), 1), ...half(read('third/pairs.json'), 0)].filter(
  p => p.duty === 'same' && compareTexts(p.from, p.to).duty === 'same',
);
const said = same.flatMap(p => {
  const { tokens, tags, meanings } = readText(p.from);
  return tokens.flatMap((t, at) => (meanings[at] ? [{ text: t.text, meaning: meanings[at], tag: tags[at] }] : []));
});

/** The rewriting with each of its words that say something exchanged for another of the kind, one at a time. */
function* exchanged({ to }: Pair, step: number): Generator<string> {
  const { tokens, tags, meanings } = readText(to);
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== 'word' || !meanings[at]) continue;
    const others = said.filter(w => w.tag === tags[at] && w.meaning !== meanings[at]);
    const other = others[(at * step + to.length) % Math.max(1, others.length)];
    if (other) yield to.slice(0, token.start) + other.text + to.slice(token.end);
  }
}

describe('a rewriting that asks the same', () => {
  it('asks the same no more when one of its words is exchanged for another', () => {
    expect(same.length).toBeGreaterThan(50);
    const texts = same.flatMap(p => [7, 31].flatMap(step => [...exchanged(p, step)].map(to => ({ from: p.from, to }))));
    const wrong = texts.filter(t => compareTexts(t.from, t.to).duty === 'same').length;
    process.stdout.write(`one word exchanged: still the same ${wrong} of ${texts.length}\n`);
    expect(wrong / texts.length).toBeLessThan(0.03);
  });
});
