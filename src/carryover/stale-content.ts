import { plainDashes } from '../citing/plain-dashes.ts';
import type { Quantity } from '../content/quantities.ts';
import type { Stretch } from '../content/sentences.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { Citation } from '../model/citation.ts';
import type { Passage } from '../model/document.ts';
import type { Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import { type LightReading, lightReading, quantitiesIn, sizesOf, stemsIn } from './light-reading.ts';
import { type EditionTexts, type OldSaying, oldSayings } from './old-sayings.ts';
import { type Piece, piecesOf } from './stale-answers.ts';
import { tellsHistory } from './stale-history.ts';
import { type Quote, quoteFinder } from './stale-quotes.ts';
import { type Teaching, taughtFinder } from './taught.ts';

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
  /** Quoted, and the newer edition asks the same in other words. */
  readonly onlyWords?: true;
}

/** Finds the stale content of a document; made once for two editions, then asked for each document. */
export type StaleFinder = (passages: readonly Passage[], citations: readonly Citation[]) => readonly StaleContent[];

/** A teaching that is weaker tells of the same things without telling the same. */
const TELLS_VALUE = { score: 0.38, shared: 3 };
const TELLS_WHOLE = { score: 0.5, told: 0.45, shared: 4 };
/** Share of the words of a run, word for word, that must be missing in the newer texts before its sense has gone. */
const SENSE_GONE = 0.34;

/**
 * Compares documents with the texts of two editions. A value is stale if the old requirement states it and nothing that
 * follows that requirement states a value of this size; a passage that states the new value as well tells of the change.
 *
 * @param editions names of further editions that a sentence may tell of
 */
