import type { ItemId } from './item.ts';
import type { LevelNumbering, Settings } from './settings.ts';

interface Numbered {
  readonly id: ItemId;
  readonly parent: ItemId | null;
  readonly level: number;
  /** The number that the item brings along; used where its level's style is `printed`. */
  readonly number?: string;
}

/**
 * The printed number of every item, by the catalog's scheme: counters run without gaps in document order, below each
 * parent anew. A parent's number goes before, unless the level's style is `printed`.
 */
export function numberItems(settings: Settings, items: readonly Numbered[]): Map<ItemId, string> {
  const numbers = new Map<ItemId, string>();
  const counters = new Map<ItemId | null, number>();
  for (const item of items) {
    const scheme = settings.numbering.levels[item.level - 1] ?? { style: 'printed' };
    if (scheme.style === 'printed') {
      numbers.set(item.id, item.number ?? '');
      continue;
    }
    const count = (counters.get(item.parent) ?? 0) + 1;
    counters.set(item.parent, count);
    const above = item.parent === null ? '' : (numbers.get(item.parent) ?? '');
    numbers.set(item.id, scheme.style === 'none' ? '' : join(above, scheme, count));
  }
  return numbers;
}

function join(above: string, scheme: LevelNumbering, count: number): string {
  const own = `${scheme.prefix ?? ''}${counter(scheme, count)}${scheme.suffix ?? ''}`;
  return above === '' ? own : `${above}${scheme.separator ?? '.'}${own}`;
}

function counter(scheme: LevelNumbering, count: number): string {
  if (scheme.style === 'alpha') return alphabetic(count);
  if (scheme.style === 'roman') return roman(count);
  return String(count).padStart(scheme.pad ?? 1, '0');
}

/** 1 = a, 26 = z, 27 = aa. */
function alphabetic(count: number): string {
  let text = '';
  for (let n = count; n > 0; n = Math.floor((n - 1) / 26)) text = String.fromCharCode(97 + ((n - 1) % 26)) + text;
  return text;
}

const ROMAN: readonly [number, string][] = [
  [1000, 'm'],
  [900, 'cm'],
  [500, 'd'],
  [400, 'cd'],
  [100, 'c'],
  [90, 'xc'],
  [50, 'l'],
  [40, 'xl'],
  [10, 'x'],
  [9, 'ix'],
  [5, 'v'],
  [4, 'iv'],
  [1, 'i'],
];

function roman(count: number): string {
  let rest = count;
  let text = '';
  for (const [value, sign] of ROMAN) {
    while (rest >= value) {
      text += sign;
      rest -= value;
    }
  }
  return text;
}
