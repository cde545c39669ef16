import type { Fate } from '../model/crosswalk.ts';

/**
 * The life of an item as a line: a bar for each item in each edition, plates where a step joins them. What joined from
 * elsewhere, or went on elsewhere, is a stub at the plate.
 *
 *   2014            2018            2024
 *              ┌╌╌         ╌╌╌┐
 *   3.1.1 ════▐▌════ 4.2.3.1 ▐▌════ 5.3.1.1
 *             split          merged
 */
export interface LifePicture {
  readonly width: number;
  readonly height: number;
  readonly bars: readonly { readonly path: string; readonly side: 'old' | 'new'; readonly here: boolean }[];
  /** From a bar to a plate or from a plate to a bar. */
  readonly joins: readonly string[];
  /** Others at a plate: what else went in, or came out. */
  readonly stubs: readonly string[];
  readonly plates: readonly Plate[];
  readonly labels: readonly Label[];
}

interface Plate {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly rivets: readonly Point[];
}

interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly kind: 'edition' | 'number' | 'fate';
  readonly text: string;
}

type Point = readonly [x: number, y: number];

export interface LifeStages {
  readonly stages: readonly { readonly edition: string; readonly items: readonly LifeItem[] }[];
  /** One fewer than the stages: how each became the next. */
  readonly steps: readonly { readonly groups: readonly LifeGroup[] }[];
}

interface LifeItem {
  readonly number: string;
  readonly here: boolean;
}

/** Items that one step joins, as positions in the stages before and behind it. */
export interface LifeGroup {
  readonly fate: Fate;
  readonly from: readonly number[];
  readonly to: readonly number[];
  /** Items outside this life that went into the same heirs, or that came of the same items. */
  readonly alsoFrom: number;
  readonly alsoTo: number;
}

/** `right` for a desk, `down` for a phone. Lengths run along the time, widths across it. */
const LAYOUTS = {
  right: { begin: 4, stage: 176, gap: 116, top: 58, lane: 62, thick: 10, plate: 34 },
  down: { begin: 14, stage: 62, gap: 74, top: 78, lane: 84, thick: 10, plate: 26 },
} as const;
/** More numbers than these do not fit beside each other on a phone; the list below the picture names them. */
const MOST_NUMBERS_ABREAST = 3;
const LEAST_WIDTH = 350;

