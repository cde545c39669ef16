import type { ItemToken, ItsFunction } from 'wink-nlp';
import { isParticiple } from './obligations.ts';
import { orderBegins } from './orders.ts';
import { lowerFirst, plainSigns, withoutQuoted } from './plain-text.ts';
import type { ReadText, Segment, Word } from './read-text.ts';
import { type Stretch, segmentsOf, sentencesOf } from './sentences.ts';

/** Reads texts into words with parts of speech. */
export interface Language {
  read(text: string): ReadText;
}

interface Token {
  readonly value: string;
  readonly lemma: string;
  readonly tag: string;
}

/** Longer segments are read in pieces: the tagger's time is linear, its memory for one text is not worth a catalog's. */
const LONGEST = 4000;

/** Put before an order, so that the tagger, which knows no imperatives, sees a verb: bare "fit a board" is a noun to it. */
const LEAD = 'you must ';

let loaded: Promise<Language> | undefined;

/** The language model takes 0.2 s and 80 MB, so it is loaded when a command first asks for it. */
export function loadLanguage(): Promise<Language> {
  loaded ??= load();
  return loaded;
}

async function load(): Promise<Language> {
  const [{ default: winkNLP }, { default: model }] = await Promise.all([
    import('wink-nlp'),
    import('wink-eng-lite-web-model'),
  ]);
  const nlp = winkNLP(model, ['pos']);
  const { its } = nlp;
  const tag = (text: string): Token[] => {
    const tokens: Token[] = [];
    nlp
      .readDoc(text)
      .tokens()
      .each((t: ItemToken) => {
        tokens.push({ value: t.out(its.value), lemma: t.out(its.lemma as ItsFunction<string>), tag: t.out(its.pos) });
      });
    return tokens;
  };
  return { read: text => readText(text, tag) };
}

function readText(text: string, tag: (text: string) => Token[]): ReadText {
  const plain = withoutQuoted(plainSigns(text));
  const sentences = sentencesOf(plain).map(sentence => ({
    ...sentence,
    segments: segmentsOf(plain, sentence)
      .flatMap(cutLong)
      .map(part => readSegment(plain.slice(part.start, part.end), part.start, tag)),
  }));
  return { text, plain, sentences };
}

function cutLong({ start, end }: Stretch): Stretch[] {
  const pieces: Stretch[] = [];
  for (let at = start; at < end; at += LONGEST) pieces.push({ start: at, end: Math.min(end, at + LONGEST) });
  return pieces;
}

function readSegment(segment: string, offset: number, tag: (text: string) => Token[]): Segment {
  const lowered = lowerFirst(segment);
  const order = orderBegins(lowered);
  if (order !== undefined) {
    const words = place(tag(`${lowered.slice(0, order)}${LEAD}${lowered.slice(order)}`), lowered, order, offset);
    const orderAt = words.findIndex(w => w.start >= offset + order);
    const verb = words[orderAt];
    if (verb && isOrder(verb, words[orderAt + 1])) {
      words[orderAt] = asVerb(verb);
      return { words: withVerbs(words), orderAt };
    }
  }
  return { words: withVerbs(place(tag(lowered), lowered, undefined, offset)) };
}

const asVerb = (word: Word): Word => ({ ...word, tag: 'VERB', lemma: word.lower });

/**
 * What a modal verb governs is a verb, though the tagger takes "shall clean", "shall open" and "shall prime" for
 * qualities. Nobody says "shall" of a quality or a thing without "be".
 */
function withVerbs(words: readonly Word[]): Word[] {
  return words.map((word, i) => {
    if (!/^(?:NOUN|ADJ|PROPN)$/.test(word.tag) || isParticiple(word) || words[i + 1]?.lower === 'be') return word;
    let at = i - 1;
    while (at > 0 && (words[at]!.tag === 'ADV' || words[at]!.lower === 'not')) at--;
    return /^(?:shall|must|should)$/.test(words[at]?.lower ?? '') && !isInverted(words, at) ? asVerb(word) : word;
  });
}

/** "Should doors jam": the subject stands behind the verb. */
function isInverted(words: readonly Word[], modal: number): boolean {
  return words[modal]!.lower === 'should' && (modal === 0 || words[modal - 1]!.lower === ',');
}

/** Trades make verbs of nouns: "torque the bolts", "clean surfaces". A determiner behind it, or no other reading, tells. */
function isOrder(verb: Word, next: Word | undefined): boolean {
  if (verb.lower === 'do') return true;
  if (next && isParticiple(next)) return false;
  if (/VERB|AUX/.test(verb.tag) && verb.lemma === verb.lower) return true;
  if (!/NOUN|ADJ|ADV|PROPN/.test(verb.tag) || next === undefined) return false;
  return (
    next.tag === 'DET' || next.tag === 'PRON' || (TRADE_VERBS.has(verb.lower) && /NOUN|ADJ|NUM|VERB/.test(next.tag))
  );
}

const TRADE_VERBS = new Set(
  'clean dry level plumb torque prime grout caulk shim dowel solder braze crimp deburr ream swab flush sand mask earth bond lag vent clear empty open secure tag label cap plug drain purge prop brace strut screed float tack tape bed point rake chase prune mulch stake lock date file log sign'.split(
    ' ',
  ),
);

/** Tokens with their places; those of the lead are passed over. */
function place(tokens: readonly Token[], text: string, lead: number | undefined, offset: number): Word[] {
  const words: Word[] = [];
  let at = 0;
  let skip = lead === undefined ? 0 : 2;
  for (const { value, lemma, tag } of tokens) {
    if (skip > 0 && lead !== undefined && at + (text.slice(at, lead).trim() === '' ? lead - at : 0) >= lead) {
      skip--;
      continue;
    }
    const start = text.indexOf(value, at);
    if (start < 0) continue;
    at = start + value.length;
    words.push({
      lower: value.toLowerCase(),
      lemma: lemma.toLowerCase(),
      tag,
      start: offset + start,
      end: offset + at,
    });
  }
  return words;
}
