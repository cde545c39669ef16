import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import { endingsOf } from '../model/endings.ts';
import type { Finding } from '../model/finding.ts';
import type { ItemId } from '../model/item.ts';

/** What is wrong with the records of one step themselves: names that lead nowhere, and statements that contradict. */
export function checkLineage(
  records: readonly LineageRecord[],
  from: ReadonlySet<ItemId>,
  to: ReadonlySet<ItemId>,
  decisions: readonly Decision[],
): Finding[] {
  const known = new Set(decisions.map(d => d.id));
  return records.flatMap(record => {
    const name = record.from ?? `the new ${record.heirs.map(h => h.to).join(', ')}`;
    const say = (rule: string, message: string): Finding => ({
      rule,
      severity: 'error',
      subject: name,
      message: `The lineage of ${name} ${message}.`,
    });
    const findings: Finding[] = [];
    const continues = record.from !== null && to.has(record.from) && !record.notSame;
    if (record.from !== null && !from.has(record.from)) {
      findings.push(say('lineage-from-unknown', 'is about an item that the older edition does not have'));
    }
    for (const heir of record.heirs) {
      if (to.has(heir.to)) continue;
      findings.push(say('lineage-to-unknown', `names the heir ${heir.to}, which the newer edition does not have`));
    }
    for (const heir of twice(record.heirs.map(h => h.to))) {
      findings.push(say('heir-twice', `names the heir ${heir} more than once; leave one of them`));
    }
    for (const type of twice(endingsOf(record).flatMap(e => e.types ?? []))) {
      findings.push(say('ends-twice', `says more than once why the item ends for ${type}; leave one of them`));
    }
    // Heirs may go on under a decision and with a pointer too, so the record itself is asked as well.
    for (const { pointsTo, decision } of [record, ...(record.alsoEnds ?? [])]) {
      if (pointsTo !== undefined && !to.has(pointsTo)) {
        findings.push(say('lineage-to-unknown', `points to ${pointsTo}, which the newer edition does not have`));
      }
      if (decision !== undefined && !known.has(decision)) {
        findings.push(
          say(
            'decision-unknown',
            `refers to the decision ${decision}, which is not on file; give its file with --decision`,
          ),
        );
      }
    }
    if (record.heirs.length === 0 && !continues && record.reason === undefined) {
      findings.push(say('withdrawn-without-reason', 'names neither an heir nor a reason'));
    }
    if (continues && record.heirs.length > 0 && !record.heirs.some(h => h.to === record.from)) {
      findings.push(
        say(
          'continues-unlisted',
          'leaves out that the item continues under its own id; list it among the heirs, or say notSame',
        ),
      );
    }
    return findings;
  });
}

const twice = (names: readonly string[]) => new Set(names.filter((name, at) => names.indexOf(name) < at));
