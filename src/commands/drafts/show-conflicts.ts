import { type DraftState, linksOf, nameOf } from '../../editing/draft-state.ts';
import type { Conflict, Three } from '../../editing/merging/three-way.ts';
import { groupBy } from '../../model/group-by.ts';
import { CONTENT_FIELDS, type Item, type ItemContent, type ItemId } from '../../model/item.ts';
import { capital, inWords } from '../../model/said-words.ts';
import { typeName } from '../../model/settings.ts';
import { MILESTONES } from '../../release/schedule.ts';
import { diffWords, type TextChange } from '../../text/word-diff.ts';
import { compareItems } from './compare-items.ts';

/** What two people made of one thing, where both cannot stand. */
export interface ShownConflict {
  /** What a choice of side is given for: an id, or a name such as `settings.levels`. */
  readonly about: string;
  /** What it is about, for people. */
  readonly name: string;
  readonly told: readonly string[];
  readonly fields: readonly ConflictField[];
}

/** One thing that both say differently, the words of both sides marked. */
export interface ConflictField {
  /** A field of an item; absent where `label` says what it is. */
  readonly field?: keyof ItemContent;
  readonly label?: string;
  readonly old: readonly TextChange[];
  readonly new: readonly TextChange[];
}

/** The conflicts of a merge, one for each thing that they are about, in the order in which they were found. */
export function showConflicts(conflicts: readonly Conflict[], sides: Three<DraftState>): ShownConflict[] {
  return [...groupBy(conflicts, c => c.about)].map(([about, all]) => {
    const item = itemIn(sides.ours, about) ?? itemIn(sides.theirs, about) ?? oldIn(sides.ours, about);
    return {
      about,
      name: item ? `${item.number} ${item.title}`.trim() || about : wordsOf(about),
      told: [...new Set(all.flatMap(c => tell(c)))],
      fields: [...wordFields(about, all, sides), ...all.flatMap(c => plainField(c, sides))],
    };
  });
}

const itemIn = (state: DraftState, id: ItemId): Item | undefined => state.items.find(i => i.id === id);
const oldIn = (state: DraftState, id: ItemId): Item | undefined => state.older?.items.find(i => i.id === id);

/** What a conflict is about that is no item: `settings.levels`, `dates.effective`, `decision worker-safety`. */
function wordsOf(about: string): string {
  if (about === 'outline') return 'What stands at the top';
  const [, kind = '', rest = ''] = /^(settings\.installationTypes|settings|dates)\.(.+)$/.exec(about) ?? [];
  if (kind === 'dates') return `Day: ${MILESTONES.find(([name]) => name === rest)?.[1] ?? rest}`;
  if (kind === 'settings') return `The catalog's ${rest}`;
  return kind === '' ? capital(about) : `Installation type ${rest}`;
}

function tell({ what, ours }: Conflict): string[] {
  if (what === 'gone') return ['One side ended it, and the other changed it or builds on it.'];
  if (what === 'place') return ['It was moved to two places.'];
  if (what === 'order') return ['What stands under it was put in two different orders.'];
  // A loss is told as the sentence of its finding.
  if (what === 'lineage') {
    return [typeof ours === 'string' ? ours : 'The two say different things about what becomes of the older item.'];
  }
  return [];
}

const isContent = (what: string): what is keyof ItemContent => (CONTENT_FIELDS as readonly string[]).includes(what);

/** Fields that both reworded. */
function wordFields(about: string, all: readonly Conflict[], { ours, theirs }: Three<DraftState>): ConflictField[] {
  const [a, b] = [itemIn(ours, about), itemIn(theirs, about)];
  const disputed = new Set(all.map(c => c.what).filter(isContent));
  if (!a || !b || disputed.size === 0) return [];
  const types = (state: DraftState, { appliesTo = [] }: Item) => appliesTo.map(t => typeName(state.settings, t));
  return compareItems(a, b, { from: types(ours, a), to: types(theirs, b) }).filter(f => disputed.has(f.field));
}

function plainField(conflict: Conflict, { ours, theirs }: Three<DraftState>): ConflictField[] {
  const { about, what } = conflict;
  const both = (label: string, of: (state: DraftState) => string): ConflictField[] => {
    const [a, b] = [of(ours), of(theirs)];
    const [old, now] = [[{ kind: 'same', text: a }] as const, [{ kind: 'same', text: b }] as const];
    return a === b ? [] : [{ label, old, new: now }];
  };
  if (isContent(what)) return [];
  if (what === 'gone') {
    return both('Text', state => {
      const item = itemIn(state, about);
      return item ? (item.text ?? item.title) : 'ended';
    });
  }
  if (what === 'place') return both('Place', state => placeOf(state, about));
  if (what === 'order') return both('Order', state => orderUnder(state, about));
  if (what === 'lineage') return both('Older item', state => becameOf(state, about));
  const told = [said(conflict.ours), said(conflict.theirs)] as const;
  // What differs in a yes or no only is told as it is written.
  const written = (value: unknown) => JSON.stringify(value) ?? 'nothing';
  const [a, b] = told[0] === told[1] ? [written(conflict.ours), written(conflict.theirs)] : told;
  const changes = diffWords(a, b);
  const side = (without: TextChange['kind']) => changes.filter(c => c.kind !== without);
  return [{ label: 'Value', old: side('added'), new: side('removed') }];
}

function placeOf(state: DraftState, id: ItemId): string {
  const parent = itemIn(state, id)?.parent;
  if (parent === undefined) return 'nowhere: it ended';
  const above = parent === null ? undefined : itemIn(state, parent);
  return above ? `under ${`${above.number} ${above.title}`.trim()}` : 'at the top';
}

const MOST_SIBLINGS = 12;

function orderUnder(state: DraftState, about: string): string {
  const parent = about === 'outline' ? null : about;
  const titles = state.items.filter(i => i.parent === parent).map(i => i.title || i.number || i.id);
  const more = titles.length > MOST_SIBLINGS ? `; and ${titles.length - MOST_SIBLINGS} more` : '';
  return `${titles.slice(0, MOST_SIBLINGS).join('; ')}${more}`;
}

function becameOf(state: DraftState, id: ItemId): string {
  const links = linksOf(state).filter(l => l.from === id);
  const heirs = links.flatMap(l => (l.to === null ? [] : [nameOf(itemIn(state, l.to)!)]));
  const ends = links.filter(l => l.to === null);
  const told = [
    ...(heirs.length > 0 ? [`goes on in ${inWords(heirs)}`] : []),
    ...ends.map(({ types, reason, governs }) => {
      const where = types ? ` for ${inWords(types.map(t => typeName(state.settings, t)))}` : '';
      return `ends${where}${reason ? `: ${reason}` : ''}${governs ? `, governed by ${governs}` : ''}`;
    }),
    ...(links[0]?.note ? [links[0].note] : []),
  ];
  return told.join('; ') || 'is not accounted for';
}

/** What a value says, without the braces of its file. */
function said(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.map(said).join('; ');
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.values(value)
    .filter(part => typeof part !== 'boolean')
    .map(said)
    .join(', ');
}
