import { isPair, type PairLink } from '../content/links/marks.ts';
import type { Fate, Link } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { whatToMind } from '../model/heir-words.ts';
import { capital, dutySentence, inWords, marksIn, sentence } from '../model/said-words.ts';
import { levelName, typeName } from '../model/settings.ts';
import { noteOf } from './crosswalk-lines.ts';
import type { Publication } from './publication.ts';

/** One line of a disposition or derivation table; `here` is the side that the table goes through, in its order. */
export interface DispositionLine {
  readonly level: string;
  readonly here: Entry;
  /** Absent: withdrawn or unaccounted; in a derivation table new. */
  readonly there: Entry | undefined;
  readonly fate: Fate;
  readonly marks: readonly string[];
  /** In words, per installation type where they differ; empty without an other side. */
  readonly duty: string;
  /** The duty with what it rests on: the words that changed. */
  readonly mind: string;
  readonly reason: string;
  readonly governs: string;
  readonly note: string;
}

/**
 * What became of each old item, in the order of the older edition; several heirs are several lines.
 *
 *   old → new (disposition): where did mine go?      Not mirror images: the one names every old item and what is
 *   new → old (derivation): where does this come from?  withdrawn, the other every new item and what is new.
 */
export function dispositionLines(publication: Publication): DispositionLine[] {
  const { joint } = publication;
  return joint.from.entries.flatMap(here => {
    const links = joint.leaving(here.id);
    const level = levelName(joint.from.settings, here.level);
    const fate = joint.fateOfOld(here.id);
    if (links.length === 0) return [{ ...bare(level, here, fate), note: 'No record says what became of it.' }];
    return links.map(link => ({
      ...bare(level, here, fate),
      there: link.to === null ? undefined : joint.new.get(link.to),
      ...saidOf(publication, link),
    }));
  });
}

/** Where each new item comes from, in the order of the newer edition; several sources are several lines. */
export function derivationLines(publication: Publication): DispositionLine[] {
  const { joint } = publication;
  return joint.to.entries.flatMap(here => {
    const all = joint.arriving(here.id);
    const sources = all.filter(l => l.from !== null);
    const level = levelName(joint.to.settings, here.level);
    const fate = joint.fateOfNew(here.id);
    // Over several steps an item may have come in partly on the way: it has sources, and is not new.
    const links = sources.length > 0 ? sources : all;
    if (links.length === 0) return [bare(level, here, fate)];
    return links.map(link => ({
      ...bare(level, here, fate),
      there: link.from === null ? undefined : joint.old.get(link.from),
      ...saidOf(publication, link),
    }));
  });
}

function bare(level: string, here: Entry, fate: Fate): DispositionLine {
  return { level, here, there: undefined, fate, marks: [], duty: '', mind: '', reason: '', governs: '', note: '' };
}

function saidOf(publication: Publication, link: Link) {
  const { joint } = publication;
  const marks = isPair(link) ? publication.marks(link) : undefined;
  const nameOf = (type: string) => typeName(joint.from.settings, type);
  return {
    marks: marks ? marksIn(marks).map(m => m.word) : [],
    duty: marks ? dutySentence(marks, nameOf) : '',
    mind: marks ? whatToMind(marks, nameOf) : '',
    reason: reasonOf(publication, link),
    governs: link.governs ?? '',
    note: noteOf(joint, { ...link, governs: '' }),
  };
}

/** The reason of a withdrawal in words; of a pair what its record says. */
export function reasonOf({ joint }: Publication, link: Link): string {
  if (link.reason === undefined) return link.to === null ? 'no reason is given' : '';
  if (link.to !== null) return link.reason;
  const reasons = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  const meaning = reasons.find(r => r.code === link.reason)?.meaning;
  return meaning ? `${link.reason}: ${meaning}` : link.reason;
}

/** Marks along a link as a reader is told them: `renumbered, stricter`. */
export function markText(publication: Publication, link: PairLink): string {
  return marksIn(publication.marks(link))
    .map(m => m.word)
    .join(', ');
}

/** `Ends for terrace row.` where a withdrawal is for some types only. */
export function endsFor({ joint }: Publication, link: Link): string {
  if (!link.types) return '';
  return capital(sentence(`ends for ${inWords(link.types.map(t => typeName(joint.from.settings, t)))}`));
}
