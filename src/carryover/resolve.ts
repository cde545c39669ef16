import { sameTitle, titlesOf } from '../citing/titles.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { isPair, type PairLink } from '../crosswalk/pair-link.ts';
import type { Cause, Outcome } from '../model/citation.ts';
import type { Link, Marks } from '../model/crosswalk.ts';
import { evidenceIn, tellInShort } from '../model/duty-evidence.ts';
import type { Entry } from '../model/edition.ts';
import type { TypeId } from '../model/item.ts';
import { capital } from '../model/said-words.ts';
import { newBearers } from './number-bearers.ts';
import { ofNewer } from './of-newer.ts';
import { called, dutyChanged, listed, sentence, typeNames, withdrawalsToDo, withdrawalsWhy } from './sentences.ts';
import { noSuchNumber, otherEdition, unaccounted } from './unknown.ts';
import type { Verdict } from './verdict.ts';

/** What changed along a link; as a rule `link => marksOf(joint, link, texts)`. */
export type MarksOf = (link: PairLink) => Marks;

/** A number that somebody cites, and what is known of what they mean by it. */
export interface CitedNumber {
  readonly number: string;
  /** The installation type of the job; absent asks for all types that the item applies to. */
  readonly type?: TypeId;
  /** A title that stands beside the number. */
  readonly title?: string;
  /** The edition that the number belongs to; absent means the joint's older one. */
  readonly edition?: string;
}

/**
 * What happens to one citation when work passes from `joint.from` to `joint.to`. Law: exactly one outcome, whatever
 * is asked. The number is looked up in the older edition only: falling back to an equal number of the newer one would
 * be silently wrong wherever a number is used again for something else.
 */
export function resolveCitation(joint: Joint, marks: MarksOf, cited: CitedNumber): Outcome {
  const { from, heirs = [], ...verdict } = judge(joint, marks, cited);
  return {
    ...verdict,
    heirs: heirs.map(({ id, number, title }) => ({ id, number, title })),
    ...(from ? { from: from.id } : {}),
    ...(cited.type === undefined ? {} : { type: cited.type }),
  };
}

function judge(joint: Joint, marks: MarksOf, cited: CitedNumber): Verdict {
  const { number, type, title, edition = joint.from.header.name } = cited;
  if (edition === joint.to.header.name && edition !== joint.from.header.name) return ofNewer(joint, number, type);
  if (edition !== joint.from.header.name) return otherEdition(joint, number, edition);
  const bearers = number === '' ? [] : joint.old.withNumber(number);
  if (bearers.length === 0) return noSuchNumber(joint, number, title);

  const applying = type === undefined ? bearers : bearers.filter(b => joint.old.types(b.id).includes(type));
  if (applying.length === 0) return otherType(joint, number, bearers, type!);
  const meant = applying.length === 1 ? applying : byTitle(applying, title);
  const item = meant[0]!;
  if (meant.length > 1) return sharedNumber(joint, number, meant, type);
  const other = namedInstead(joint, item, title);
  if (other) return wrongTitle(joint, number, item, other, type);
  return follow(joint, marks, item, type);
}

/** Follows the links of one item; the number is settled by now. */
function follow(joint: Joint, marks: MarksOf, from: Entry, type: TypeId | undefined): Verdict {
  const number = from.number;
  const links = leavingFor(joint, from, type);
  const pairs = links.filter(isPair);
  const endings = links.filter(l => l.to === null);
  const heirs = pairs.map(l => joint.new.get(l.to)!);
  const edition = joint.to.header.name;
  const choose = (cause: Cause, why: string, toDo: string): Verdict => ({
    kind: 'choose',
    cause,
    why,
    toDo,
    from,
    heirs,
  });

  const [link, heir] = [pairs[0], heirs[0]];
  if (!link || !heir) {
    if (endings.length === 0) return unaccounted(joint, from, type);
    const [why, toDo] = [withdrawalsWhy(joint, number, endings), withdrawalsToDo(joint, number, endings)];
    return { kind: 'withdrawn', cause: 'withdrawn', why, toDo, from };
  }
  if (pairs.length > 1) {
    return choose(
      'several-heirs',
      `In ${edition}, ${number} has gone to ${listed(heirs.map(called))}.`,
      `Say which of ${listed(
        heirs.map(h => h.number || h.title),
        'and',
      )} this citation means; it may be all of them.`,
    );
  }
  if (link.basis === 'inferred') {
    return choose(
      'inferred',
      `${number} looks like ${called(heir)} in ${edition}, but nobody has confirmed that.`,
      `Compare ${number} with ${heir.number} and confirm that it is the same requirement.`,
    );
  }
  if (link.doubtful) {
    return choose(
      'doubtful',
      `${number} may have become ${called(heir)}: on the way it was merged with others and divided again.`,
      `Read ${heir.number} and say whether it is what ${number} meant.`,
    );
  }
  if (endings.length > 0) {
    const subject = ({ types }: Link) =>
      types ? `For ${typeNames(joint, types)}, ${number}` : `The rest of ${number}`;
    return choose(
      'part-withdrawn',
      `${number} goes on as ${called(heir)}, but part of it ends. ${withdrawalsWhy(joint, subject, endings)}`,
      `Say whether this citation means the part that goes on as ${heir.number}.`,
    );
  }
  const unnamed = noOneNumber(joint, heir, type);
  if (unnamed) return choose(unnamed.cause, `${number} is ${called(heir)} in ${edition}. ${unnamed.why}`, unnamed.toDo);
  const found = marks(link);
  const { duty, dutyByType } = found;
  const shown = tellInShort(evidenceIn(found, type));
  const because = shown === '' ? '' : ` ${capital(sentence(shown))}`;
  // A catalog without installation types has one duty for all; no list to look through is no proof that nothing changed.
  if (dutyByType.length === 0 && duty !== 'same') {
    return choose(
      'duty',
      `${number} is ${called(heir)} in ${edition} and ${dutyChanged(duty)}.${because}`,
      `Compare ${number} of ${joint.from.header.name} with ${heir.number} of ${edition} before citing the latter.`,
    );
  }
  const changed = dutyByType.filter(d => d.duty !== 'same' && (type === undefined || d.type === type));
  if (changed[0]) {
    const forTypes = type === undefined ? ` for ${typeNames(joint, [...new Set(changed.map(d => d.type))])}` : '';
    return choose(
      'duty',
      `${number} is ${called(heir)} in ${edition} and ${listed([...new Set(changed.map(d => dutyChanged(d.duty)))])}${forTypes}.${because}`,
      `Compare ${number} of ${joint.from.header.name} with ${heir.number} of ${edition} before citing the latter.`,
    );
  }
  // How it is verified may be said otherwise, which makes no other duty of it; whoever cites it is told.
  const beside = tellInShort(evidenceIn(found, type).filter(e => e.direction === 'unclear'));
  const told = beside === '' ? '' : ` ${capital(sentence(beside))}`;
  return heir.number === number
    ? {
        kind: 'kept',
        cause: 'same-number',
        why: `${number} has the same number in ${edition} and asks the same.${told}`,
        from,
        heirs,
      }
    : {
        kind: 'carried',
        cause: 'sole-heir',
        why: `${number} is ${called(heir)} in ${edition} and asks the same.${told}`,
        from,
        heirs,
      };
}

