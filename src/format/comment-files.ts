import { z } from 'zod';
import { type Circulation, COMMENT_TYPES, type CommentRecord, DISPOSITIONS } from '../model/comment.ts';
import type { Finding } from '../model/finding.ts';
import { fileNameOf } from './file-names.ts';
import { parseJson, writeJson } from './json.ts';

export const COMMENTS_FOLDER = 'comments/';

/** Comments on one edition; its circulations stand in a folder of their own below. */
export const commentsFolder = (edition: string) => `${COMMENTS_FOLDER}${edition}/`;

/** Codes differ in more than their case, so small letters name the file. */
export const commentPath = ({ edition, code }: Pick<CommentRecord, 'edition' | 'code'>) =>
  `${commentsFolder(edition)}${fileNameOf(code.toLowerCase())}.json`;

export const circulationPath = ({ edition, round }: Pick<Circulation, 'edition' | 'round'>) =>
  `${commentsFolder(edition)}circulated/${round}.json`;

const text = z.string().max(100_000);
const words = text.min(1);
const schema = z.strictObject({
  code: words,
  edition: words,
  round: z.int().min(1).optional(),
  by: words,
  line: words.optional(),
  clause: words.optional(),
  paragraph: words.optional(),
  type: z.enum(COMMENT_TYPES).optional(),
  comment: text,
  proposed: words.optional(),
  observation: words.optional(),
  items: z.array(z.strictObject({ edition: words, id: words, number: text, hash: words })),
  unplaced: z.literal(true).optional(),
  answer: z
    .strictObject({
      disposition: z.enum(DISPOSITIONS),
      because: text,
      by: words,
      date: z.iso.date(),
      change: z
        .union([z.strictObject({ commit: words }), z.strictObject({ item: words, number: text, hash: words })])
        .optional(),
    })
    .optional(),
});

const circulation = z.strictObject({
  edition: words,
  round: z.int().min(1),
  commit: words,
  date: z.iso.date(),
  items: z.array(z.tuple([words, text, z.int(), words, z.int(), z.int()])),
});

/** Keys in one order, so that the same record gives the same bytes. */
export function writeComment(record: CommentRecord): string {
  const { code, edition, round, by, line, clause, paragraph, type, comment, proposed, observation } = record;
  const { items, unplaced, answer } = record;
  return writeJson({
    code,
    edition,
    round,
    by,
    line,
    clause,
    paragraph,
    type,
    comment,
    proposed,
    observation,
    items: items.map(({ edition: of, id, number, hash }) => ({ edition: of, id, number, hash })),
    unplaced,
    answer: answer && {
      disposition: answer.disposition,
      because: answer.because,
      by: answer.by,
      date: answer.date,
      change: answer.change,
    },
  });
}

/** One item a line, as in a frozen table: an edition of 3,000 items would else be 21,000 lines of JSON. */
export function writeCirculation({ edition, round, commit, date, items }: Circulation): string {
  const head = JSON.stringify({ edition, round, commit, date }).slice(0, -1);
  const rows = items.map(i => JSON.stringify([i.id, i.number, i.level, i.hash, i.first, i.last]));
  return `${head},"items":[\n${rows.join(',\n')}\n]}\n`;
}

/** Comments by code, and circulations by round; a file that cannot be read is a finding and is left out. */
export function parseComments(files: ReadonlyMap<string, string>): {
  readonly records: readonly CommentRecord[];
  readonly circulations: readonly Circulation[];
  readonly findings: readonly Finding[];
} {
  const records: CommentRecord[] = [];
  const circulations: Circulation[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of files) {
    if (!path.endsWith('.json')) continue;
    if (path.includes('/circulated/')) {
      const parsed = parseJson(path, source, circulation);
      if ('value' in parsed) circulations.push(unpacked(parsed.value));
      else findings.push(...parsed.findings);
      continue;
    }
    const parsed = parseJson<CommentRecord>(path, source, schema as z.ZodType<CommentRecord>);
    if ('value' in parsed) records.push(parsed.value);
    else findings.push(...parsed.findings);
  }
  records.sort((a, b) => (a.edition === b.edition ? byCode(a.code, b.code) : a.edition < b.edition ? -1 : 1));
  circulations.sort((a, b) => a.round - b.round);
  return { records, circulations, findings };
}

/** `UVA-2` before `UVA-10`. */
function byCode(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}

function unpacked({ items, ...rest }: z.infer<typeof circulation>): Circulation {
  return {
    ...rest,
    items: items.map(([id, number, level, hash, first, last]) => ({ id, number, level, hash, first, last })),
  };
}
