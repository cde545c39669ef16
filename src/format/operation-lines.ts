import * as z from 'zod';
import { EXTENTS } from '../model/crosswalk.ts';
import type { Finding } from '../model/finding.ts';
import { VERIFICATION_MOMENTS } from '../model/item.ts';
import type { Operation } from '../model/operation.ts';
import { dates, decision } from './schemas.ts';

const text = z.string().min(1);
const types = z.array(text).min(1);
const note = { note: text.optional() };
const wording = {
  text: z.string().optional(),
  purpose: text.optional(),
  outcome: text.optional(),
  verified: z.array(z.strictObject({ when: z.enum(VERIFICATION_MOMENTS), how: text.optional() })).optional(),
  caution: text.optional(),
  references: z.array(text).optional(),
  terms: z.array(text).optional(),
};
/** The id may be left out: a new one is minted. */
const newItem = z.strictObject({ id: text.optional(), title: text, ...wording, appliesTo: types.optional() });
const day = z.union([z.iso.date(), z.literal('')]).optional();
const days = z.strictObject(Object.fromEntries(Object.keys(dates.shape).map(name => [name, day])));
const place = { under: text.nullable(), after: text.nullable().optional() };

const operation = z.discriminatedUnion('op', [
  z.strictObject({ op: z.literal('reword'), id: text, to: z.strictObject(wording), ...note }),
  z.strictObject({ op: z.literal('retitle'), id: text, title: text, ...note }),
  z.strictObject({ op: z.literal('move'), id: text, ...place, ...note }),
  z.strictObject({
    op: z.literal('combine'),
    ids: z.array(text).min(1),
    into: text,
    to: z.strictObject({ title: text.optional(), ...wording }).optional(),
    ...note,
  }),
  z.strictObject({
    op: z.literal('split'),
    id: text,
    keeps: z.strictObject({ title: text.optional(), ...wording, appliesTo: types.optional() }),
    gives: z.array(newItem).min(1),
    ...note,
  }),
  z.strictObject({
    op: z.literal('withdraw'),
    id: text,
    reason: text,
    types: types.optional(),
    governs: text.optional(),
    governsChecked: dates.shape.published,
    pointsTo: text.optional(),
    decision: text.optional(),
    ...note,
  }),
  z.strictObject({
    op: z.literal('incorporate'),
    id: text,
    text,
    source: text,
    edition: text,
    permission: text,
    ...note,
  }),
  z.strictObject({ op: z.literal('add'), item: newItem, ...place, ...note }),
  z.strictObject({ op: z.literal('applies-to'), id: text, types, reason: text.optional(), ...note }),
  z.strictObject({ op: z.literal('rename'), what: z.enum(['type', 'level', 'term']), name: text, to: text, ...note }),
  z.strictObject({ op: z.literal('set-days'), days, ...note }),
  z.strictObject({ op: z.literal('renumber'), ...note }),
  z.strictObject({ op: z.literal('decide'), decision, ...note }),
  z.strictObject({
    op: z.literal('link'),
    from: text,
    to: text,
    fromExtent: z.enum(EXTENTS),
    toExtent: z.enum(EXTENTS),
    ...note,
  }),
  z.strictObject({ op: z.literal('unlink'), from: text, to: text, ...note }),
  z.strictObject({ op: z.literal('restore'), from: text, ...place, ...note }),
]);

/** An operation as a person or a program writes it down: new items may come without ids, items may be told by number. */
export type WrittenOperation = z.infer<typeof operation>;

/** Reads operations, one JSON object a line (JSON Lines). Every line that cannot be used is a finding. */
export function parseOperationLines(
  file: string,
  source: string,
): { readonly operations: readonly WrittenOperation[]; readonly findings: readonly Finding[] } {
  const operations: WrittenOperation[] = [];
  const findings: Finding[] = [];
  for (const [at, line] of source.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const read = readOperation(line);
    if ('problem' in read) {
      findings.push({
        rule: 'operation-not-read',
        severity: 'error',
        subject: file,
        message: `This line is no operation on a draft: ${read.problem}.`,
        place: { file, line: at + 1 },
      });
    } else operations.push(read.operation);
  }
  return { operations, findings };
}

/** One operation from its JSON. */
export function readOperation(json: string): { operation: WrittenOperation } | { problem: string } {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    return { problem: (error as Error).message };
  }
  const { success, data, error } = operation.safeParse(value);
  if (success) return { operation: data };
  const [issue] = error.issues;
  return { problem: `${issue!.path.join('.') || 'it'}: ${issue!.message}` };
}

/** An operation as one line of JSON, for the commit that it makes. */
export function operationLine(operation: Operation): string {
  return JSON.stringify(operation);
}
