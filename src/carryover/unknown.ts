import { titlesOf } from '../citing/titles.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { Outcome } from '../model/citation.ts';
import type { Entry } from '../model/edition.ts';
import type { TypeId } from '../model/item.ts';
import { looksLikeDate, numbersBehindDate } from './jobs/spreadsheet.ts';
import { nearestNumbers } from './nearest.ts';
import { called, listed, typeNames } from './sentences.ts';
import type { Verdict } from './verdict.ts';

/** Cells longer than this are no numbers; they are cut where a sentence repeats them. */
const SHOWN = 40;

/** The item exists, but no record says what became of it: a defect of the catalog, shown and never guessed away. */
export function unaccounted(joint: Joint, from: Entry, type: TypeId | undefined): Verdict {
  const forType = type === undefined ? '' : ` for ${typeNames(joint, [type])}`;
  return {
    kind: 'unknown',
    cause: 'unaccounted',
    why: `The catalog does not say what became of ${called(from)}${forType} in ${joint.to.header.name}.`,
    toDo: 'Ask the steward of the catalog; until it is answered, do not replace the number.',
    from,
  };
}

/** The number belongs to an edition that this run does not start from; refused, since its meaning there is not known here. */
export function otherEdition(joint: Joint, number: string, edition: string): Verdict {
  const missing = edition === joint.to.header.name;
  const why = missing ? `Edition ${edition} has no ${number}.` : `${number} means edition ${edition}.`;
  const toDo = missing ? 'Check the number and the edition.' : `Run again with --from ${edition}.`;
  return { kind: 'unknown', cause: 'other-edition', why, toDo };
}

/** The edition does not print this number; says why that may be and which numbers are near. */
export function noSuchNumber(joint: Joint, number: string, title: string | undefined): Verdict {
  const edition = joint.from.header.name;
  const shown = number.length > SHOWN ? `${number.slice(0, SHOWN)}…` : number;
  if (number === '') {
    return { kind: 'unknown', cause: 'no-such-number', why: 'There is no number here.', toDo: 'Fill in the number.' };
  }
  if (looksLikeDate(number)) {
    const behind = numbersBehindDate(joint, number);
    return {
      kind: 'unknown',
      cause: 'spreadsheet',
      why: `${shown} looks like a number that a spreadsheet turned into a date${
        behind.length > 0 ? `; it may have been ${listed(behind, 'or')}` : ''
      }.`,
      toDo: 'Look the number up in the original order and enter it as text.',
    };
  }
  const cutFrom = ['0', '00'].map(zeros => number + zeros).find(n => joint.old.withNumber(n).length > 0);
  if (cutFrom !== undefined && number.includes('.')) {
    return {
      kind: 'unknown',
      cause: 'spreadsheet',
      why: `Edition ${edition} has no ${shown}; a spreadsheet may have cut it from ${cutFrom}.`,
      toDo: `Look the number up in the original order; if it is ${cutFrom}, enter it as text.`,
    };
  }
  const named = title === undefined ? [] : titlesOf(joint.from).named(title);
  if (named.length === 1) {
    const toDo = `The title beside it is that of ${called(named[0]!)}; check which is meant.`;
    return { kind: 'unknown', cause: 'no-such-number', why: `Edition ${edition} has no ${shown}.`, toDo };
  }
  const near = number.length > SHOWN ? [] : nearestNumbers(joint, number);
  return {
    kind: 'unknown',
    cause: 'no-such-number',
    why: `Edition ${edition} has no ${shown}.`,
    toDo:
      near.length > 0
        ? `Check the number; near it ${near.length > 1 ? 'are' : 'is'} ${listed(near)}.`
        : 'Check the number.',
  };
}

/**
 * A cell that holds a number, not a text, or a text of a table that a spreadsheet saved, where the edition has several
 * numbers that it would have made the same: 3.1 may have been 3.1 or 3.10. The title beside it decides where it names one
 * of them.
 */
export function spoiledNumber(numbers: readonly string[], cell: 'number' | 'text'): Outcome {
  const seen =
    cell === 'number'
      ? 'The cell holds a number, not a text'
      : 'A spreadsheet may have cut the last zero of this number';
  return {
    kind: 'choose',
    cause: 'spreadsheet',
    why: `${seen}; it may have been ${listed(numbers, 'or')}.`,
    toDo: 'Look the number up in the original order and enter it as text.',
    heirs: [],
  };
}

/** Whether lines of one case may have meant different numbers: what is decided of them is decided of them all. */
export function isSpoiled({ kind, cause }: Outcome): boolean {
  return kind === 'choose' && cause === 'spreadsheet';
}
