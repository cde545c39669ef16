import { inOneSentence } from '../../content/lost/sentence-gone.ts';
import { loadLanguage } from '../../drafting/language.ts';
import { DRAFTING_RULES } from '../../drafting/rules.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { AuditLine } from './audit-editions.ts';

/**
 * Marks open losses that an edition-wide decision covers although no lineage names it. The scope of a decision is prose;
 * one whose id is the name of a drafting rule ("worker-safety") can be read by that rule: it covers every sentence of
 * an old text that the rule remarks on.
 */
export async function coveredByRule(lines: readonly AuditLine[], decisions: readonly Decision[]): Promise<AuditLine[]> {
  const rules = DRAFTING_RULES.filter(rule => decisions.some(d => d.id === rule.name));
  if (rules.length === 0) return [...lines];
  const language = await loadLanguage();
  const remarks = new Map<string, { rule: string; start: number }[]>();
  const remarksOn = (text: string) => {
    const known = remarks.get(text);
    if (known) return known;
    const read = language.read(text);
    const found = rules.flatMap(rule => rule.find(read, {}).map(({ start }) => ({ rule: rule.name, start })));
    remarks.set(text, found);
    return found;
  };
  return lines.map(line => {
    if (line.state !== 'open' || line.kind === 'type') return line;
    const rule = remarksOn(line.oldText).find(r => inOneSentence(line.oldText, r.start, line.start));
    return rule ? { ...line, state: 'decision', decision: rule.rule } : line;
  });
}
