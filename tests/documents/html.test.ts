import fc from 'fast-check';
import { parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { editHtml, readHtml } from '../../src/documents/html.ts';

const shown = (html: string) =>
  readHtml(html).passages.map(p =>
    p.text
      .replace(/\u00ad/g, '')
      .replace(/\ufffc+/g, '#')
      .replace(/\s+/g, ' ')
      .trim(),
  );

describe('reading html', () => {
  it.each([
    ['inline elements are opened', '<p>See <b>4.4</b>.<i>1</i> now', ['See 4.4.1 now']],
    ['blocks stand apart', '<ul><li>a<li>b<ul><li>c</ul>d</ul>', ['a', 'b', 'c', 'd']],
    [
      'table cells, captions and headings are passages',
      '<h2>H</h2><table><caption>C</caption><tr><th>3.2<td>x</table>',
      ['H', 'C', '3.2', 'x'],
    ],
    [
      'definition lists and figures too',
      '<dl><dt>a<dd>b</dl><figure><figcaption>c</figcaption></figure>',
      ['a', 'b', 'c'],
    ],
    ['entities are read', '<p>&sect;&nbsp;3.2.1&#45;3.2.4&#x2013;5', ['§ 3.2.1-3.2.4–5']],
    ['an entity without its semicolon ends where it ends', '<p>&nbsp3.2 &notit; &foo;', ['3.2 ¬it; &foo;']],
    ['code is masked', '<p>Run <code>3.2.1</code><kbd>3</kbd> now<pre><code>3.2.1</code></pre>', ['Run # now', '#']],
    ['scripts and styles are no text', '<p>a<script>3.2.1</script>b<style>3.2.1</style>', ['ab']],
    ['comments and attributes are no text', '<p title="3.2.1">a<!-- 3.2.1 -->b<img alt="3.2.1">', ['ab#']],
    ['what is marked as deleted is no text', '<p>See <del>3.2.1</del><ins>3.2.2</ins>', ['See 3.2.2']],
    ['br is a space', '<p>Part<br>3', ['Part 3']],
    ['a tag that names nothing does not part a word', '<p>3.2</x>.1', ['3.2.1']],
    ['text in a table but in no cell stays a passage of its own', '<table><tr>foo<td>3.2.1</table>', ['foo', '3.2.1']],
    [
      'text that the parser moves out of a table stays where it is written',
      'x<table><tr><td>3.2.1</td></tr><b>y</b></table>',
      ['x', '3.2.1', 'y'],
    ],
    ['text that it joins over a cell is not read', '<p>x<table><tr><td>a</td></tr>y</table>', ['a']],
    ['a title is text', '<title>Lesson 3.2</title><p>b', ['Lesson 3.2', 'b']],
  ])('%s', (_, html, expected) => expect(shown(html)).toEqual(expected));

  it('gives line and heading, whatever the line ends are', () => {
    const { passages } = readHtml('\ufeff<h1>One</h1>\r\n\r\n<p>a</p>\n<h2>T<b>w</b>o</h2>\r<p>b</p>');
    expect(passages.map(p => [p.line, p.heading])).toEqual([
      [1, 'One'],
      [3, 'One'],
      [4, 'Two'],
      [5, 'Two'],
    ]);
  });

  it('reads the edition and the signed record from meta elements and from its lines', () => {
    expect(readHtml('<META NAME="Edition" content=" 2018 "><p>x').edition).toBe('2018');
    expect(readHtml('<meta name=record content=signed><p>x').record).toBe('record: signed');
    expect(readHtml('<p>x<p><b>Signed:</b> A. Person').record).toBe('Signed: A. Person');
    expect(readHtml('<table><tr><td>Signed:<td>A. Person</table>').record).toBe('Signed: A. Person');
    expect(readHtml('<table><tr><td>Signed:<td>____</table>').record).toBeUndefined();
    expect(readHtml('<table><tr><td>a<td>Signed:<td> </table>').record).toBeUndefined();
  });
});

const bits = fc.constantFrom(
  ...['<p>', '</p>', '<b>', '</b>', '<i>', '</i>', '<table>', '<tr>', '<td>', '</table>', '<li>', '<br>', '<code>'],
  ...[
    '</code>',
    '<script>',
    '</script>',
    '<!--',
    '-->',
    '3.2.1',
    ' ',
    '\r\n',
    '&amp;',
    '&#49;',
    '&nbsp',
    '&',
    '<',
    'w',
    '"',
  ],
  ...['<title>', '</title>', '<a href="', '">', '<svg>', '</x>', '<del>', '</del>', '\u{1f600}', '<textarea>', '<h1>'],
);
const pages = fc.array(bits, { maxLength: 40 }).map(parts => parts.join(''));

/** What a reader of its own sees: all texts of the page, without this reader's offsets. */
function textOf(html: string): string {
  const walk = (node: object): string =>
    'value' in node ? String(node.value) : 'childNodes' in node ? (node.childNodes as object[]).map(walk).join('') : '';
  return walk(parse(html, { scriptingEnabled: false }));
}

describe('editing html', () => {
  it.each([
    ['<p>See <b>3.1.1</b>.', '<p>See <b>9.9</b>.'],
    ['<p>See 3.<b>1</b>.1<p>', '<p>See 9.9<b></b><p>'],
    ['<p title="3.1.1">3.1&#46;1</p >', '<p title="3.1.1">9.9</p >'],
    ['\ufeff<p>3.1.&#49;\r\n', '\ufeff<p>9.9\r\n'],
    ['<p>3.<!-- old -->1.1', '<p>9.9<!-- old -->'],
  ])('%j becomes %j', (html, expected) => {
    const passage = readHtml(html).passages[0]!;
    const found = /3[.\u00ad]+1[.\u00ad]+1/.exec(passage.text)!;
    const start = passage.start + found.index;
    expect(editHtml(html, [{ start, end: start + found[0].length, text: '9.9' }])).toBe(expected);
  });

  it('escapes what it puts in', () => {
    expect(editHtml('<p>a', [{ start: 3, end: 4, text: '<&>' }])).toBe('<p>&lt;&amp;&gt;');
  });

  it.each(['<code>--><table>\r\n</script>&', 'Say <code><table>\r\n</i>so'])(
    'reads code that the parser moved out of a table in order, and the table only once: %s',
    html => {
      const places = readHtml(html).passages.map(p => [p.start, p.end] as const);
      expect(places.every(([start], at) => at === 0 || start >= places[at - 1]![1])).toBe(true);
    },
  );

  it('joins no number over a space in code', () => {
    expect(shown('3.2.<code> </code>1')).toEqual(['3.2. 1']);
  });

  it('keeps the law of lengths, and passages in order, for any page', () => {
    fc.assert(
      fc.property(pages, html => {
        let at = 0;
        for (const p of readHtml(html).passages) {
          expect(p.text).toHaveLength(p.end - p.start);
          expect(p.start).toBeGreaterThanOrEqual(at);
          at = p.end;
        }
        expect(editHtml(html, [])).toBe(html);
      }),
      { numRuns: 200 },
    );
  });

  it('changes only the words that it was told to, as a second look by the parser shows', () => {
    fc.assert(
      fc.property(pages, html => {
        const edits = readHtml(html).passages.flatMap(p =>
          [...p.text.matchAll(/3\.2\.1/g)].map(m => ({
            start: p.start + m.index,
            end: p.start + m.index + 5,
            text: '7',
          })),
        );
        const after = editHtml(html, edits);
        const left = (text: string) => text.replaceAll('3.2.1', '7');
        expect(left(after)).toBe(left(html));
        expect(left(textOf(after))).toBe(left(textOf(html)));
      }),
      { numRuns: 200 },
    );
  });

  it('reads a page nested a hundred thousand deep', () => {
    expect(readHtml(`${'<i>'.repeat(100_000)}3.2.1`).passages).toHaveLength(1);
  });
});
