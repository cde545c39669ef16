import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import type { Edit, Passage } from '../model/document.ts';
import { edit } from './edit.ts';
import { type Stretch, stretchesOf } from './html-stretches.ts';
import { type CellText, htmlColumnHeads } from './html-tables.ts';
import { FILL, MASK, type Reading } from './reading.ts';
import { type RecordText, recordOf } from './record.ts';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

const words = (list: string) => new Set(list.split(' '));
const UNSEEN = words(
  'script style template del noscript noframes iframe object datalist param source track link meta base',
);
const MASKED = words('code kbd samp svg math picture video audio canvas textarea select button progress meter');
const ALONE = words('br img input');
const INLINE = words(
  'a abbr acronym b bdi bdo big cite data dfn em font i ins label mark nobr output q rp rt ruby s small span strike strong sub sup time tt u var wbr',
);

/**
 * Reads html: a passage is the text of a block (paragraph, list item, table cell, heading, caption …) over all of its
 * inline elements, with entities read and offsets kept. Scripts, styles, code, attributes and comments are not read.
 * `<meta name="edition" content="2018">` is the file's mark, `<meta name="record" content="signed">` a signed record's.
 */
export function readHtml(text: string): Reading {
  const { blocks, metas } = blocksOf(text);
  const passages: Passage[] = [];
  const lines: RecordText[] = [];
  const cells: CellText[] = [];
  let [heading, line, counted]: [string | undefined, number, number] = [undefined, 1, 0];
  for (const { stretches, name, row, cell } of blocks) {
    const [start, end] = [stretches[0]!.start, stretches.at(-1)!.end];
    const shown = shownText(stretches);
    const said = shown.replaceAll(FILL, '').trim();
    if (said === '') continue;
    const level = /^h([1-6])$/.exec(name)?.[1];
    if (level !== undefined) heading = said.replace(/\s+/g, ' ');
    line += lineEnds(text, counted, start);
    counted = start;
    if (cell) cells.push({ cell, text: said, passage: passages.length });
    const under = heading === undefined ? {} : { heading };
    passages.push({
      start,
      end,
      text: shown,
      line,
      ...under,
      ...(level === undefined ? {} : { level: Number(level) }),
    });
    lines.push({ text: said, ...(row === undefined ? {} : { row }) });
  }
  for (const [at, columnHead] of htmlColumnHeads(cells)) passages[at] = { ...passages[at]!, columnHead };
  const edition = metas.get('edition');
  const record = metas.get('record') === 'signed' ? 'record: signed' : recordOf(lines);
  return { passages, ...(edition ? { edition } : {}), ...(record === undefined ? {} : { record }) };
}

/** Edits html at offsets of its source: tags inside an edited stretch stay, so that a number in bold stays in bold. */
export function editHtml(text: string, edits: readonly Edit[]): string {
  if (edits.length === 0) return text;
  const solid = blocksOf(text).blocks.flatMap(b => b.stretches.filter(s => s.solid));
  const made: Edit[] = [];
  let next = 0;
  for (const one of [...edits].sort((a, b) => a.start - b.start)) {
    while (next < solid.length && solid[next]!.end <= one.start) next++;
    for (let n = next; n < solid.length && solid[n]!.start < one.end; n++) {
      made.push({ ...within(solid[n]!, one, text), text: n === next ? escaped(one.text) : '' });
    }
  }
  return edit(text, made);
}

/** The part of a stretch that an edit covers; an entity is replaced whole. */
function within(stretch: Stretch, { start, end }: Edit, text: string): { start: number; end: number } {
  if (text[stretch.start] === '&' && stretch.text !== text.slice(stretch.start, stretch.end)) return stretch;
  return { start: Math.max(stretch.start, start), end: Math.min(stretch.end, end) };
}

function escaped(text: string): string {
  return text.replace(/[&<>]/g, c => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[c]!);
}

interface Step {
  readonly node: Node | 'end';
  /** What stands for the text of the element that this is in, where that is not read. */
  readonly fill: string | undefined;
}

interface Block {
  readonly name: string;
  /** In order, none overlapping another. */
  readonly stretches: Stretch[];
  /** The table row that the block stands in. */
  readonly row?: object;
  readonly cell?: Element;
}

