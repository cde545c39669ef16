import { join } from 'node:path';
import { typesOfLocal } from '../../carryover/local/governs.ts';
import { LETTER_FIELDS, letterFields } from '../../carryover/local/letter-fields.ts';
import {
  POINTINGS,
  type Pointing,
  type PointingKind,
  pointLocal,
  rePointed,
} from '../../carryover/local/local-pointing.ts';
import { type CauseCount, variancesByCause } from '../../carryover/local/variance-causes.ts';
import { openLetter } from '../../documents/docx/fill-letter.ts';
import { fileNameOf } from '../../format/file-names.ts';
import { LOCAL_FOLDER, parseLocal, writeLocal } from '../../format/local-files.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { LOCAL_STATES, type LocalRecord } from '../../model/local.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeTogether } from '../ports/commit-all.ts';
import { type Ports, person } from '../ports/ports.ts';
import { readEditionTexts } from '../reading/edition-texts.ts';
import { readJoint } from '../reading/read-crosswalk.ts';
import { localFiles } from './governs.ts';
import { governsAll, type Standing } from './governs-all.ts';
import { letterTemplate } from './letter-template.ts';

export interface CarryLocalOptions {
  readonly from: string;
  readonly to: string;
  readonly outDir: string;
  /** Calendar date of the letters, on which it is asked what is in force. */
  readonly date: string;
  /** A Word document with placeholders; absent: the one that ships. */
  readonly template?: string;
}

/** One local rule or variance beside the newer edition. */
export interface CarriedLocal {
  readonly record: LocalRecord;
  readonly path: string;
  readonly pointing: Pointing;
  readonly standing: Standing;
  readonly standingWhy: string;
  /** Path of the letter below the folder of the outputs; absent where nothing has to be told. */
  readonly letter?: string;
}

export interface LocalReport {
  readonly from: string;
  readonly to: string;
  readonly carried: readonly CarriedLocal[];
  readonly counts: Readonly<Record<PointingKind, number>>;
  readonly causes: readonly CauseCount[];
  readonly findings: readonly Finding[];
}

/**
 * Carries local rules and variances to a newer edition: a table of what became of each, letters to those whose citation
 * changes or has to be decided, and all variances counted by cause. The records on main stay as they are.
 *
 * @throws CatalogError BadArgument, and what the template says
 */
export async function carryLocal(
  { files, progress }: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  { from, to, outDir, date, template }: CarryLocalOptions,
): Promise<LocalReport> {
  const { joint, backwards } = await readJoint(catalog, from, to);
  if (backwards) {
    throw new CatalogError('BadArgument', `${to} is older than ${from}; name the older edition with --from.`, {
      from,
      to,
    });
  }
  const given = template === undefined ? await letterTemplate() : await files.read(template);
  const fill = openLetter(given, template ?? 'letter.docx', LETTER_FIELDS);
  const local = await localFiles(catalog);
  progress(`Setting ${local.records.length} local rules and variances beside ${to}`);
  const { standings } = await governsAll(catalog, { to, date });
  const texts = await readEditionTexts(catalog, joint);
  const outputs: [string, string | Uint8Array][] = [];
  const carried = local.records.map(({ record, path }): CarriedLocal => {
    const pointing = pointLocal(joint, record, date, typesOfLocal(record, joint.from.settings));
    const found = standings.find(s => s.record.place === record.place && s.record.id === record.id)!;
    const standing = { standing: found.standing, standingWhy: found.why };
    if (!isTold(pointing, record, found.standing)) return { record, path, pointing, ...standing };
    const letter = `letters/${fileNameOf(record.place)}--${fileNameOf(record.id)}.docx`;
    // Of what has no single heir the pointing has said all already.
    const told = found.standing === 'not in force' || pointing.kind !== 're-pointed' ? '' : found.why;
    outputs.push([join(outDir, letter), fill(letterFields(joint, texts, record, pointing, { standing: told, date }))]);
    return { record, path, pointing, ...standing, letter };
  });
  const causes = variancesByCause(local.records.map(r => r.record));
  const [was, now] = [joint.from.header.name, joint.to.header.name];
  outputs.push([join(outDir, 'local.csv'), writeCsv(tableOf(carried, was, now))]);
  outputs.push([join(outDir, 'variances-by-cause.csv'), writeCsv(causeTable(causes))]);
  // Whoever edits the copy and runs again without naming it would lose it.
  const copy = join(outDir, 'letter-template.docx');
  if (!(await files.exists(copy))) outputs.push([copy, given]);
  await writeTogether(files, outputs);
  const counts = Object.fromEntries(POINTINGS.map(k => [k, carried.filter(c => c.pointing.kind === k).length]));
  return {
    from: was,
    to: now,
    carried,
    counts: counts as Record<PointingKind, number>,
    causes,
    findings: [...local.findings, ...carried.flatMap(findingsOf)],
  };
}

