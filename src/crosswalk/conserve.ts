import type { Finding } from '../model/finding.ts';
import type { TypeId } from '../model/item.ts';
import { typeName } from '../model/settings.ts';
import type { Joint } from './joint.ts';

/**
 * Checks one step for losses. Law: every (old item, installation type) has an heir that applies to that type, or a
 * withdrawal that names it. Nothing is manufactured to make the law hold; what breaks it comes back as findings.
 *
 * Composing over a gap hides a loss, so a chain of editions is checked step by step, never by its composed crosswalk.
 */
export function checkConservation(joint: Joint): Finding[] {
  const findings: Finding[] = [];
  const stillThere = new Set(joint.to.settings.installationTypes.map(t => t.id));
  for (const item of joint.from.entries) {
    const leaving = joint.leaving(item.id);
    const subject = `${item.number || item.id} ${item.title}`.trim();
    const data = { id: item.id, number: item.number, obliges: item.obliges };
    if (leaving.length === 0) {
      findings.push({
        rule: 'unaccounted',
        severity: 'error',
        subject: item.id,
        message: `${subject}: in ${joint.to.header.name} there is neither an heir nor a withdrawal with a reason.`,
        data,
      });
      continue;
    }
    const lost = joint.old.types(item.id).filter(type => !covers(joint, leaving, type));
    if (lost.length === 0) continue;
    const names = lost.map(t => typeName(joint.from.settings, t)).join(', ');
    const gone = lost.filter(t => !stillThere.has(t));
    findings.push({
      rule: 'type-dropped',
      severity: item.obliges ? 'error' : 'warning',
      subject: item.id,
      message: `${subject}: nothing in ${joint.to.header.name} takes it over for ${names}${
        gone.length > 0 ? ' (an installation type that the newer edition does not have)' : ''
      }, and no withdrawal says so.`,
      data: { ...data, types: lost },
    });
  }
  return findings;
}

function covers(joint: Joint, leaving: ReturnType<Joint['leaving']>, type: TypeId): boolean {
  return leaving.some(link =>
    link.to === null ? (link.types?.includes(type) ?? true) : joint.new.types(link.to).includes(type),
  );
}
