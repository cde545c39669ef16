import { join } from 'node:path';
import { fixedPackage } from '../../exports/fixed-package.ts';
import { fileNameOf } from '../../format/file-names.ts';
import type { Settings } from '../../model/settings.ts';
import { TOLD } from '../../release/comments.ts';
import { codeName } from '../../release/comments-code.ts';
import { type CommentNow, toldNow } from '../../release/comments-now.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeTogether } from '../ports/commit-all.ts';
import type { Ports } from '../ports/ports.ts';
import { type DocxText, docxTable } from './comments-docx-table.ts';
import { listComments } from './comments-list.ts';

export interface ReplyRequest {
  readonly edition: string;
  readonly out: string;
  readonly by?: string;
  readonly format: 'docx' | 'csv';
}

export interface ReplyReport {
  readonly files: readonly string[];
  /** Comments in the replies that nobody has answered. */
  readonly open: number;
  /** Codes of those whose clause was not found in the draft. */
  readonly unplaced: readonly string[];
}

const HEAD = ['Code', 'Clause', 'Today', 'Type', 'Comment', 'Proposed change', 'Answer', 'Reason'] as const;

/** One reply for each commenter: each comment with its answer, and where its clause stands today. */
export async function replyToComments(ports: Ports, catalog: Catalog, request: ReplyRequest): Promise<ReplyReport> {
  const { comments, edition } = await listComments(catalog, request);
  const { settings, entries } = await readIndex(catalog, edition);
  const numbers = new Map(entries.map(e => [e.id, e.number]));
  const groups = new Map<string, CommentNow[]>();
  for (const comment of comments) {
    const name = codeName(comment.record.by);
    groups.set(name, [...(groups.get(name) ?? []), comment]);
  }
  const outputs: [string, string | Uint8Array][] = [];
  for (const [name, own] of groups) {
    const path = join(request.out, `reply-${fileNameOf(name.toLowerCase())}.${request.format}`);
    const rows = own.map(c => rowOf(c, numbers));
    if (request.format === 'csv') outputs.push([path, writeCsv([HEAD, ...rows])]);
    else outputs.push([path, await replyDocx(settings, edition, own[0]!.record.by, rows)]);
  }
  await writeTogether(ports.files, outputs);
  return {
    files: outputs.map(([path]) => path),
    open: comments.filter(c => !c.record.answer).length,
    unplaced: comments.flatMap(c => (c.record.unplaced ? [c.record.code] : [])),
  };
}

function rowOf(listed: CommentNow, numbers: ReadonlyMap<string, string>): string[] {
  const { code, clause = 'whole', type = '', comment, proposed = '', answer } = listed.record;
  const change = answer?.change;
  // The item is named as it is printed today; it may have been renumbered since the answer was given.
  const seen = !change
    ? ''
    : 'item' in change
      ? `See ${numbers.get(change.item) ?? change.number}.`
      : `Changed in ${change.commit.slice(0, 9)}.`;
  const told = answer ? TOLD[answer.disposition] : 'Not answered yet';
  return [
    code,
    clause,
    toldNow(listed),
    type,
    comment,
    proposed,
    told,
    [answer?.because ?? '', seen].filter(Boolean).join(' '),
  ];
}

async function replyDocx(
  settings: Settings,
  edition: string,
  by: string,
  rows: readonly string[][],
): Promise<Uint8Array> {
  const docx = await import('docx');
  const { Document, HeadingLevel, Packer, PageOrientation, Paragraph } = docx;
  const title = `Reply to ${by}`;
  const body = rows.map(row =>
    row.map((text, at): DocxText[] => [{ text, bold: at === 0 || at === 6, small: at === 2 }]),
  );
  const document = new Document({
    title,
    creator: settings.publisher ?? '',
    styles: {
      default: {
        document: { run: { font: 'Georgia', size: 20 } },
        title: { run: { font: 'Georgia', size: 40, bold: true } },
      },
    },
    sections: [
      {
        properties: {
          page: {
            size: { orientation: PageOrientation.LANDSCAPE },
            margin: { top: 900, bottom: 900, left: 900, right: 900 },
          },
        },
        children: [
          new Paragraph({ text: title, heading: HeadingLevel.TITLE }),
          new Paragraph({
            text: `${settings.title}: your ${rows.length === 1 ? 'comment' : `${rows.length} comments`} on ${edition}.`,
            spacing: { after: 240 },
          }),
          docxTable(docx, [10, 12, 12, 6, 36, 28, 13, 36], HEAD, body),
        ],
      },
    ],
  });
  return fixedPackage(await Packer.toBuffer(document), title, settings.publisher ?? '', undefined);
}
