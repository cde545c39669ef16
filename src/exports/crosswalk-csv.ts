import { evidenceIn, tellEvidence } from '../model/duty-evidence.ts';
import { writeCsv } from '../tables/write-csv.ts';
import type { CrosswalkLine } from './crosswalk-lines.ts';

/** The columns of the published crosswalk, in their order. */
export const CROSSWALK_COLUMNS = [
  'row',
  'fate',
  'from_id',
  'from_number',
  'from_title',
  'from_extent',
  'to_id',
  'to_number',
  'to_title',
  'to_extent',
  'renumbered',
  'moved',
  'wording',
  'duty',
  'applies_to',
  'basis',
  'confidence',
  'reason',
  'note',
  'evidence',
] as const;

/** A crosswalk as csv: a line per link; yes, no or the mark's word; an empty side for withdrawn and new;
 * pieces of evidence joined by ` | `. */
export function writeCrosswalkCsv(lines: readonly CrosswalkLine[]): string {
  return writeCsv([CROSSWALK_COLUMNS, ...lines.map(crosswalkCells)]);
}

/** The cells of one line, in the order of CROSSWALK_COLUMNS. */
export function crosswalkCells(l: CrosswalkLine): string[] {
  const yesNo = (mark: boolean | undefined) => (mark === undefined ? '' : mark ? 'yes' : 'no');
  return [
    String(l.row),
    l.fate,
    l.from?.id ?? '',
    l.from?.number ?? '',
    l.from?.title ?? '',
    l.fromExtent,
    l.to?.id ?? '',
    l.to?.number ?? '',
    l.to?.title ?? '',
    l.toExtent,
    yesNo(l.renumbered),
    yesNo(l.moved),
    l.wording,
    l.duty,
    l.appliesTo,
    l.basis,
    l.confidence === undefined ? '' : String(l.confidence),
    l.reason,
    l.note,
    evidenceIn(l).map(tellEvidence).join(' | '),
  ];
}
