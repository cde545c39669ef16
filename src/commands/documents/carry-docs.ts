import { join } from 'node:path';
import { type MarkEntry, markQuestion } from '../../carryover/documents/carry-marks.ts';
import type { DecidedEntry } from '../../carryover/documents/decided-places.ts';
import { OF_TEXTS, textQuestions } from '../../carryover/documents/text-decisions.ts';
import type { LookAtEntry } from '../../carryover/documents/to-look-at.ts';
import { largestFirst, type Question } from '../../carryover/questions.ts';
import type { MarksOf } from '../../carryover/resolve.ts';
import type { EditionTexts } from '../../carryover/stale/old-sayings.ts';
import { staleFinder } from '../../carryover/stale/stale-content.ts';
import { type StaleEntry, staleSearch } from '../../carryover/stale/stale-places.ts';
import { citedBook } from '../../citing/cited-book.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { OutcomeKind } from '../../model/citation.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { JobAnswer } from '../../model/job-answer.ts';
import { hashOf, markOf, refuseEditedOutput } from '../carrying/carry-mark.ts';
import { type StoodBefore, stoodBefore } from '../carrying/kept-before.ts';
import { type GivenDecisions, readDecisions } from '../carrying/read-decisions.ts';
import { questionTable } from '../carrying/tables-beside.ts';
import { writeTogether } from '../ports/commit-all.ts';
import type { Files, Ports } from '../ports/ports.ts';
import {
  type CarriedDocument,
  carryDocument,
  type DocumentOptions,
  documentOutputs,
  outcomesOf,
  rewrittenIn,
} from './carry-document.ts';
import { citationFinding, markFinding, staleFinding } from './docs-findings.ts';
import { type PlacedDocument, placeDocuments } from './document-set.ts';

export interface CarryDocsOptions extends Omit<DocumentOptions, 'searchStale' | 'book' | 'decisions'>, GivenDecisions {
  readonly inputs: readonly string[];
  readonly outDir: string;
  /** The texts of both editions; without them stale content is not looked for. */
  readonly texts?: EditionTexts;
  /** Where the questionnaire goes: csv, or a workbook where it ends in .xlsx. */
  readonly decisionsOut?: string;
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
  /** Stretches that tell what the newer edition no longer asks. */
  readonly stale: number;
}

export interface DocsReport {
  readonly from: string;
  readonly to: string;
  readonly documents: readonly DocumentReport[];
  readonly review: readonly LookAtEntry[];
  /** What decisions settled. */
  readonly decided: readonly DecidedEntry[];
  /** Where documents say that they follow the older edition, and nobody has decided that they do not. */
  readonly marks: readonly MarkEntry[];
  readonly stale: readonly StaleEntry[];
  /** Each once, those with the most places first, answered ones among them. */
  readonly questions: readonly Question[];
  readonly findings: readonly Finding[];
  /** Answers of the questionnaire that were of use, to be kept for later runs. */
  readonly answered: readonly Omit<JobAnswer, 'date'>[];
}

/**
 * Carries documents: citations that are certain are rewritten in place, in copies under `outDir`; all others are left
 * as they are and set out in `review.md` and `review.json` there, with stale content below them. Nothing is
 * written before every input has been read and answered.
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
  const { texts, decisions: given, kept, decisionsOut, ...documents } = options;
  const { decisions } = await readDecisions(
    files,
    { ...(given ? { decisions: given } : {}), ...(kept ? { kept } : {}) },
    OF_TEXTS,
  );
  const searchStale = texts && staleSearch(joint, texts, staleFinder(joint, texts, options.editions));
  const book = citedBook(joint.from, { places: joint.old, ...(texts ? { textOf: texts.from } : {}) });
  const how = { ...documents, book, ...(searchStale ? { searchStale } : {}), ...(decisions ? { decisions } : {}) };
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const places = await placeDocuments(files, options.inputs, options.outDir);
  if (decisionsOut !== undefined) await refuseOverInput(files, decisionsOut, options.inputs);
  const carried: CarriedFile[] = [];
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
    const bytes = await files.read(place.input);
    const marked = mark === undefined ? {} : { marked: mark.sidecar.to };
    const given = { path: place.input, name: place.name, bytes, ...marked };
    carried.push({ place, done: await carryDocument(joint, marks, given, how) });
  }

  const before = await stoodBeforeCopies(files, carried);
  const outputs = documentOutputs(
    joint,
    carried.map(c => c.done),
    before.records,
  );
  const { review, decided, stale, marks: marksLeft } = outputs;
  const open = carried.map(c => c.done).filter(d => d.record === undefined);
  const aboutMarks = markQuestion(
    { from, to },
    open.map(d => ({ name: d.name, places: d.marks.places })),
  );
  const questions = largestFirst([...aboutMarks, ...textQuestions(joint, open)]);
  const asked =
    decisionsOut === undefined ? [] : [[decisionsOut, questionTable(decisionsOut, questions, decisions)] as const];
  const isCopy = new Set(carried.map(c => c.done.name));
  const placed = (copies: boolean) =>
    outputs.files
      .filter(([name]) => isCopy.has(name) === copies)
      .map(([name, content]) => [join(options.outDir, name), content] as const);
  // Copies last: killed before one, what stood there stands there still, and the record beside it tells it.
  await writeTogether(files, [...asked, ...placed(false), ...before.kept, ...placed(true)]);
  const reports = [...carried.map(reportOf), ...leftAlone.map(p => ({ ...untouched(p), leftAlone: true }))];
  const findings = [
    ...review.map(citationFinding),
    ...marksLeft.map(markFinding),
    ...stale.map(staleFinding),
    ...(decisions?.findings() ?? []),
  ];
  const answered = decisions?.toKeep({ from, to }) ?? [];
  return { from, to, documents: reports, review, decided, marks: marksLeft, stale, questions, findings, answered };
}

interface CarriedFile {
  readonly place: PlacedDocument;
  readonly done: CarriedDocument;
}

/** What stands under the names of copies, for their records, and copies of what is not ours. */
async function stoodBeforeCopies(files: Files, carried: readonly CarriedFile[]) {
  const records = new Map<string, StoodBefore['record']>();
  const kept: (readonly [string, Uint8Array])[] = [];
  for (const { place, done } of carried) {
    if (place.out === undefined || done.out === undefined) continue;
    const stood = await stoodBefore(files, place.out, hashOf(done.out));
    records.set(done.name, stood.record);
    if (stood.copyTo !== undefined) kept.push([stood.copyTo, await files.read(place.out)]);
  }
  return { records, kept };
}

async function refuseOverInput(files: Files, out: string, inputs: readonly string[]): Promise<void> {
  for (const input of inputs) {
    if (!(await files.same(out, input))) continue;
    throw new CatalogError('OutputIsInput', `${out} is one of the documents; give --decisions-out another name.`, {
      out,
    });
  }
}

function edited(path: string, to: string): CatalogError {
  return new CatalogError(
    'AlreadyCarried',
    `${path} was carried to ${to} before and has been edited since; run on the original document instead.`,
    { path },
  );
}

function reportOf({ place, done }: CarriedFile): DocumentReport {
  const { citations, record } = done;
  return {
    ...untouched(place),
    outcomes: outcomesOf(citations),
    rewritten: rewrittenIn(done),
    stale: done.stale?.length ?? 0,
    ...(record === undefined ? {} : { record }),
  };
}

function untouched({ input, out }: PlacedDocument): DocumentReport {
  const nothing = { leftAlone: false, outcomes: outcomesOf([]), rewritten: 0, stale: 0 };
  return { input, ...(out === undefined ? {} : { out }), ...nothing };
}
