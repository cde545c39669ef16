import type { Marks } from '../../model/crosswalk.ts';
import { evidenceIn, tellInShort } from '../../model/duty-evidence.ts';
import type { Entry } from '../../model/edition.ts';
import { type Settings, typeName } from '../../model/settings.ts';
import type { Heir, Hop, HopEnding, Trace } from './trace.ts';

/** `4.2.1.2 "Overflow capacity"`; an item without a number goes by its title, one without a title by its number. */
export function nameOf(entry: Entry): string {
  const title = entry.title === '' ? '' : `"${entry.title}"`;
  return [entry.number, title].filter(Boolean).join(' ') || entry.id;
}

/** What became of an item, as sentences a crew lead can read, one for each step on its way. */
export function tellTrace(trace: Trace): string[] {
  const sentences = trace.hops.map(tellHop);
  if (trace.hops.length === 0)
    sentences.push(
      `${nameOf(trace.entry)} stands in ${trace.edition}, ${trace.draft ? 'a draft' : 'the newest edition'}.`,
    );
  const sources = trace.origin?.sources ?? [];
  if (trace.hops.length === 0 && trace.origin) {
    sentences.push(
      sources.length === 0
        ? `It is new: ${trace.origin.from} had nothing like it.`
        : `It comes from ${list(sources.map(nameOf))} of ${trace.origin.from}.`,
    );
  }
  return sentences;
}

/** One step: where it went, why, what changed, what governs now. */
export function tellHop(hop: Hop): string {
  const { entry, to, heirs } = hop;
  const subject = `${hop.from} ${nameOf(entry)}`;
  const ended = hop.endings.map(ending => tellEnding(ending, hop));
  const note = hop.endings.find(e => e.link.note)?.link.note;
  if (heirs.length === 0) {
    if (ended.length > 0)
      return [`${subject} was withdrawn in ${to}${ended.join(' It was withdrawn')}`, note && full(note)]
        .filter(Boolean)
        .join(' ');
    if (hop.fate === 'unaccounted')
      return `${subject}: no record says what became of it in ${to}. Ask the office that publishes it.`;
    return `${subject}: nothing in ${to} takes it over for this installation type, and no record says why. Ask the office that publishes it.`;
  }
  const names = list(heirs.map(h => nameOf(h.entry) + typesOfHeir(h, hop)));
  const also = hop.together.length > 0 ? ` together with ${list(hop.together.map(e => nameOf(e)))}` : '';
  const verb = {
    kept: heirs[0]!.entry.number === entry.number ? `is still ${names}` : `became ${names}`,
    merged: `was merged${also} into ${names}`,
    split: heirs.length > 1 ? `was split into ${names}; all of them apply` : `was split; of it remains ${names}`,
    recombined: `was recombined${also} into ${names}`,
  }[hop.fate as 'kept' | 'merged' | 'split' | 'recombined'];
  const reasons = [...new Set(heirs.map(h => h.link.reason).filter(Boolean))];
  const notes = [...new Set(heirs.map(h => h.link.note).filter(Boolean))] as string[];
  const sentences = [
    `${subject} ${verb} in ${to}${reasons.length > 0 ? ` (${reasons.join('; ')})` : ''}.`,
    ...heirs.map(h => tellMarks(h, heirs.length > 1, hop.settings)),
    ...notes.map(full),
    ended.length > 0 && `For some installation types it ends${ended.join(' It ends')}`,
  ];
  return sentences.filter(Boolean).join(' ');
}

function tellEnding({ link, pointsTo }: HopEnding, hop: Hop): string {
  const meaning = hop.reasons.find(r => r.code === link.reason)?.meaning;
  const reason =
    link.reason === undefined ? 'no reason is given' : meaning ? `${link.reason}, ${meaning}` : link.reason;
  const types = link.types ? ` for ${list(link.types.map(t => typeName(hop.settings, t)))}` : '';
  return [
    `${types}: ${full(reason)}`,
    link.governs && `What governs now: ${full(link.governs)}`,
    pointsTo && `See ${nameOf(pointsTo)} of ${hop.to}.`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** Which types an heir takes over, where it is not all that the old item had. */
function typesOfHeir(heir: Heir, hop: Hop): string {
  const kept = hop.types.filter(t => heir.types.includes(t));
  if (kept.length === hop.types.length || kept.length === 0) return '';
  return ` for ${list(kept.map(t => typeName(hop.settings, t)))}`;
}

function tellMarks(heir: Heir, named: boolean, settings: Settings): string {
  const words = markWords(heir.marks);
  const duty = tellDuty(heir.marks, settings);
  const said = [words.length > 0 ? `${list(words)}` : '', duty].filter(Boolean).join('; ');
  if (said === '') return '';
  return named ? `${heir.entry.number || nameOf(heir.entry)}: ${said}.` : `${said[0]!.toUpperCase()}${said.slice(1)}.`;
}

/** The marks of a link as words. */
export function markWords(marks: Marks): string[] {
  return [
    marks.renumbered && 'renumbered',
    marks.moved && 'moved',
    marks.wording === 'substantive' && 'reworded',
    marks.wording === 'editorial' && 'edited without a change of meaning',
    marks.appliesTo === 'wider' && 'applies to more installation types',
    marks.appliesTo === 'narrower' && 'applies to fewer installation types',
    marks.appliesTo === 'shifted' && 'applies to other installation types',
  ].filter(word => word !== false);
}

function tellDuty(marks: Marks, settings: Settings): string {
  const ends = marks.dutyByType.filter(d => d.duty === 'ends').map(d => typeName(settings, d.type));
  const about = {
    same: '',
    stricter: 'it asks more than before',
    relaxed: 'it asks less than before',
    mixed: 'it asks more in some ways and less in others',
    unclear: 'whether it asks more or less has to be read from both texts',
  }[marks.duty];
  return [about, tellInShort(evidenceIn(marks)), ends.length > 0 ? `it no longer covers ${list(ends)}` : '']
    .filter(Boolean)
    .join('; ');
}

/** `a`, `a and b`, `a, b and c`. */
export function list(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

const full = (sentence: string) => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);
