import { join } from 'node:path';
import { type CarriedCitation, carryPassages } from '../carryover/passages.ts';
import type { MarksOf } from '../carryover/resolve.ts';
import { type ReviewEntry, reviewOf, writeReview } from '../carryover/review.ts';
import { sidecarName, writeSidecar } from '../carryover/sidecar.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { edit } from '../documents/edit.ts';
import { readMarkdown } from '../documents/markdown.ts';
import { readPlain } from '../documents/plain.ts';
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
}

export interface DocumentReport {
  readonly input: string;
  readonly out: string;
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
  readonly text: string;
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
    await refuseEditedOutput(files, place.out);
    carried.push(await carryOne(files, joint, marks, place, options.editions ?? [], mark?.sidecar.to));
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
  editions: readonly string[],
  marked: string | undefined,
): Promise<Carried> {
  const bytes = await files.read(place.input);
  const text = decode(place.input, bytes);
  const reading = place.kind === 'markdown' ? readMarkdown(text) : readPlain(text);
  const fileEdition = reading.edition ?? marked;
  const citations = carryPassages(joint, marks, reading.passages, {
    editions,
    ...(fileEdition === undefined ? {} : { fileEdition }),
  });
  return { place, input: hashOf(bytes), text, citations, record: reading.record };
}

/** The carried copy and its sidecar, each with its path. */
function outputsOf(one: Carried, from: string, to: string): [string, string][] {
  const { place, text, citations, record } = one;
  const out =
    record === undefined
      ? edit(
          text,
          citations.flatMap(c => c.edits),
        )
      : text;
  const counts = { citations: citations.length, ...countsOf(citations) };
  const sidecar = { tool: 'fishplate' as const, from, to, input: one.input, output: hashOf(out), counts };
  return [
    [place.out, out],
    [sidecarName(place.out), writeSidecar(sidecar)],
  ];
}

function decode(path: string, bytes: Uint8Array): string {
  try {
    // The byte order mark stays a part of the text, so that it comes out again.
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CatalogError('BadArgument', `${path} is not UTF-8 text; save it as UTF-8 and run again.`, { path });
  }
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
  return { input, out, leftAlone: false, outcomes: countsOf([]), rewritten: 0 };
}

function findingOf(entry: ReviewEntry): Finding {
  return {
    rule: `citation-${entry.outcome}`,
    severity: entry.outcome === 'kept' || entry.outcome === 'carried' ? 'note' : 'warning',
    subject: entry.number,
    message: `${entry.why} ${entry.toDo}`,
    place: { file: entry.file, line: entry.line },
  };
}
