import type { Link } from '../model/crosswalk.ts';
import type { EditionIndex, Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import type { Places } from '../model/places.ts';

/**
 * The joint as a picture: parts of the older edition on the left rail, of the newer on the right, a ribbon for what
 * went from one to the other, as thick as the number of links. What ends and what begins are stubs with an open end.
 *
 *   1 ████═══════╲            Plain numbers, so that a template draws them and nothing has to be measured in a browser.
 *   2 ████══╲  ◂ new ════████ 1
 *   3 ████══ ▸ withdrawn ████ 2
 */
export interface RailsPicture {
  readonly width: number;
  readonly height: number;
  readonly left: readonly Rail[];
  readonly right: readonly Rail[];
  readonly ribbons: readonly (Flow & { readonly path: string; readonly width: number; readonly said: string })[];
  readonly ends: readonly (Flow & {
    readonly path: string;
    readonly side: 'withdrawn' | 'new';
    readonly said: string;
  })[];
  readonly said: string;
}

/** Two editions and the links between them. */
export interface Joined {
  readonly from: EditionIndex;
  readonly to: EditionIndex;
  readonly crosswalk: { readonly links: readonly Link[] };
  readonly old: Places<Entry>;
  readonly new: Places<Entry>;
}

interface Rail {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly labelX: number;
  readonly labelY: number;
  readonly anchor: 'start' | 'end';
}

const LAYOUTS = {
  wide: { width: 920, label: 290, rail: 14, gap: 12, letters: 38 },
  narrow: { width: 350, label: 34, rail: 12, gap: 10, letters: 0 },
} as const;
const LEAST = 20;
const UNIT_HEIGHT = 400;
const STUB = 34;

/** Beyond these nobody can follow a ribbon, and the page grows heavier than its text. */
const MOST_FLOWS = 160;

export function railsPicture(joint: Joined, size: keyof typeof LAYOUTS): RailsPicture {
  const layout = LAYOUTS[size];
  const flows = countFlows(joint);
  const thickest = new Set([...flows].sort((a, b) => b.n - a.n).slice(0, MOST_FLOWS));
  const weigh = (side: 'from' | 'to', id: ItemId) => flows.filter(f => f[side] === id).reduce((sum, f) => sum + f.n, 0);
  const tops = (entries: readonly Entry[]) => entries.filter(e => e.parent === null);
  const [olds, news] = [tops(joint.from.entries), tops(joint.to.entries)];
  const total = Math.max(1, ...[olds.map(e => weigh('from', e.id)), news.map(e => weigh('to', e.id))].map(sum));
  const unit = UNIT_HEIGHT / total;
  const [leftX, rightX] = [layout.label, layout.width - layout.label - layout.rail];
  const place = (entries: typeof olds, side: 'from' | 'to'): { id: ItemId; rail: Rail; next: number }[] => {
    let y = 6;
    return entries.map(({ id, number, title }) => {
      const height = Math.max(LEAST, weigh(side, id) * unit);
      const long = `${number} ${title}`.trim();
      const rail: Rail = {
        x: side === 'from' ? leftX : rightX,
        y: round(y),
        width: layout.rail,
        height: round(height),
        label:
          layout.letters === 0
            ? number || '–'
            : long.length > layout.letters
              ? `${long.slice(0, layout.letters - 1)}…`
              : long,
        labelX: side === 'from' ? leftX - 8 : rightX + layout.rail + 8,
        labelY: round(y + height / 2 + 5),
        anchor: side === 'from' ? 'end' : 'start',
      };
      const next = y;
      y += height + layout.gap;
      return { id, rail, next };
    });
  };
  const [left, right] = [place(olds, 'from'), place(news, 'to')];
  const ribbons = [];
  const ends = [];
  for (const flow of flows) {
    if (!thickest.has(flow)) continue;
    const [a, b] = [left.find(p => p.id === flow.from), right.find(p => p.id === flow.to)];
    const thick = flow.n * unit;
    const take = (end: { next: number }) => {
      const middle = end.next + thick / 2;
      end.next += thick;
      return round(middle);
    };
    const { from, to, n } = flow;
    if (a && b) {
      const [x1, x2] = [leftX + layout.rail, rightX];
      const [y1, y2] = [take(a), take(b)];
      const bend = round((x2 - x1) / 2);
      ribbons.push({
        from,
        to,
        n,
        path: `M${x1} ${y1}C${x1 + bend} ${y1} ${x2 - bend} ${y2} ${x2} ${y2}`,
        width: round(Math.max(1, thick)),
        said: `${a.rail.label} to ${b.rail.label}: ${flow.n}`,
      });
    } else if (a) {
      const path = stub(leftX + layout.rail, take(a), thick, STUB);
      ends.push({ from, to, n, side: 'withdrawn' as const, path, said: `${a.rail.label}, withdrawn: ${n}` });
    } else if (b) {
      const path = stub(rightX, take(b), thick, -STUB);
      ends.push({ from, to, n, side: 'new' as const, path, said: `${b.rail.label}, new: ${n}` });
    }
  }
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  return {
    width: layout.width,
    height: round(Math.max(6, ...[...left, ...right].map(p => p.rail.y + p.rail.height)) + 6),
    left: left.map(p => p.rail),
    right: right.map(p => p.rail),
    ribbons,
    ends,
    said: `What went where from ${from} to ${to}: ${olds.length} parts became ${news.length}. The table below says the same in numbers.`,
  };
}

/** A bar that is closed at the rail and open at its far end. */
function stub(x: number, middle: number, thick: number, length: number): string {
  const half = Math.max(1, thick / 2 - 1);
  return `M${x + length} ${round(middle - half)}H${x}V${round(middle + half)}H${x + length}`;
}

/** How many links lead from a part to a part; one of the two is absent for what ends or begins. */
export interface Flow {
  readonly from: ItemId | undefined;
  readonly to: ItemId | undefined;
  readonly n: number;
}

/** Links of requirements (of all items where there are none) from part to part, in the order of both editions. */
function countFlows(joint: Joined): Flow[] {
  const obliging = joint.from.entries.some(e => e.obliges);
  const flows = new Map<string, { from: ItemId | undefined; to: ItemId | undefined; n: number }>();
  for (const link of joint.crosswalk.links) {
    const [old, heir] = [
      link.from === null ? undefined : joint.old.get(link.from),
      link.to === null ? undefined : joint.new.get(link.to),
    ];
    if (obliging && !(old ?? heir)?.obliges) continue;
    const [from, to] = [old && joint.old.part(old.id)?.id, heir && joint.new.part(heir.id)?.id];
    const key = JSON.stringify([from, to]);
    const flow = flows.get(key);
    if (flow) flow.n++;
    else flows.set(key, { from, to, n: 1 });
  }
  const order = (entries: readonly { readonly id: ItemId }[]) => new Map(entries.map((e, at) => [e.id, at]));
  const [oldOrder, newOrder] = [order(joint.from.entries), order(joint.to.entries)];
  const last = (map: Map<ItemId, number>, id: ItemId | undefined) =>
    id === undefined ? Number.MAX_SAFE_INTEGER : map.get(id)!;
  return [...flows.values()].sort(
    (a, b) => last(oldOrder, a.from) - last(oldOrder, b.from) || last(newOrder, a.to) - last(newOrder, b.to),
  );
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
const round = (n: number) => Math.round(n * 10) / 10;
