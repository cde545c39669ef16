import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edit } from '../../src/documents/edit.ts';
import { readMarkdown } from '../../src/documents/markdown.ts';
import { readPlain } from '../../src/documents/plain.ts';
import { recordLine } from '../../src/documents/record.ts';
import { cutSections } from '../../src/documents/sections.ts';

describe('editing', () => {
  it('without edits gives the text back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), text => {
        expect(edit(text, [])).toBe(text);
      }),
    );
  });

  it('changes the stretches of its edits and nothing between them, in whatever order they come', () => {
    const text = Object.freeze('see 3.1 and 3.2\r\n') as string;
    const edits = [
      { start: 12, end: 15, text: '4.22' },
      { start: 4, end: 7, text: '4.1' },
    ];
    expect(edit(text, Object.freeze(edits))).toBe('see 4.1 and 4.22\r\n');
    fc.assert(
      // No empty pieces: of two insertions at one place, neither is the first.
      fc.property(fc.array(fc.string({ minLength: 1 }), { minLength: 3, maxLength: 9 }), pieces => {
        let at = 0;
        const changes = pieces.flatMap((piece, n) => {
          const start = at;
          at += piece.length;
          return n % 2 === 1 ? [{ start, end: at, text: `<${n}>` }] : [];
        });
        const wanted = pieces.map((piece, n) => (n % 2 === 1 ? `<${n}>` : piece)).join('');
        expect(edit(pieces.join(''), changes.reverse())).toBe(wanted);
      }),
    );
  });

  it('refuses edits that overlap or lie outside', () => {
    expect(() =>
      edit('abc', [
        { start: 0, end: 2, text: '' },
        { start: 1, end: 3, text: '' },
      ]),
    ).toThrow(/overlaps/);
    expect(() => edit('abc', [{ start: 2, end: 9, text: '' }])).toThrow(/outside/);
  });
});

const shown = (text: string) =>
  readMarkdown(text).passages.map(p =>
    p.text
      .replace(/\ufffc+/g, '#')
      .replace(/ +/g, ' ')
      .trim(),
  );

describe('reading markdown', () => {
  it.each([
    ['emphasis is opened', 'See **Item** *3.2*.', ['See Item 3.2 .']],
    ['code is masked', 'Run `3.2.1` now', ['Run # now']],
    ['fenced code is no passage', 'a\n\n```\n3.2.1\n```\n\nb', ['a', 'b']],
    ['indented code is no passage', 'a\n\n    3.2.1\n\nb', ['a', 'b']],
    ['html is masked', 'a <b title="3.2.1">x</b> c', ['a #x# c']],
    ['an html block is no passage', '<div>\n3.2.1\n</div>\n\nb', ['b']],
    ['a comment is no passage', '<!--\n\n# 3.2.1\n\n-->\n\nb', ['b']],
    ['a link keeps its words and loses its address', '[see 3.2.1](3.2.1.html "3.2.1")', ['see 3.2.1']],
    ['an address in angle brackets is masked', '<https://example.org/3.2.1>', ['#']],
    ['a definition is no passage', '[3.2.1]: https://example.org/3.2.1\n\nb', ['b']],
    ['table cells are passages', '| a | b |\n| - | - |\n| 3.2.1 | x |', ['a', 'b', '3.2.1', 'x']],
    ['list items and quotes are passages', '- 3.2.1\n- b\n\n> c', ['3.2.1', 'b', 'c']],
    ['entities are spaces', '&sect;&nbsp;3.2', ['3.2']],
    ['front matter is no passage', '---\nedition: 2018\n---\n3.2.1', ['3.2.1']],
  ])('%s', (_, text, expected) => {
    expect(shown(text)).toEqual(expected);
  });

  it('gives passages as long as their stretch, with the text in its place, its line and its heading', () => {
    const text =
      '\ufeff---\r\nedition: 2018\r\n---\r\n# One\r\n\r\nSee **3.2.1**\r\n\r\n## Two\r\n\r\n| a | `c` |\r\n|-|-|\r\n| 3.2.2 | x |\r\n';
    const { passages } = readMarkdown(text);
    for (const p of passages) {
      expect(p.text).toHaveLength(p.end - p.start);
      for (const [word] of p.text.matchAll(/[\w.]+/g)) expect(text.slice(p.start, p.end)).toContain(word);
    }
    const cited = passages.filter(p => /3\.2/.test(p.text));
    expect(cited.map(p => [p.line, p.heading])).toEqual([
      [6, 'One'],
      [12, 'Two'],
    ]);
    for (const p of cited) {
      const at = p.text.indexOf('3.2');
      expect(text.slice(p.start + at, p.start + at + 5)).toBe(p.text.slice(at, at + 5));
    }
  });

  it('reads text that stands thousands of quotations deep', () => {
    const { passages } = readMarkdown(`${'> '.repeat(2_500)}see 3.2.1\n`);
    expect(passages.map(p => p.text.trim())).toEqual(['see 3.2.1']);
  });

  it('keeps the law of lengths for any text', () => {
    const bits = fc.constantFrom(
      '# a\n',
      '\n',
      '```\n',
      '- ',
      '> ',
      '`',
      '*',
      '[x](y)',
      '3.2.1',
      ' ',
      '<b>',
      '|',
      '\r\n',
      'w',
      '~~~\n',
      '    ',
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 40 }), parts => {
        const text = parts.join('');
        for (const p of readMarkdown(text).passages) {
          expect(p.text).toHaveLength(p.end - p.start);
          [...p.text].forEach((char, at) => {
            if (char !== ' ' && char !== '\ufffc') expect(text[p.start + at]).toBe(char);
          });
        }
      }),
    );
  });

  it.each([
    ['edition: 2018', '2018'],
    ['edition: "2018"', '2018'],
    ["edition: '2018'  ", '2018'],
    ['edition: 2018 # the old one', '2018'],
    ['title: edition', undefined],
  ])('reads the front matter %s as edition %s', (field, edition) => {
    expect(readMarkdown(`---\ntitle: x\n${field}\n---\n\ntext`).edition).toBe(edition);
  });
});

