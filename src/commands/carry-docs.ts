import { join } from 'node:path';
import { type CarriedCitation, carryPassages } from '../carryover/passages.ts';
import type { MarksOf } from '../carryover/resolve.ts';
import { type ReviewEntry, remarksOf, reviewOf, writeReview } from '../carryover/review.ts';
import { sidecarName, writeSidecar } from '../carryover/sidecar.ts';
import { statedEdition } from '../citing/stated-edition.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { changeDocument } from '../documents/change-document.ts';
import { readDocument } from '../documents/read-document.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { hashOf, markOf, refuseEditedOutput } from './carry-mark.ts';
import { writeTogether } from './commit-all.ts';
import { type PlacedDocument, placeDocuments } from './document-set.ts';
import type { Files, Ports } from './ports.ts';

export interface CarryDocsOptions {
  readonly inputs: readonly string[];
  readonly outDir: string;
  /** Names of all editions of the catalog, so that a text may name any of them. */
  readonly editions?: readonly string[];
  /** When tracked changes and comments are made, ISO 8601; without it they bear no date. */
  readonly date?: string;
}

export interface DocumentReport {
  readonly input: string;
  /** Absent where the document is only read: citations of a PDF are listed. */
  readonly out?: string;
  /** The input was an output of an earlier run and untouched since: nothing was written for it. */
  readonly leftAlone: boolean;
  /** The line by which the file says that it is a signed or dated record; it was copied byte for byte. */
  readonly record?: string;
  readonly outcomes: Readonly<Record<OutcomeKind, number>>;
  /** Numbers replaced in place; a range counts once. */
  readonly rewritten: number;
}

export interface DocsReport {
  readonly from: string;
  readonly to: string;
  readonly documents: readonly DocumentReport[];
  readonly review: readonly ReviewEntry[];
  readonly findings: readonly Finding[];
}

interface Carried {
  readonly place: PlacedDocument;
  readonly input: string;
  /** The carried copy; absent where the document is only read. */
  readonly out: Uint8Array | undefined;
  readonly citations: readonly CarriedCitation[];
  readonly record: string | undefined;
}

/**
 * Carries documents: citations that are certain are rewritten in place, in copies under `outDir`; all others are left
 * as they are and set out in `review.md` and `review.json` there. Nothing is written before every input has been read
 * and answered.
 *
 * @throws CatalogError OutputIsInput, AlreadyCarried, BadArgument, and what the files say.
 */
export async function carryDocs(
  ports: Pick<Ports, 'files' | 'progress'>,
  joint: Joint,
  marks: MarksOf,
  options: CarryDocsOptions,
): Promise<DocsReport> {
  const { files, progress } = ports;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const places = await placeDocuments(files, options.inputs, options.outDir);
  const carried: Carried[] = [];
  const leftAlone: PlacedDocument[] = [];
  for (const [at, place] of places.entries()) {
    if (at > 0 && at % 50 === 0) progress(`${at} of ${places.length} documents read`);
    const mark = await markOf(files, place.input);
    if (mark?.sidecar.to === to) {
      if (!mark.untouched) throw edited(place.input, to);
      leftAlone.push(place);
      continue;
    }
    if (place.out !== undefined) await refuseEditedOutput(files, place.out);
    carried.push(await carryOne(files, joint, marks, place, options, mark?.sidecar.to));
  }

  const review = carried.flatMap(c => reviewOf(c.place.name, c.citations, c.record));
  await writeTogether(files, [
    ...carried.flatMap(one => outputsOf(one, from, to)),
    [join(options.outDir, 'review.md'), writeReview(from, to, review)],
    [join(options.outDir, 'review.json'), `${JSON.stringify({ from, to, citations: review }, null, 2)}\n`],
  ]);
  const documents = [...carried.map(reportOf), ...leftAlone.map(p => ({ ...untouched(p), leftAlone: true }))];
  return { from, to, documents, review, findings: review.map(findingOf) };
}

async function carryOne(
  files: Files,
  joint: Joint,
  marks: MarksOf,
  place: PlacedDocument,
  { editions = [], date }: CarryDocsOptions,
  marked: string | undefined,
): Promise<Carried> {
  const bytes = await files.read(place.input);
  const { passages, record, fixed, edition } = await readDocument(place.input, bytes);
  const known = [joint.from.header.name, joint.to.header.name, ...editions];
  const fileEdition = edition ?? marked ?? statedEdition(passages, known);
  const citations = carryPassages(
    joint,
    marks,
    passages,
    { editions, ...(fileEdition === undefined ? {} : { fileEdition }) },
    fixed,
  );
  const changes = { edits: citations.flatMap(c => c.edits), remarks: remarksOf(citations) };
  const stamp = { author: 'Fishplate', ...(date === undefined ? {} : { date }) };
  // A signed record is copied as it is; of what is only read there is no copy.
  const copy = record === undefined ? () => changeDocument(place.input, bytes, changes, stamp) : () => bytes;
  const out = place.out === undefined ? undefined : await copy();
  return { place, input: hashOf(bytes), out, citations, record };
}

/** The carried copy and its sidecar, each with its path. */
function outputsOf(
  { place, input, out, citations }: Carried,
  from: string,
  to: string,
): [string, string | Uint8Array][] {
  if (place.out === undefined || out === undefined) return [];
  const counts = { citations: citations.length, ...countsOf(citations) };
  const sidecar = { tool: 'fishplate' as const, from, to, input, output: hashOf(out), counts };
  return [
    [place.out, out],
    [sidecarName(place.out), writeSidecar(sidecar)],
  ];
}

function edited(path: string, to: string): CatalogError {
  return new CatalogError(
    'AlreadyCarried',
    `${path} was carried to ${to} before and has been edited since; run on the original document instead.`,
    { path },
  );
}

function countsOf(citations: readonly CarriedCitation[]): Record<OutcomeKind, number> {
  const counts = Object.fromEntries(OUTCOMES.map(k => [k, citations.filter(c => c.outcome.kind === k).length]));
  return counts as Record<OutcomeKind, number>;
}

function reportOf({ place, citations, record }: Carried): DocumentReport {
  return {
    ...untouched(place),
    outcomes: countsOf(citations),
    rewritten: record === undefined ? citations.filter(c => c.edits.length > 0).length : 0,
    ...(record === undefined ? {} : { record }),
  };
}

function untouched({ input, out }: PlacedDocument): DocumentReport {
  return { input, ...(out === undefined ? {} : { out }), leftAlone: false, outcomes: countsOf([]), rewritten: 0 };
}

function findingOf(entry: ReviewEntry): Finding {
  const isLine = entry.place === `line ${entry.line}`;
  return {
    rule: `citation-${entry.outcome}`,
    severity: entry.outcome === 'kept' || entry.outcome === 'carried' ? 'note' : 'warning',
    subject: entry.number,
    message: `${isLine ? '' : `${entry.place}: `}${entry.why} ${entry.toDo}`,
    place: { file: entry.file, ...(isLine ? { line: entry.line } : {}) },
  };
}
