import { plainDashes } from '../../citing/plain-dashes.ts';
import type { Quantity } from '../../content/quantities/quantities.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Citation } from '../../model/citation.ts';
import type { Passage } from '../../model/document.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId } from '../../model/item.ts';
import { rowsOf } from '../documents/passage-rows.ts';
import { lightReading, quantitiesIn, sizesOf, stemsIn } from './light-reading.ts';
import { namedOptions } from './named-options.ts';
import { type EditionTexts, type OldSaying, oldSayings } from './old-sayings.ts';
import { type Piece, piecesOf } from './stale-answers.ts';
import { tellsHistory, wholeSentence } from './stale-history.ts';
import { quoteFinder } from './stale-quotes.ts';
import { type Said, type Stale, staleQuote, staleRetold, staleRetoldValue, staleValue } from './stale-verdicts.ts';
import { taughtFinder } from './taught.ts';
import type { TypeValue } from './type-values.ts';

/**
 * Something in a document that tells what an older edition asks and the newer one does not. `value`: a value of a
 * requirement that is cited beside it. `answer`: a value in the answer of a quiz. `quote`: word for word. `retold`: in
 * other words, without a number.
 */
export interface StaleContent {
  readonly kind: 'value' | 'answer' | 'quote' | 'retold';
  /** The old requirement. */
  readonly of: Entry;
  readonly heirs: readonly Entry[];
  /** Offsets of the document. */
  readonly start: number;
  readonly end: number;
  readonly passage: Passage;
  /** The new value that stands in its place, where one does. */
  readonly valueNow?: string;
  /** Where the newer edition states values by installation type instead. */
  readonly valuesNow?: readonly TypeValue[];
  /** Quoted, and the newer edition asks the same in other words. */
  readonly onlyWords?: true;
}

/** Finds the stale content of a document; made once for two editions, then asked for each document. */
export type StaleFinder = (passages: readonly Passage[], citations: readonly Citation[]) => readonly StaleContent[];

/** Where a citation stands that a value may belong to, and the words that they must have in common. */
interface Scope {
  readonly citations: readonly Citation[];
  readonly least: number;
}

/**
 * Compares documents with the texts of two editions, sentence by sentence.
 *
 * @param editions names of further editions that a sentence may tell of
 */