describe('cutting sections', () => {
  it('loses nothing', () => {
    const bits = fc.constantFrom('# a\n', '\n', '```\n', '- ```\n', '<!--\n', '-->\n', 'x\n', '  ~~~\n', '\r\n');
    fc.assert(
      fc.property(fc.array(bits), parts => {
        expect(cutSections(parts.join('')).join('')).toBe(parts.join(''));
      }),
    );
  });

  it.each([
    ['inside a fence', '```\n\n# a\n\n```\n'],
    ['inside a longer fence', '````\n```\n\n# a\n````\n'],
    ['inside a comment', '<!--\n\n# a\n\n-->\n'],
    ['after a line of text', 'text\n# a\n'],
    ['behind a fence that a list may have ended', '- ```\n  x\n\nout\n\n# a\n\n# b\n'],
  ])('never cuts %s', (_, text) => {
    expect(cutSections(text)).toEqual([text]);
  });

  it('cuts before headings', () => {
    expect(cutSections('a\n\n# b\n\n```\n# no\n```\n\n## c\n')).toEqual([
      'a\n\n',
      '# b\n\n```\n# no\n```\n\n',
      '## c\n',
    ]);
  });
});

describe('reading plain text', () => {
  it('takes what stands between blank lines, whatever the line ends are', () => {
    const text = '\ufeffone\r\ntwo\r\n\r\n  \r\nthree\n\nfour\rfive';
    const { passages } = readPlain(text);
    expect(passages.map(p => [p.text.trim(), p.line])).toEqual([
      ['one\r\ntwo', 1],
      ['three', 5],
      ['four\rfive', 7],
    ]);
    for (const p of passages) expect(text.slice(p.start, p.end)).toBe(p.text);
  });
});

describe('signed records', () => {
  it.each([
    'Signed: A. Person',
    '**Signed:** A. Person',
    'Signed by A. Person',
    'Inspected on 3 May 2019 by B. Person',
    '> Inspected on 2019-05-03',
    'Signed:',
  ])('%s is one', line => expect(recordLine(`text\n${line}\nmore`)).toBe(line));
  it.each(['Signed: ______', 'Signed: ......', 'The plan is signed by the owner.', 'Inspected work is covered.'])(
    '%s is none',
    line => expect(recordLine(`text\n${line}\n`)).toBeUndefined(),
  );
  it('front matter can say so', () => {
    expect(readMarkdown('---\nrecord: signed\n---\n\ntext').record).toBe('record: signed');
  });
});
