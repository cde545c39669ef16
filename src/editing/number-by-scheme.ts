import type { Finding } from '../model/finding.ts';
import type { Item } from '../model/item.ts';
import { numberItems } from '../model/numbering.ts';
import type { Settings } from '../model/settings.ts';

/**
 * Gives imported items the numbers of the edition's scheme. Where the table prints another one, the table and the scheme
 * disagree, and a person has to say which is right. A level label that only repeats the level's name is dropped.
 */
export function numberByScheme(
  settings: Settings,
  items: readonly Item[],
): { readonly items: readonly Item[]; readonly findings: readonly Finding[] } {
  const numbers = numberItems(settings, items);
  const findings: Finding[] = [];
  const printed = new Map<string, string>();
  const numbered = items.map((item): Item => {
    const number = numbers.get(item.id) ?? '';
    if (item.number !== '' && item.number !== number) {
      findings.push({
        rule: 'number-off-scheme',
        severity: 'error',
        subject: item.id,
        message: `The table prints ${item.number} for "${item.title}", but by the numbering scheme it is ${number || 'without a number'}.`,
      });
    }
    const other = printed.get(number);
    if (other !== undefined && number !== '' && settings.numbering.numbersUnique) {
      findings.push({
        rule: 'number-twice',
        severity: 'error',
        subject: item.id,
        message: `"${other}" and "${item.title}" both print ${number}, but the settings say that numbers are unique.`,
      });
    }
    printed.set(number, item.title);
    const { kind, ...rest } = item;
    const named = kind !== undefined && kind !== settings.levels[item.level - 1]?.name ? { kind } : {};
    return { ...rest, ...named, number };
  });
  return { items: numbered, findings };
}
