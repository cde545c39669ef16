import type { Foresight } from '../commands/draft-desk.ts';
import type { Decision } from '../model/crosswalk.ts';
import { capital, counted, dateWords } from '../model/said-words.ts';
import { MILESTONES } from '../release/schedule.ts';
import type { Field, Typed } from './draft-form.ts';
import type { FormField } from './people.ts';

/** A form for one operation; or, once it is filled in, what it would do, before it is done. */
export interface DraftOperationPage {
  readonly draft: string;
  readonly heading: string;
  readonly says: string;
  readonly action: string;
  readonly back: { readonly word: string; readonly href: string };
  readonly csrf: FormField;
  readonly trouble: string;
  readonly fields: readonly Field[];
  /** Absent while the form is asked for. */
  readonly foreseen?: ForeseenShown;
}

export interface ForeseenShown
  extends Pick<Foresight, 'told' | 'tip' | 'changed' | 'made' | 'gone' | 'moved' | 'orders' | 'settings' | 'lineage'> {
  readonly renumbered: readonly string[];
  readonly days: readonly string[];
  readonly decisions: readonly {
    readonly title: string;
    readonly facts: readonly { readonly label: string; readonly text: string }[];
  }[];
  readonly more: readonly string[];
  /** What was typed, to be sent again. */
  readonly hidden: readonly { readonly name: string; readonly value: string }[];
  /** Somebody has worked on the draft since it was looked at. */
  readonly anew: boolean;
}

const MOST = 12;

export interface OperationRequest {
  readonly draft: { readonly header: { readonly name: string } };
  readonly heading: string;
  readonly says: string;
  readonly fields: readonly Field[];
  readonly action: string;
  readonly back: DraftOperationPage['back'];
  readonly csrf: FormField;
  readonly typed?: Typed;
  readonly trouble?: string;
  readonly foresight?: Foresight;
  readonly anew?: boolean;
}

export function draftOperationPage(request: OperationRequest): DraftOperationPage {
  const { draft, heading, says, fields, action, back, csrf, typed, trouble = '', foresight, anew = false } = request;
  return {
    draft: draft.header.name,
    heading,
    says,
    action,
    back,
    csrf,
    trouble,
    fields: typed ? fields.map(f => ({ ...f, value: typed[f.name] ?? [] })) : fields,
    ...(foresight ? { foreseen: foreseenShown(foresight, typed ?? {}, anew) } : {}),
  };
}

function foreseenShown(found: Foresight, typed: Typed, anew: boolean): ForeseenShown {
  const cut = <T>(list: readonly T[]) => list.slice(0, MOST);
  const rest = (list: readonly unknown[], one: string) =>
    list.length > MOST ? [`${counted(list.length - MOST, one)} more`] : [];
  return {
    told: found.told,
    tip: found.tip,
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
      ...rest(found.decisions, 'decision'),
      ...rest(found.lineage, 'older item'),
    ].map(told => `and ${told}`),
    hidden: Object.entries(typed).flatMap(([name, values]) => values.map(value => ({ name, value }))),
    anew,
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
