import type { Joint } from '../../crosswalk/joint.ts';
import type { Link } from '../../model/crosswalk.ts';
import type { Item, ItemId, TypeId } from '../../model/item.ts';
import { type Changed, type Lost, retentionOf } from '../lost/lost.ts';
import { sentenceIsGone } from '../lost/sentence-gone.ts';
import { type Reading, readText } from '../reading/reading.ts';
import { dutyAlong } from './duty-along.ts';
import { isPair } from './marks.ts';
import { type Readers, readersOf } from './type-readers.ts';

/** A loss of one old item for some installation types. */
export interface ItemLoss extends Lost {
  /** The edition-wide decision, named by the lineage of this item, that covers the sentence in which it stood. */
  readonly decision?: string;
}

/** What became of what an old item says, for the installation types that share one set of heirs. */
export interface Retention {
  readonly item: ItemId;
  /** Empty in a catalog without installation types. */
  readonly types: readonly TypeId[];
  /**
   * `goes-on`: the heirs were asked. `withdrawn`: the whole text is covered by the reason. `ends`: neither an heir nor
   * a withdrawal, for these types.
   */
  readonly fate: 'goes-on' | 'withdrawn' | 'ends';
  readonly heirs: readonly ItemId[];
  readonly reason?: string;
  readonly lost: readonly ItemLoss[];
  /** Values that the heirs state anew: no loss, a change of duty. */
  readonly changed: readonly Changed[];
}

/** The items of both editions, with their texts. */
export interface BothTexts {
  from(id: ItemId): Item | undefined;
  to(id: ItemId): Item | undefined;
}

/** What an item obliges to, in its own words. */
export function askedBy(item: Item): string {
  return [item.text, item.caution].filter(Boolean).join('\n');
}

/** What each old item with a text says, and whether its heirs state it, per set of heirs and installation types. */
export function retentionBetween(joint: Joint, texts: BothTexts): Retention[] {
  const readings = new Map<string, Reading>();
  const readers = readersOf(joint);
  const read = (text: string) => {
    const known = readings.get(text) ?? readText(text);
    readings.set(text, known);
    return known;
  };
  return joint.from.entries.flatMap(entry => {
    const item = texts.from(entry.id);
    const asked = item ? askedBy(item) : '';
    return asked === '' ? [] : ofItem(joint, entry.id, asked, texts, read, readers);
  });
}

function ofItem(
  joint: Joint,
  id: ItemId,
  asked: string,
  texts: BothTexts,
  read: (text: string) => Reading,
  readers: Readers,
): Retention[] {
  const leaving = joint.leaving(id);
  return groupsOf(joint, id, leaving).flatMap(({ types, links, ended }): Retention[] => {
    const heirs = links.map(l => l.to!);
    if (heirs.length === 0) {
      const reason = ended?.reason;
      const fate = ended ? 'withdrawn' : 'ends';
      return [{ item: id, types, fate, heirs, ...(reason && { reason }), lost: [], changed: [] }];
    }
    const own = joint.old.get(id)!.hash;
    if (heirs.some(h => joint.new.get(h)!.hash === own)) {
      return [{ item: id, types, fate: 'goes-on', heirs, lost: [], changed: [] }];
    }
    const said = heirs.map(h => saidPartsOf(joint, h, texts));
    const above = heirs.flatMap(h => inheritedBy(joint, h, texts));
    const decision = links.find(l => l.decision !== undefined)?.decision;
    const goesOn = (of: readonly TypeId[], type?: TypeId): Retention => {
      const forType = ({ text, types: holdsFor }: Said) =>
        type === undefined ? text : readers.forType(text, type, holdsFor).text;
      const from = read(type === undefined ? asked : readers.forType(asked, type, joint.old.types(id)).inPlace);
      const [says, context] = [
        said.map(parts => read(parts.map(forType).join('\n'))),
        [...above.map(forType), typeNames(joint, types)].map(read),
      ];
      // What the crosswalk calls dropped must not be called kept here, so the same comparison is asked.
      const evidence = links.filter(isPair).flatMap(link => dutyAlong(joint, link, of[0], texts).evidence);
      const { lost, changed } = retentionOf(from, says, context, evidence);
      const covered = (loss: Lost) => decision !== undefined && sentenceIsGone(from, loss.start, [...says, ...context]);
      return {
        item: id,
        types: of,
        fate: 'goes-on',
        heirs,
        lost: lost.map(l => (covered(l) ? { ...inOneRun(l), decision: decision! } : inOneRun(l))),
        changed: changed.map(inOneRun),
      };
    };
    const isTyped =
      types.length > 0 && [asked, ...[...said.flat(), ...above].map(s => s.text)].some(readers.namesTypes);
    if (!isTyped) return [goesOn(types)];
    return alike(types.map(type => goesOn([type], type)));
  });
}

