import { describe, expect, it } from 'vitest';
import { piecesOf } from '../../../src/carryover/stale/stale-answers.ts';
import { tellsHistory } from '../../../src/carryover/stale/stale-history.ts';
import { readDocument } from '../../../src/documents/read-document.ts';

const questionsOf = async (name: string, text: string) => {
  const { passages } = await readDocument(name, new TextEncoder().encode(text));
  return piecesOf(passages).flatMap(p => (p.question === undefined ? [] : [[p.question.trim(), p.text.trim()]]));
};

describe('an answer', () => {
  it('is read with the question of its place in a list', async () => {
    const quiz = '# Quiz\n\n1. How wide?\n2. How deep?\n\n## Answers\n\n1. 5 mm\n2. 7 mm\n';
    expect(await questionsOf('q.md', quiz)).toEqual([
      ['How wide?', '5 mm'],
      ['How deep?', '7 mm'],
    ]);
  });

  it('is read with the question of its number in a plain text', async () => {
    const { passages } = await readDocument(
      'q.txt',
      new TextEncoder().encode('1. How wide?\n2. How deep?\n\n2. 7 mm\n'),
    );
    const headed = passages.map((p, at) => ({ ...p, heading: at === 0 ? 'Questions' : 'Key' }));
    expect(piecesOf(headed).map(p => [p.question?.trim(), p.text.trim()])).toEqual([
      [undefined, '1. How wide?'],
      [undefined, '2. How deep?'],
      ['2. How deep?', '2. 7 mm'],
    ]);
  });

  it('has no question where there are more of the one than of the other', async () => {
    expect(await questionsOf('q.md', '# Quiz\n\n- How wide?\n- How deep?\n\n## Answers\n\n- 5 mm\n')).toEqual([]);
  });
});

describe('a sentence', () => {
  it.each([
    ['In 2014 it was 5 mm.', true],
    ['It is 2014 mm wide.', true],
    ['It is 5 mm.', false],
    ['Part 2014.5 asks for it.', false],
    ['Of old it was 5 mm.', true],
    ['Keep the gold at 5 mm.', false],
  ])('%j tells of another time or edition: %s', (sentence, expected) => {
    expect(tellsHistory(sentence, '2018', ['2014', '2018', '2024'])).toBe(expected);
  });

  it('names an edition without a digit only beside that word', () => {
    expect(tellsHistory('Mix it green.', 'Blue', ['Green'])).toBe(false);
    expect(tellsHistory('The Green edition asks more.', 'Blue', ['Green'])).toBe(true);
  });
});