function blocksOf(text: string): { blocks: readonly Block[]; metas: ReadonlyMap<string, string> } {
  const blocks: Block[] = [];
  const metas = new Map<string, string>();
  let open: Block | undefined;
  const put = (parent: Element | undefined, stretches: readonly Stretch[]) => {
    for (const s of stretches) {
      const last = open?.stretches.at(-1);
      // Texts that the parser moved out of a table may stand before what was read last: those begin anew.
      if (last && (s.start < last.end || !isMarkup(text.slice(last.end, s.start)))) open = undefined;
      if (!open) {
        const row = parent && above(parent, 'tr');
        const cell = parent && above(parent, 'td', 'th');
        const name = parent ? (blockAround(parent)?.tagName ?? '') : '';
        open = { name, stretches: [], ...(row ? { row } : {}), ...(cell ? { cell } : {}) };
        blocks.push(open);
      }
      open.stretches.push(s);
    }
  };
  const whole = (node: Node, fill: string): Stretch[] => {
    const at = node.sourceCodeLocation;
    if (!at) return [];
    const length = at.endOffset - at.startOffset;
    return [{ start: at.startOffset, end: at.endOffset, text: fill.repeat(length), solid: false }];
  };
  // A stack of one's own: nested a hundred thousand deep, a page would exhaust the one of the language.
  const work: Step[] = [];
  const enter = (nodes: readonly Node[], fill: string | undefined) => {
    for (let n = nodes.length - 1; n >= 0; n--) work.push({ node: nodes[n]!, fill });
  };
  enter(parse(text, { sourceCodeLocationInfo: true, scriptingEnabled: false }).childNodes, undefined);
  for (let step = work.pop(); step !== undefined; step = work.pop()) {
    const { node, fill } = step;
    if (node === 'end') {
      open = undefined;
      continue;
    }
    const parent = node.parentNode && 'tagName' in node.parentNode ? node.parentNode : undefined;
    if ('value' in node && node.sourceCodeLocation) {
      const { startOffset, endOffset } = node.sourceCodeLocation;
      // Joined by the parser over a table that stands between, it has no place of its own and is left unread.
      const stretches = stretchesOf(text, startOffset, endOffset, node.value) ?? [];
      if (fill === undefined) put(parent, stretches);
      // White space shows nothing, masked or not: what the parser moved out of a table closes over it.
      else if (stretches.length > 0 && (open || fill === MASK))
        put(parent, whole(node, node.value.trim() === '' ? ' ' : fill));
    } else if ('tagName' in node) {
      if (node.tagName === 'meta') noteMeta(node, metas);
      if (node.tagName === 'br' || ALONE.has(node.tagName))
        put(parent, whole(node, node.tagName === 'br' ? ' ' : MASK));
      if (![INLINE, MASKED, UNSEEN, ALONE].some(kind => kind.has(node.tagName))) {
        open = undefined;
        work.push({ node: 'end', fill });
      }
      // Of what is masked, the texts are: the parser repeats an element that is left open, with one place for all.
      enter(node.childNodes, UNSEEN.has(node.tagName) ? FILL : (fill ?? (MASKED.has(node.tagName) ? MASK : undefined)));
    }
  }
  return { blocks: blocks.sort((a, b) => a.stretches[0]!.start - b.stretches[0]!.start), metas };
}

function shownText(stretches: readonly Stretch[]): string {
  let at = stretches[0]!.start;
  const pieces: string[] = [];
  for (const s of stretches) {
    pieces.push(FILL.repeat(s.start - at), s.text);
    at = s.end;
  }
  return pieces.join('');
}

function noteMeta(node: Element, metas: Map<string, string>): void {
  const value = (name: string) => node.attrs.find(a => a.name === name)?.value.trim();
  const name = value('name')?.toLowerCase();
  if (name && !metas.has(name)) metas.set(name, value('content') ?? '');
}

/** Whether a piece of source shows nothing. */
function isMarkup(source: string): boolean {
  return source === '' || source.replace(/<!--[\s\S]*?-->|<[^<>]*>/g, '').trim() === '';
}

function blockAround(node: Element): Element | undefined {
  let at: Element | undefined = node;
  while (at && INLINE.has(at.tagName)) at = parentOf(at);
  return at;
}

function above(node: Element, ...names: readonly string[]): Element | undefined {
  let at: Element | undefined = node;
  for (let steps = 0; at && !names.includes(at.tagName) && steps < 50; steps++) at = parentOf(at);
  return at && names.includes(at.tagName) ? at : undefined;
}

function parentOf(node: Element): Element | undefined {
  return node.parentNode && 'tagName' in node.parentNode ? node.parentNode : undefined;
}

function lineEnds(text: string, from: number, to: number): number {
  return text.slice(from, to).match(/\r\n|\n|\r/g)?.length ?? 0;
}
