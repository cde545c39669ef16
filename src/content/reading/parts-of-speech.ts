import { createRequire } from 'node:module';
import type { Token } from './tokens.ts';

/** Universal part-of-speech tags, as wink-eng-lite-web-model gives them. */
export type Tag =
  | 'NOUN'
  | 'PROPN'
  | 'VERB'
  | 'ADJ'
  | 'ADV'
  | 'ADP'
  | 'DET'
  | 'AUX'
  | 'PRON'
  | 'NUM'
  | 'CCONJ'
  | 'SCONJ'
  | 'PART'
  | 'PUNCT'
  | 'SYM'
  | 'INTJ'
  | 'X';

let reader: ((text: string) => { words: string[]; tags: Tag[] }) | undefined;

/** The model takes 0.2 s to load, so it is loaded by the first text that needs it and by no other command. */
function read(text: string) {
  if (!reader) {
    const require = createRequire(import.meta.url);
    const winkNLP = require('wink-nlp') as typeof import('wink-nlp').default;
    const nlp = winkNLP(require('wink-eng-lite-web-model'), ['pos']);
    // All words at once: an object for each token, as `each` makes, takes half as long again.
    reader = sentence => {
      const tokens = nlp.readDoc(sentence).tokens();
      return { words: tokens.out(), tags: tokens.out(nlp.its.pos) as Tag[] };
    };
  }
  return reader(text);
}

/** Words joined by so many hyphens are none; the model's own pattern for addresses takes 10 s on 4,000 of them. */
const CHAIN = /[\p{L}\p{N}]+(?:-[\p{L}\p{N}]*){8,}/gu;

const withoutChains = (text: string) =>
  text.includes('-') ? text.replace(CHAIN, chain => chain.replaceAll('-', ' ')) : text;

/** No word is so long. The model's patterns begin anew at each sign of a run without a space: 20,000 dashes took a minute. */
export const LONGEST_RUN = 120;
const RUN = new RegExp(`\\S{${LONGEST_RUN}}(?=\\S)`, 'gu');

/** A text as the model may see it: whatever stands unbroken for longer than any word is cut into pieces. */
export const inPieces = (text: string): string => text.replace(RUN, '$& ');

/**
 * The part of speech of each token. A capital at the beginning of a sentence is lowered first: the model takes "Seal all
 * joints" for a name otherwise.
 */
export function tagsOf(text: string, tokens: readonly Token[]): Tag[] {
  const lowered = text.replace(
    /(^|[.;:!?\n]\s{0,9}|^\W{1,9})(\p{Lu})(?=\p{Ll})/gu,
    (all, before: string, letter: string) => (letter.toLowerCase().length === 1 ? before + letter.toLowerCase() : all),
  );
  const { words, tags } = read(inPieces(withoutChains(lowered)));
  const found: Tag[] = [];
  let [at, place, end] = [-1, 0, 0];
  for (const token of tokens) {
    while (end <= token.start && at + 1 < words.length) {
      at++;
      const start = lowered.indexOf(words[at]!, place);
      if (start < 0) continue;
      place = start + words[at]!.length;
      end = place;
    }
    found.push(token.kind === 'mark' ? 'PUNCT' : token.kind === 'number' ? 'NUM' : (tags[at] ?? 'X'));
  }
  return found;
}