export function staleFinder(joint: Joint, texts: EditionTexts, editions: readonly string[] = []): StaleFinder {
  const was = joint.from.header.name;
  const others = [joint.to.header.name, ...editions];
  const saying = oldSayings(joint, texts);
  const older = sayingItems(joint.from.entries, id => texts.from(id));
  const newer = sayingItems(joint.to.entries, id => texts.to(id));
  const [taught, taughtNow] = [taughtFinder(older), taughtFinder(newer)];
  const [quoted, quotedNow] = [quoteFinder(older), quoteFinder(newer)];

  return (passages, citations) => {
    const cited = citationsByPassage(passages, citations, was);
    const rows = rowsOf(passages);
    const contentOf = (piece: Piece) => {
      const beside = piece.beside ? [piece.beside] : [];
      const row = [...rows(piece.passage), ...beside].flatMap(p => cited.get(p) ?? []);
      return inPiece(piece, cited.get(piece.passage) ?? [], row);
    };
    const found = piecesOf(passages).flatMap(contentOf);
    const told = (one: StaleContent) =>
      found.some(f => f.of === one.of && f.passage === one.passage && f.start < one.end && f.end > one.start);
    const named = namedOptions(passages).flatMap(contentOf);
    return inOrder(passages, [...found, ...named.filter(one => !told(one))]);
  };

  function inPiece(piece: Piece, inPassage: readonly Citation[], inRow: readonly Citation[]): StaleContent[] {
    // An answer does not say what it is about: it is read behind its question, as one sentence.
    const lead = piece.question === undefined ? '' : `${piece.question.replace(/\n/g, ' ')}\n`;
    const plain = plainDashes(lead + piece.text);
    const reading = lightReading(plain.text);
    const at = (offset: number) => piece.start + plain.at(offset) - lead.length;
    const stillQuoted = quotedNow(reading);
    const quotes = quoted(reading).filter(q => !stillQuoted.some(n => n.first <= q.first && n.next >= q.next));
    const citedIds = new Set([...inPassage, ...inRow].flatMap(itemsOf));

    const found: StaleContent[] = [];
    const put = (kind: StaleContent['kind'], { old, ...more }: Stale, from: number, to: number) => {
      const [start, end] = [at(Math.max(from, lead.length)), at(to - 1) + 1];
      found.push({ kind, of: old.entry, heirs: old.heirs, start, end, passage: piece.passage, ...more });
    };
    const isFound = (from: number, to: number, of?: Entry) =>
      found.some(f => (of ?? f.of) === f.of && f.start < at(to - 1) + 1 && f.end > at(from));

    const sentences = lead === '' ? reading.sentences : [{ first: 0, next: reading.tokens.length }];
    for (const sentence of sentences) {
      const [start, end] = [reading.tokens[sentence.first]!.start, reading.tokens[sentence.next - 1]!.end];
      if (tellsHistory(wholeSentence(plain.text, start, end), was, others)) continue;
      const quotesHere = quotes.filter(q => q.first >= sentence.first && q.first < sentence.next);
      for (const quote of quotesHere) {
        const stale = staleQuote(reading, quote, saying, citedIds);
        if (stale) put('quote', stale, reading.tokens[quote.first]!.start, reading.tokens[quote.next - 1]!.end);
      }
      const said = { reading, sentence };
      const [teachings, teachingsNow] = [taught(reading, sentence), taughtNow(reading, sentence)];
      const near = inPassage.filter(c => c.start >= at(start) && c.start <= at(end - 1));
      const scopes = [
        { citations: near, least: 1 },
        { citations: inRow, least: 0 },
        { citations: inPassage, least: 2 },
      ];
      for (const q of quantitiesIn(reading, sentence)) {
        // "The bed is at least", asks a question, and the answer is "50 mm": the value is what stands in the answer.
        if (reading.tokens[q.first]!.start < lead.length) continue;
        const begin = Math.max(q.start, lead.length);
        if (isFound(begin, q.end)) continue;
        const old = statedBy(said, q, at(begin), scopes);
        const stale = old ? staleValue(said, q, old) : staleRetoldValue(said, q, saying, teachings, teachingsNow);
        if (!stale) continue;
        const kind = lead === '' ? (old ? 'value' : 'retold') : 'answer';
        // Of what is withdrawn the whole sentence is out of date, not a value in it.
        if (stale.old.withdrawal) put(kind, stale, start, end);
        else put(kind, stale, begin, q.end);
      }
      if (quotesHere.length > 0 || isFound(start, end)) continue;
      const stale = staleRetold(saying, teachings, teachingsNow);
      if (stale && !citedIds.has(stale.old.entry.id)) put('retold', stale, start, end);
    }
    return found;
  }

  /** The cited requirement that states a value: of the nearest scope, and there the nearest to it. */
  function statedBy({ reading, sentence }: Said, q: Quantity, at: number, scopes: readonly Scope[]) {
    const sizes = sizesOf(reading, q);
    const said = stemsIn(reading, sentence);
    for (const { citations, least } of scopes) {
      const far = (c: Citation) => Math.abs(c.start - at);
      for (const citation of [...citations].sort((a, b) => far(a) - far(b))) {
        for (const id of itemsOf(citation)) {
          const old = saying(id);
          if (!old || !sizes.some(size => old.sizes.has(size))) continue;
          if (said.size <= 2 || sharedWith(old, sizes, said) >= least) return old;
        }
      }
    }
    return undefined;
  }

  /** What a number names, and all that stands below it. */
  function itemsOf({ number, through }: Citation): readonly ItemId[] {
    const below = (id: ItemId): readonly ItemId[] => [id, ...joint.old.children(id).flatMap(e => below(e.id))];
    const numbers = through ? [number, through.number] : [number];
    return numbers.flatMap(n => joint.old.withNumber(n).flatMap(e => below(e.id)));
  }
}

/** By passage; within one as they were found. */
function inOrder(passages: readonly Passage[], found: readonly StaleContent[]): readonly StaleContent[] {
  const place = new Map(passages.map((passage, at) => [passage, at]));
  return [...found].sort((a, b) => place.get(a.passage)! - place.get(b.passage)!);
}

function sayingItems(entries: readonly Entry[], text: (id: ItemId) => string | undefined) {
  return entries.flatMap(({ id, title }) => {
    const said = text(id);
    return said === undefined ? [] : [{ id, title, reading: lightReading(said) }];
  });
}

function citationsByPassage(passages: readonly Passage[], citations: readonly Citation[], edition: string) {
  const of = citations.filter(c => c.edition === edition).sort((a, b) => a.start - b.start);
  const byPassage = new Map<Passage, readonly Citation[]>();
  let next = 0;
  for (const passage of [...passages].sort((a, b) => a.start - b.start)) {
    const first = next;
    while (next < of.length && of[next]!.start < passage.end) next++;
    if (next > first) byPassage.set(passage, of.slice(first, next));
  }
  return byPassage;
}

/** How many words a stretch has in common with the sentences that state a value, and with their item's title. */
function sharedWith({ reading, entry }: OldSaying, sizes: readonly string[], said: ReadonlySet<string>): number {
  const stating = reading.sentences.filter(s =>
    quantitiesIn(reading, s).some(q => sizesOf(reading, q).some(size => sizes.includes(size))),
  );
  const own = new Set([
    ...stating.flatMap(s => [...stemsIn(reading, s)]),
    ...lightReading(entry.title).stems.filter(Boolean),
  ]);
  return [...said].filter(stem => own.has(stem)).length;
}
