import { createHash } from 'node:crypto';

const LONGEST = 120;
/** Names that Windows gives to devices, with or without an ending. */
const DEVICE = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/;

/**
 * The file name, without ending, under which an item is kept. Safe on Linux, macOS and Windows, and two ids never
 * share one: ids that differ in case only get different names, since capitals are written as bytes.
 *
 *   sec-%symbol.x% → sec-~25symbol.x~25      Con → ~43on      con → _con      .hidden → _.hidden
 *
 * The name is for people; the id inside the file rules.
 */
export function fileNameOf(id: string): string {
  let name = '';
  for (const byte of Buffer.from(id, 'utf8')) {
    const char = String.fromCharCode(byte);
    name += /[a-z0-9.-]/.test(char) ? char : `~${byte.toString(16).padStart(2, '0')}`;
  }
  if (name === '' || name.startsWith('.') || DEVICE.test(name)) name = `_${name}`;
  if (name.length <= LONGEST) return name;
  return `${name.slice(0, 80)}~${createHash('sha256').update(id, 'utf8').digest('hex').slice(0, 16)}`;
}
