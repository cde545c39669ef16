import { commentPath, writeComment } from '../../format/comment-files.ts';
import type { Circulation, CommentRecord } from '../../model/comment.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { dispositionIn } from '../../release/comments.ts';
import { type CitedEdition, placeComment } from '../../release/comments-clause.ts';
import { codeComments, type FreshComment } from '../../release/comments-code.ts';
import { type FormComment, readForm } from '../../release/comments-form.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { type Ports, person } from '../ports/ports.ts';
import { allHeaders } from '../reading/read-crosswalk.ts';
import { openForm } from './comments-files.ts';
import { authorText, readComments } from './comments-store.ts';

export interface ReadFormsRequest {
  readonly files: readonly string[];
  readonly edition: string;
  /** Who comments, where a form does not say so. */
  readonly by?: string;
  /** Which circulation the forms speak of; absent: the newest one on record. */
  readonly round?: number;
  /** The forms are the secretariat's own: an observation that begins with a disposition is the answer. */
  readonly withObservations?: boolean;
}

export interface ReadFormsReport {
  readonly edition: string;
  readonly added: readonly CommentRecord[];
  /** Records that a mended form has completed. */
  readonly mended: readonly CommentRecord[];
  /** On record before. */
  readonly known: number;
  /** Answers taken from the observations. */
  readonly answered: number;
  readonly findings: readonly Finding[];
}

/**
 * Reads comment forms as reviewers return them, finds what each clause meant in the draft that was sent out, gives codes
 * and keeps the comments on `main`. A form that was read before adds nothing. No comment is left out for a clause that
 * is not found: it is kept unplaced, and told.
 */
export async function readForms(ports: Ports, catalog: Catalog, request: ReadFormsRequest): Promise<ReadFormsReport> {
  const stored = await readComments(catalog, request.edition);
  const { edition, records, circulations } = stored;
  const circulation = chosenRound(circulations, request.round, edition);
  const { draft, others } = await citedEditions(catalog, edition, circulation);
  const findings: Finding[] = [...stored.findings];
  const fresh: FreshComment[] = [];
  for (const file of request.files) {
    const form = readForm(file, openForm(file, await ports.files.read(file)).grids, request.by);
    findings.push(...form.findings);
    for (const comment of form.comments) {
      const { clause, lineNumber: line, clauseStored: isStored } = comment;
      const placed = placeComment({ clause, line, stored: isStored }, draft, others, circulation);
      const say = (rule: string, severity: Finding['severity'], told: string) =>
        findings.push({
          rule,
          severity,
          subject: file,
          message: `${comment.where}: ${told}`,
          place: { file },
        });
      if ('because' in placed) say(placed.rule, 'warning', `${placed.because}. It is kept, but not placed.`);
      else if (placed.note !== undefined) say('line-elsewhere', 'note', `${placed.note}.`);
      const items = 'items' in placed ? placed.items : [];
      const record = recordOf(comment, edition, circulation?.round, items, 'because' in placed);
      fresh.push({ form: comment, record });
    }
  }
  const coded = codeComments(fresh, records);
  const changed = new Map([...coded.added, ...coded.mended].map(r => [r.code, r]));
  const answered = request.withObservations
    ? answersIn(fresh, coded.codes, records, changed, ports, findings)
    : unansweredNotes(fresh, records, coded.codes, findings);
  if (changed.size > 0) {
    const known = new Map(records.map(r => [r.code, writeComment(r)]));
    const changes = [...changed.values()].map(r => ({
      path: commentPath(r),
      before: known.get(r.code) ?? null,
      after: writeComment(r),
    }));
    await changeBeside(catalog, changes, person(ports), `Comments on ${edition}: ${coded.added.length} read`);
  }
  return {
    edition,
    added: coded.added.map(r => changed.get(r.code)!),
    mended: coded.mended.map(r => changed.get(r.code)!),
    known: coded.known,
    answered,
    findings: [...findings, ...coded.findings],
  };
}

