import { describe, expect, it } from 'vitest';
import { splitAnswered, textHash } from '../../src/drafting/answers.ts';
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
    const { open, answered } = splitAnswered(remarks, () => text, answers);
    expect(open).toEqual(remarks.slice(1));
    expect(answered).toEqual([{ remark: remarks[0], answer: answers[0] }]);
  });

  it('ends when the text changes', () => {
    expect(splitAnswered(remarks, () => `${text} `, answers)).toEqual({ open: remarks, answered: [] });
  });
});