/**
 * Writes the records that were re-pointed to main, as one commit under the author's name; the number of them.
 *
 * @throws CatalogError Changed: one of them says something else by now than when the report was made
 */
export async function recordRePointed(ports: Ports, catalog: Catalog, report: LocalReport): Promise<number> {
  const sources = await readBeside(catalog, LOCAL_FOLDER);
  const now = new Map(parseLocal(sources).records.map(r => [r.path, writeLocal(r.record)]));
  const changes = report.carried
    .filter(c => c.pointing.kind === 're-pointed')
    .map(({ path, record, pointing }) => {
      const read = writeLocal(record);
      // A file that people wrote may be laid out otherwise than we write it, and say the same.
      const before = now.get(path) === read ? sources.get(path)! : read;
      return { path, before, after: writeLocal(rePointed(record, report.to, pointing.heirs[0]!)) };
    });
  if (changes.length === 0) return 0;
  const message = `Local rules and variances cite ${report.to}: ${changes.length} re-pointed from ${report.from}`;
  await changeBeside(catalog, changes, person(ports), message);
  return changes.length;
}

/** A letter is written where its reader has to do or to know something: another number, a decision, nothing left. */
function isTold({ kind, from, heirs }: Pointing, record: LocalRecord, standing: Standing): boolean {
  if (kind === 'choose' || kind === 'withdrawn') return true;
  if (kind !== 're-pointed') return false;
  const sameNumber = from?.number === heirs[0]?.number;
  return !sameNumber || (standing !== 'stands' && record.state === 'approved');
}

function tableOf(carried: readonly CarriedLocal[], from: string, to: string): string[][] {
  const head = ['place', 'id', 'kind', 'title', 'state', 'from', 'until', 'holder', 'approver'];
  const tail = [`cites_${from}`, `cites_${to}`, 'outcome', 'why', 'to_do', 'standing', 'standing_why', 'letter'];
  return [
    [...head, ...tail],
    ...carried.map(({ record, pointing, standing, standingWhy, letter }) => [
      record.place,
      record.id,
      record.kind,
      record.title,
      record.state,
      record.from,
      record.until ?? '',
      record.holder ?? '',
      record.approver,
      record.cites.edition === from ? record.cites.number : `${record.cites.number} (${record.cites.edition})`,
      pointing.heirs.map(h => h.number || h.id).join('; '),
      pointing.kind,
      pointing.why,
      pointing.toDo ?? '',
      standing,
      standingWhy,
      letter ?? '',
    ]),
  ];
}

function causeTable(causes: readonly CauseCount[]): string[][] {
  return [
    ['cause', 'requests', ...LOCAL_STATES, 'cites', 'places'],
    ...causes.map(c => [
      c.cause || 'not stated',
      `${c.requests}`,
      ...LOCAL_STATES.map(state => `${c.byState[state]}`),
      c.cites.join('; '),
      c.places.join('; '),
    ]),
  ];
}

function findingsOf({ record, pointing, standing, standingWhy }: CarriedLocal): readonly Finding[] {
  const asks = ['choose', 'withdrawn', 'unknown', 'other-edition'].includes(pointing.kind) && pointing.toDo;
  const finding = (rule: string, message: string): Finding => ({
    rule,
    severity: 'warning',
    subject: `${record.place}/${record.id}`,
    message,
  });
  if (asks) return [finding(`local-${pointing.kind}`, `"${record.title}": ${pointing.why} ${pointing.toDo}`)];
  const stands = standing === 'stands' || standing === 'not in force' || pointing.kind === 'closed';
  return stands ? [] : [finding(`local-${standing}`, standingWhy)];
}
