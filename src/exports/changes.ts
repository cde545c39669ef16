import type { Fate } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { sentence } from '../model/said-words.ts';
import { type DispositionLine, derivationLines, dispositionLines } from './disposition.ts';
import type { Publication } from './publication.ts';

/** One thing that changed between two editions. */
export interface Change {
  readonly fate: Fate;
  readonly old: Entry | undefined;
  readonly new: Entry | undefined;
  readonly marks: readonly string[];
  /** Duty, reason, what governs now, note: sentences. */
  readonly said: string;
}

export interface ChangeFilter {
  /** The number of a part, or of anything below one, in either edition: itself and all that stands under it. */
  readonly part?: string;
  /** Numbers of the older edition, or of items that are new in the newer one. */
  readonly numbers?: ReadonlySet<string>;
}

/** What changed, in the order of the older edition; what is new comes last, in the order of the newer one. */
export function changesOf(publication: Publication, filter: ChangeFilter = {}): Change[] {
  const changed = dispositionLines(publication)
    .filter(l => !l.marks.includes('unchanged'))
    .map(l => changeOf(l, l.here, l.there));
  const fresh = derivationLines(publication)
    .filter(l => l.fate === 'new')
    .map(l => changeOf(l, undefined, l.here));
  return [...changed, ...fresh].filter(change => passes(publication, change, filter));
}

function changeOf(line: DispositionLine, old: Entry | undefined, now: Entry | undefined): Change {
  const { fate, marks, duty, reason, governs, note } = line;
  const asks = marks.some(m => ['stricter', 'relaxed', 'mixed', 'read both'].includes(m)) ? duty : '';
  const said = [
    asks && `Duty: ${asks.toLowerCase()}`,
    reason && `Reason: ${reason}`,
    governs && `Now governed by ${governs}`,
    note,
  ];
  return { fate, old, new: now, marks, said: said.flatMap(s => (s ? sentence(s) : [])).join(' ') };
}

function passes({ joint }: Publication, { old, new: now }: Change, { part, numbers }: ChangeFilter): boolean {
  if (numbers && !numbers.has((old ?? now)!.number)) return false;
  if (part === undefined) return true;
  const stands = (entry: Entry | undefined, places: typeof joint.old) =>
    entry !== undefined && [entry, ...places.ancestors(entry.id)].some(e => e.number === part);
  return stands(old, joint.old) || stands(now, joint.new);
}

/** `8.3.2.2 became 3.3.2.2 (stricter)`: the change in a line of its own. */
export function changeHeadline({ fate, old, new: now, marks }: Change): string {
  const name = (e: Entry) => `${e.number} ${e.title}`.trim();
  const told = marks.length > 0 ? ` (${marks.join(', ')})` : '';
  if (!old) return `${name(now!)} is new`;
  if (now) return `${name(old)} became ${name(now)}${told}`;
  return fate === 'unaccounted' ? `${name(old)}: no record says what became of it` : `${name(old)} was withdrawn`;
}
