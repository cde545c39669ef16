import type { Foreseen } from '../../commands/drafts/foresee-operation.ts';
import type { Decision } from '../../model/crosswalk.ts';
import { capital, counted, dateWords } from '../../model/said-words.ts';
import { MILESTONES } from '../../release/schedule.ts';

/** What would change in a draft, cut to what a page can hold. */
export interface ChangesShown
  extends Pick<Foreseen, 'changed' | 'made' | 'gone' | 'moved' | 'orders' | 'settings' | 'lineage'> {
  readonly renumbered: readonly string[];
  readonly days: readonly string[];
  readonly decisions: readonly {
    readonly title: string;
    readonly facts: readonly { readonly label: string; readonly text: string }[];
  }[];
  readonly more: readonly string[];
}

const MOST = 12;

export function changesShown(found: Foreseen): ChangesShown {
  const cut = <T>(list: readonly T[]) => list.slice(0, MOST);
  const rest = (list: readonly unknown[], one: string) =>
    list.length > MOST ? [`${counted(list.length - MOST, one)} more`] : [];
  return {
    changed: cut(found.changed),
    made: cut(found.made),
    gone: cut(found.gone),
    moved: cut(found.moved),
    orders: cut(found.orders),
    settings: cut(found.settings),
    decisions: cut(found.decisions).map(d => ({ title: d.title, facts: decisionFacts(d) })),
    lineage: cut(found.lineage),
    renumbered: cut(found.renumbered).map(r => `${r.from || 'no number'} becomes ${r.to || 'no number'}: ${r.title}`),
    days: found.days.map(d => `${wordsOf(d.name)}: ${dayIn(d.from)} becomes ${dayIn(d.to)}`),
    more: [
      ...rest(found.changed, 'changed item'),
      ...rest(found.made, 'new item'),
      ...rest(found.gone, 'item that goes'),
      ...rest(found.moved, 'moved item'),
      ...rest(found.renumbered, 'renumbered item'),
      ...rest(found.orders, 'reordered part'),
      ...rest(found.settings, 'name'),
      ...rest(found.decisions, 'decision'),
      ...rest(found.lineage, 'older item'),
    ].map(told => `and ${told}`),
  };
}

function decisionFacts(d: Decision): { readonly label: string; readonly text: string }[] {
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['Because', d.reason],
    ['Who decided', d.authority],
    ['Covers', d.scope],
    ['Governs instead', d.governs],
    ['Day', d.date && dateWords(d.date)],
    ['Short name', d.id],
  ];
  return rows.flatMap(([label, text]) => (text ? [{ label, text }] : []));
}

const wordsOf = (name: string) => capital(MILESTONES.find(([key]) => key === name)?.[1] ?? name);
const dayIn = (day: string) => (day === '' ? 'no day' : dateWords(day));
