import type { Token } from './tokens.ts';

/** A stretch of tokens: from the first one up to, not including, the one at `next`. */
export interface Stretch {
  readonly first: number;
  readonly next: number;
}

const SHORT = new Set(
  'no nos fig e.g i.e etc approx min max incl cf vs sec art para ref ex in ft yd lb oz sq cu dia temp g i e ca'.split(
    ' ',
  ),
);

/** The sentences of a text, ended by a full stop, semicolon, question or exclamation mark, line end or bullet. */
export function sentencesOf(text: string, tokens: readonly Token[]): Stretch[] {
  const sentences: Stretch[] = [];
  let first = 0;
  const end = (next: number) => {
    if (next > first) sentences.push({ first, next });
    first = next;
  };
  for (let at = 0; at < tokens.length; at++) {
    const { low } = tokens[at]!;
    const after = tokens[at + 1];
    if (at > first && text.slice(tokens[at - 1]!.end, tokens[at]!.start).includes('\n')) end(at);
    if (low === ';' || low === '?' || low === '!' || low === '•' || low === '|') end(at + 1);
    else if (low === '.' && endsSentence(tokens, at, after)) end(at + 1);
  }
  end(tokens.length);
  return sentences.filter(s => tokens.slice(s.first, s.next).some(t => t.kind !== 'mark'));
}

function endsSentence(tokens: readonly Token[], at: number, after: Token | undefined): boolean {
  if (!after) return true;
  if (after.glued) return false;
  const before = tokens[at - 1]?.low ?? '';
  if (!SHORT.has(before)) return true;
  return /^\p{Lu}/u.test(after.text) && tokens[at - 2]?.low !== '.' && before.length > 1;
}
