import type { Joint } from '../../crosswalk/joint.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import type { Item, ItemContent, ItemId, TypeId } from '../../model/item.ts';
import { words } from '../../text/words.ts';
import { compareDuty, type DutyVerdict } from '../duty/compare-duty.ts';
import { dutyOfEvidence } from '../duty/evidence.ts';
import { withBesides } from './besides.ts';
import type { PairLink, Texts } from './marks.ts';
import { readersOf } from './type-readers.ts';

/**
 * What a link asks more or less of an installation type. All old items that share heirs with this one for the type stand
 * against all those heirs: one part of a split alone would seem to relax, one source of a merge alone to tighten. Of what
 * they show together, a link is told what rests on its own old item's words, or on words that none of them had. What they
 * say for other types by name is no part of this one's duty.
 */
export function dutyAlong(joint: Joint, link: PairLink, type: TypeId | undefined, texts: Texts): DutyVerdict {
  const [olds, news] = together(joint, link, type);
  const from = olds.map(id => texts.from(id) ?? twin(joint, id, texts));
  const to = news.map(id => texts.to(id) ?? oldTwin(joint, id, texts));
  if (from.some(i => !i) || to.some(i => !i)) return toBeRead('a text could not be read');
  const forType = (places: Joint['old']) => (item: Item, at: number) => {
    const id = (places === joint.old ? olds : news)[at]!;
    return type === undefined ? item : readersOf(joint).itemFor(item, type, places.types(id));
  };
  const [before, after] = [(from as Item[]).map(forType(joint.old)), (to as Item[]).map(forType(joint.new))];
  const verdict = dutyOfTexts(before, after, (a, b) => readersOf(joint).nameTheSame(a, b, type));
  const own = from[olds.indexOf(link.from)]!;
  return withBesides(olds.length === 1 ? verdict : ofItem(verdict, own), own, before, after);
}

/** The verdict on items that went together, as far as it rests on the words of one of them. */
function ofItem({ duty, evidence }: DutyVerdict, item: ItemContent): DutyVerdict {
  const own = new Set([item.title, item.text, item.outcome, item.caution].flatMap(text => words(text ?? '')));
  const isOfItem = ({ direction, from }: Evidence) => {
    const said = words(from);
    if (said.length === 0) return true;
    return direction === 'unclear' ? said.some(w => own.has(w)) : said.every(w => own.has(w));
  };
  const left = evidence.filter(isOfItem);
  if (left.length === evidence.length) return { duty, evidence };
  // What changed was said by the others; whether this one is asked in full is for a reader.
  const told = dutyOfEvidence(left) ?? 'same';
  return told === 'same' ? toBeRead('combined with other items') : { duty: told, evidence: left };
}

/**
 * The old items and heirs that links of one type join to this link, in the order of their editions: whichever link asks,
 * they are compared alike.
 */
function together(joint: Joint, link: PairLink, type: TypeId | undefined): [ItemId[], ItemId[]] {
  const [olds, news] = [new Set([link.from]), new Set([link.to])];
  const holdsOld = (id: ItemId) => type === undefined || joint.old.types(id).includes(type);
  const holdsNew = (id: ItemId) => type === undefined || joint.new.types(id).includes(type);
  for (let size = 0; size < olds.size + news.size; ) {
    size = olds.size + news.size;
    for (const id of olds) for (const { to } of joint.leaving(id)) if (to !== null && holdsNew(to)) news.add(to);
    for (const id of news)
      for (const { from } of joint.arriving(id)) if (from !== null && holdsOld(from)) olds.add(from);
  }
  return [inOrder(joint.old, olds), inOrder(joint.new, news)];
}

const orders = new WeakMap<object, ReadonlyMap<ItemId, number>>();

function inOrder(places: Joint['old'], ids: ReadonlySet<ItemId>): ItemId[] {
  if (ids.size === 1) return [...ids];
  const order = orders.get(places) ?? new Map(places.all.map((item, at) => [item.id, at]));
  orders.set(places, order);
  return [...ids].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
}

/** Items of equal content are not read; the other end of the link says the same. */
function twin(joint: Joint, id: ItemId, texts: Texts): Item | undefined {
  const hash = joint.old.get(id)?.hash;
  const same = joint.leaving(id).find(l => l.to !== null && joint.new.get(l.to)?.hash === hash);
  return same?.to ? texts.to(same.to) : undefined;
}

function oldTwin(joint: Joint, id: ItemId, texts: Texts): Item | undefined {
  const hash = joint.new.get(id)?.hash;
  const same = joint.arriving(id).find(l => l.from !== null && joint.old.get(l.from)?.hash === hash);
  return same?.from ? texts.from(same.from) : undefined;
}

/** What items ask by their texts; by their titles only where they have no texts. */
function dutyOfTexts(
  from: readonly ItemContent[],
  to: readonly ItemContent[],
  nameTheSame: (from: readonly ItemContent[], to: readonly ItemContent[]) => boolean,
): DutyVerdict {
  const asks = (items: readonly ItemContent[]) =>
    items
      .flatMap(i => [i.text, i.outcome, i.caution])
      .filter(Boolean)
      .join('\n');
  const titles = (items: readonly ItemContent[]) => items.map(i => i.title).join('\n');
  const [before, after] = [asks(from), asks(to)];
  if (before === '' && after === '') return withoutForce(compareDuty(titles(from), titles(to)), 'title');
  if (before === '' || after === '') return toBeRead(after === '' ? 'text dropped' : 'text added');
  const isOutcome = [...from, ...to].every(i => !i.text);
  const compared = isOutcome ? withoutForce(compareDuty(before, after), 'outcome') : compareDuty(before, after);
  // The same sentence under a title that names something else is about something else.
  return compared.duty === 'same' && !nameTheSame(from, to)
    ? toBeRead('the title names something else', titles(from), titles(to))
    : compared;
}

/**
 * "A gutter that can be kept up" says what there is in the end and binds nobody: read as a demand, "can" would permit. Of
 * outcomes and titles only "the same" is believed.
 */
function withoutForce({ duty, evidence }: DutyVerdict, what: string): DutyVerdict {
  if (duty === 'same' || duty === 'unclear') return { duty, evidence };
  return { duty: 'unclear', evidence: [...toBeRead(`${what} in other words`).evidence, ...evidence] };
}

function toBeRead(what: string, from = '', to = ''): DutyVerdict {
  return { duty: 'unclear', evidence: [{ direction: 'unclear', what, from, to }] };
}
