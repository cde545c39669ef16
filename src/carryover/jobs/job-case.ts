import type { Joint } from '../../crosswalk/joint.ts';
import type { Outcome } from '../../model/citation.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { typeName } from '../../model/settings.ts';
import { called, listed } from '../sentences.ts';
import type { Governing } from './governing-edition.ts';
import { workItemsOf } from './new-duties.ts';

/** The columns that carrying adds at the right of a job table, in this order. */
export const ADDED_COLUMNS = [
  'new_number',
  'new_title',
  'outcome',
  'why',
  'to_do',
  'origin',
  'folds_into',
  'read_in',
  'carried_to',
] as const;

/** Added behind the others where a policy says which edition governs a job. */
export const POLICY_COLUMNS = ['governed_by', 'rule'] as const;

/** Lines that have the same answer: same number, title, type and edition, in the same state. */
export interface JobCase {
  readonly number: string;
  readonly type: TypeId | undefined;
  /** `open`, or the word for the way in which the line is closed. */
  readonly state: string;
  readonly outcome: Outcome;
  /** Open, and nobody has said which edition governs it. */
  readonly ungoverned: boolean;
  /** The added cells up to and without `folds_into`. */
  readonly before: readonly string[];
  /** The added cells after `folds_into`. */
  readonly after: readonly string[];
  /** Open lines of one job that have this in common do the same work: the later ones fold into the first. */
  readonly foldKey: string | undefined;
  /** The work items of the newer edition that an open line of this case brings into its job. */
  readonly workItems: readonly ItemId[];
}

/** A line that a job gains: a requirement of the newer edition that its work item did not have for this type. */
export interface AddedLine {
  readonly job: string;
  readonly type: TypeId | undefined;
  /** The cell by which the job's own lines name the type. */
  readonly typeCell: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** Where a policy governs: why the first line that brings the work item into the job is under the newer edition. */
  readonly governing?: Governing;
}

/** The cells under `POLICY_COLUMNS`. */
export function policyCells(governing: Governing | undefined): readonly string[] {
  return governing ? [governing.edition ?? 'ask', governing.why] : POLICY_COLUMNS.map(() => '');
}

const FOLDING: readonly Outcome['cause'][] = ['same-number', 'sole-heir', 'duty', 'decided'];

export function jobCase(
  joint: Joint,
  number: string,
  type: TypeId | undefined,
  state: string,
  edition: string,
  outcome: Outcome,
  governed: Governed = 'newer',
): JobCase {
  const { heirs, kind, why } = outcome;
  const closed = state !== 'open' || governed !== 'newer';
  const toDo =
    state !== 'open'
      ? `Leave this line as it stands under edition ${edition}: it is ${state}.`
      : governed !== 'newer'
        ? staysToDo(joint, edition, governed)
        : kind === 'carried' && heirs[0]
          ? `Cite ${heirs[0].number || heirs[0].title} from now on.`
          : (outcome.toDo ?? '');
  return {
    number,
    type,
    state,
    outcome,
    ungoverned: state === 'open' && governed === 'ask',
    before: [heirs.map(h => h.number).join(' | '), heirs.map(h => h.title).join(' | '), kind, why, toDo, 'input'],
    after: marksOf(joint, edition),
    foldKey:
      !closed && heirs.length === 1 && FOLDING.includes(outcome.cause)
        ? JSON.stringify([heirs[0]!.id, type ?? null])
        : undefined,
    workItems:
      closed || outcome.from === undefined || outcome.cause === 'other-type' ? [] : workItemsOf(joint, outcome.from),
  };
}

export function addedLine(
  joint: Joint,
  job: string,
  type: TypeId | undefined,
  typeCell: string,
  duty: Entry,
): AddedLine {
  const parent = duty.parent === null ? undefined : joint.new.get(duty.parent);
  const types = type === undefined ? joint.new.types(duty.id) : [type];
  const forType = ` for ${listed(types.map(t => typeName(joint.to.settings, t)))}`;
  const why = `New in ${joint.to.header.name}${forType}${parent ? ` under ${called(parent)}` : ''}.`;
  const toDo = 'Plan it if this job follows the newer edition.';
  return {
    job,
    type,
    typeCell,
    before: [duty.number, duty.title, 'added', why, toDo, 'added'],
    after: marksOf(joint, joint.from.header.name),
  };
}

/** Which edition governs a line: the one that it is carried to, another one by name, or nobody has said. */
export type Governed = 'newer' | 'ask' | { readonly edition: string };

function staysToDo(joint: Joint, edition: string, governed: Exclude<Governed, 'newer'>): string {
  if (governed === 'ask') return 'Decide first which edition governs this job; leave the line as it stands until then.';
  if (governed.edition === edition) return `Leave this line as it stands: edition ${edition} governs it.`;
  return `Leave this line as it stands here, and carry it to ${governed.edition}, which governs it, not to ${joint.to.header.name}.`;
}

/** The edition mark at the end of every line. */
function marksOf(joint: Joint, edition: string): readonly string[] {
  return [edition, joint.to.header.name];
}

/** Our headers; where the user has one of that name already, ours gets a number behind. */
export function addedHeaders(header: readonly string[], governed: boolean): readonly string[] {
  return [...ADDED_COLUMNS, ...(governed ? POLICY_COLUMNS : [])].map(name => {
    let free: string = name;
    for (let n = 2; header.includes(free); n++) free = `${name}_${n}`;
    return free;
  });
}

/** Whether a table ends in our columns, as our outputs do. */
export function hasOurColumns(header: readonly string[]): boolean {
  return ourColumnsFrom(header) !== undefined;
}

/** The position at which our columns begin; undefined where a table does not end in them. */
export function ourColumnsFrom(header: readonly string[]): number | undefined {
  const bare = header.map(name => name.replace(/_\d+$/, ''));
  const endsIn = (names: readonly string[]) =>
    bare.length >= names.length && names.every((name, at) => bare[bare.length - names.length + at] === name);
  const ours = [ADDED_COLUMNS, [...ADDED_COLUMNS, ...POLICY_COLUMNS]].find(endsIn);
  return ours && header.length - ours.length;
}
