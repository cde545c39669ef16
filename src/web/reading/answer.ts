import type { PublishedCatalog, PublishedCrosswalk, ToldTrace } from '../../commands/reading/published-catalog.ts';
import type { Fate, Marks } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import { butNotFor, coveredByNone, saidOfEnd, saidOfEnded, whatToMind } from '../../model/heir-words.ts';
import { inWords, type MarkWord, MOMENT_WORDS, marksIn } from '../../model/said-words.ts';
import { typeName } from '../../model/settings.ts';
import { placeLink } from '../links.ts';

/** What became of an item, for somebody with a phone in the rain: a line that answers, a line on what to mind. */
export interface Answer {
  readonly edition: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  /** Of the last step that changed anything; absent for an item of the newest edition. */
  readonly fate?: Fate;
  readonly headline: string;
  /** The headline without the number it is about, for where that stands beside it. */
  readonly became: string;
  readonly second: string;
  readonly now: readonly AnswerHeir[];
  /** Step by step. */
  readonly told: readonly string[];
}

export interface AnswerHeir {
  readonly edition: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly marks: readonly MarkWord[];
  readonly duty: string;
  readonly verified: readonly string[];
  readonly caution: string;
  readonly text: string;
}

export async function answerOf(published: PublishedCatalog, trace: ToldTrace): Promise<Answer> {
  const { edition, entry, lastEdition, hops, told } = trace;
  const base = { edition, number: entry.number, title: entry.title, href: placeLink(edition, entry), told };
  const name = entry.number || `"${entry.title}"`;
  if (hops.length === 0) {
    return {
      ...base,
      headline: `${name} stands in ${edition}, the newest edition.`,
      became: `stands in ${edition}, the newest edition.`,
      second: originSentence(trace),
      now: [],
    };
  }
  const last = hops.findLast(h => h.entry.number !== '' || h.entry.title !== '')!;
  if (trace.now.length === 0) {
    const ended = hops.findLast(h => h.heirs.length === 0) ?? last;
    const ends = ended.endings.map(e => e.link);
    const onRecord = ends.length > 0;
    return {
      ...base,
      fate: onRecord ? 'withdrawn' : 'unaccounted',
      headline: onRecord
        ? `${name} of ${edition} was withdrawn in ${ended.to}.`
        : `No record says what became of ${name} of ${edition} in ${ended.to}.`,
      became: onRecord ? `was withdrawn in ${ended.to}.` : `has no record of what became of it in ${ended.to}.`,
      second: onRecord
        ? [
            saidOfEnd(ends, ended.reasons, type => typeName(ended.settings, type)),
            ended.pointsTo && `See ${ended.pointsTo.number} ${ended.pointsTo.title}.`,
          ]
            .filter(Boolean)
            .join(' ')
        : 'Ask the office that publishes the catalog.',
      now: ended.pointsTo ? [await heirOf(published, ended.to, ended.pointsTo, undefined)] : [],
    };
  }
  // Duty does not compose over several steps, so the two end texts are compared again.
  const direct = await published.crosswalk(edition, lastEdition);
  const nameOf = (type: string) => typeName(direct.joint.from.settings, type);
  const marks = trace.now.map(heir => directMarks(direct, entry, heir));
  const now = await Promise.all(
    trace.now
      .slice(0, 12)
      .map((heir, at) => heirOf(published, lastEdition, heir, marks[at] && { marks: marks[at], nameOf })),
  );
  const ended = coveredByNone(marks.filter(m => m !== undefined));
  const names = inWords(trace.now.map(e => e.number || `"${e.title}"`));
  const same = trace.now.length === 1 && trace.now[0]!.number === entry.number;
  const became = `${same ? 'is still' : 'became'} ${names} in ${lastEdition}${butNotFor(ended, nameOf)}.`;
  const ends = direct.joint.leaving(entry.id).filter(l => l.to === null);
  const { from, to } = direct.joint;
  const reasons = [...to.settings.withdrawalReasons, ...from.settings.withdrawalReasons];
  return {
    ...base,
    fate: direct.joint.fateOfOld(entry.id),
    headline: same ? `${name} ${became}` : `${name} of ${edition} ${became}`,
    became,
    second: [now.length === 1 ? now[0]!.duty : 'All of them apply.', saidOfEnded(ended, ends, reasons, nameOf)]
      .filter(Boolean)
      .join(' '),
    now,
  };
}

function directMarks({ joint, marks }: PublishedCrosswalk, from: Entry, to: Entry): Marks | undefined {
  const link = joint.leaving(from.id).find(l => l.to === to.id);
  if (!link || link.from === null || link.to === null) return undefined;
  return marks({ ...link, from: link.from, to: link.to });
}

interface Marked {
  readonly marks: Marks;
  readonly nameOf: (type: string) => string;
}

async function heirOf(
  published: PublishedCatalog,
  edition: string,
  entry: Entry,
  marked: Marked | undefined,
): Promise<AnswerHeir> {
  const item = await published.item(edition, entry.id);
  return {
    edition,
    number: entry.number,
    title: entry.title,
    href: placeLink(edition, entry),
    marks: marked ? marksIn(marked.marks) : [],
    duty: marked ? whatToMind(marked.marks, marked.nameOf) : '',
    verified: (item.verified ?? []).map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : '')),
    caution: item.caution ?? '',
    text: item.text ?? '',
  };
}

function originSentence({ origin }: ToldTrace): string {
  if (!origin) return '';
  const names = origin.sources.map(e => e.number || `"${e.title}"`);
  return names.length === 0
    ? `It is new: ${origin.from} had nothing like it.`
    : `It comes from ${inWords(names)} of ${origin.from}.`;
}
