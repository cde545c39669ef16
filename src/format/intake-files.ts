import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { Finding } from '../model/finding.ts';
import { INTAKE_KINDS, type IntakeRecord } from '../model/intake.ts';
import { parseJson, writeJson } from './json.ts';

export const INTAKE_FOLDER = 'intake/';

export const intakePath = ({ edition, id }: Pick<IntakeRecord, 'edition' | 'id'>) =>
  `${INTAKE_FOLDER}${edition}/${id}.json`;

const words = z.string().min(1).max(20_000);
const schema = z.strictObject({
  id: words,
  kind: z.enum(INTAKE_KINDS),
  edition: words,
  item: words,
  number: z.string().max(400),
  cause: words,
  date: z.iso.date(),
  from: words,
  text: words,
});

/** A record with its id: 12 hex digits of a SHA-256 over what it says, so that the same report has the same file. */
export function intakeRecord(said: Omit<IntakeRecord, 'id'>): IntakeRecord {
  const { kind, edition, item, cause, date, from, text } = said;
  const key = JSON.stringify([kind, edition, item, cause, date, from, text]);
  return { id: createHash('sha256').update(key, 'utf8').digest('hex').slice(0, 12), ...said };
}

export function writeIntake({ id, kind, edition, item, number, cause, date, from, text }: IntakeRecord): string {
  return writeJson({ id, kind, edition, item, number, cause, date, from, text });
}

/** Reports in the order of their dates; a file that cannot be read is a finding and is left out. */
export function parseIntake(files: ReadonlyMap<string, string>): {
  readonly records: readonly IntakeRecord[];
  readonly findings: readonly Finding[];
} {
  const records: IntakeRecord[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of files) {
    if (!path.endsWith('.json')) continue;
    const parsed = parseJson<IntakeRecord>(path, source, schema);
    if ('value' in parsed) records.push(parsed.value);
    else findings.push(...parsed.findings);
  }
  const order = (r: IntakeRecord) => `${r.date} ${r.id}`;
  return { records: records.sort((a, b) => (order(a) < order(b) ? -1 : 1)), findings };
}
