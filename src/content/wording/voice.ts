import { base } from '../reading/meaning.ts';

const BE = new Set(['be', 'is', 'are']);
const MODAL = new Set('shall must should may can will'.split(' '));

/**
 * Whether one is the other in the passive: the plumber shall test the stack = the stack shall be tested by the plumber;
 * test the stack = the stack shall be tested.
 */
export function voiceTurned(a: readonly string[], b: readonly string[]): boolean {
  return isPassiveOf(a, b) || isPassiveOf(b, a) || isCommandOf(a, b) || isCommandOf(b, a);
}

function isCommandOf(command: readonly string[], passive: readonly string[]): boolean {
  const be = passive.findIndex(w => BE.has(w));
  if (be < 1 || passive.length > 80) return false;
  // "are to be tested", "shall be tested", "are tested"
  const verb = passive[be + 1] === 'to' && passive[be + 2] === 'be' ? be + 3 : be + 1;
  const before = passive[be - 1]!;
  // "should be tested" and "not tested" are no command to test.
  if (MODAL.has(before) && before !== 'shall' && before !== 'must') return false;
  const subject = passive.slice(0, MODAL.has(before) ? be - 1 : be);
  if (subject.length === 0 || passive[verb] === undefined) return false;
  return stems(command) === stems([passive[verb]!, ...subject, ...passive.slice(verb + 1)]);
}

function isPassiveOf(passive: readonly string[], active: readonly string[]): boolean {
  const by = passive.indexOf('by');
  const be = by < 0 ? -1 : passive.slice(0, by).findIndex(w => BE.has(w));
  if (be < 1 || passive.length > 80) return false;
  // A "be" and a "by" less.
  if (passive.length - 2 !== active.length) return false;
  const between = passive.slice(be + 1, by);
  const modal = passive.slice(0, be).findIndex(w => MODAL.has(w));
  const subject = passive.slice(0, modal < 0 ? be : modal);
  const modals = modal < 0 ? [] : passive.slice(modal, be);
  const wanted = stems(active);
  // "fixed with two nails by the roofer", "carefully scraped off by the painter": the verb, and what goes with it.
  for (let verb = 1; verb <= Math.min(3, between.length); verb++) {
    const [verbs, others] = [between.slice(0, verb), between.slice(verb)];
    for (let end = by + 2; end <= passive.length; end++) {
      const turned = [...passive.slice(by + 1, end), ...modals, ...verbs, ...subject, ...others, ...passive.slice(end)];
      if (stems(turned) === wanted) return true;
    }
  }
  return false;
}

const stems = (words: readonly string[]) => words.map(base).join(' ');
