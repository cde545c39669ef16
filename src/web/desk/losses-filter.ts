import type { AuditLine, AuditReport } from '../../commands/audit/audit-editions.ts';
import { typeName } from '../../model/settings.ts';
import type { Query } from '../links.ts';

/** Which losses are shown. An empty list lets everything through, but for the state: that is what is to do. */
export interface LossesFilter {
  readonly state: readonly string[];
  readonly kind: readonly string[];
  /** Id of a part of the older edition. */
  readonly part: readonly string[];
}

/** How far a loss has come, as people work it off. */
export type LossStage = 'todo' | 'settled' | 'signed' | 'decision' | 'anew';

export const STAGE_WORDS: Readonly<Record<LossStage, string>> = {
  todo: 'to work off',
  settled: 'settled by one person',
  signed: 'settled and signed by a second',
  decision: 'covered by a decision',
  anew: 'no loss: a value stated anew',
};

export const KIND_WORDS: Readonly<Record<AuditLine['kind'], string>> = {
  quantity: 'a value',
  condition: 'a condition',
  exception: 'an exception',
  material: 'a material',
  document: 'a document',
  thing: 'a thing',
  reference: 'a reference',
  clause: 'a clause',
  type: 'an installation type',
  changed: 'a value stated anew',
};

export function stageOf({ state, answer }: AuditLine): LossStage {
  if (state === 'settled') return answer?.second ? 'signed' : 'settled';
  if (state === 'decision') return 'decision';
  return state === 'duty' ? 'anew' : 'todo';
}

export function filterLosses({ lines, joint }: AuditReport, filter: LossesFilter): AuditLine[] {
  const states = filter.state.length === 0 ? ['todo'] : filter.state;
  return lines.filter(
    line =>
      (states.includes('all') || states.includes(stageOf(line))) &&
      (filter.kind.length === 0 || filter.kind.includes(line.kind)) &&
      (filter.part.length === 0 || filter.part.includes(joint.old.part(line.item)?.id ?? '')),
  );
}

export function lossesQuery(filter: LossesFilter): Query {
  return (['state', 'kind', 'part'] as const).flatMap(key => filter[key].map(value => [key, value] as const));
}

interface Option {
  readonly value: string;
  readonly word: string;
  readonly chosen: boolean;
}

export interface LossesOptions {
  readonly state: readonly Option[];
  readonly kind: readonly Option[];
  readonly part: readonly Option[];
}

/** What can be chosen, with how many losses each would show beside the other choices. */
export function lossesOptions(report: AuditReport, filter: LossesFilter): LossesOptions {
  const count = (choice: Partial<LossesFilter>) => filterLosses(report, { ...filter, ...choice }).length;
  const states = filter.state.length === 0 ? ['todo'] : filter.state;
  const stages = [...Object.entries(STAGE_WORDS), ['all', 'all of them']] as [string, string][];
  const kinds = [...new Set(report.lines.map(l => l.kind))];
  const parts = report.joint.from.entries.filter(e => e.parent === null);
  return {
    state: stages
      .map(([value, word]) => ({ value, word, n: count({ state: [value] }), chosen: states.includes(value) }))
      .filter(o => o.n > 0 || o.chosen)
      .map(withCount),
    kind: kinds
      .map(value => ({
        value,
        word: KIND_WORDS[value],
        n: count({ kind: [value] }),
        chosen: filter.kind.includes(value),
      }))
      .filter(o => o.n > 0 || o.chosen)
      .map(withCount),
    part: parts
      .map(e => ({
        value: e.id,
        word: `${e.number} ${e.title}`.trim(),
        n: count({ part: [e.id] }),
        chosen: filter.part.includes(e.id),
      }))
      .filter(o => o.n > 0 || o.chosen)
      .map(withCount),
  };
}

const withCount = ({ n, word, ...rest }: Option & { readonly n: number }): Option => ({
  ...rest,
  word: `${word} (${n.toLocaleString('en')})`,
});

/** Installation types by the names that the older edition gives them. */
export const namesOfTypes = ({ joint }: AuditReport, types: readonly string[]) =>
  types.map(type => typeName(joint.from.settings, type));