/** What a value of the type's own was left without has blanks in place of what others are told. */
const inOneRun = <T extends { readonly text: string }>(l: T): T => ({
  ...l,
  text: l.text.replace(/ {2,}/g, ' ').trim(),
});

/** Types of which the heirs say the same stand together again. */
function alike(each: readonly Retention[]): Retention[] {
  const groups = new Map<string, Retention>();
  for (const one of each) {
    const key = JSON.stringify([one.lost, one.changed]);
    const group = groups.get(key);
    groups.set(key, group ? { ...group, types: [...group.types, ...one.types] } : one);
  }
  return [...groups.values()];
}

/** What an item applies to is asked of its types, not of its words: "gutters in apartment courts". */
function typeNames({ from, to }: Joint, types: readonly TypeId[]): string {
  const named = [from, to].flatMap(e => e.settings.installationTypes.filter(t => types.includes(t.id)));
  return named.map(t => `${t.id}, ${t.name}.`).join('\n');
}

interface Group {
  readonly types: TypeId[];
  readonly links: readonly Link[];
  readonly ended: Link | undefined;
}

/** Installation types with the same heirs, or the same reason to end, stand together; in a catalog without types there is one group. */
function groupsOf(joint: Joint, id: ItemId, leaving: readonly Link[]): Group[] {
  const pairs = leaving.filter(l => l.to !== null);
  const withdrawals = leaving.filter(l => l.to === null);
  const types = joint.old.types(id);
  if (types.length === 0) return [{ types: [], links: pairs, ended: withdrawals[0] }];
  const groups = new Map<string, Group>();
  for (const type of types) {
    const links = pairs.filter(l => joint.new.types(l.to!).includes(type));
    const ended = links.length > 0 ? undefined : withdrawals.find(l => l.types === undefined || l.types.includes(type));
    const key = JSON.stringify([links.map(l => l.to), ended?.reason, ended !== undefined]);
    const group = groups.get(key);
    if (group) group.types.push(type);
    else groups.set(key, { types: [type], links, ended });
  }
  return [...groups.values()];
}

/** What an item says, and for which types that item holds. */
interface Said {
  readonly text: string;
  readonly types: readonly TypeId[];
}

/** An heir's own words; of one that only groups, those of the items below it. */
export const saidBy = (joint: Joint, id: ItemId, texts: BothTexts): string =>
  saidPartsOf(joint, id, texts)
    .map(s => s.text)
    .join('\n');

function saidPartsOf(joint: Joint, id: ItemId, texts: BothTexts): Said[] {
  const item = texts.to(id);
  if (!item) return [];
  const { title, text, outcome, caution, verified = [], references = [] } = item;
  const below = text === undefined ? joint.new.children(id).flatMap(c => saidPartsOf(joint, c.id, texts)) : [];
  const own = [title, text, outcome, caution, ...verified.map(v => v.how), ...references].filter(Boolean);
  return [{ text: own.map(sentence).join('\n'), types: joint.new.types(id) }, ...below];
}

/** What holds for an heir because of where it stands. */
function inheritedBy(joint: Joint, id: ItemId, texts: BothTexts): Said[] {
  const above = joint.new.ancestors(id).flatMap(({ id: at }) => {
    const item = texts.to(at);
    const types = joint.new.types(at);
    return item ? [item.title, item.text, item.purpose, item.outcome, item.caution].map(text => ({ text, types })) : [];
  });
  return [...above, { text: texts.to(id)?.purpose, types: joint.new.types(id) }].flatMap(({ text, types }) =>
    text === undefined || text === '' ? [] : [{ text: sentence(text), types }],
  );
}

/** A title without a full stop would run on into the text. */
function sentence(text: string | undefined): string {
  return /[.!?:;]\s*$/.test(text!) ? text! : `${text}.`;
}
