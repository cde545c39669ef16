import type { Finding } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';
import type { Item } from '../model/item.ts';
import type { Settings } from '../model/settings.ts';

/**
 * Printed numbers that jump or stand twice among siblings. Numbers by a scheme have no gaps; printed ones are kept as
 * they came, so a gap is told and stops nothing.
 */
export function numberFindings(settings: Settings, items: readonly Item[]): Finding[] {
  const findings: Finding[] = [];
  const printed = items.filter(i => (settings.numbering.levels[i.level - 1]?.style ?? 'printed') === 'printed');
  for (const list of groupBy(printed, i => i.parent).values()) {
    let last: { readonly item: Item; readonly counter: number } | undefined;
    for (const item of list) {
      const counter = Number(/(\d+)\D*$/.exec(item.number)?.[1] ?? Number.NaN);
      if (Number.isNaN(counter)) continue;
      const gap = last ? counter - last.counter - 1 : counter - 1;
      if (gap !== 0) {
        const before = last ? ` after ${last.item.number}` : ' as the first';
        const told = gap > 0 ? `${gap} ${gap === 1 ? 'number is' : 'numbers are'} skipped` : 'the numbers go back';
        findings.push({
          rule: 'number-gap',
          severity: 'warning',
          subject: item.id,
          message: `${item.number} ${item.title} stands${before}: ${told}; fishplate draft renumber closes gaps.`,
        });
      }
      last = { item, counter };
    }
  }
  return findings;
}
