import { join } from 'node:path';
import { circulationPath, writeCirculation } from '../../format/comment-files.ts';
import type { Circulation } from '../../model/comment.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import { circulationPack, linesOfPack, partOfPack } from '../../release/circulation-pack.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readDecisions, readEdition } from '../../store/read.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { refuseBranch } from '../drafts/read-draft.ts';
import { writeTogether } from '../ports/commit-all.ts';
import { type Ports, person } from '../ports/ports.ts';
import { readStep } from '../reading/read-crosswalk.ts';
import { packDocx } from './comments-pack-docx.ts';
import { packXlsx } from './comments-pack-xlsx.ts';
import { readComments } from './comments-store.ts';

export interface PackRequest {
  readonly draft: string;
  /** Folder that the files are written to. */
  readonly out: string;
  /** Number of a part: only what concerns it. */
  readonly part?: string;
  /** A pair of files for each part, besides the whole. */
  readonly each?: boolean;
}

export interface PackReport {
  readonly files: readonly string[];
  readonly round: number;
  /** The draft was sent out as it is before, and nothing new was put on record. */
  readonly again: boolean;
  readonly lines: number;
  readonly withdrawn: number;
}

/**
 * Writes a draft for its reviewers, and keeps which line and clause meant which item, so that comments are found again
 * when numbers have moved. The same draft sent out twice is one round.
 */
export async function packDraft(ports: Ports, catalog: Catalog, request: PackRequest): Promise<PackReport> {
  const at = await locate(catalog, request.draft);
  refuseBranch(at);
  const edition = await readEdition(catalog, at.name);
  const { replaces } = edition.header;
  if (replaces === null) {
    throw new CatalogError(
      'BadArgument',
      `${at.name} replaces no edition, so there is nothing to lay beside it; review it as it is.`,
    );
  }
  ports.progress(`Reading ${replaces} and ${at.name}`);
  const [older, joint, decisions, stored] = await Promise.all([
    readEdition(catalog, replaces),
    readStep(catalog, replaces, at.name),
    readDecisions(catalog, at.name),
    readComments(catalog, at.name),
  ]);
  const [old, now] = [older, edition].map(e => new Map(e.items.map(i => [i.id, i])));
  const pack = circulationPack(joint, { old: id => old!.get(id), new: id => now!.get(id) }, decisions);
  const parts = [...new Set(pack.items.map(i => i.part))];
  if (request.part !== undefined && !parts.includes(request.part)) {
    throw new CatalogError(
      'UnknownNumber',
      `${at.name} has no part ${request.part}; its parts are ${parts.join(', ')}.`,
    );
  }
  const date = dayOf(ports.now());
  const packs = [
    ...(request.part === undefined ? [['', pack] as const] : []),
    ...(request.each ? parts : request.part === undefined ? [] : [request.part]).map(
      part => [`-part-${part}`, partOfPack(pack, part)] as const,
    ),
  ];
  const last = stored.circulations.at(-1);
  const again = last?.commit === at.commit;
  const outputs: [string, Uint8Array][] = [];
  for (const [name, some] of packs) {
    ports.progress(`Writing ${at.name}${name}`);
    const stem = join(request.out, `${at.name}${name.replace(/[^A-Za-z0-9.-]+/g, '-')}`);
    outputs.push([`${stem}.docx`, await packDocx(some, again ? last.date : date)], [`${stem}.xlsx`, packXlsx(some)]);
  }
  await writeTogether(ports.files, outputs);
  const round = again ? last.round : (last?.round ?? 0) + 1;
  if (!again) {
    const circulation: Circulation = { edition: at.name, round, commit: at.commit, date, items: linesOfPack(pack) };
    const change = { path: circulationPath(circulation), before: null, after: writeCirculation(circulation) };
    await changeBeside(catalog, [change], person(ports), `Draft ${at.name} sent out for comment, round ${round}`);
  }
  return {
    files: outputs.map(([path]) => path),
    round,
    again,
    lines: pack.items.at(-1)?.lines.at(-1)?.line ?? 0,
    withdrawn: pack.withdrawn.length,
  };
}
