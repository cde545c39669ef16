import { expect, it } from 'vitest';
import { checkDrafts } from '../../src/drafting/check-drafts.ts';
import { loadLanguage } from '../../src/drafting/language.ts';

it('texts that say nearly the same are called by their numbers, where they have one', async () => {
  const text = (depth: number) => `The base course shall be at least ${depth} mm thick over its whole width.`;
  const texts = [
    { id: 'aaaa', called: '1.1', text: text(250) },
    { id: 'bbbb', called: '2.1', text: text(350) },
  ];
  const said = checkDrafts(texts, await loadLanguage()).filter(r => r.rule === 'near-duplicate');
  expect(said.map(r => r.message)).toEqual([
    expect.stringMatching(/^Says nearly the same as 2\.1; /),
    expect.stringMatching(/^Says nearly the same as 1\.1: /),
  ]);
});
