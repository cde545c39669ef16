import type { Nodes, Parents, Root } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { Passage } from '../model/document.ts';
import { lineEnds } from './plain.ts';
import { MASK, type Reading } from './reading.ts';
import { recordLine } from './record.ts';
import { cutSections } from './sections.ts';

const FRONT_MATTER = /^\ufeff?---[ \t]*(?:\r\n|\n|\r)([\s\S]*?)(?:\r\n|\n|\r)---[ \t]*(?=\r|\n|$)/;

/**
 * Reads markdown: a passage is a paragraph, a heading or a table cell, with its marks of emphasis opened to spaces and
 * with code, html and link destinations masked. Front matter may say `edition: 2018` and `record: signed`.
 */
export function readMarkdown(text: string): Reading {
  const front = FRONT_MATTER.exec(text);
  const bodyAt = front ? front[0].length : text.startsWith('\ufeff') ? 1 : 0;
  const passages: Passage[] = [];
  let heading: string | undefined;
  let at = bodyAt;
  let line = 1 + lineEnds(text.slice(0, bodyAt));
  for (const section of cutSections(text.slice(bodyAt))) {
    for (const { block, head } of blocksOf(parse(section))) {
      const masked = maskedText(section, block);
      const start = block.position!.start.offset!;
      if (block.type === 'heading') heading = masked.replace(/^#+|#+\s*$/g, '').trim();
      passages.push({
        start: at + start,
        end: at + start + masked.length,
        text: masked,
        line: line + block.position!.start.line - 1,
        ...(heading === undefined ? {} : { heading }),
        ...(block.type === 'heading' ? { level: block.depth } : {}),
        ...(head === undefined ? {} : { columnHead: maskedText(section, head).trim() }),
      });
    }
    at += section.length;
    line += lineEnds(section);
  }
  const edition = fieldOf(front?.[1], 'edition');
  const editionAt = edition === undefined ? undefined : valueAt(text, front![1]!, edition);
  const record = fieldOf(front?.[1], 'record') === 'signed' ? 'record: signed' : recordLine(text.slice(bodyAt));
  return {
    passages,
    ...(editionAt ? { edition: edition!, editionAt } : {}),
    ...(record === undefined ? {} : { record }),
  };
}

/** Where the front matter says the edition. */
function valueAt(text: string, front: string, edition: string): { start: number; end: number } {
  const field = /^edition[ \t]*:/m.exec(front)!;
  const start = text.indexOf(edition, text.indexOf(front) + field.index + field[0].length);
  return { start, end: start + edition.length };
}

function fieldOf(front: string | undefined, name: string): string | undefined {
  const line = new RegExp(`^${name}[ \\t]*:[ \\t]*(.*)$`, 'm').exec(front ?? '');
  const value = line?.[1]?.replace(/\s#.*$/, '').trim();
  return value?.replace(/^(["'])(.*)\1$/, '$2') || undefined;
}

function parse(section: string): Root {
  return fromMarkdown(section, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
}

interface Block {
  readonly block: Nodes;
  /** Of a table's cell: the first cell of its column. */
  readonly head?: Nodes | undefined;
}

/** The nodes in which running text stands, in order. A list within a list within … may be thousands deep: no recursion. */
function* blocksOf(root: Nodes): Generator<Block> {
  const left: Nodes[] = [root];
  for (let node = left.pop(); node; node = left.pop()) {
    if (node.type === 'table') {
      const [heads, ...rows] = node.children;
      for (const block of heads?.children ?? []) yield { block };
      for (const row of rows)
        for (const [at, block] of row.children.entries()) yield { block, head: heads?.children[at] };
    } else if (node.type === 'paragraph' || node.type === 'heading') yield { block: node };
    else if ('children' in node) for (const child of node.children.toReversed()) left.push(child);
  }
}

function maskedText(source: string, block: Nodes): string {
  const start = block.position!.start.offset!;
  const units = Array.from({ length: block.position!.end.offset! - start }, () => ' ');
  const put = (node: Nodes, text: (at: number) => string) => {
    for (let at = node.position!.start.offset!; at < node.position!.end.offset!; at++) units[at - start] = text(at);
  };
  const show = (node: Nodes) => {
    if (node.type === 'text') {
      const own = source.slice(node.position!.start.offset, node.position!.end.offset).replace(/&#?\w+;/g, spaces);
      put(node, at => own[at - node.position!.start.offset!]!);
    } else if ('children' in node && !isAddress(node)) for (const child of node.children) show(child);
    else put(node, at => (node.type === 'break' ? source[at]! : MASK));
  };
  for (const child of (block as Parents).children) show(child);
  return units.join('');
}

/** `<https://example.org/3.2.1>`: what is shown is the address itself, and changing it breaks the link. */
function isAddress(node: Parents): boolean {
  const only = node.type === 'link' && node.children.length === 1 ? node.children[0] : undefined;
  return node.type === 'link' && only?.type === 'text' && node.url.replace(/^mailto:/, '') === only.value;
}

function spaces(entity: string): string {
  return ' '.repeat(entity.length);
}
