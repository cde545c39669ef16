import { writeCrosswalkCsv } from '../../exports/crosswalk-csv.ts';
import type { CrosswalkLine } from '../../exports/crosswalk-lines.ts';

/** Lines of a crosswalk, all or those that somebody chose to see, as the published csv has them. */
export function crosswalkCsv(lines: readonly CrosswalkLine[]): string {
  return writeCrosswalkCsv(lines);
}
