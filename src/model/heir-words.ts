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

/**
 * What stands on record about the types that no heir takes over, each with the end that names it; of those without a
 * record, whom to ask.
 */
export function saidOfEnded(
  types: readonly TypeId[],
  ends: readonly Link[],
  reasons: readonly WithdrawalReason[],
  nameOf: NameOf,
): string {
  const silent = types.filter(type => !ends.some(link => endsFor(link, type)));
  return [
    ...ends.flatMap(link => {
      const here = types.filter(type => endsFor(link, type));
      if (here.length === 0) return [];
      return [
        `It ends for ${inWords(here.map(nameOf))}.`,
        link.governs && `What governs there now: ${sentence(link.governs)}`,
        meaningOf(link, reasons),
      ];
    }),
    silent.length > 0 &&
      `No record says what governs for ${inWords(silent.map(nameOf))} now; ask the office that publishes the catalog.`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** Why an item goes on nowhere: what governs now and the reason, apart for the types of each end where there are several. */
export function saidOfEnd(ends: readonly Link[], reasons: readonly WithdrawalReason[], nameOf: NameOf): string {
  return ends
    .flatMap(link => [
      ends.length > 1 && link.types && `For ${inWords(link.types.map(nameOf))}:`,
      link.governs && `What governs now: ${sentence(link.governs)}`,
      meaningOf(link, reasons),
    ])
    .filter(Boolean)
    .join(' ');
}

/** The reasons of several ends in words, each once: `Another rule governs; no longer used`. */
export function reasonsInWords(ends: readonly Link[], reasons: readonly WithdrawalReason[]): string {
  return [...new Set(ends.flatMap(link => wordsOfReason(link, reasons) ?? []))].join('; ');
}

const endsFor = ({ types }: Link, type: TypeId) => types?.includes(type) ?? true;

function meaningOf(link: Link, reasons: readonly WithdrawalReason[]): string | undefined {
  const meaning = wordsOfReason(link, reasons);
  return meaning && capital(sentence(meaning));
}

function wordsOfReason({ reason }: Link, reasons: readonly WithdrawalReason[]): string | undefined {
  return reasons.find(r => r.code === reason)?.meaning ?? reason;
}
