import { describe, expect, it } from 'vitest';
import { namedOptions } from '../../../src/carryover/stale/named-options.ts';
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

describe('an option that is named as the right one', () => {
  const named = async (text: string, name = 'q.md') => {
    const { passages } = await readDocument(name, new TextEncoder().encode(text));
    return namedOptions(passages).map(p => {
      expect(text.slice(p.start, p.start + p.text.length).replaceAll('*', ' ')).toBe(p.text);
      return p.text.trim();
    });
  };

  it.each([
    ['by letter below the options', '1. How wide (4.1)?\n\na) 5 mm\nb) 7 mm\n\nAnswer: b\n', ['7 mm']],
    ['behind options in one line', 'How wide (4.1)? (a) 5 mm (b) 7 mm (c) 9 mm. Right answer: (b)\n', ['7 mm']],
    ['of a list', '1. How wide?\n   - A: 5 mm\n   - B: 7 mm\n\n   Answer: A\n', ['5 mm']],
    ['by a tick', 'How wide?\na) 5 mm\nb) 7 mm ✔\n', ['7 mm ✔']],
    ['by a crossed box before its letter', 'How wide?\n\n- [ ] a) 5 mm\n- [x] b) 7 mm\n- [ ] c) 9 mm\n', ['7 mm']],
    ['by crossed boxes in one line', 'How wide? [ ] a) 5 mm [x] b) 7 mm [ ] c) 9 mm\n', ['7 mm']],
    ['by a line without a colon', 'How wide?\n\n- a) 5 mm\n- b) 7 mm\n\nAnswer b\n', ['7 mm']],
    ['by a letter in brackets', 'How wide? (a) 5 mm (b) 7 mm — Answer (b)\n', ['7 mm —']],
    ['by a crossed box alone', 'How wide?\n\n- [ ] 5 mm\n- [x] 7 mm\n- [ ] 9 mm\n', ['7 mm']],
    ['by a box below a heading', '# How wide?\n\n- [ ] 5 mm\n- [x] 7 mm\n', ['7 mm']],
    ['by a box after a statement', 'The path is at least\n\n- [X] 5 mm\n- [ ] 7 mm\n', ['5 mm']],
    ['by a box below a word to the reader', 'How wide?\n\nTick one.\n\n- [ ] 5 mm\n- [x] 7 mm\n', ['7 mm']],
    ['by a tick alone', 'Which is the least?\n\n- 5 mm\n- 7 mm ✓\n- 9 mm\n', ['7 mm ✓']],
    ['by bold words alone', 'Which is the least?\n\n- 5 mm\n- **7 mm**\n- 9 mm\n', ['7 mm']],
    ['with what it says', 'How wide?\n\na) 5 mm\nb) 7 mm\n\nCorrect answer: b) 7 mm, since 2018\n', ['7 mm']],
    [
      'by a key below, by number',
      '# Quiz\n\n1. How wide? a) 5 mm b) 7 mm\n2. How deep? a) 1 m b) 2 m\n\n# Answers\n\n2 a, 1 b\n',
      ['7 mm', '1 m'],
    ],
    [
      'by a key below, by order',
      '# Quiz\n\n- How wide? a) 5 mm b) 7 mm\n- How deep? a) 1 m b) 2 m\n\n# Key\n\n- b\n- (a)\n',
      ['7 mm', '1 m'],
    ],
    ['in the cell beside', '| How wide? a) 5 mm b) 7 mm | b |\n|---|---|\n| x | y |\n', ['7 mm']],
    ['after a statement', 'The path is this wide:\n\na) 5 mm\nb) 7 mm\n\nAnswer: b\n', ['7 mm']],
  ])('is read with its question: %s', async (_, text, expected) => {
    expect((await named(text)).map(t => t.replace(/\.$/, ''))).toEqual(expected);
  });

  it.each([
    ['nobody names one', 'How wide? a) 5 mm b) 7 mm\n'],
    ['the answer is a sentence', 'How wide?\n\na) 5 mm\nb) 7 mm\n\nAnswer: a path is wide.\n'],
    ['the letter is no option', 'How wide? a) 5 mm b) 7 mm\n\nAnswer: d\n'],
    ['all boxes are crossed', 'Is all of this ready?\n\n- [x] 5 mm\n- [x] 7 mm\n'],
    ['no box is crossed', 'How wide?\n\n- [ ] 5 mm\n- [ ] 7 mm\n'],
    ['bold words stand in a list that nobody asked for', 'The sizes:\n\n- 5 mm\n- **7 mm**\n'],
    ['bold words stand below a paragraph', `Why so wide?\n\n${'Because it is. '.repeat(10)}\n\n**7 mm**\n\n9 mm\n`],
    ['an answer is told in words', 'How wide?\n\na) 5 mm\nb) 7 mm\n\nPlease give the answer a\nday later.\n'],
    ['letters are steps', 'Is it wide? See step c) of the form. Answer: c\n'],
  ])('is none where %s', async (_, text) => {
    expect(await named(text)).toEqual([]);
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