function chosenRound(circulations: readonly Circulation[], asked: number | undefined, edition: string) {
  if (asked === undefined) return circulations.at(-1);
  const found = circulations.find(c => c.round === asked);
  if (found) return found;
  const known = circulations.map(c => c.round).join(', ');
  throw new CatalogError(
    'BadArgument',
    `${edition} was not sent out a ${asked}th time; ${known ? `the rounds on record are ${known}.` : 'write the draft for reviewers with: fishplate comments pack'}`,
    { round: asked },
  );
}

/** The draft as it was sent out, and the editions before it, whose numbers comments name as well. */
export async function citedEditions(
  catalog: Catalog,
  edition: string,
  circulation: Circulation | undefined,
): Promise<{ readonly draft: CitedEdition; readonly others: readonly CitedEdition[] }> {
  const index = await readIndex(catalog, edition);
  const titles = new Map(index.entries.map(e => [e.id, e.title]));
  const draft = circulation
    ? { name: edition, entries: circulation.items.map(i => ({ ...i, title: titles.get(i.id) ?? '' })) }
    : { name: edition, entries: index.entries };
  const headers = new Map((await allHeaders(catalog)).map(h => [h.name, h]));
  const others: CitedEdition[] = [];
  for (let name = index.header.replaces; name !== null; name = headers.get(name)?.replaces ?? null) {
    if (others.some(o => o.name === name)) break;
    others.push({ name, entries: (await readIndex(catalog, name)).entries });
  }
  return { draft, others };
}

function recordOf(
  form: FormComment,
  edition: string,
  round: number | undefined,
  items: CommentRecord['items'],
  unplaced: boolean,
): Omit<CommentRecord, 'code'> {
  const { by, lineNumber, clause, paragraph, type, comment, proposed, observation } = form;
  const foreign = /^\s*\[[^\]\s]+\]/.test(observation) ? '' : observation;
  return {
    edition,
    ...(round === undefined ? {} : { round }),
    by,
    ...(lineNumber ? { line: lineNumber } : {}),
    ...(clause ? { clause } : {}),
    ...(paragraph ? { paragraph } : {}),
    ...(type ? { type } : {}),
    comment,
    ...(proposed ? { proposed } : {}),
    ...(foreign ? { observation: foreign } : {}),
    items,
    ...(unplaced ? { unplaced: true } : {}),
  };
}

type Codes = ReadonlyMap<FormComment, string>;

/** Takes the dispositions that the secretariat wrote into its form; what begins otherwise stays open, and is told. */
function answersIn(
  fresh: readonly FreshComment[],
  codes: Codes,
  records: readonly CommentRecord[],
  changed: Map<string, CommentRecord>,
  ports: Ports,
  findings: Finding[],
): number {
  let answered = 0;
  for (const { form } of fresh) {
    const code = codes.get(form)!;
    const record = changed.get(code) ?? records.find(r => r.code === code)!;
    if (form.observation === '' || form.observation.trim() === `[${code}]` || record.answer) continue;
    const said = dispositionIn(form.observation);
    if (!said) {
      findings.push(
        note(
          form,
          'observation-unclear',
          `${code}: the observation begins with none of Accepted, Accepted in part, Not accepted, Noted; it stays open.`,
        ),
      );
      continue;
    }
    const answer = { ...said, by: authorText(ports), date: dayOf(ports.now()) };
    changed.set(code, { ...record, answer });
    answered++;
  }
  return answered;
}

/** A reviewer may have filled in the secretariat's column; that is kept, and answers nothing. */
function unansweredNotes(
  fresh: readonly FreshComment[],
  records: readonly CommentRecord[],
  codes: Codes,
  findings: Finding[],
): number {
  const known = new Set(records.map(r => r.code));
  const filled = fresh.filter(f => f.record.observation !== undefined && !known.has(codes.get(f.form)!));
  if (filled[0]) {
    const told = `${filled.length === 1 ? '1 row has' : `${filled.length} rows have`} an observation already; it is kept and answers nothing. Where the form is the secretariat's own, read it with --with-observations.`;
    findings.push({ ...note(filled[0].form, 'observation-in-form', told) });
  }
  return 0;
}

function note(form: FormComment, rule: string, message: string): Finding {
  return { rule, severity: 'note', subject: form.file, message, place: { file: form.file } };
}