export function lifePicture({ stages, steps }: LifeStages, flow: keyof typeof LAYOUTS): LifePicture {
  const layout = LAYOUTS[flow];
  const abreast = Math.max(1, ...stages.map(s => s.items.length));
  const lane = flow === 'down' ? Math.min(layout.lane, (LEAST_WIDTH - layout.top - 40) / abreast) : layout.lane;
  const at = (along: number, across: number): Point => (flow === 'right' ? [along, across] : [across, along]);
  const start = (stage: number) => layout.begin + stage * (layout.stage + layout.gap);
  const end = (stage: number) => start(stage) + layout.stage;
  const middle = layout.top + ((abreast - 1) * lane) / 2;
  const across = (stage: number, item: number) => middle + (item - (stages[stage]!.items.length - 1) / 2) * lane;
  const half = layout.thick / 2;

  const bars = stages.flatMap(({ items }, s) =>
    items.map(({ here }, i) => {
      const y = across(s, i);
      const born = s > 0 && !steps[s - 1]!.groups.some(g => g.to.includes(i) && g.from.length + g.alsoFrom > 0);
      const dies = s < steps.length && !steps[s]!.groups.some(g => g.from.includes(i) && g.to.length + g.alsoTo > 0);
      const [a, b] = [start(s), end(s)];
      const thick = here ? half + 3 : half;
      const corners = [at(a, y - thick), at(b, y - thick), at(b, y + thick), at(a, y + thick)];
      // A bar with an open end: the path begins and stops there.
      const turned = born ? [corners[0]!, corners[1]!, corners[2]!, corners[3]!] : [1, 0, 3, 2].map(n => corners[n]!);
      const path = `M${turned.map(p => p.map(round).join(' ')).join('L')}${born || dies ? '' : 'Z'}`;
      return { path, side: s === stages.length - 1 && s > 0 ? ('new' as const) : ('old' as const), here };
    }),
  );

  const joins: string[] = [];
  const stubs: string[] = [];
  const plates: Plate[] = [];
  const fates: Label[] = [];
  steps.forEach(({ groups }, s) => {
    const centre = end(s) + layout.gap / 2;
    for (const group of groups) {
      const lanes = [...group.from.map(i => across(s, i)), ...group.to.map(i => across(s + 1, i))];
      if (group.from.length + group.alsoFrom === 0 || group.to.length + group.alsoTo === 0) {
        const ends = group.to.length === 0;
        const [a, b] = ends ? [end(s) + 5, centre - 8] : [centre + 8, start(s + 1) - 5];
        for (const y of lanes) stubs.push(curve(at, a, y, b, y));
        const below = flow === 'right' ? at((a + b) / 2, lanes.at(-1)! + 24) : at((a + b) / 2 + 5, lanes.at(-1)! + 12);
        fates.push(fateLabel(below, flow, group.fate));
        continue;
      }
      const [low, high] = [Math.min(...lanes) - 12, Math.max(...lanes) + 12];
      const [near, far] = [centre - layout.plate / 2, centre + layout.plate / 2];
      const inside = (y: number) => Math.min(Math.max(y, low + 12), high - 12);
      for (const i of group.from) joins.push(curve(at, end(s), across(s, i), near, inside(across(s, i))));
      for (const i of group.to) joins.push(curve(at, far, inside(across(s + 1, i)), start(s + 1), across(s + 1, i)));
      if (group.alsoFrom > 0) stubs.push(curve(at, near - layout.gap / 4, low - 14, near, low + 5));
      if (group.alsoTo > 0) stubs.push(curve(at, far, low + 5, far + layout.gap / 4, low - 14));
      const [x, y] = at(near, low);
      const [width, height] = at(layout.plate, high - low);
      const ends = high - low > 30 ? [low + 12, high - 12] : [(low + high) / 2];
      const rivets = ends.flatMap(y => [at(near + 7, y), at(far - 7, y)]);
      plates.push({ x: round(x), y: round(y), width: round(width), height: round(height), rivets });
      fates.push(fateLabel(flow === 'right' ? at(centre, high + 19) : at(centre + 5, high + 12), flow, group.fate));
    }
  });

  const labels: Label[] = stages.flatMap(({ edition, items }, s): Label[] => [
    flow === 'right'
      ? { x: start(s), y: 18, anchor: 'start', kind: 'edition', text: edition }
      : { x: 0, y: round((start(s) + end(s)) / 2 + 5), anchor: 'start', kind: 'edition', text: edition },
    ...(flow === 'down' && items.length > MOST_NUMBERS_ABREAST
      ? []
      : items.map(({ number, here }, i): Label => {
          const y = across(s, i);
          const text = number || '–';
          return flow === 'right'
            ? { x: start(s), y: round(y - half - (here ? 9 : 6)), anchor: 'start', kind: 'number', text }
            : { x: round(y + 12), y: round((start(s) + end(s)) / 2 + 5), anchor: 'start', kind: 'number', text };
        })),
  ]);

  const long = end(stages.length - 1) + layout.begin;
  const wide = layout.top + (abreast - 1) * lane + 44;
  return {
    width: flow === 'right' ? long : LEAST_WIDTH,
    height: round(flow === 'right' ? wide : long),
    bars,
    joins,
    stubs,
    plates,
    labels: [...labels, ...fates],
  };
}

function fateLabel([x, y]: Point, flow: keyof typeof LAYOUTS, fate: Fate): Label {
  const text = fate === 'unaccounted' ? 'no record' : fate;
  return { x: round(x), y: round(y), anchor: flow === 'right' ? 'middle' : 'start', kind: 'fate', text };
}

function curve(at: (along: number, across: number) => Point, a: number, y1: number, b: number, y2: number): string {
  const bend = a + (b - a) / 2;
  const [p, q, r, s] = [at(a, y1), at(bend, y1), at(bend, y2), at(b, y2)].map(point => point.map(round).join(' '));
  return y1 === y2 ? `M${p}L${s}` : `M${p}C${q} ${r} ${s}`;
}

const round = (n: number) => Math.round(n * 10) / 10;
