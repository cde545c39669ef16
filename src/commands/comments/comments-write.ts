import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { dispositionIn, isOurs, observationOf } from '../../release/comments.ts';
import { codeComments } from '../../release/comments-code.ts';
import { FORM_HEADERS } from '../../release/comments-columns.ts';
import { type FormComment, type FormPart, readForm } from '../../release/comments-form.ts';
import type { Catalog } from '../../store/open.ts';
import type { Ports } from '../ports/ports.ts';
import { type Fill, openForm } from './comments-files.ts';
import { readComments } from './comments-store.ts';

export interface WriteFormRequest {
  readonly form: string;
  readonly out: string;
  readonly edition: string;
  readonly by?: string;
}

export interface WriteFormReport {
  readonly comments: number;
  readonly answered: number;
  readonly findings: readonly Finding[];
}

/**
 * Puts each comment's code and answer under the observations of the reviewer's own form; nothing else in it changes.
 * What somebody else wrote there stays, and ours follows on a line of its own.
 */
export async function writeForm(ports: Ports, catalog: Catalog, request: WriteFormRequest): Promise<WriteFormReport> {
  const { form, out } = request;
  if (await ports.files.same(form, out)) {
    throw new CatalogError('OutputIsInput', `${out} is the form itself; give --out another name.`, { out });
  }
  const { records, edition } = await readComments(catalog, request.edition);
  const file = openForm(form, await ports.files.read(form));
  const read = readForm(form, file.grids, request.by);
  const findings: Finding[] = [...read.findings];
  const byCode = new Map(records.map(r => [r.code, r]));
  const fills: Fill[] = [];
  const widened = new Set<number>();
  let [comments, answered] = [0, 0];
  for (const [comment, code] of codesIn(read.comments, edition, records)) {
    const record = byCode.get(code);
    const say = (rule: string, told: string) =>
      findings.push({
        rule,
        severity: 'warning',
        subject: form,
        message: told,
        place: { file: form },
      });
    if (!record) {
      say('comment-not-on-record', `${comment.where} is not on record; read the form with: comments read`);
      continue;
    }
    const part = partOf(read.parts, comment);
    const grid = file.grids[part.grid]!;
    const place = { grid: part.grid, row: comment.row };
    const codeColumn = part.head.get('code');
    if (codeColumn !== undefined && (grid.rows[comment.row]!.cells[codeColumn] ?? '').trim() === '') {
      fills.push({ ...place, column: codeColumn, text: code });
    }
    let column = part.head.get('observation');
    if (column === undefined) {
      if (file.kind === 'docx') {
        say('form-no-observations', `${comment.where}: the table has no column for observations; use comments reply.`);
        continue;
      }
      column = grid.rows[0]!.cells.length;
      for (const { cells } of grid.rows) column = Math.max(column, cells.length);
      if (!widened.has(part.at)) fills.push({ grid: part.grid, row: part.at, column, text: FORM_HEADERS[7] });
      widened.add(part.at);
    }
    comments++;
    if (record.answer) answered++;
    fills.push({ ...place, column, ...observation(comment.observation, code, observationOf(record), record.answer) });
  }
  const { bytes, refused } = file.fill(fills);
  for (const { fill, why } of refused) {
    const { line } = file.grids[fill.grid]!.rows[fill.row]!;
    const message = `Row ${line}: "${fill.text.slice(0, 40)}" could not be put in, ${why}; use comments reply.`;
    findings.push({
      rule: 'form-not-filled',
      severity: 'warning',
      subject: form,
      message,
      place: { file: form },
    });
  }
  await ports.files.write(out, bytes);
  return { comments, answered, findings };
}

/** A comment's code is found by what it says, as when a form is read again. */
function codesIn(
  comments: readonly FormComment[],
  edition: string,
  records: Parameters<typeof codeComments>[1],
): ReadonlyMap<FormComment, string> {
  // A form does not say of which circulation it speaks; the newest record that says the same is meant.
  const rounds = [...new Set(records.map(r => r.round ?? 0))].sort((a, b) => b - a);
  const codes = new Map<FormComment, string>();
  for (const round of rounds) {
    const known = records.filter(r => (r.round ?? 0) === round);
    const fresh = comments
      .filter(c => !codes.has(c))
      .map(form => ({
        form,
        record: {
          edition,
          ...(round === 0 ? {} : { round }),
          by: form.by,
          line: form.lineNumber,
          clause: form.clause,
          paragraph: form.paragraph,
          comment: form.comment,
          proposed: form.proposed,
          items: [],
          unplaced: true as const,
        },
      }));
    const own = new Set(known.map(r => r.code));
    for (const [form, code] of codeComments(fresh, known).codes) if (own.has(code)) codes.set(form, code);
  }
  for (const comment of comments) if (!codes.has(comment)) codes.set(comment, '');
  return codes;
}

function partOf(parts: readonly FormPart[], { grid, row }: FormComment): FormPart {
  return parts.find(p => p.grid === grid && p.rows.includes(row))!;
}

function observation(
  before: string,
  code: string,
  text: string,
  answer: { readonly disposition: string; readonly because: string } | undefined,
): Pick<Fill, 'text' | 'append'> {
  const said = dispositionIn(before);
  const isSame = said?.disposition === answer?.disposition && said?.because === answer?.because;
  if (before.trim() === '' || isOurs(before, code) || (said !== undefined && isSame)) return { text };
  // Written into a form that was filled in before: what follows the code is ours and goes.
  const ours = before.indexOf(`\n[${code}]`);
  return ours < 0 ? { text, append: true } : { text: `${before.slice(0, ours)}\n${text}` };
}
