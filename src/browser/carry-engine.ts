import { openWays, type PackedWays } from '../crosswalk/packed-ways.ts';
import { CatalogError } from '../model/errors.ts';
import { carryLessons } from './carry-lessons.ts';
import type { CarryAnswer, CarryRequest, GivenFile } from './carry-request.ts';
import { carryTable } from './carry-table.ts';

/** Larger files go to the command line, which reads them piece by piece: a page holds input and output in memory. */
export const LARGEST = 64 * 2 ** 20;

const TABLES = /\.(?:csv|tsv|txt|xlsx|xlsm|xls|jsonl|ndjson|json)$/i;
const LESSONS = /\.(?:md|markdown|html?|docx?|docm|dot[xm]|pptx?|pptm|ppsx|od[tp]|rtf|pdf)$/i;

/** Carries files over, with nothing but what it is given. */
export type CarryEngine = (request: CarryRequest, progress: (message: string) => void) => Promise<CarryAnswer>;

/** Bytes in, bytes out: no file, no network, no clock. Whatever stops it comes back as a sentence. */
export function carryEngine(packed: PackedWays): CarryEngine {
  const ways = openWays(packed);
  return async (request, progress) => {
    const { files, from } = request;
    try {
      refuseLarge(files);
      const way = from === undefined ? [...ways.values()][0] : ways.get(from);
      if (!way)
        throw new CatalogError('UnknownEdition', `Nothing leads from edition ${from} to this one; choose another.`);
      const answer = files.every(isLesson)
        ? await carryLessons(way, packed, request, progress)
        : await carryTable(way, ways, request, progress);
      return inPageWords(answer);
    } catch (error) {
      if (error instanceof CatalogError) return { kind: 'refused', sentence: forPages(error.message) };
      const what = error instanceof Error ? error.message : String(error);
      return {
        kind: 'refused',
        sentence: `This is a defect of the page (${what}); tell whoever publishes it, and which file it was.`,
      };
    }
  };
}

/** The other side of a worker: one request at a time, answered in order. */
export function attend(
  scope: {
    onmessage: ((event: { readonly data: unknown }) => void) | null;
    postMessage(message: unknown): void;
  },
  packed: PackedWays,
): void {
  const engine = carryEngine(packed);
  let before: Promise<unknown> = Promise.resolve();
  scope.onmessage = ({ data }) => {
    const { ticket, request } = data as { readonly ticket: number; readonly request: CarryRequest };
    before = before
      .then(() => engine(request, progress => scope.postMessage({ ticket, progress })))
      .then(answer => scope.postMessage({ ticket, answer }));
  };
}

function refuseLarge(files: readonly GivenFile[]): void {
  const empty = files.find(f => f.bytes.length === 0);
  if (empty) throw new CatalogError('BadFile', `${empty.name} is empty; choose another file.`);
  const size = files.reduce((sum, f) => sum + f.bytes.length, 0);
  if (size <= LARGEST) return;
  const megabytes = (n: number) => Math.ceil(n / 2 ** 20);
  const [what, todo] =
    files.length === 1 ? [`${files[0]!.name} has`, 'split it'] : ['They have', 'choose fewer at once'];
  throw new CatalogError(
    'BadFile',
    `${what} ${megabytes(size)} MB, more than the ${megabytes(LARGEST)} MB that a page can hold; ${todo}, or have the program carry it: fishplate carry.`,
  );
}

/** A text that ends in .txt may be either; it is a table where its first line has separators and its second as many. */
export function isLesson({ name, bytes }: GivenFile): boolean {
  if (LESSONS.test(name)) return true;
  if (!/\.txt$/i.test(name)) {
    if (TABLES.test(name)) return false;
    throw new CatalogError(
      'BadArgument',
      `${name} is of a kind that is not read; choose a list of jobs (.csv, .xlsx, .jsonl) or a lesson (.md, .html, .docx, .pptx, .txt).`,
    );
  }
  const [first = '', second = ''] = new TextDecoder().decode(bytes.subarray(0, 20_000)).split(/\r?\n/);
  return ![',', ';', '\t'].some(mark => first.includes(mark) && first.split(mark).length === second.split(mark).length);
}

/** The sentences of the program name its options; a page has fields for them. */
function inPageWords(answer: CarryAnswer): CarryAnswer {
  if (answer.kind === 'refused') return { ...answer, sentence: forPages(answer.sentence) };
  return { ...answer, notes: answer.notes.map(n => ({ ...n, message: forPages(n.message) })) };
}

function forPages(sentence: string): string {
  return sentence
    .replace(/say --dates dmy, mdy or ymd/, 'say which comes first')
    .replace(/check --from/, 'choose another edition')
    .replace(
      /--column [^,]+ on the command line, “Read it differently” on the page/,
      'say it under “Read it differently”',
    )
    .replace(/ If it means finished, run again with --state-name [^.]*\./, '')
    .replace(/ and run again\./, ' and choose it again.')
    .replace(/run on the original (table|document) instead/, 'choose the original $1 instead');
}
