import { Decisions } from '../carryover/decisions.ts';
import { markQuestion } from '../carryover/documents/carry-marks.ts';
import { OF_TEXTS, textQuestions } from '../carryover/documents/text-decisions.ts';
import { isOpen } from '../carryover/documents/to-look-at.ts';
import { largestFirst, QUESTION_COLUMNS } from '../carryover/questions.ts';
import { sidecarName } from '../carryover/sidecar.ts';
import { questionTable } from '../commands/carrying/tables-beside.ts';
import {
  type CarriedDocument,
  carryDocument,
  documentOutputs,
  outcomesOf,
  rewrittenIn,
} from '../commands/documents/carry-document.ts';
import type { PackedWays, Way } from '../crosswalk/packed-ways.ts';
import { kindOfDocument } from '../documents/kinds.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import { CatalogError } from '../model/errors.ts';
import { writeZip } from '../office/write-zip.ts';
import { readTable } from '../tables/read-table.ts';
import { askedQuestions } from './asked-question.ts';
import { besideName, carriedName } from './carried-name.ts';
import type { CarriedLessons, CarryRequest, GivenFile, MadeFile } from './carry-request.ts';
import { answersTable, notesOf } from './given-answers.ts';
import { foundInLessons, saidOfLessons } from './lesson-words.ts';
import { packedBook } from './packed-book.ts';

const MEANINGS: Readonly<Record<OutcomeKind, string>> = {
  kept: 'The number stays and asks the same.',
  carried: 'The new number is written in its place.',
  choose: 'A person has to decide; it is left as it is.',
  withdrawn: 'No requirement takes its place; it is left as it is.',
  unknown: 'The number names nothing, or not one thing; it is left as it is.',
};

/**
 * Carries lessons or any other texts, with the same bytes as `carry docs` on them together, where they lie in one folder.
 *
 * @throws CatalogError
 */
export async function carryLessons(
  way: Way,
  packed: PackedWays,
  { files, answers }: CarryRequest,
  progress: (message: string) => void,
): Promise<CarriedLessons> {
  const { joint, marks } = way;
  refuseNames(files);
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const given = answersTable(answers);
  const decisions = given && new Decisions(readTable(given.name, given.bytes), [], OF_TEXTS);
  const how = {
    editions: packed.editions,
    ...packedBook(way, packed),
    ...(decisions ? { decisions } : {}),
  };
  const carried: CarriedDocument[] = [];
  for (const { name, bytes } of files) {
    if (files.length > 1) progress(`Reading ${name}, ${carried.length + 1} of ${files.length}`);
    carried.push(await carryDocument(joint, marks, { path: name, name, bytes }, how));
  }
  const { files: outputs, review, stale } = documentOutputs(joint, carried);
  const open = carried.filter(d => d.record === undefined);
  const aboutMarks = markQuestion(
    { from, to },
    open.map(d => ({ name: d.name, places: d.marks.places })),
  );
  const questions = largestFirst([...aboutMarks, ...textQuestions(joint, open)]);
  const citations = carried.flatMap(d => d.citations);
  const outcomes = outcomesOf(citations);
  const cited = new Map<string, number>();
  for (const { citation } of citations) cited.set(citation.edition, (cited.get(citation.edition) ?? 0) + 1);
  const names = files.map(f => f.name);
  // In the order of the review list, which is made of the same citations.
  const looked = carried.flatMap(d =>
    d.citations.filter(c => d.record !== undefined || isOpen(c)).map(c => ({ d, c })),
  );
  const decisionsFile = questionTable('decisions.csv', questions, decisions);
  return {
    kind: 'lessons',
    found: foundInLessons(names, cited),
    said: saidOfLessons({
      to,
      cited: citations.length,
      rewritten: carried.reduce((n, d) => n + rewrittenIn(d), 0),
      open: review.length,
      stale: stale.length,
      records: carried.flatMap(d => (d.record === undefined ? [] : [{ name: d.name, line: d.record }])),
      files: files.length,
    }),
    outcomes: OUTCOMES.map(k => ({ kind: k, count: outcomes[k], meaning: MEANINGS[k] })),
    notes: notesOf(decisions?.findings() ?? []),
    questionColumns: QUESTION_COLUMNS,
    questions: askedQuestions(questions, decisions, () => joint),
    review: review.map((r, at) => ({
      file: r.file,
      place: r.place,
      number: r.number,
      outcome: r.outcome,
      why: r.why,
      toDo: r.toDo,
      text: r.text,
      heirs: r.heirs.map(h => `${h.number} ${h.title}`.trim()),
      byItself:
        looked[at]!.d.record === undefined &&
        (looked[at]!.c.undecided === undefined || looked[at]!.c.byHand !== undefined),
    })),
    stale: stale.map(({ file, place, number, title, says, text, was, now, why, toDo }) => {
      return { file, place, number, title, says, text, was, now, why, toDo };
    }),
    files: madeFiles(names, to, new Map([...outputs, ['decisions.csv', decisionsFile]])),
  };
}

/** Names under which nothing could be written beside the others. */
function refuseNames(files: readonly GivenFile[]): void {
  for (const [at, { name }] of files.entries()) {
    if (kindOfDocument(name) === 'pdf') {
      throw new CatalogError(
        'BadArgument',
        `${name} is a PDF, which can only be read; choose the document that it was made from, as .docx, .pptx, .html or .md.`,
      );
    }
    if (['review.md', 'review.json'].includes(name)) {
      throw new CatalogError('BadArgument', `${name} has the name of the review list; rename it and choose it again.`);
    }
    if (files.findIndex(f => f.name === name) < at) {
      throw new CatalogError(
        'BadArgument',
        `Two of the files are called ${name}; rename one of them, or choose one after the other.`,
      );
    }
  }
}

const WHATS: Readonly<Record<string, MadeFile['what']>> = {
  'review.md': 'review',
  'review.json': 'review-data',
  'decisions.csv': 'decisions',
};

/**
 * What is handed over. One lesson: each file by itself, under names of their own, since in a folder of downloads all of
 * them may come to lie beside the original. Several: one zip with the folder that `carry docs` writes.
 */
function madeFiles(
  names: readonly string[],
  to: string,
  outputs: ReadonlyMap<string, string | Uint8Array>,
): readonly MadeFile[] {
  const encoded = new Map(
    [...outputs].map(
      ([path, made]) => [path, typeof made === 'string' ? new TextEncoder().encode(made) : made] as const,
    ),
  );
  const [only, ...more] = names;
  const whatOf = (path: string) => WHATS[path] ?? (names.includes(path) ? 'carried' : 'mark');
  const single = [...encoded].map(([path, bytes]): MadeFile => {
    const own = names.find(name => path === name || path === sidecarName(name));
    const name =
      own !== undefined
        ? carriedName(own, to) + path.slice(own.length)
        : more.length === 0
          ? besideName(only!, to, path)
          : `lessons-${to}-${path}`;
    return { name, what: whatOf(path), bytes };
  });
  if (more.length === 0) return single;
  const all = { name: `lessons-${to}.zip`, what: 'all' as const, bytes: writeZip(encoded) };
  return [all, ...single.filter(f => f.what !== 'mark')];
}
