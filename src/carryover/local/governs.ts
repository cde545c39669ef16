import type { TypeId } from '../../model/item.ts';
import type { LocalRecord } from '../../model/local.ts';
import type { Settings } from '../../model/settings.ts';
import { localProvisions, type Provision } from './local-provisions.ts';

/** What governs at a place on a day: the catalog, a local rule, each its own provisions, a variance, or nobody can tell. */
export type Governing = 'catalog' | 'local' | 'both' | 'variance' | 'person';

/** A local rule or variance set beside a requirement. `inForce` is false for what binds nobody on that day. */
export interface LocalVerdict {
  readonly record: LocalRecord;
  readonly inForce: boolean;
  readonly governs: Governing;
  readonly why: string;
  readonly provisions: readonly Provision[];
}

export const CAUTION =
  'The authority having jurisdiction decides what is lawful, and licensed trades how it is done; where either asks more than this, follow them.';

/**
 * Which of a requirement and a local record governs work that the program pays for. The catalog binds that work and a
 * local rule may only add to it; an approved variance overrides for its place and time; what cannot be compared is left
 * to a person.
 *
 * @param date calendar date (2024-03-01)
 */
export function governing(requirement: string, record: LocalRecord, date: string): LocalVerdict {
  const provisions = localProvisions(requirement, record.text);
  const inForce = isInForce(record, date);
  if (!inForce) return { record, inForce, governs: 'catalog', why: notInForce(record, date), provisions };
  if (record.kind === 'variance') {
    const until = record.until === null ? 'with no end stated' : `until ${record.until}`;
    return {
      record,
      inForce,
      governs: 'variance',
      why: `The approved variance "${record.title}" permits to depart from it, ${until}, at the site that it names and nowhere else.`,
      provisions,
    };
  }
  return { record, inForce, ...rule(record, provisions), provisions };
}

function rule(record: LocalRecord, provisions: readonly Provision[]): { governs: Governing; why: string } {
  const has = (local: Provision['local']) => provisions.some(p => p.local === local);
  const more = has('stricter') || has('adds');
  const pays =
    record.costEffective === undefined
      ? 'the program pays for the extra only where its cost-effectiveness rule allows it, which is not decided for this rule'
      : record.costEffective
        ? 'the program found the extra cost-effective and pays for it'
        : 'the program did not find the extra cost-effective and does not pay for it, though the place still asks it';
  if (provisions.some(p => p.contradicts)) {
    return {
      governs: 'person',
      why: `"${record.title}" and the catalog cannot both be met; ask both before work begins.`,
    };
  }
  if (has('unclear')) {
    const rest = more || has('relaxed') ? ' in every point; those that can be are listed' : '';
    return {
      governs: 'person',
      why: `"${record.title}" cannot be compared with the catalog by a program${rest}: a person decides.`,
    };
  }
  if (more && (has('relaxed') || has('silent'))) {
    const less = has('relaxed') ? 'asks less' : 'is silent';
    return {
      governs: 'both',
      why: `Both bind: "${record.title}" where it asks more, the catalog where the rule ${less}; ${pays}.`,
    };
  }
  if (more)
    return { governs: 'local', why: `"${record.title}" asks more than the catalog and has to be met; ${pays}.` };
  if (has('relaxed')) {
    return {
      governs: 'catalog',
      why: `"${record.title}" asks less; the catalog governs the work that the program pays for.`,
    };
  }
  return { governs: 'catalog', why: `"${record.title}" asks nothing more than the catalog.` };
}

/** Whether it binds or permits anything on that day. */
export function isInForce({ state, from, until }: LocalRecord, date: string): boolean {
  return state === 'approved' && from <= date && (until === null || date <= until);
}

function notInForce({ kind, title, state, from, until }: LocalRecord, date: string): string {
  const what = `The ${kind} "${title}"`;
  if (state === 'requested') return `${what} is only asked for and changes nothing until it is approved.`;
  if (state === 'denied') return `${what} was denied.`;
  if (state === 'moot') return `${what} has nothing left to permit.`;
  if (state === 'expired' || (until !== null && date > until))
    return `${what} ended${until === null ? '' : ` on ${until}`}.`;
  return `${what} begins on ${from}.`;
}

/** The types that a record holds for: listed, or named in its text by the settings' names; undefined: all. */
export function typesOfLocal({ types, text }: LocalRecord, settings: Settings): readonly TypeId[] | undefined {
  if (types) return types;
  const low = text.toLowerCase();
  const named = settings.installationTypes.filter(t => low.includes(t.name.toLowerCase())).map(t => t.id);
  return named.length > 0 ? named : undefined;
}

/** All verdicts on one requirement as one plain sentence. */
export function leadSentence(number: string, edition: string, date: string, verdicts: readonly LocalVerdict[]): string {
  const live = verdicts.filter(v => v.inForce);
  const subject = `${number} of ${edition}`;
  if (live.length === 0)
    return `On ${date} the catalog governs: no local rule or variance in force touches ${subject}.`;
  const variance = live.find(v => v.governs === 'variance');
  const rules = live.filter(v => v !== variance);
  if (variance) {
    const elsewhere =
      rules.length > 0
        ? '; elsewhere the local rules below are set beside the catalog'
        : '; elsewhere the catalog governs';
    return `${variance.why.replace(/\.$/, '')}${elsewhere} (${subject}, ${date}).`;
  }
  if (rules.some(v => v.governs === 'person'))
    return `A person decides what governs ${subject} on ${date}: ${first(rules.find(v => v.governs === 'person')!.why)}`;
  const asks = rules.find(v => v.governs === 'both' || v.governs === 'local');
  if (asks)
    return `${asks.governs === 'local' ? 'The local rule governs' : 'Catalog and local rule both bind'} (${subject}, ${date}): ${first(asks.why)}`;
  return `The catalog governs (${subject}, ${date}): ${first(rules[0]!.why)}`;
}

const first = (why: string) => (why.startsWith('Both bind: ') ? why.slice('Both bind: '.length) : why);
