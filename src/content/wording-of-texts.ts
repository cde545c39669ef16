import type { Wording } from '../model/crosswalk.ts';
import { base } from './meaning.ts';
import type { Clause, Reading } from './reading.ts';
import { spelled, writtenOut } from './spelling.ts';

/**
 * Whether two texts differ in nothing but how they are written down: capitals, marks, hyphens, spelling, number words,
 * spelling of units, order of sentences, of conditions and of lists, active for passive.
 *
 *   Seal ducts, pipes and cables.          The same words in another order are not enough: "A above B" and "B above A"
 *   Cables, pipes and ducts shall be sealed.   have the same words. Each re-ordering has a rule that explains it.
 */
export function compareWordingOf(from: Reading, to: Reading): Wording {
  if (from.text.trim() === to.text.trim()) return 'same';
  const [a, b] = [sentenceForms(from), sentenceForms(to)];
  if (joined(a.flat()) === joined(b.flat())) return 'editorial';
  if (a.length !== b.length) return 'substantive';
  const left = [...b];
  for (const sentence of a) {
    const at = left.findIndex(other => sameSentence(sentence, other));
    if (at < 0) return clausesAgree(from, to) ? 'editorial' : 'substantive';
    left.splice(at, 1);
  }
  return 'editorial';
}

/** One sentence as canonical words; quantities are one word each, lists keep their commas. */
type Form = readonly string[];

const UNSAID = new Set(['a', 'an', 'the', '-', '"', "'", '(', ')', '.', ':', ';', '*', '•', '|', '[', ']', '!', '?']);

function sentenceForms(reading: Reading): Form[] {
  return reading.sentences.map(s => formOf(reading, range(s.first, s.next)));
}

function formOf(reading: Reading, places: readonly number[]): Form {
  const form: string[] = [];
  const quantities = new Map(reading.quantities.map(q => [q.first, q]));
  for (let i = 0; i < places.length; i++) {
    const at = places[i]!;
    const quantity = quantities.get(at);
    if (quantity && places.includes(quantity.next - 1)) {
      const rounded = [quantity.low, quantity.high].map(v => (Number.isFinite(v) ? Number(v.toPrecision(9)) : v));
      form.push(`<${quantity.kind === 'interval' ? '' : value(rounded, quantity.comparator)} ${quantity.unit}>`);
      while (places[i + 1] !== undefined && places[i + 1]! < quantity.next) i++;
      continue;
    }
    const { low, kind } = reading.tokens[at]!;
    if (UNSAID.has(low)) continue;
    if (kind === 'mark') {
      form.push(low);
      continue;
    }
    for (const word of writtenOut(low)) {
      const one = spelled(word);
      if (one === 'shall') form.push('must');
      else if (word !== 'can' || low !== 'cannot') form.push(one);
      else form.push('can');
    }
  }
  return form;
}

/** The value without its comparator, whose words stand in the form themselves. */
function value([low, high]: readonly (number | undefined)[], comparator: string): string {
  if (comparator === 'min' || comparator === 'over') return String(low);
  if (comparator === 'max' || comparator === 'under') return String(high);
  return low === high ? String(low) : `${low}..${high}`;
}

const joined = (form: Form) => form.filter(w => w !== ',').join('');
const range = (first: number, next: number) => Array.from({ length: Math.max(0, next - first) }, (_, i) => first + i);

function sameSentence(a: Form, b: Form): boolean {
  return joined(a) === joined(b) || listsReordered(a, b);
}

const SEPARATOR = new Set([',', 'and', 'or']);
const AUXILIARY = new Set(['must', 'should', 'may', 'can', 'will', 'is', 'are']);

/** Equal beginnings and ends taken off, what remains has the same members between its commas and its one conjunction. */
function listsReordered(a: Form, b: Form): boolean {
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < a.length - start && end < b.length - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  const [x, y] = [a.slice(start, a.length - end), b.slice(start, b.length - end)];
  if (a.includes('respectively') || a.includes('then')) return false;
  // "Fit A, and B must hold" against "Fit B, and A must hold": the list would be two clauses.
  const [head, after] = [a.slice(0, start), a[a.length - end]];
  if (after !== undefined && AUXILIARY.has(after) && head.some(w => AUXILIARY.has(w))) return false;
  if ([...x, ...y].some(w => AUXILIARY.has(w))) return false;
  const conjunctions = (form: Form) => [...new Set(form.filter(w => w === 'and' || w === 'or'))].sort().join();
  if (conjunctions(x) !== conjunctions(y)) return false;
  const [p, q] = [members(x), members(y)];
  return p.length > 1 && p.length === q.length && p.sort().join('|') === q.sort().join('|');
}

function members(form: Form): string[] {
  const found: string[] = [];
  let member = '';
  for (const word of [...form, ',']) {
    if (!SEPARATOR.has(word)) member += word;
    else if (member !== '') {
      found.push(member);
      member = '';
    }
  }
  return found;
}

/** Clause by clause: the same conditions wherever they stand, and main parts that are equal or active for passive. */
function clausesAgree(from: Reading, to: Reading): boolean {
  if (from.clauses.length !== to.clauses.length) return false;
  const left = [...to.clauses];
  return from.clauses.every(clause => {
    const at = left.findIndex(other => clauseAgrees(from, clause, to, other));
    if (at < 0) return false;
    left.splice(at, 1);
    return true;
  });
}

function clauseAgrees(from: Reading, a: Clause, to: Reading, b: Clause): boolean {
  const segments = (reading: Reading, clause: Clause) =>
    clause.segments
      .map(s => joined(formOf(reading, range(s.first, s.next))))
      .sort()
      .join('|');
  if (segments(from, a) !== segments(to, b)) return false;
  const [x, y] = [formOf(from, a.main), formOf(to, b.main)].map(f => f.filter(w => w !== ','));
  if (x!.join('') === y!.join('')) return true;
  if (a.force.kind !== b.force.kind || a.force.negated !== b.force.negated) return false;
  return passiveOf(x!, y!) || passiveOf(y!, x!);
}

/** "(the fitter) must seal each joint with mastic" and "each joint must be sealed with mastic (by the fitter)". */
function passiveOf(active: Form, passive: Form): boolean {
  const modal = passive.findIndex(w => AUXILIARY.has(w));
  if (modal < 1) return false;
  let verb = modal + 1;
  const negated = passive[verb] === 'not';
  if (negated) verb++;
  if (passive[verb] === 'be') verb++;
  else if (passive[modal] !== 'is' && passive[modal] !== 'are') return false;
  const [object, done] = [passive.slice(0, modal), passive[verb]];
  let rest = passive.slice(verb + 1);
  let actor = active.findIndex(w => AUXILIARY.has(w));
  let subject: Form = [];
  let start = 0;
  if (actor > 0) {
    subject = active.slice(0, actor);
    start = actor + 1;
    const by = rest.indexOf('by');
    if (by < 0 || rest.slice(by + 1, by + 1 + subject.length).join() !== subject.join()) return false;
    rest = [...rest.slice(0, by), ...rest.slice(by + 1 + subject.length)];
  } else actor = -1;
  if (active[start] === 'do') start++;
  if (active[start] === 'not') start++;
  if (done === undefined || active[start] === undefined || base(active[start]!) !== base(done)) return false;
  return active.slice(start + 1).join() === [...object, ...rest].join();
}
