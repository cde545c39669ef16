import { isPair } from '../content/links/marks.ts';
import type { Statistics } from '../crosswalk/statistics.ts';
import type { Entry } from '../model/edition.ts';
import type { Finding } from '../model/finding.ts';
import type { CrosswalkLine } from './crosswalk-lines.ts';

/** A crosswalk as JSON: both editions, the statistics, every link with its marks per type, and all findings. */
export function writeCrosswalkJson(
  from: string,
  to: string,
  lines: readonly CrosswalkLine[],
  statistics: Statistics,
  findings: readonly Finding[],
): string {
  const links = lines.map(line => {
    const { link, from: old, to: heir, row, fate } = line;
    const marks =
      link && isPair(link)
        ? {
            renumbered: line.renumbered,
            moved: line.moved,
            wording: line.wording,
            duty: line.duty,
            appliesTo: line.appliesTo,
            dutyByType: line.dutyByType,
            evidence: line.evidence,
          }
        : undefined;
    const { from: _, to: __, ...said } = link ?? { from: null, to: null };
    return { row, fate, from: end(old), to: end(heir), ...said, marks };
  });
  return `${JSON.stringify({ from, to, statistics, links, findings }, null, 2)}\n`;
}

function end(entry: Entry | undefined) {
  if (!entry) return null;
  const { id, number, title, level } = entry;
  return { id, number, title, level };
}
