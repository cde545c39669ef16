import { opposite, type Signal } from './duty-signals.ts';
import { base, meaning } from './meaning.ts';
import { type Clause, type Reading, said } from './reading.ts';
import type { Stretch } from './sentences.ts';

/** Words of one clause that the other text does not have at all, in neighbouring runs. */
export function runsMissing(reading: Reading, clause: Clause, there: ReadonlySet<string>): Stretch[] {
  const runs: Stretch[] = [];
  let last = -10;
  for (const at of clause.main) {
    const m = reading.meanings[at];
    if (!m) continue;
    if (there.has(m)) {
      last = -10;
      continue;
    }
    if (last >= 0) runs[runs.length - 1] = { first: runs.at(-1)!.first, next: at + 1 };
    else runs.push({ first: at, next: at + 1 });
    last = at;
  }
  return runs;
}

/** What the words ask that only one of two clauses has: a thing more, a choice, a narrower subject. */
export function runSignals(from: Reading, to: Reading, pair: { from: Clause; to: Clause }): Signal[] {
  const gone = runsMissing(from, pair.from, new Set(to.meanings));
  const come = runsMissing(to, pair.to, new Set(from.meanings));
  if (gone.length > 0 && come.length > 0) {
    return [{ direction: 'unclear', weak: true, about: 'words', from: phrases(from, gone), to: phrases(to, come) }];
  }
  if (come.length > 0) {
    return come.map(run => ({
      direction: effectOfAdding(to, pair.to, run),
      about: 'words added',
      from: '',
      to: said(to, run),
    }));
  }
  if (gone.length > 0) {
    return gone.map(run => {
      const added = effectOfAdding(from, pair.from, run);
      const direction = added === 'unclear' ? added : opposite(added);
      return { direction, about: 'words dropped', from: said(from, run), to: '' };
    });
  }
  return [...jointSignals(from, to, pair), ...orderSignals(from, to, pair)];
}

const phrases = (reading: Reading, runs: readonly Stretch[]) => runs.map(r => said(reading, r)).join('; ');

const SOFTENERS = new Set(
  ['general', 'normal', 'typic', 'usual', 'prefer', 'ideal', 'mostli', 'mainli'].map(w => base(w)),
);
/** Verbs that bring a thing about: what is added to their object is asked of it. Other verbs treat what is there. */
const PROVIDING = new Set(
  'use provide install apply wear make have build submit include contain employ supply fill bear carry construct form consist comprise equip issue be follow'
    .split(' ')
    .map(meaning)
    .concat('have'),
);
const PROVIDING_WORDS = new Set(['use', 'used', 'using', 'have', 'has', 'be']);

function effectOfAdding(reading: Reading, clause: Clause, run: Stretch): 'stricter' | 'relaxed' | 'unclear' {
  const { kind, negated } = clause.force;
  if (kind === 'state') return 'unclear';
  const frees = kind === 'may' || kind === 'exempt';
  const inSubject = clause.force.at !== undefined && run.first < clause.predicate && !clause.force.imperative;
  const joint = jointBefore(reading, clause, run);
  const last = reading.tokens[run.next - 1]!.low;
  if (reading.meanings.slice(run.first, run.next).some(m => SOFTENERS.has(m))) return 'relaxed';
  const behind = nextWord(reading, clause, run.next);
  const chosen = joint === 'or' || behind === 'or';
  if (chosen) {
    // More to choose from for what is done, more that it holds for in the subject or under a ban.
    if (inSubject) return frees ? 'relaxed' : 'stricter';
    return negated ? 'stricter' : 'relaxed';
  }
  const listed = joint === 'and' || joint === ',' || behind === 'and';
  if (listed) return frees ? 'relaxed' : 'stricter';
  if (frees) return 'stricter';
  if (negated) return reading.tags[run.first] === 'ADV' && last.endsWith('ly') ? 'relaxed' : 'relaxed';
  const modifies = modifiesNoun(reading, run);
  const provides = clause.main.some(
    at =>
      PROVIDING_WORDS.has(reading.tokens[at]!.low) ||
      (reading.tags[at] === 'VERB' && PROVIDING.has(reading.meanings[at]!)),
  );
  if (inSubject) return provides ? 'stricter' : 'relaxed';
  if (modifies && !provides && isObject(reading, clause, run)) return 'relaxed';
  const preposition = prepositionBefore(reading, run);
  if (
    preposition === 'in' ||
    preposition === 'on' ||
    preposition === 'at' ||
    preposition === 'of' ||
    preposition === 'for'
  )
    return provides || modifies ? 'stricter' : 'unclear';
  return 'stricter';
}

