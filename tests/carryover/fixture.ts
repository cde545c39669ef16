import { marksOf } from '../../src/content/links/marks.ts';
import { type Joint, joinEditions } from '../../src/crosswalk/joint.ts';
import { linkByLineage } from '../../src/crosswalk/lineage.ts';
import type { Extent, LineageRecord, Link } from '../../src/model/crosswalk.ts';
import type { EditionIndex, Entry } from '../../src/model/edition.ts';
import type { Item } from '../../src/model/item.ts';
import type { Settings } from '../../src/model/settings.ts';

/** Freezes a value through and through, so that whoever changes what it was given fails loudly. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFreeze(part);
  }
  return value;
}

const settings = (court: string): Settings => ({
  title: 'Workmanship Requirements for Rainwater Retrofits',
  language: 'en',
  levels: [
    { name: 'Part', obliges: false },
    { name: 'Work item', obliges: false },
    { name: 'Requirement', obliges: true },
  ],
  fileLevel: 2,
  numbering: {
    levels: [{ style: 'decimal' }, { style: 'decimal', separator: '.' }, { style: 'decimal', separator: '.' }],
    numbersUnique: false,
  },
  installationTypes: [
    { id: 'house', name: 'house lot' },
    { id: 'terrace', name: 'terrace row' },
    { id: 'court', name: court },
  ],
  withdrawalReasons: [
    { code: 'law-governs', meaning: 'the law regulates it' },
    { code: 'obsolete', meaning: 'the product is no longer used' },
  ],
});

type Line = readonly [
  id: string,
  number: string,
  title: string,
  text?: string | undefined,
  appliesTo?: readonly string[],
];

function edition(
  name: string,
  court: string,
  lines: readonly Line[],
): { index: EditionIndex; items: Map<string, Item> } {
  const ids = new Map(lines.map(([id, number]) => [number, id]));
  const items = lines.map(([id, number, title, text, appliesTo]): Item => {
    const above = number.split('.').slice(0, -1).join('.');
    return {
      id,
      number,
      level: number.split('.').length,
      parent: ids.get(above) ?? null,
      title,
      ...(text === undefined ? {} : { text }),
      ...(appliesTo === undefined ? {} : { appliesTo }),
    };
  });
  const entries = items.map(
    ({ text, ...item }): Entry => ({ ...item, hash: JSON.stringify([item.title, text]), obliges: item.level === 3 }),
  );
  return {
    index: {
      header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' },
      settings: settings(court),
      entries,
    },
    items: new Map(items.map(i => [i.id, i])),
  };
}

const OLD: readonly Line[] = [
  ['p3', '3', 'Storage'],
  ['w31', '3.1', 'Rain butts', undefined, ['house', 'terrace']],
  ['base', '3.1.1', 'Base for the butt', 'Stand the butt on slabs.'],
  ['lid', '3.1.2', 'Lid', 'Close the butt with a lid.'],
  ['tap', '3.1.3', 'Tap height', 'Set the tap at least 300 mm above the ground.'],
  ['paint', '3.1.4', 'Lead paint', 'Paint the stand with lead paint.'],
  ['safety', '3.1.5', 'Lifting', 'Lift with two people.'],
  ['w32', '3.2', 'Overflow, house lot', undefined, ['house']],
  ['capH', '3.2.1', 'Overflow capacity', 'Carry the whole inflow.'],
  ['pipeH', '3.2.2', 'Overflow pipe', 'Lead the overflow away from walls.'],
  ['screenH', '3.2.3', 'Overflow screen', 'Fit a screen.'],
  ['w33', '3.3', 'Overflow, terrace row', undefined, ['terrace']],
  ['capT', '3.3.1', 'Overflow capacity, row', 'Carry the whole inflow.'],
  ['w34', '3.4', 'Cisterns', undefined, ['court']],
  ['gone', '3.4.2', 'Nobody knows', 'Something.'],
  ['vent', '3.4.1', 'Vent', 'Vent the cistern.'],
  ['ten', '3.4.10', 'Silt trap', 'Fit a silt trap.'],
  ['splitOne', '3.4.5', 'Cover and lock', 'Cover the cistern. Lock it.'],
  ['guess', '3.4.6', 'Ladder', 'Fix a ladder.'],
  ['doubt', '3.4.7', 'Access', 'Keep the access free.'],
  ['twinA', '3.4.8', 'Float valve', 'Fit a float valve.'],
  ['twinB', '3.4.8', 'Filter', 'Fit a filter.'],
  ['stays', '3.4.9', 'Outlet', 'Fit an outlet.'],
  ['typed', '3.5', 'Markers', undefined, ['house', 'terrace', 'court']],
  ['mark', '3.5.1', 'Marker plate', 'Fix a plate.'],
];

const NEW: readonly Line[] = [
  ['p3', '3', 'Storage'],
  ['w41', '3.1', 'Setting rain butts', undefined, ['house', 'terrace']],
  ['lid', '3.1.1', 'Lid', 'Close the butt with a lid.'],
  ['base', '3.1.2', 'Base for the butt', 'Stand the butt on slabs.'],
  ['tap', '3.1.3', 'Tap height', 'Set the tap at least 450 mm above the ground.'],
  ['strap', '3.1.4', 'Strap', 'Strap the butt to the wall.'],
  ['labelN', '3.1.5', 'Label', 'Label the tap: no drinking water.', ['terrace']],
  ['w42', '3.2', 'Overflow', undefined, ['house', 'terrace']],
  ['cap', '3.2.1', 'Capacity of the overflow', 'Carry the whole inflow without splashing.'],
  ['pipeH', '3.2.2', 'Overflow pipe', 'Lead the overflow away from walls.'],
  ['screenH', '3.2.3', 'Overflow screen', 'Fit a screen.'],
  ['w43', '3.3', 'Cisterns', undefined, ['court']],
  ['stays', '3.4.9', 'Outlet', 'Fit an outlet.'],
  ['vent', '3.3.1', 'Vent', 'Vent the cistern.'],
  ['ten', '3.3.2', 'Silt trap', 'Fit a silt trap.'],
  ['coverN', '3.3.3', 'Cover', 'Cover the cistern.'],
  ['lockN', '3.3.4', 'Lock', 'Lock the cover.'],
  ['ladderN', '3.3.5', 'Ladder', 'Fix a ladder.'],
  ['accessN', '3.3.6', 'Access', 'Keep the access free.'],
  ['twinA', '3.3.7', 'Float valve', 'Fit a float valve.'],
  ['twinB', '3.3.8', 'Filter', 'Fit a filter.'],
  ['w45', '3.5', 'Markers', undefined, ['house', 'terrace']],
  ['mark', '3.5.1', 'Marker plate', 'Fix a plate.'],
];

const heir = (to: string, extent: Extent = 'all') => ({ to, fromExtent: extent, toExtent: extent });
const declared = (
  from: string,
  heirs: ReturnType<typeof heir>[],
  more: Partial<LineageRecord> = {},
): LineageRecord => ({
  from,
  heirs,
  basis: 'declared',
  ...more,
});

const RECORDS: readonly LineageRecord[] = [
  declared('w31', [heir('w41')]),
  declared('paint', [], { reason: 'obsolete', note: 'Lead paint is not sold any more', pointsTo: 'strap' }),
  declared('safety', [], { reason: 'law-governs', governs: 'the law on work at height' }),
  declared('w32', [heir('w42')]),
  declared('w33', [heir('w42')]),
  declared('capH', [heir('cap', 'part')]),
  declared('capT', [heir('cap', 'part')]),
  declared('w34', [heir('w43')]),
  declared('splitOne', [heir('coverN', 'part'), heir('lockN', 'part')]),
  { from: 'guess', heirs: [heir('ladderN')], basis: 'inferred' },
  declared('doubt', [heir('accessN')]),
  declared('typed', [heir('w45')]),
  declared('mark', [heir('mark')], { withdrawnFor: ['court'], reason: 'obsolete', note: 'Courts have plans instead' }),
];

/** Two small editions of one catalog in which every outcome occurs. Everything in it is frozen. */
export function fixture(): {
  joint: Joint;
  marks: (link: Parameters<typeof marksOf>[1]) => ReturnType<typeof marksOf>;
} {
  const from = edition('2018', 'apartment court', OLD);
  const to = edition('2024', 'courtyard block', NEW);
  const links = linkByLineage(from.index.entries, to.index.entries, RECORDS).map(
    (link): Link => (link.from === 'doubt' ? { ...link, doubtful: true } : link),
  );
  const crosswalk = deepFreeze({ from: '2018', to: '2024', links });
  const joint = joinEditions(deepFreeze(from.index), deepFreeze(to.index), crosswalk);
  const texts = { from: (id: string) => from.items.get(id), to: (id: string) => to.items.get(id) };
  return { joint, marks: link => marksOf(joint, link, texts) };
}
