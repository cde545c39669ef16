import type { Edit } from '../../model/document.ts';
import { groupBy } from '../../model/group-by.ts';
import { elementAt, elementsIn, escapeXml, type XmlElement } from '../../office/read-xml.ts';
import type { Paragraph, Piece } from './paragraph.ts';
import type { Stamp } from './stamp.ts';

/** A stretch of a paragraph's text that is replaced, or that a comment points to. */
export type Span =
  | { readonly start: number; readonly end: number; readonly text: string }
  | { readonly start: number; readonly end: number; readonly comment: number };

/**
 * The edits to a part's source that put tracked changes and comments on stretches of one paragraph:
 *
 *     <w:r>rPr<w:t>See 3.1.1.</w:t></w:r>
 *     <w:r>rPr<w:t>See </w:t></w:r><w:del><w:r>rPr<w:delText>3.1.1</w:delText></w:r></w:del>
 *       <w:ins><w:r>rPr<w:t>3.1.2</w:t></w:r></w:ins><w:r>rPr<w:t>.</w:t></w:r>
 *
 * A run without a stretch in it is left byte for byte. Where a stretch lies over several runs, each keeps its part of what
 * is deleted; what is inserted follows the last one and has the properties of the first.
 */
export function changeRuns(
  paragraph: Paragraph,
  spans: readonly Span[],
  source: string,
  stamp: Stamp,
  nextId: () => number,
): readonly Edit[] {
  const runs = groupBy(paragraph.pieces, p => p.run);
  const properties = (run: XmlElement) => sourceOf(elementAt(run, 'w:rPr'), source);
  return [...runs].flatMap(([run, pieces]) => {
    const [from, to] = [pieces[0]!.at, endOf(pieces.at(-1)!)];
    const touching = spans.filter(s => ('text' in s ? s.start < to && s.end > from : isEdgeIn(s, from, to)));
    if (touching.length === 0) return [];
    const inserted = (span: Span) => properties(paragraph.pieces.find(p => endOf(p) > span.start)!.run);
    return [
      { start: run.start, end: run.end, text: changedRun(run, pieces, touching, source, stamp, nextId, inserted) },
    ];
  });
}

function isEdgeIn(span: Span, from: number, to: number): boolean {
  return (span.start >= from && span.start < to) || (span.end > from && span.end <= to);
}

function changedRun(
  run: XmlElement,
  pieces: readonly Piece[],
  spans: readonly Span[],
  source: string,
  stamp: Stamp,
  nextId: () => number,
  propertiesOfInserted: (span: Span) => string,
): string {
  const w = run.written.slice(0, run.written.indexOf(':') + 1);
  const opening = source.slice(run.start, run.innerStart);
  const own = sourceOf(elementAt(run, 'w:rPr'), source);
  const by = () =>
    ` ${w}id="${nextId()}" ${w}author="${escapeXml(stamp.author)}"${stamp.date ? ` ${w}date="${escapeXml(stamp.date)}"` : ''}`;
  const out: string[] = [];
  let group: string[] = [];
  let deleting = false;
  const flush = () => {
    const whole = `${opening}${own}${group.join('')}</${run.written}>`;
    if (group.length > 0) out.push(deleting ? `<${w}del${by()}>${whole}</${w}del>` : whole);
    group = [];
  };
  /** Beside the run: where that is inside somebody's insertion, the insertion ends before and begins again after. */
  const beside = (markup: string) => {
    flush();
    const around = run.parent;
    const splits = around?.name === 'w:ins' || around?.name === 'w:moveTo';
    const again = splits ? withNewId(source.slice(around.start, around.innerStart), w, nextId()) : '';
    out.push(splits ? `</${around.written}>${markup}${again}` : markup);
  };
  for (const item of cutItems(run, pieces, spans, w, source)) {
    const covering =
      item.from < item.to ? spans.find(s => 'text' in s && s.start <= item.from && s.end >= item.to) : undefined;
    const deletes = covering !== undefined && item.deleted !== undefined;
    for (const s of spans) {
      if ('comment' in s && s.start === item.from && item.from < item.to)
        beside(`<${w}commentRangeStart ${w}id="${s.comment}"/>`);
    }
    if (deletes !== deleting) flush();
    deleting = deletes;
    group.push(deletes ? item.deleted! : item.kept);
    for (const s of spans) {
      if (item.from === item.to || s.end !== item.to) continue;
      if ('comment' in s) {
        beside(
          `<${w}commentRangeEnd ${w}id="${s.comment}"/><${w}r><${w}commentReference ${w}id="${s.comment}"/></${w}r>`,
        );
      } else {
        beside(`<${w}ins${by()}><${w}r>${propertiesOfInserted(s)}${textElement(`${w}t`, s.text)}</${w}r></${w}ins>`);
      }
    }
  }
  flush();
  return out.join('');
}

interface Item {
  readonly from: number;
  readonly to: number;
  readonly kept: string;
  /** How it is written in a deleted run; absent where it is never deleted. */
  readonly deleted?: string;
}

/** The children of a run, texts cut where a stretch begins or ends. What shows nothing stays between, whatever happens. */
function cutItems(
  run: XmlElement,
  pieces: readonly Piece[],
  spans: readonly Span[],
  w: string,
  source: string,
): readonly Item[] {
  const byChild = new Map(pieces.map(p => [p.child, p]));
  const cuts = [...new Set(spans.flatMap(s => [s.start, s.end]))].sort((a, b) => a - b);
  let at = pieces[0]!.at;
  return elementsIn(run).flatMap((child): Item[] => {
    if (child.name === 'w:rPr') return [];
    const piece = byChild.get(child);
    const kept = sourceOf(child, source);
    if (!piece || piece.text === '') return [{ from: at, to: at, kept }];
    const [from, to] = [piece.at, endOf(piece)];
    at = to;
    if (child.name !== 'w:t') {
      const goes = ['w:noBreakHyphen', 'w:softHyphen', 'w:tab', 'w:br', 'w:cr'].includes(child.name);
      return [{ from, to, kept, ...(goes ? { deleted: kept } : {}) }];
    }
    const edges = [from, ...cuts.filter(c => c > from && c < to), to];
    return edges.slice(1).map((end, n) => {
      const text = piece.text.slice(edges[n]! - from, end - from);
      return {
        from: edges[n]!,
        to: end,
        kept: edges.length === 2 ? kept : textElement(`${w}t`, text),
        deleted: textElement(`${w}delText`, text),
      };
    });
  });
}

function textElement(name: string, text: string): string {
  return `<${name} xml:space="preserve">${escapeXml(text)}</${name}>`;
}

function withNewId(tag: string, w: string, id: number): string {
  return tag.replace(new RegExp(`(\\s${w}id\\s*=\\s*)(?:"[^"]*"|'[^']*')`), `$1"${id}"`);
}

function sourceOf(element: XmlElement | undefined, source: string): string {
  return element ? source.slice(element.start, element.end) : '';
}

function endOf(piece: Piece): number {
  return piece.at + piece.text.length;
}