/** Why an heir cannot be cited by its number: it has none, or others print it too. A number in its place would be wrong. */
function noOneNumber(joint: Joint, heir: Entry, type: TypeId | undefined) {
  const { name } = joint.to.header;
  if (heir.number === '') {
    const why = `It has no number there.`;
    return { cause: 'no-number' as const, why, toDo: `Say how ${called(heir) || heir.id} of ${name} is to be cited.` };
  }
  const bearers = newBearers(joint, heir.number, type);
  if (bearers.length < 2) return undefined;
  return {
    cause: 'shared-number' as const,
    why: `Edition ${name} prints ${heir.number} on ${bearers.length} items: ${listed(bearers.map(i => i.title || i.id))}.`,
    toDo: `Cite ${called(heir)} with its title, so that nobody takes it for another.`,
  };
}

/** The links of an item that matter for a type: heirs that apply to it and withdrawals that cover it. */
function leavingFor(joint: Joint, from: Entry, type: TypeId | undefined): readonly Link[] {
  const links = joint.leaving(from.id);
  if (type === undefined) return links;
  return links.filter(l => (l.to === null ? (l.types?.includes(type) ?? true) : joint.new.types(l.to).includes(type)));
}

function heirsOf(joint: Joint, items: readonly Entry[], type?: TypeId): readonly Entry[] {
  const ids = items.flatMap(i => leavingFor(joint, i, type).filter(isPair)).map(l => l.to);
  return [...new Set(ids)].map(id => joint.new.get(id)!);
}

function otherType(joint: Joint, number: string, bearers: readonly Entry[], type: TypeId): Verdict {
  const types = [...new Set(bearers.flatMap(b => joint.old.types(b.id)))];
  const one = bearers.length === 1 ? { from: bearers[0]! } : {};
  return {
    kind: 'choose',
    cause: 'other-type',
    why: `${number} applies to ${typeNames(joint, types)}, not to ${typeNames(joint, [type])}.`,
    toDo: 'Check the number and the installation type of this job.',
    heirs: heirsOf(joint, bearers),
    ...one,
  };
}

function byTitle(items: readonly Entry[], title: string | undefined): readonly Entry[] {
  const named = title === undefined ? [] : items.filter(i => sameTitle(i.title, title));
  return named.length === 1 ? named : items;
}

function sharedNumber(joint: Joint, number: string, items: readonly Entry[], type: TypeId | undefined): Verdict {
  return {
    kind: 'choose',
    cause: 'shared-number',
    why: `Edition ${joint.from.header.name} prints ${number} on ${items.length} items: ${listed(items.map(i => i.title || i.id))}.`,
    toDo: `Say which of them is meant.`,
    heirs: heirsOf(joint, items, type),
  };
}

/** The one other item that the title beside a number names, where the numbered item has another title. */
function namedInstead(joint: Joint, item: Entry, title: string | undefined): Entry | undefined {
  if (title === undefined || sameTitle(item.title, title)) return undefined;
  const named = titlesOf(joint.from).named(title);
  return named.length === 1 && named[0]!.id !== item.id ? named[0] : undefined;
}

function wrongTitle(joint: Joint, number: string, item: Entry, other: Entry, type: TypeId | undefined): Verdict {
  return {
    kind: 'choose',
    cause: 'title',
    why: `${number} is ${item.title || 'without a title'} in ${joint.from.header.name}, but the title beside it is that of ${called(other)}.`,
    toDo: `Say whether ${number} or ${other.number || other.title} is meant.`,
    heirs: heirsOf(joint, [item, other], type),
  };
}
