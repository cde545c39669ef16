import { compareItems, type FieldText } from '../../commands/drafts/compare-items.ts';
import type { PublishedCatalog, PublishedCrosswalk } from '../../commands/reading/published-catalog.ts';
import type { Decision, Fate, Link, Marks } from '../../model/crosswalk.ts';
import { DIRECTIONS } from '../../model/duty-evidence.ts';
import type { Entry } from '../../model/edition.ts';
import { capital, dateWords, dutySentence, inWords, type MarkWord, marksIn, sentence } from '../../model/said-words.ts';
import { typeName } from '../../model/settings.ts';
import { placeLink } from '../links.ts';

/** An item beside what it became, or came from, in another edition; the older edition always on the left. */
export interface SideBySide {
  readonly from: string;
  readonly to: string;
  readonly pairs: readonly Pair[];
  readonly more: number;
  /** The item of the older edition ends here, for all or for some installation types. */
  /** The ends of it, each for all types or for some, with a reason of its own. */
  readonly ended: readonly Ended[];
  /** The item of the newer edition had nothing before it, or the older one has no record of what became of it. */
  readonly alone?: string;
}

export interface Pair {
  readonly old: Side;
  readonly new: Side;
  readonly fate: Fate;
  readonly marks: readonly MarkWord[];
  readonly duty: string;
  readonly evidence: readonly Shown[];
  readonly fields: readonly FieldText[];
  readonly why: readonly Said[];
}

/** One reason for a duty, as a row under both texts. */
interface Shown {
  readonly direction: string;
  readonly what: string;
  readonly from: string;
  readonly to: string;
  /** Where it holds for some installation types only. */
  readonly types: string;
}

interface Side {
  readonly number: string;
  readonly title: string;
  readonly href: string;
}

export interface Ended {
  readonly sentence: string;
  readonly why: readonly Said[];
  readonly pointsTo?: Side;
}

/** A labelled statement of the lineage: reason, note, what governs, who decided. */
export interface Said {
  readonly label: string;
  readonly text: string;
}

const MOST_PAIRS = 12;

/** `here` stands in the older edition, or (`side` new) in the newer one. */
export async function sideBySide(
  published: PublishedCatalog,
  crosswalk: PublishedCrosswalk,
  here: Entry,
  side: 'old' | 'new',
): Promise<SideBySide> {
  const { joint } = crosswalk;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const links = side === 'old' ? joint.leaving(here.id) : joint.arriving(here.id);
  const decisions = await decisionsOf(published, links, crosswalk.path);
  const joining = links.flatMap(l => (l.from === null || l.to === null ? [] : [{ ...l, from: l.from, to: l.to }]));
  const pairs = await Promise.all(
    joining.slice(0, MOST_PAIRS).map(async (link): Promise<Pair> => {
      const [old, heir] = [joint.old.get(link.from)!, joint.new.get(link.to)!];
      const [a, b] = await Promise.all([published.item(from, old.id), published.item(to, heir.id)]);
      const marks = crosswalk.marks(link);
      const types = {
        from: namesOf(joint.from, joint.old.types(old.id)),
        to: namesOf(joint.to, joint.new.types(heir.id)),
      };
      return {
        old: { number: old.number, title: old.title, href: placeLink(from, old) },
        new: { number: heir.number, title: heir.title, href: placeLink(to, heir) },
        fate: joint.fateOfOld(old.id),
        marks: marksIn(marks),
        duty: dutySentence(marks, type => typeName(joint.from.settings, type)),
        evidence: evidenceShown(marks, joint.from),
        fields: compareItems(a, b, types),
        why: saidOf(link, decisions),
      };
    }),
  );
  const reasons = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  const ended = links
    .filter(l => l.to === null)
    .map((end): Ended => {
      const pointed = end.pointsTo === undefined ? undefined : joint.new.get(end.pointsTo);
      const types = end.types && inWords(namesOf(joint.from, end.types));
      return {
        sentence: `Withdrawn in ${to}${types ? ` for ${types}` : ''}.`,
        why: saidOf(end, decisions, reasons.find(r => r.code === end.reason)?.meaning),
        ...(pointed
          ? { pointsTo: { number: pointed.number, title: pointed.title, href: placeLink(to, pointed) } }
          : {}),
      };
    });
  const alone =
    pairs.length > 0 || ended.length > 0
      ? undefined
      : side === 'old'
        ? `No record says what became of it in ${to}. Ask the office that publishes the catalog.`
        : `It is new in ${to}: ${from} had nothing like it.`;
  return {
    from,
    to,
    pairs,
    more: Math.max(0, joining.length - MOST_PAIRS),
    ended,
    ...(alone === undefined ? {} : { alone }),
  };
}

function evidenceShown(marks: Marks, edition: PublishedCrosswalk['joint']['from']): Shown[] {
  const going = marks.dutyByType.filter(d => d.duty !== 'ends').length;
  return marks.evidence.map(({ direction, what, from, to, types }) => ({
    direction: DIRECTIONS[direction],
    what,
    from,
    to,
    types: types.length === going ? '' : inWords(namesOf(edition, types)),
  }));
}

function namesOf({ settings }: PublishedCrosswalk['joint']['from'], types: readonly string[]): string[] {
  return types.map(type => typeName(settings, type));
}

/** Who decided and why, as far as the lineage says so. */
function saidOf(link: Link, decisions: ReadonlyMap<string, Decision>, meaning?: string): Said[] {
  const decision = link.decision === undefined ? undefined : decisions.get(link.decision);
  const said: (readonly [string, string | undefined])[] = [
    ['Reason', link.reason && capital(sentence(meaning ? `${link.reason}: ${meaning}` : link.reason))],
    ['Note', link.note],
    ['Governs now', link.governs && capital(sentence(link.governs))],
    ['Decision', decision ? `${sentence(decision.title)} ${sentence(decision.reason)}` : link.decision],
    ['Scope', decision?.scope],
    [
      'Decided by',
      decision && [decision.authority, decision.date && dateWords(decision.date)].filter(Boolean).join(', '),
    ],
    ['Recorded by', [link.by, link.date && dateWords(link.date)].filter(Boolean).join(', ')],
    [
      'Certainty',
      link.basis === 'declared' ? undefined : `${capital(link.basis)}, ${Math.round(link.confidence * 100)} %.`,
    ],
    ['In doubt', link.doubtful && 'This pair may be false: it passes through a merge that was split again.'],
  ];
  return said.flatMap(([label, text]) => (text ? [{ label, text }] : []));
}

/** A composed link may name a decision of any edition on its way. */
async function decisionsOf(published: PublishedCatalog, links: readonly Link[], path: readonly string[]) {
  const found = new Map<string, Decision>();
  if (links.every(l => l.decision === undefined)) return found;
  for (const edition of path) for (const d of await published.decisions(edition)) found.set(d.id, d);
  return found;
}
