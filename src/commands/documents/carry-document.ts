import type { Decisions } from '../../carryover/decisions.ts';
import { type CarriedMarks, carryMarks, type MarkEntry, writeMarks } from '../../carryover/documents/carry-marks.ts';
import {
  type DecidedEntry,
  decidedIn,
  decidedRemarks,
  writeDecided,
} from '../../carryover/documents/decided-places.ts';
import { type CarriedCitation, carryPassages } from '../../carryover/documents/passages.ts';
import { textDecider } from '../../carryover/documents/text-decisions.ts';
import { type LookAtEntry, remarksOf, toLookAt, writeToLookAt } from '../../carryover/documents/to-look-at.ts';
import type { MarksOf } from '../../carryover/resolve.ts';
import { sidecarName, writeSidecar } from '../../carryover/sidecar.ts';
import { type StaleEntry, type StaleSearch, writeStale } from '../../carryover/stale/stale-places.ts';
import type { CitedBook } from '../../citing/cited-book.ts';
import { statedEdition } from '../../citing/stated-edition.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { changeDocument } from '../../documents/change-document.ts';
import { kindOfDocument } from '../../documents/kinds.ts';
import { readDocument } from '../../documents/read-document.ts';
import { OUTCOMES, type OutcomeKind } from '../../model/citation.ts';
import { hashOf } from '../carrying/carry-mark.ts';
import type { StoodBefore } from '../carrying/kept-before.ts';

/** A document as it was read. */
export interface GivenDocument {
  /** For messages, and for its kind. */
  readonly path: string;
  /** Its name in the review list, and the path of its copy below the folder of the outputs. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** The edition that the mark beside it says. */
  readonly marked?: string;
}

export interface CarriedDocument {
  readonly name: string;
  /** sha256 of the original. */
  readonly input: string;
  /** The carried copy; absent where the document is only read. */
  readonly out: Uint8Array | undefined;
  readonly citations: readonly CarriedCitation[];
  /** Where it says that it follows the older edition, and what was done about it. */
  readonly marks: CarriedMarks;
  /** Absent where nobody looked for it. */
  readonly stale?: readonly StaleEntry[];
  readonly record: string | undefined;
}

export interface DocumentOptions {
  /** Names of all editions of the catalog, so that a text may name any of them. */
  readonly editions?: readonly string[];
  /** When tracked changes and comments are made, ISO 8601; without it they bear no date. */
  readonly date?: string;
  /** Looks for stale content; it needs the texts of both editions, which not everybody has at hand. */
  readonly searchStale?: StaleSearch;
  /** The edition that is cited, with what its items say, read once for all documents. */
  readonly book?: CitedBook;
  /** What people decided about cases. */
  readonly decisions?: Decisions;
}

/** One document with its citations answered, and its carried copy. Touches no file. */
export async function carryDocument(
  joint: Joint,
  marks: MarksOf,
  { path, name, bytes, marked }: GivenDocument,
  { editions = [], date, searchStale, book, decisions }: DocumentOptions,
): Promise<CarriedDocument> {
  const { passages, record, fixed = [], edition, editionAt } = await readDocument(path, bytes);
  const known = [joint.from.header.name, joint.to.header.name, ...editions];
  const fileEdition = edition ?? marked ?? statedEdition(passages, known);
  const citations = carryPassages(
    joint,
    marks,
    passages,
    { editions, ...(fileEdition === undefined ? {} : { fileEdition }), ...(book ? { book } : {}) },
    fixed,
    // What a signed record says is not decided anew.
    decisions && record === undefined ? textDecider(joint, decisions, name) : undefined,
  );
  // A record tells what was asked when it was signed, and a text of another edition what that one asks.
  const follows = fileEdition === undefined || fileEdition === joint.from.header.name;
  const looked = record === undefined && follows ? searchStale : searchStale && NOTHING_STALE;
  const stale = looked?.(
    name,
    passages,
    citations.map(c => c.citation),
  );
  const mark =
    edition === undefined ? undefined : { place: markPlace(path), edition, ...(editionAt && { at: editionAt }) };
  const marksOfText =
    record === undefined && follows
      ? carryMarks(
          { from: joint.from.header.name, to: joint.to.header.name },
          {
            name,
            passages,
            citations,
            catalog: joint.from.settings.title,
            stale: stale?.entries.length ?? 0,
            isFixed: at => fixed.some(f => f.start < at.end && f.end > at.start),
            ...(mark ? { mark } : {}),
          },
          decisions,
        )
      : NO_MARKS;
  const changes = {
    edits: [...citations.flatMap(c => c.edits), ...marksOfText.edits],
    remarks: [...remarksOf(citations), ...decidedRemarks(citations), ...marksOfText.remarks, ...(stale?.remarks ?? [])],
  };
  const stamp = { author: 'Fishplate', ...(date === undefined ? {} : { date }) };
  // A signed record is copied as it is; of what is only read there is no copy.
  const out = record === undefined ? await changeDocument(path, bytes, changes, stamp) : bytes;
  return {
    name,
    input: hashOf(bytes),
    out,
    citations,
    record,
    marks: marksOfText,
    ...(stale ? { stale: stale.entries } : {}),
  };
}

