import { meaning } from './meaning.ts';
import type { Token } from './tokens.ts';

/** Several words of general English that say what one word says: the verb or first word, what follows it, the one word. */
const PHRASES =
  `take out of use remove|take out of service remove|remove from service remove|remove from use remove|take out remove|take off remove|take away remove|take down remove|get rid of remove|throw away discard|throw out discard|
carry out perform|make sure ensure|see to it ensure|put up erect|put back restore|set up install|hand over deliver|write down record|
pick up collect|fill in complete|shut off close|shut down stop|switch off stop|turn off stop|switch on start|turn on start|
put on don|find out ascertain|at once immediately|without delay immediately|straight away immediately|right away immediately`
    .replaceAll('\n', '')
    .split('|')
    .map(phrase => phrase.split(' '))
    .map(words => ({ words: words.slice(0, -1), one: meaning(words.at(-1)!) }));

/** Words that together say nothing that the rest does not say. */
const IDLE = [
  'in order',
  'that is to say',
  'by means of',
  'by way of',
  'with the aid of',
  'for the purpose of',
  'so as',
  'thereafter',
  'afterwards',
].map(p => p.split(' '));

const BY_FIRST = new Map<string, typeof PHRASES>();
for (const phrase of PHRASES) {
  const first = meaning(phrase.words[0]!);
  BY_FIRST.set(first, [...(BY_FIRST.get(first) ?? []), phrase]);
}

/** The phrase of several words that begins at a token, as the one word that says it, and where it ends. */
export function phraseAt(tokens: readonly Token[], at: number): { one: string; next: number } | undefined {
  if (tokens[at]!.kind !== 'word') return undefined;
  for (const { words, one } of BY_FIRST.get(meaning(tokens[at]!.low)) ?? []) {
    if (words.every((word, i) => i === 0 || tokens[at + i]?.low === word)) return { one, next: at + words.length };
  }
  return undefined;
}

/** Where idle words end that begin at a token: in order (to), that is to say. */
export function idleEnd(tokens: readonly Token[], at: number): number | undefined {
  const words = IDLE.find(idle => idle.every((word, i) => tokens[at + i]?.low === word));
  return words && at + words.length;
}
