import { tellTrace } from '../content/links/tell.ts';
import type { Step, Trace } from '../content/links/trace.ts';
import type { Fate, Marks } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { butNotFor, coveredByNone, saidOfEnd, saidOfEnded, whatToMind } from '../model/heir-words.ts';
import { inWords, marksIn, sentence } from '../model/said-words.ts';
import { typeName } from '../model/settings.ts';

/** What became of an item, for somebody with a phone in the rain: a line that answers, a line on what to mind. */
export interface TwoLines {
  /** Of the way from its edition to the published one; absent for an item of the published one. */
  readonly fate?: Fate;
  readonly headline: string;
  readonly second: string;
  /** What stands in its place, or where a reader is pointed to. */
  readonly now: readonly { readonly entry: Entry; readonly marks: readonly string[]; readonly duty: string }[];
  /** Step by step. */
  readonly told: readonly string[];
}

/** @param direct from the item's edition to the last one of the trace: duty does not compose over several steps */
export function twoLines(trace: Trace, direct: Step | undefined): TwoLines {
  const { edition, entry, hops, lastEdition } = trace;
  const name = entry.number || `"${entry.title}"`;
  const told = tellTrace(trace);
  if (!direct) {
    return { headline: `${name} stands in ${edition}.`, second: told.slice(1).join(' '), now: [], told };
  }
  if (trace.now.length === 0) {
    const ended = hops.findLast(h => h.heirs.length === 0) ?? hops.at(-1)!;
    const ends = ended.endings.map(e => e.link);
    if (ends.length === 0) {
      const headline = `No record says what became of ${name} of ${edition} in ${ended.to}.`;
      return { fate: 'unaccounted', headline, second: 'Ask the office that publishes the catalog.', now: [], told };
    }
    const pointed = ended.to === lastEdition ? ended.pointsTo : undefined;
    const second = [
      saidOfEnd(ends, ended.reasons, type => typeName(ended.settings, type)),
      pointed && `See ${pointed.number} ${sentence(pointed.title)}`,
    ];
    return {
      fate: 'withdrawn',
      headline: `${name} of ${edition} was withdrawn in ${ended.to}.`,
      second: second.filter(Boolean).join(' '),
      now: pointed ? [{ entry: pointed, marks: [], duty: '' }] : [],
      told,
    };
  }
  const found = trace.now.map(heir => ({ heir, marks: marksAlong(direct, entry, heir) }));
  const nameOf = (type: string) => typeName(direct.joint.from.settings, type);
  const now = found.map(({ heir, marks }) => ({
    entry: heir,
    marks: marks ? marksIn(marks).map(m => m.word) : [],
    duty: marks ? whatToMind(marks, nameOf) : '',
  }));
  const ended = coveredByNone(found.flatMap(({ marks }) => marks ?? []));
  const names = inWords(trace.now.map(e => e.number || `"${e.title}"`));
  const same = trace.now.length === 1 && trace.now[0]!.number === entry.number;
  const but = butNotFor(ended, nameOf);
  return {
    fate: direct.joint.fateOfOld(entry.id),
    headline: same
      ? `${name} is still ${names} in ${lastEdition}${but}.`
      : `${name} of ${edition} became ${names} in ${lastEdition}${but}.`,
    second: [
      now.length === 1 ? now[0]!.duty && `Duty: ${lowered(now[0]!.duty)}` : 'All of them apply.',
      saidOfEnded(
        ended,
        direct.joint.leaving(entry.id).filter(l => l.to === null),
        reasonsOf(direct),
        nameOf,
      ),
    ]
      .filter(Boolean)
      .join(' '),
    now,
    told,
  };
}

const lowered = (text: string) => `${text.slice(0, 1).toLowerCase()}${text.slice(1)}`;

function reasonsOf({ joint }: Step) {
  return [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
}

function marksAlong({ joint, marks }: Step, from: Entry, to: Entry): Marks | undefined {
  const link = joint.leaving(from.id).find(l => l.to === to.id);
  if (!link || link.from === null || link.to === null) return undefined;
  return marks({ ...link, from: link.from, to: link.to });
}
