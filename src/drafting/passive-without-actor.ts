import { isParticiple } from './obligations.ts';
import { clauseBehind, phraseList, spotsOf } from './phrases.ts';
import type { Segment, Word } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/** A decision, a notice, a record or a witness needs a somebody; of installed work the state is what counts. */
export const passiveWithoutActor: Rule = {
  name: 'passive-without-actor',
  bad: [
    { text: 'Approval is to be obtained before work starts.' },
    { text: 'The test shall be witnessed.' },
    { text: 'Notice must be given two days ahead.' },
    { text: 'Unless otherwise agreed, work stops at dusk.' },
  ],
  good: [
    { text: 'The batten is fixed at 600 mm centres.' },
    { text: 'The test shall be witnessed by the engineer.' },
    { text: 'The installer keeps the record for five years.' },
  ],
  find: text => [
    ...text.sentences.flatMap(s => s.segments.flatMap(segment => find(segment, text.text))),
    ...spotsOf(
      text,
      PENDING,
      words => `"${words}" does not say whose; name who gives it.`,
      m => !/^\s*(?:of|by|from|with)\b/i.test(clauseBehind(text.plain, m.index + m[0].length)),
    ),
  ],
};

const PENDING = phraseList(
  '(?:subject to|without|with|on|upon|only after|pending) (?:prior |written |formal |express |final |prior written ){0,2}(?:agreement|approval|consent|acceptance|permission|authori[sz]ation|confirmation|clearance)',
);

function find(segment: Segment, text: string): Spot[] {
  const { words } = segment;
  const spots: Spot[] = [];
  words.forEach((word, at) => {
    if (!isParticiple(word) && !KNOWN.has(word.lower)) return;
    const bare = UNLESS.has(words[at - 1]?.lower ?? '') || UNLESS.has(words[at - 2]?.lower ?? '');
    const passive = beBefore(words, at);
    if (!passive && !(bare && DECIDES.has(word.lower))) return;
    if (!needsActor(words, at) || hasActor(words, at)) return;
    const message = `"${text.slice(word.start, word.end)}" does not say by whom; name who does it.`;
    spots.push({ start: word.start, end: word.end, message });
  });
  return spots;
}

const list = (words: string) => new Set(words.split(' '));

const UNLESS = list('unless otherwise as where if until');

const DECIDES = list('agreed approved authorised authorized directed instructed accepted permitted sanctioned');

/** What only a person does, and what someone answers for. */
const ACTS = list(
  'agreed approved authorised authorized accepted sanctioned witnessed notified informed told advised consulted reported recorded logged documented signed countersigned submitted obtained sought requested reviewed issued appointed nominated designated confirmed certified verified inspected checked supervised monitored investigated escalated briefed instructed trained warned alerted announced invited contacted registered filed archived retained decided determined assessed evaluated audited endorsed granted ordered notified communicated photographed handed countersigned entered updated noted initialled initialed examined rejected waived arranged permitted identified declared released cleared',
);

/** Acts that need an actor only with these subjects: a notice is given, a beam is not. */
const SUBJECTS = list(
  'clearance go-ahead signal acceptance consent approval permission consent notice notification decision record records log logs report reports agreement certificate certificates permit permits instructions instruction inspection inspections test tests check checks survey surveys review reviews assessment assessments audit audits inventory arrangements arrangement copy copies photographs photograph drawings documents document details information warning records results measurements readings entry authorisation authorization statement confirmation request complaint complaints incident incidents list register training plan schedule assessment evidence handover samples sample decision',
);

const DONE = list(
  'given made kept taken sent carried performed conducted undertaken provided prepared done held completed maintained delivered served drawn written displayed stored produced compiled collected passed forwarded established agreed tested sampled raised executed',
);

const KNOWN = list('kept given made taken sent held drawn written done sought told undertaken');

function beBefore(words: readonly Word[], at: number): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 4); i--) {
    const { lower, tag } = words[i]!;
    if (/^(?:be|is|are|was|were|been|being)$/.test(lower)) return true;
    if (tag !== 'ADV' && tag !== 'PART' && !/^(?:and|or|also|both|not|,)$/.test(lower) && !isParticiple(words[i]!))
      return false;
  }
  return false;
}

function needsActor(words: readonly Word[], at: number): boolean {
  const next = words[at + 1];
  // "It must be evaluated whether ..." is a question of which work to do, asked by another rule.
  if (next && /^(?:whether|if)$/.test(next.lower)) return false;
  if (ACTS.has(words[at]!.lower)) return true;
  // Work is passed by somebody; a cable is passed through something.
  if (words[at]!.lower === 'passed') return next === undefined || /PUNCT|SCONJ|CCONJ|ADV/.test(next.tag);
  return DONE.has(words[at]!.lower) && subjectOf(words, at).some(w => SUBJECTS.has(w.lower));
}

/** The words between the clause's beginning and its verb. */
function subjectOf(words: readonly Word[], at: number): readonly Word[] {
  let from = at;
  while (
    from > Math.max(0, at - 40) &&
    !/^(?:,|and|when|where|if|that|which|before|after|until|unless|once)$/.test(words[from - 1]!.lower)
  )
    from--;
  return words.slice(from, at);
}

const BY_NO_ONE = list(
  'means weight hand machine date day time way mail post email e-mail letter telephone phone reference law contract testing measurement measuring measuring inspection comparison calculation sight touch number name colour color size document documents default',
);

/** "by the engineer" names an actor; "by Friday", "by 5 mm" and "by means of" do not. */
function hasActor(words: readonly Word[], at: number): boolean {
  for (let i = at + 1; i < Math.min(words.length, at + 40); i++) {
    const { lower } = words[i]!;
    if (lower === ';') return false;
    if (lower === 'by' && bySomebody(words, i + 1)) return true;
    // "agreed with the client", "as directed in writing by ...": two who agree are both named.
    if (lower === 'with' && i === at + 1 && words[at]!.lower === 'agreed') return true;
  }
  return false;
}

function bySomebody(words: readonly Word[], from: number): boolean {
  for (const { lower, tag } of words.slice(from, from + 5)) {
    if (tag === 'NUM' || BY_NO_ONE.has(lower) || lower.endsWith('ing')) return false;
    if (tag === 'NOUN' || tag === 'PRON' || tag === 'PROPN') return !DAYS.has(lower);
  }
  return false;
}

const DAYS = list('monday tuesday wednesday thursday friday saturday sunday noon dusk dawn midnight end close');
