import { base } from './meaning.ts';

const BE = new Set(['be', 'is', 'are']);
const MODAL = new Set('shall must should may can will'.split(' '));

/** Whether one is the other in the passive: the plumber shall test the stack = the stack shall be tested by the plumber. */
export function voiceTurned(a: readonly string[], b: readonly string[]): boolean {
  return isPassiveOf(a, b) || isPassiveOf(b, a);
}

function isPassiveOf(passive: readonly string[], active: readonly string[]): boolean {
  const by = passive.indexOf('by');
  const be = by < 0 ? -1 : passive.slice(0, by).findIndex(w => BE.has(w));
  if (be < 1 || passive.length > 80) return false;
  const verbs = passive.slice(be + 1, by);
  if (verbs.length === 0 || verbs.length > 3) return false;
  const modal = passive.slice(0, be).findIndex(w => MODAL.has(w));
  const subject = passive.slice(0, modal < 0 ? be : modal);
  const modals = modal < 0 ? [] : passive.slice(modal, be);
  const wanted = stems(active);
  for (let end = by + 2; end <= passive.length; end++) {
    const turned = [...passive.slice(by + 1, end), ...modals, ...verbs, ...subject, ...passive.slice(end)];
    if (stems(turned) === wanted) return true;
  }
  return false;
}

const stems = (words: readonly string[]) => words.map(base).join(' ');
