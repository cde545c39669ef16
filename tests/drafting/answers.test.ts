import { describe, expect, it } from 'vitest';
import { textHash, unanswered } from '../../src/drafting/answers.ts';
import { deepFreeze } from '../freeze.ts';

const text = 'Provide adequate light.';
const remarks = deepFreeze([
  { id: 'x', rule: 'vague-word' },
  { id: 'x', rule: 'not-verifiable' },
  { id: 'y', rule: 'vague-word' },
]);
const answers = deepFreeze([
  {
    rule: 'vague-word',
    subject: 'x',
    textHash: textHash(text),
    because: 'the lighting plan gives the value',
    by: 'Steward',
    date: '2024-02-01',
  },
]);

describe('an answer "intended, because ..."', () => {
  it('silences its rule on its subject and nothing else', () => {
    expect(unanswered(remarks, () => text, answers)).toEqual(remarks.slice(1));
  });

  it('ends when the text changes', () => {
    expect(unanswered(remarks, () => `${text} `, answers)).toEqual(remarks);
  });
});
