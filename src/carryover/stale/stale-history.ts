/** Words of one who tells what was asked once. */
const ONCE =
  /\b(?:no longer|not any ?more|used to|formerly|previously|in the past|in former|in earlier|until (?:then|now|recently)|of old|in those days|at that time|old(?:er)? edition|last edition|earlier edition)\b/i;

/**
 * Whether a sentence tells of times past, or of an edition other than the one that its document follows: it names one,
 * or says that something is no longer so. What it tells is then no mistake, however old.
 */
export function tellsHistory(sentence: string, follows: string, others: readonly string[]): boolean {
  return ONCE.test(sentence) || others.some(name => name !== follows && namesEdition(sentence, name));
}

/** A name with a digit is told by itself ("2024"); others stand beside the word edition. */
function namesEdition(sentence: string, name: string): boolean {
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const alone = `(?<![\\p{L}\\p{N}.,-])${escaped}(?![\\p{L}\\p{N}]|[.,-]\\p{N})`;
  const pattern = /\d/.test(name) ? alone : `${alone}\\s+edition|edition\\s+${alone}`;
  return new RegExp(pattern, 'iu').test(sentence);
}

/** A sentence goes no further; a page without a full stop would be read once for each of its lines. */
const REACH = 300;

/** The sentence around a stretch, up to its full stop: who goes on behind a semicolon still tells the same. */
export function wholeSentence(text: string, start: number, end: number): string {
  const before = /[^.!?\n]*$/.exec(text.slice(Math.max(0, start - REACH), start))?.[0] ?? '';
  const after = /[.!?]$/.test(text.slice(start, end))
    ? ''
    : (/^[^.!?\n]*/.exec(text.slice(end, end + REACH))?.[0] ?? '');
  return before + text.slice(start, end) + after;
}
