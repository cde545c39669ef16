import type { MarkEntry } from '../../carryover/documents/carry-marks.ts';
import type { LookAtEntry } from '../../carryover/documents/to-look-at.ts';
import type { StaleEntry } from '../../carryover/stale/stale-places.ts';
import type { Finding } from '../../model/finding.ts';

export function citationFinding(entry: LookAtEntry): Finding {
  const { outcome, number } = entry;
  const isNote = outcome === 'kept' || outcome === 'carried';
  return findingOf(entry, `citation-${outcome}`, number, isNote ? 'note' : 'warning');
}

export function markFinding(entry: MarkEntry): Finding {
  return findingOf(entry, 'edition-mark', entry.file);
}

export function staleFinding(entry: StaleEntry): Finding {
  return findingOf(entry, `stale-${entry.kind}`, entry.number);
}

/** An entry of the review list as a finding; files without lines say the place in the message. */
function findingOf(
  { file, line, place, why, toDo }: MarkEntry | LookAtEntry | StaleEntry,
  rule: string,
  subject: string,
  severity: Finding['severity'] = 'warning',
): Finding {
  const isLine = place === `line ${line}`;
  return {
    rule,
    severity,
    subject,
    message: `${isLine ? '' : `${place}: `}${why} ${toDo}`,
    place: { file, ...(isLine ? { line } : {}) },
  };
}
