import { z } from 'zod';
import type { Finding } from '../model/finding.ts';
import { LOCAL_STATES, type LocalRecord } from '../model/local.ts';
import { parseJson, writeJson } from './json.ts';

export const LOCAL_FOLDER = 'local/';

const words = z.string().min(1).max(20_000);
const schema = z.strictObject({
  id: words,
  kind: z.enum(['rule', 'variance']),
  place: words,
  title: z.string().max(20_000),
  text: words,
  cites: z.strictObject({ edition: words, number: words, item: words.optional() }),
  types: z.array(words).min(1).optional(),
  from: z.iso.date(),
  until: z.iso.date().nullable(),
  approver: words,
  holder: words.optional(),
  cause: words.optional(),
  costEffective: z.boolean().optional(),
  state: z.enum(LOCAL_STATES),
});

export function writeLocal(record: LocalRecord): string {
  const { id, kind, place, title, text, cites, types, from, until, approver, holder, cause, costEffective, state } =
    record;
  const { edition, number, item } = cites;
  // Keys in one order, so that the same record gives the same bytes; absent ones are left out by JSON itself.
  return writeJson({
    id,
    kind,
    place,
    title,
    text,
    cites: { edition, number, item },
    types,
    from,
    until,
    approver,
    holder,
    cause,
    costEffective,
    state,
  });
}

/** A record with the path that it was read from. */
export interface LocalFile {
  readonly path: string;
  readonly record: LocalRecord;
}

/** Local rules and variances in the order of their paths; a file that cannot be read is a finding and is left out. */
export function parseLocal(files: ReadonlyMap<string, string>): {
  readonly records: readonly LocalFile[];
  readonly findings: readonly Finding[];
} {
  const records: LocalFile[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const parsed = parseJson<LocalRecord>(path, source, schema as z.ZodType<LocalRecord>);
    if ('value' in parsed) records.push({ path, record: parsed.value });
    else findings.push(...parsed.findings);
  }
  return { records, findings };
}
