import type { Link, Marks } from './crosswalk.ts';
import { evidenceIn, tellInShort } from './duty-evidence.ts';
import type { TypeId } from './item.ts';
import { capital, dutySentence, inWords, sentence } from './said-words.ts';
import type { WithdrawalReason } from './settings.ts';

type NameOf = (type: TypeId) => string;

/**
 * What to mind of an heir: `Stricter. Value changed: "within 14 days" → "within 7 days" (stricter).` The word alone
 * sends a reader to the text that was asked for because the text is not at hand.
 */
export function whatToMind(marks: Marks, nameOf: NameOf): string {
  const why = tellInShort(evidenceIn(marks));
  return [dutySentence(marks, nameOf), why && capital(sentence(why))].filter(Boolean).join(' ');
}

/** The installation types that the old item had and that none of its heirs takes over. */
export function coveredByNone(heirs: readonly Marks[]): TypeId[] {
  const [first, ...others] = heirs.map(h => h.dutyByType.filter(d => d.duty === 'ends').map(d => d.type));
  return (first ?? []).filter(type => others.every(ends => ends.includes(type)));
}

/** `, but not for Street frontage`, to follow what it became; empty where all types go on. */
export function butNotFor(types: readonly TypeId[], nameOf: NameOf): string {
  return types.length === 0 ? '' : `, but not for ${inWords(types.map(nameOf))}`;
}

/** What stands on record about the types that no heir takes over; of those without a record, whom to ask. */
export function saidOfEnded(
  types: readonly TypeId[],
  link: Link | undefined,
  reasons: readonly WithdrawalReason[],
  nameOf: NameOf,
): string {
  const recorded = types.filter(type => link?.types?.includes(type) ?? link !== undefined);
  const silent = types.filter(type => !recorded.includes(type));
  const meaning = link && (reasons.find(r => r.code === link.reason)?.meaning ?? link.reason);
  return [
    recorded.length > 0 && `It ends for ${inWords(recorded.map(nameOf))}.`,
    recorded.length > 0 && link?.governs && `What governs there now: ${sentence(link.governs)}`,
    recorded.length > 0 && meaning && capital(sentence(meaning)),
    silent.length > 0 &&
      `No record says what governs for ${inWords(silent.map(nameOf))} now; ask the office that publishes the catalog.`,
  ]
    .filter(Boolean)
    .join(' ');
}
