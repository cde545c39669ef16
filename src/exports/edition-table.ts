import { MOMENT_WORDS } from '../model/said-words.ts';
import { levelName, typeName } from '../model/settings.ts';
import { writeCsv } from '../tables/write-csv.ts';
import { writeXlsx } from '../tables/write-xlsx.ts';
import type { Publication } from './publication.ts';

const HEAD = [
  'number',
  'level',
  'title',
  'text',
  'purpose',
  'outcome',
  'applies_to',
  'verified',
  'caution',
  'references',
  'id',
];

/** The published edition, an item a line, in its order. */
function editionRows({ joint, newItems }: Publication): string[][] {
  const { settings, entries } = joint.to;
  return entries.map(entry => {
    const item = newItems.get(entry.id);
    return [
      entry.number,
      item?.kind ?? levelName(settings, entry.level),
      entry.title,
      item?.text ?? '',
      item?.purpose ?? '',
      item?.outcome ?? '',
      joint.new
        .types(entry.id)
        .map(type => typeName(settings, type))
        .join('; '),
      (item?.verified ?? []).map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : '')).join('; '),
      item?.caution ?? '',
      (item?.references ?? []).join('; '),
      entry.id,
    ];
  });
}

export function editionCsv(publication: Publication): string {
  return writeCsv([HEAD, ...editionRows(publication)]);
}

export function editionXlsx(publication: Publication): Uint8Array {
  const widths = [10, 13, 34, 70, 40, 40, 30, 40, 40, 30, 12];
  return writeXlsx([
    { name: `Edition ${publication.joint.to.header.name}`, header: HEAD, rows: editionRows(publication), widths },
  ]);
}

/** What the catalog says, for programs: header, settings, and every item with its place and the types it applies to. */
export function editionJson({ joint, newItems }: Publication): string {
  const { header, settings, entries } = joint.to;
  const items = entries.map(({ id, number, parent, level, title, hash }) => ({
    ...newItems.get(id),
    id,
    number,
    parent,
    level,
    title,
    types: joint.new.types(id),
    hash,
  }));
  return `${JSON.stringify({ header, settings, items }, null, 2)}\n`;
}
