import type { Joint } from '../../crosswalk/joint.ts';
import { isPair } from '../../crosswalk/pair-link.ts';
import type { Outcome } from '../../model/citation.ts';
import type { Duty } from '../../model/crosswalk.ts';
import type { MarksOf } from '../resolve.ts';
import { listed } from '../sentences.ts';
import type { JobPolicy, PolicyFate } from './job-policy.ts';

/**
 * The duty along the way to a sole heir, for the type of the line or, without one, the gravest of all types. Where it ends
 * for some of them, nobody has said that the line is of the others.
 */
export function dutyOf(joint: Joint, marks: MarksOf, outcome: Outcome): Duty | undefined {
  const { from, heirs, type } = outcome;
  if (from === undefined || heirs.length !== 1) return undefined;
  const link = joint
    .leaving(from)
    .filter(isPair)
    .find(l => l.to === heirs[0]!.id);
  if (!link) return undefined;
  const { duty, dutyByType } = marks(link);
  const ofType = dutyByType.find(d => d.type === type)?.duty;
  if (ofType !== undefined && ofType !== 'ends') return ofType;
  return dutyByType.some(d => d.duty === 'ends') ? 'unclear' : duty;
}

/** An outcome that a person would be asked about, carried where the agency has settled that once for all. */
export function settledByPolicy(joint: Joint, marks: MarksOf, policy: JobPolicy, outcome: Outcome): Outcome {
  if (outcome.kind !== 'choose' || outcome.heirs.length === 0) return outcome;
  const fate = outcome.cause === 'duty' ? dutyOf(joint, marks, outcome) : outcome.cause;
  if (policy.fates[fate as PolicyFate] !== 'carry') return outcome;
  const { toDo: _, ...rest } = outcome;
  const why = `${outcome.why} ${policy.agency} carries such lines without asking (${fate}).`;
  return {
    ...rest,
    kind: 'carried',
    why,
    toDo: `Cite ${listed(outcome.heirs.map(h => h.number || h.title))} from now on.`,
  };
}
