import type { Evidence } from '../../model/duty-evidence.ts';
import { type Reading, said } from '../reading/reading.ts';
import type { Atom } from './atoms.ts';
import { clauseAt } from './role.ts';

/**
 * Who acts, where one text alone says so:
 *
 *   old: The scaffold shall be inspected.
 *   new: A competent person shall inspect the scaffold.     The subject in front of "shall" limits no scaffolds.
 *
 * A demand if it says what the person has to be; otherwise it may have been understood.
 */
export function agentChanged(
  from: Reading,
  to: Reading,
  out: readonly Atom[],
  come: readonly Atom[],
): Evidence | undefined {
  if (come.length > 0 && out.length === 0) {
    const agent = agentIn(to, from, come);
    return (
      agent && { direction: agent.able ? 'stricter' : 'unclear', what: 'who acts added', from: '', to: agent.words }
    );
  }
  if (out.length > 0 && come.length === 0) {
    const agent = agentIn(from, to, out);
    return (
      agent && { direction: agent.able ? 'relaxed' : 'unclear', what: 'who acts dropped', from: agent.words, to: '' }
    );
  }
  return undefined;
}

function agentIn(
  reading: Reading,
  other: Reading,
  atoms: readonly Atom[],
): { words: string; able: boolean } | undefined {
  const { tokens, tags, meanings } = reading;
  const clause = clauseAt(reading, atoms[0]!.first);
  const modal = clause?.force.at;
  if (!clause || modal === undefined || atoms.some(a => a.first >= modal || a.first < clause.first)) return undefined;
  const subject = clause.main.filter(at => at < modal && meanings[at] !== '');
  if (subject.length === 0 || subject.some(at => other.meanings.includes(meanings[at]!))) return undefined;
  const verb = clause.main.find(at => at > modal && tags[at] === 'VERB');
  const isActive = !clause.main.some(at => at > modal && at < (verb ?? modal) && tokens[at]!.low === 'be');
  if (verb === undefined || !isActive || !other.meanings.includes(meanings[verb]!)) return undefined;
  const words = said(reading, { first: subject[0]!, next: subject.at(-1)! + 1 });
  return { words, able: subject.some(at => tags[at] === 'ADJ' || tags[at] === 'VERB') };
}