const NO_MARKS: CarriedMarks = { places: 0, entries: [], edits: [], remarks: [] };

/** Where a file of this kind has its own mark. */
function markPlace(path: string): string {
  const kind = kindOfDocument(path);
  return kind === 'markdown' ? 'front matter' : kind === 'html' ? 'meta element' : 'document property';
}

const NOTHING_STALE: StaleSearch = () => ({ entries: [], remarks: [] });

/**
 * All that carrying these documents writes, by path below the folder of the outputs, and the review list itself.
 *
 * @param records what stood under the names of the copies before, by name
 */
export function documentOutputs(
  joint: Joint,
  carried: readonly CarriedDocument[],
  records: ReadonlyMap<string, StoodBefore['record']> = new Map(),
): {
  readonly review: readonly LookAtEntry[];
  readonly decided: readonly DecidedEntry[];
  readonly marks: readonly MarkEntry[];
  readonly stale: readonly StaleEntry[];
  readonly files: readonly (readonly [string, string | Uint8Array])[];
} {
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const review = carried.flatMap(c => toLookAt(c.name, c.citations, c.record));
  const decided = carried.flatMap(c => decidedIn(c.name, c.citations));
  const marks = carried.flatMap(c => c.marks.entries);
  const stale = carried.flatMap(c => c.stale ?? []);
  const looked = carried.some(c => c.stale);
  const more = { ...(decided.length ? { decided } : {}), ...(marks.length ? { marks } : {}) };
  const list = { from, to, citations: review, ...more, ...(looked ? { stale } : {}) };
  return {
    review,
    decided,
    marks,
    stale,
    files: [
      ...carried.flatMap(one => copyOf(one, from, to, records.get(one.name))),
      [
        'review.md',
        writeToLookAt(from, to, review) +
          writeDecided(decided) +
          writeMarks(marks) +
          (looked ? writeStale(to, stale) : ''),
      ],
      ['review.json', `${JSON.stringify(list, null, 2)}\n`],
    ],
  };
}

/** The carried copy and its sidecar. */
function copyOf(
  { name, input, out, citations, marks }: CarriedDocument,
  from: string,
  to: string,
  record: StoodBefore['record'] | undefined,
) {
  if (out === undefined) return [];
  const counts = { citations: citations.length, ...outcomesOf(citations) };
  const left = marks.entries.length ? { marks: marks.entries.map(({ place, text }) => ({ place, text })) } : {};
  const sidecar = { tool: 'fishplate' as const, from, to, input, output: hashOf(out), counts, ...left, ...record };
  return [[name, out] as const, [sidecarName(name), writeSidecar(sidecar)] as const];
}

export function outcomesOf(citations: readonly CarriedCitation[]): Record<OutcomeKind, number> {
  const counts = Object.fromEntries(OUTCOMES.map(k => [k, citations.filter(c => c.outcome.kind === k).length]));
  return counts as Record<OutcomeKind, number>;
}

/** Numbers replaced in place; a range counts once, and a signed record is never changed. */
export function rewrittenIn({ record, citations }: CarriedDocument): number {
  return record === undefined ? citations.filter(c => c.edits.length > 0).length : 0;
}