export function staleFinder(joint: Joint, texts: EditionTexts, editions: readonly string[] = []): StaleFinder {
  const was = joint.from.header.name;
  const others = [joint.to.header.name, ...editions];
  const saying = oldSayings(joint, texts);
  const sayings = (entries: readonly Entry[], text: (id: ItemId) => string | undefined) =>
    entries.flatMap(({ id, title }) => (text(id) === undefined ? [] : [{ id, title, text: text(id)! }]));
  const older = sayings(joint.from.entries, id => texts.from(id));
  const newer = sayings(joint.to.entries, id => texts.to(id));
  const read = (items: typeof older) => items.map(({ id, text }) => ({ id, reading: lightReading(text) }));
  const [taught, taughtNow] = [taughtFinder(older), taughtFinder(newer)];
  const [quoted, quotedNow] = [quoteFinder(read(older)), quoteFinder(read(newer))];

  const citedIn = (citations: readonly Citation[], start: number, end: number) =>
    citations.filter(c => c.edition === was && c.start >= start && c.start < end);
  const itemsOf = ({ number, through }: Citation): readonly ItemId[] =>
    [number, ...(through ? [through.number] : [])].flatMap(n =>
      joint.old.withNumber(n).flatMap(e => [e.id, ...below(joint, e.id)]),
    );

  function inPiece(piece: Piece, citations: readonly Citation[], row: readonly Passage[]): StaleContent[] {
    const { passage, question } = piece;
    const lead = question === undefined ? '' : `${question.replace(/\n/g, ' ')}\n`;
    const plain = plainDashes(lead + piece.text);
    const passageReading = lightReading(plain.text);
    const at = (offset: number) => piece.start + plain.at(offset) - lead.length;
    const found: StaleContent[] = [];
    const put = (kind: StaleContent['kind'], old: OldSaying, start: number, end: number, more = {}) =>
      found.push({ kind, of: old.entry, heirs: old.heirs, start: at(start), end: at(end - 1) + 1, passage, ...more });
    const inRow = row.flatMap(p => citedIn(citations, p.start, p.end));
    const inPassage = citedIn(citations, passage.start, passage.end);
    const citedIds = new Set([...inPassage, ...inRow].flatMap(itemsOf));

    const whole: Stretch = { first: 0, next: passageReading.tokens.length };
    const sentences = question === undefined ? passageReading.sentences : [whole];
    for (const sentence of sentences) {
      const [start, end] = [
        passageReading.tokens[sentence.first]!.start,
        passageReading.tokens[sentence.next - 1]!.end,
      ];
      if (tellsHistory(wholeSentence(passageReading.text, start, end), was, others)) continue;
      const near = citedIn(citations, at(Math.max(start, lead.length)), at(end - 1) + 1);
      const quotes = quoted(passageReading).filter(q => q.first >= sentence.first && q.next <= sentence.next + 1);
      for (const quote of quotes) {
        const told = staleQuote(passageReading, quote, citedIds);
        if (told) {
          const tokens = passageReading.tokens;
          put('quote', told.old, tokens[quote.first]!.start, tokens[quote.next - 1]!.end, told.more);
        }
      }
      const covered = (q: Quantity) =>
        found.some(f => f.kind === 'quote' && f.start <= at(q.start) && f.end >= at(q.end - 1));
      const teachings = taught(passageReading, sentence);
      const teachingsNow = taughtNow(passageReading, sentence);
      const values = quantitiesIn(passageReading, sentence).filter(q => q.start >= lead.length && !covered(q));
      for (const q of values) {
        const scopes = [
          { citations: near, least: 1 },
          { citations: inRow, least: 0 },
          { citations: inPassage, least: 2 },
        ];
        const cited = firstScope(passageReading, sentence, q, scopes, at);
        if (cited) {
          const gone = staleValue(passageReading, sentence, q, cited);
          if (gone) put(question === undefined ? 'value' : 'answer', cited, q.start, q.end, gone);
          continue;
        }
        const retold = retoldValue(passageReading, sentence, q, teachings, teachingsNow);
        if (!retold) continue;
        const kind = question === undefined ? 'retold' : 'answer';
        // Of what is withdrawn the whole sentence is out of date, not a value in it.
        if (!retold.old.withdrawal) put(kind, retold.old, q.start, q.end, retold.more);
        else if (!found.some(f => f.of === retold.old.entry && f.start < at(end) && f.end > at(start)))
          put(kind, retold.old, Math.max(start, lead.length), end);
      }
      if (quotes.length === 0 && !found.some(f => f.start >= at(start) && f.end <= at(end))) {
        const gone = retoldWithdrawn(teachings, teachingsNow, citedIds);
        if (gone) put('retold', gone, Math.max(start, lead.length), end);
      }
    }
    return found;
  }

  /** The cited requirement that states the value: of the nearest scope, and there the nearest to it. */
  function firstScope(
    reading: LightReading,
    sentence: Stretch,
    q: Quantity,
    scopes: readonly { readonly citations: readonly Citation[]; readonly least: number }[],
    at: (offset: number) => number,
  ): OldSaying | undefined {
    const sizes = sizesOf(reading, q);
    const said = stemsIn(reading, sentence);
    for (const { citations, least } of scopes) {
      const far = (c: Citation) => Math.abs(c.start - at(q.start));
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

  function staleValue(reading: LightReading, sentence: Stretch, q: Quantity, old: OldSaying) {
    if (old.heirs.length === 0) return undefined;
    const gone = sizesOf(reading, q).filter(size => old.sizes.has(size) && !old.sizesNow.has(size));
    if (gone.length === 0 || tellsNew(reading, sentence, q, old)) return undefined;
    const valueNow = old.valueNow(gone[0]!);
    return valueNow === undefined ? {} : { valueNow };
  }

  function retoldValue(
    reading: LightReading,
    sentence: Stretch,
    q: Quantity,
    teachings: readonly Teaching[],
    teachingsNow: readonly Teaching[],
  ) {
    const sizes = sizesOf(reading, q);
    const tells = (t: Teaching) => sizes.some(size => t.sizes.has(size));
    const strong = teachings.filter(t => t.score >= TELLS_VALUE.score && t.shared >= TELLS_VALUE.shared && tells(t));
    const best = strong[0];
    if (!best) return undefined;
    const stillSaid = teachingsNow.some(t => tells(t) && t.score >= 0.8 * best.score);
    if (stillSaid) return undefined;
    const rivals = strong.filter(t => t.score >= 0.85 * best.score).map(t => saying(t.id)!);
    const verdicts = rivals.map(old => (old.withdrawal ? {} : staleValue(reading, sentence, q, old)));
    if (verdicts.some(v => v === undefined)) return undefined;
    return { old: rivals[0]!, more: verdicts[0]! };
  }

  function retoldWithdrawn(
    teachings: readonly Teaching[],
    teachingsNow: readonly Teaching[],
    citedIds: ReadonlySet<ItemId>,
  ): OldSaying | undefined {
    const best = teachings[0];
    if (!best || best.score < TELLS_WHOLE.score || best.told < TELLS_WHOLE.told || best.shared < TELLS_WHOLE.shared)
      return undefined;
    const old = saying(best.id)!;
    if (!old.withdrawal || citedIds.has(best.id)) return undefined;
    return teachingsNow.some(t => t.score >= 0.8 * best.score) ? undefined : old;
  }

  function staleQuote(reading: LightReading, quote: Quote, citedIds: ReadonlySet<ItemId>) {
    if (quotedNow(reading).some(n => n.first <= quote.first && n.next >= quote.next)) return undefined;
    const cited = quote.ids.filter(id => citedIds.has(id));
    const olds = (cited.length > 0 ? cited : quote.ids).map(id => saying(id)!);
    const stems = [...stemsIn(reading, quote)];
    const verdicts = olds.map(old => {
      if (old.withdrawal) return citedIds.has(old.entry.id) ? undefined : {};
      if (old.heirs.length === 0) return undefined;
      const values = quantitiesIn(reading, quote).flatMap(q => sizesOf(reading, q));
      const gone = values.filter(size => old.sizes.has(size) && !old.sizesNow.has(size));
      if (gone.length > 0) {
        const valueNow = old.valueNow(gone[0]!);
        return valueNow === undefined ? {} : { valueNow };
      }
      const lost = stems.filter(stem => !old.stemsNow.has(stem)).length / stems.length;
      if (lost >= SENSE_GONE) return {};
      return quote.marked ? { onlyWords: true as const } : undefined;
    });
    const at = verdicts.findIndex(v => v !== undefined);
    if (at < 0 || verdicts.some(v => v === undefined)) return undefined;
    return { old: olds[at]!, more: verdicts[at]! };
  }

  /** The sentence states a value of the newer text, of this dimension, that the old text does not: it tells the change. */
  function tellsNew(reading: LightReading, sentence: Stretch, q: Quantity, old: OldSaying): boolean {
    return quantitiesIn(reading, sentence).some(
      other =>
        other.dimension === q.dimension &&
        sizesOf(reading, other).some(size => old.sizesNow.has(size) && !old.sizes.has(size)),
    );
  }

  return (passages, citations) => {
    const rows = rowsOf(passages);
    return piecesOf(passages).flatMap(piece => inPiece(piece, citations, rows(piece.passage)));
  };
}

/** The sentence around a stretch: a reading ends one at a semicolon, where a speaker goes on. */
function wholeSentence(text: string, start: number, end: number): string {
  const before = /[^.!?\n]*$/.exec(text.slice(0, start))![0];
  return (
    before +
    text.slice(start, end) +
    (/[.!?]$/.test(text.slice(start, end)) ? '' : /^[^.!?\n]*/.exec(text.slice(end))![0])
  );
}

/** Words that the sentence with the value has in common with the stretch, title included. */
function sharedWith(old: OldSaying, sizes: readonly string[], said: ReadonlySet<string>): number {
  const { reading, entry } = old;
  const sentences = reading.sentences.filter(s =>
    quantitiesIn(reading, s).some(q => sizesOf(reading, q).some(size => sizes.includes(size))),
  );
  const own = new Set([
    ...sentences.flatMap(s => [...stemsIn(reading, s)]),
    ...lightReading(entry.title).stems.filter(Boolean),
  ]);
  return [...said].filter(stem => own.has(stem)).length;
}

function below(joint: Joint, id: ItemId): readonly ItemId[] {
  return joint.old.children(id).flatMap(e => [e.id, ...below(joint, e.id)]);
}

/** For a passage the other cells of the row that it stands in: what the file calls a row, or cells on one line. */
function rowsOf(passages: readonly Passage[]): (passage: Passage) => readonly Passage[] {
  const keyOf = ({ place, line, part }: Passage) =>
    place === undefined ? `${line}` : /\brow\b/.test(place) ? `${part} ${place}` : undefined;
  const rows = new Map<string | undefined, Passage[]>();
  for (const passage of passages) {
    const key = keyOf(passage);
    rows.set(key, [...(key === undefined ? [] : (rows.get(key) ?? [])), passage]);
  }
  return passage => {
    const row = rows.get(keyOf(passage)) ?? [];
    return row.length > WIDEST_ROW ? [] : row.filter(p => p !== passage);
  };
}

/** More passages on one line are a page that was written without line ends. */
const WIDEST_ROW = 20;
