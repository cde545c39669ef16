import type { z } from 'zod';
import type { Finding } from '../model/finding.ts';

/** JSON as it stands in the catalog: two spaces, one field a line, a newline at the end. Keys keep the order given. */
export function writeJson(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

export type Parsed<T> = { readonly value: T } | { readonly findings: readonly Finding[] };

/** Parses one file of the catalog by its schema. What is wrong comes back as findings with the path and place. */
export function parseJson<T>(path: string, source: string, schema: z.ZodType<T>): Parsed<T> {
  let raw: unknown;
  try {
    raw = JSON.parse(source);
  } catch (error) {
    return { findings: [jsonFinding(path, source, error as Error)] };
  }
  const result = schema.safeParse(raw);
  if (result.success) return { value: result.data };
  return {
    findings: result.error.issues.map(issue => ({
      rule: 'schema',
      severity: 'error',
      subject: path,
      message: `${path}: ${issue.path.length > 0 ? `at ${issue.path.join('.')}: ` : ''}${issue.message}.`,
      place: { file: path },
    })),
  };
}

function jsonFinding(path: string, source: string, error: Error): Finding {
  const conflict = /^<{7} /m.exec(source);
  const at = conflict?.index ?? Number(/at position (\d+)/.exec(error.message)?.[1] ?? source.length);
  const before = source.slice(0, at).split('\n');
  const line = before.length;
  const column = (before.at(-1)?.length ?? 0) + 1;
  const what = conflict ? 'holds an unresolved merge conflict' : 'is not valid JSON';
  return {
    rule: conflict ? 'merge-conflict' : 'invalid-json',
    severity: 'error',
    subject: path,
    message: `${path} ${what} at line ${line}, column ${column}.`,
    place: { file: path, line, column },
  };
}
