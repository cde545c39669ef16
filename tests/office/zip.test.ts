import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../src/office/open-zip.ts';
import { writeZip } from '../../src/office/write-zip.ts';

const text = (s: string) => new TextEncoder().encode(s);
const parts = new Map([
  ['[Content_Types].xml', text('<Types/>')],
  ['word/document.xml', text('a'.repeat(100_000))],
  ['word/empty.xml', new Uint8Array()],
]);

describe('an office file', () => {
  it('comes back part by part, in order, and packs to the same bytes again', () => {
    const packed = writeZip(parts);
    const opened = openZip(packed, 'a.docx');
    expect([...opened.keys()]).toEqual([...parts.keys()]);
    expect(opened).toEqual(parts);
    expect(writeZip(opened)).toEqual(packed);
  });

  it('is refused where its header lies about a size, in either direction', () => {
    for (const lie of [10, 2_000_000]) {
      const packed = zipSync({ 'a.xml': text('b'.repeat(1000)) });
      const view = new DataView(packed.buffer, packed.byteOffset);
      for (let at = 0; at < packed.length - 4; at++) {
        if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, lie, true);
      }
      expect(() => openZip(packed, 'a.docx')).toThrow(/a\.docx is damaged .*save it again\.$/);
    }
  });

  it('is refused where it would unpack to more than the limit', () => {
    const bomb = zipSync({ 'a.xml': new Uint8Array(3 * 2 ** 20) });
    expect(() => openZip(bomb, 'bomb.xlsx', { parts: 10, bytes: 2 ** 20 })).toThrow(/unpacks to 3 MB, more than 1/);
  });

  it('is refused where it is encrypted, cut off or flipped in one bit', () => {
    expect(() => openZip(Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0, 0), 'a.xlsx')).toThrow(/without a password/);
    const packed = writeZip(parts);
    expect(() => openZip(packed.subarray(0, 200), 'a.xlsx')).toThrow(/cut off/);
    const flipped = packed.slice();
    flipped[60]! ^= 1;
    expect(() => openZip(flipped, 'a.xlsx')).toThrow(/damaged|not an office/);
  });
});