function jointBefore(reading: Reading, clause: Clause, run: Stretch): string | undefined {
  for (let at = run.first - 1; at >= clause.first && at > run.first - 4; at--) {
    const { low } = reading.tokens[at]!;
    if (low === 'or' || low === 'and' || low === ',') {
      if (low === ',' && at === clause.main[0]) return undefined;
      return low;
    }
    if (
      reading.meanings[at] ||
      (low !== 'a' && low !== 'an' && low !== 'the' && low !== 'with' && low !== 'by' && low !== 'to' && low !== 'of')
    )
      return undefined;
  }
  return undefined;
}

function nextWord(reading: Reading, clause: Clause, at: number): string {
  return at < clause.next ? (reading.tokens[at]?.low ?? '') : '';
}

/** Whether the run stands before a noun of the same phrase. */
function modifiesNoun(reading: Reading, run: Stretch): boolean {
  const tag = reading.tags[run.next];
  return tag === 'NOUN' || tag === 'PROPN' || (tag === 'ADJ' && reading.tags[run.next + 1] === 'NOUN');
}

/** The first noun phrase behind the verb of an imperative. */
function isObject(reading: Reading, clause: Clause, run: Stretch): boolean {
  const start = clause.force.at ?? clause.main[0]!;
  for (let at = start + 1; at < run.first; at++) if (reading.tags[at] === 'ADP') return false;
  return true;
}

function prepositionBefore(reading: Reading, run: Stretch): string | undefined {
  for (let at = run.first - 1; at >= 0 && at > run.first - 3; at--) {
    if (reading.tags[at] === 'ADP') return reading.tokens[at]!.low;
    if (reading.meanings[at]) return undefined;
  }
  return undefined;
}

function jointSignals(from: Reading, to: Reading, pair: { from: Clause; to: Clause }): Signal[] {
  const joints = (r: Reading, c: Clause) =>
    c.main
      .map(at => r.tokens[at]!.low)
      .filter(w => w === 'and' || w === 'or' || w === 'both' || w === 'either')
      .filter((_, i, all) => i > 0 || all[0] !== undefined);
  const [a, b] = [joints(from, pair.from), joints(to, pair.to)];
  const count = (list: string[], ...words: string[]) => list.filter(w => words.includes(w)).length;
  const more = count(b, 'or', 'either') - count(a, 'or', 'either');
  const less = count(b, 'and', 'both') - count(a, 'and', 'both');
  if (more * less >= 0) return [];
  const frees = pair.to.force.kind === 'may' || pair.to.force.kind === 'exempt';
  const chooses = more > 0;
  const told = { about: 'and, or', from: said(from, pair.from), to: said(to, pair.to) };
  if (pair.to.force.negated) return [{ direction: 'unclear', ...told }];
  return [{ direction: frees === chooses ? 'relaxed' : chooses ? 'relaxed' : 'stricter', ...told }];
}

const RELATIONS = new Set(
  'above below under over inside outside before after between behind with without against from into through beneath beside near'.split(
    ' ',
  ),
);

/** Equal words that stand in another relation: "A above B" and "B above A". */
function orderSignals(from: Reading, to: Reading, pair: { from: Clause; to: Clause }): Signal[] {
  const relations = (r: Reading, c: Clause) =>
    c.main.flatMap(at => {
      const { low } = r.tokens[at]!;
      if (!RELATIONS.has(low)) return [];
      const next = c.main.find(i => i > at && r.meanings[i] && !RELATIONS.has(r.tokens[i]!.low));
      return next === undefined ? [] : [`${meaning(low)} ${r.meanings[next]}`];
    });
  const [a, b] = [relations(from, pair.from).sort(), relations(to, pair.to).sort()];
  if (a.join('|') === b.join('|')) return [];
  return [{ direction: 'unclear', about: 'relation', from: said(from, pair.from), to: said(to, pair.to) }];
}
