/** A name as SQL takes it whatever stands in it. Both engines double the quotation mark. */
export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

/** A text as SQL takes it; only for words of ours, values of people are passed beside the statement. */
export function literal(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}

/** PostgreSQL cuts longer names off, so two of them can become one. Bytes. */
const LONGEST = 63;

/** A name of ours that begins with theirs, short enough, and still its own where theirs had to be cut. */
export function namedAfter(theirs: string, ending: string): string {
  const whole = theirs + ending;
  if (Buffer.byteLength(whole) <= LONGEST) return whole;
  const mark = `~${shortHash(theirs)}`;
  let start = theirs;
  while (Buffer.byteLength(start + mark + ending) > LONGEST) start = start.slice(0, -1);
  return start + mark + ending;
}

/** FNV-1a over 32 bits. */
function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of Buffer.from(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
}
