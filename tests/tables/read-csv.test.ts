import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ByteSink } from '../../src/tables/byte-sink.ts';
import { csvCells } from '../../src/tables/csv-line.ts';
import { detectDialect } from '../../src/tables/dialect.ts';
import { readCsv } from '../../src/tables/read-csv.ts';

async function read(text: string, chunk = 1 << 16) {
  const bytes = Buffer.from(text);
  async function* source() {
    for (let at = 0; at < bytes.length; at += chunk) yield bytes.subarray(at, at + chunk);
  }
  const { dialect, batches } = await readCsv(source());
  const cells: string[][] = [];
  const pieces: Uint8Array[] = [];
  for await (const batch of batches) {
    for (const r of batch.records) {
      cells.push([...r.cells]);
      pieces.push(batch.bytes.subarray(r.start, r.bodyEnd), batch.bytes.subarray(r.bodyEnd, r.end));
    }
  }
  return {
    dialect,
    cells,
    back: Buffer.concat(pieces).toString(),
    ends: pieces.filter((_, at) => at % 2 === 1).map(end => Buffer.from(end).toString()),
  };
}

describe('reading csv', () => {
  it('gives cells and the bytes that they came from, whatever the line ends and the chunks are', async () => {
    const cell = fc.string({ unit: 'grapheme' }).map(s => `"${s.replaceAll('"', '""')}"`);
    const line = fc.tuple(fc.array(cell, { minLength: 2, maxLength: 4 }), fc.constantFrom('\n', '\r\n', '\r'));
    await fc.assert(
      fc.asyncProperty(
        fc.array(line, { minLength: 1 }),
        fc.integer({ min: 1, max: 40 }),
        fc.boolean(),
        async (lines, chunk, bom) => {
          const text = (bom ? '\ufeff' : '') + lines.map(([cells, end]) => cells.join(',') + end).join('');
          const { cells, back, ends } = await read(text, chunk);
          expect(back).toBe(text);
          expect(ends).toEqual(lines.map(([, end]) => end));
          expect(cells).toEqual(lines.map(([cs]) => cs.map(c => c.slice(1, -1).replaceAll('""', '"'))));
        },
      ),
    );
  });

  it.each([
    ['a,b;c\n', ','],
    ['a;b;c,d\n', ';'],
    ['a\tb\n', '\t'],
    ['"a;b;c",d\n', ','],
    ['a|b\n', '|'],
    ['a\nb;c\n', ','],
  ])('reads the separator of %j off the first line', (text, delimiter) => {
    expect(detectDialect(Buffer.from(text)).delimiter).toBe(delimiter);
  });

  it('refuses a quote that is never closed before it fills the memory', async () => {
    async function* endless() {
      yield Buffer.from('a,b\n1,"');
      for (;;) yield Buffer.alloc(1 << 20, 'x');
    }
    const { batches } = await readCsv(endless());
    await expect(async () => {
      for await (const _ of batches);
    }).rejects.toMatchObject({ code: 'BadTable', data: { line: 2 } });
  });
});

it('cells are quoted where they have to be, and only ours are made harmless', () => {
  const dialect = { delimiter: ';', lineEnd: '\n' } as const;
  expect(csvCells(['a;b', 'c,d', '=x', 'two\rlines'], dialect, 'theirs')).toBe('"a;b";c,d;=x;"two\rlines"');
  expect(csvCells(['=x', '+x', '-x', '@x', '\tx', '\rx', 'x'], dialect, 'ours')).toBe(`'=x;'+x;'-x;'@x;'\tx;"'\rx";x`);
});

it('a sink hands over what was put in, and keeps its hands off it afterwards', () => {
  const sink = new ByteSink(2);
  sink.append(Buffer.from('hello'), 1, 4);
  const first = sink.take();
  sink.append(Buffer.from('XYZ'));
  const text = (bytes: Uint8Array) => Buffer.from(bytes).toString();
  expect([text(first), text(sink.take()), sink.take().length]).toEqual(['ell', 'XYZ', 0]);
});
