import type { Joint } from '../crosswalk/joint.ts';
import type { Duty, Link } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import type { TypeId } from '../model/item.ts';
import { typeName } from '../model/settings.ts';

/** `3.2.1 Overflow capacity`, or the title alone where an item prints no number. */
export function called(item: Entry): string {
  return [item.number, item.title].filter(Boolean).join(' ');
}

export function listed(parts: readonly string[], last: 'and' | 'or' = 'and'): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} ${last} ${parts.at(-1)}`;
}

export function typeNames(joint: Joint, types: readonly TypeId[]): string {
  return listed(types.map(t => typeName(joint.from.settings, t)));
}

/** Makes one sentence of a note that may or may not end in a full stop. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return trimmed === '' || /[.!?]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

const CHANGED: Record<Duty | 'ends', string> = {
  same: 'asks the same',
  stricter: 'asks more than before',
  relaxed: 'asks less than before',
  mixed: 'asks more in one place and less in another',
  unclear: 'is worded differently, so it may ask something else',
  ends: 'no longer applies',
};

export function dutyChanged(duty: Duty | 'ends'): string {
  return CHANGED[duty];
}

/** Why an item is withdrawn, from what its record says: reason, what governs now, note. */
function withdrawalWhy(joint: Joint, number: string, link: Link): string {
  const reasons = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  const reason = reasons.find(r => r.code === link.reason)?.meaning ?? link.reason;
  const head = `${number} is withdrawn in ${joint.to.header.name}${reason ? `: ${reason}` : ''}`;
  const governs = link.governs ? `Now ${link.governs} governs` : '';
  return [head, governs, link.note ?? ''].map(sentence).filter(Boolean).join(' ');
}

/** The same of all ends of an item, each for its types where there are several. */
export function withdrawalsWhy(joint: Joint, name: string | ((end: Link) => string), ends: readonly Link[]): string {
  const subject = (end: Link) => {
    if (typeof name !== 'string') return name(end);
    return ends.length > 1 && end.types ? `For ${typeNames(joint, end.types)}, ${name}` : name;
  };
  // The note is the record's, and all ends of one record have the same.
  const notes = ends.map(l => l.note);
  return ends
    .map((link, at) => {
      const { note, ...said } = link;
      return withdrawalWhy(joint, subject(link), notes.indexOf(note, at + 1) > 0 ? said : link);
    })
    .join(' ');
}

/** What a reader does about a withdrawn item: look where the record points, or at what governs, or strike it out. */
function withdrawalToDo(joint: Joint, number: string, link: Link): string {
  const target = link.pointsTo === undefined ? undefined : joint.new.get(link.pointsTo);
  if (target)
    return `Read ${called(target)} of ${joint.to.header.name} and decide whether it takes the place of ${number}.`;
  if (link.governs) return `Take ${number} out, and follow ${link.governs}.`;
  return `Take ${number} out; nothing takes its place.`;
}

/** The same of all ends of an item, each for its types where they differ. */
export function withdrawalsToDo(joint: Joint, number: string, ends: readonly Link[]): string {
  const all = ends.map(link => withdrawalToDo(joint, number, link));
  if (new Set(all).size < 2) return all[0] ?? '';
  const told = ends.map(({ types }, at) => {
    const toDo = all[at]!;
    return types ? `For ${typeNames(joint, types)}: ${toDo.slice(0, 1).toLowerCase()}${toDo.slice(1)}` : toDo;
  });
  return told.join(' ');
}
