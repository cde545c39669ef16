import { isPair } from '../content/links/marks.ts';
import { thousands } from '../model/counted.ts';
import { FATES, type Fate } from '../model/crosswalk.ts';
import type { EditionDates } from '../model/edition.ts';
import { capital, counted, dateWords, FATE_MEANINGS, inWords, sentence } from '../model/said-words.ts';
import { datesIn, editionLine } from './bundle-frame.ts';
import type { Publication } from './publication.ts';
import { type WorkedExample, workedExamples } from './worked-examples.ts';

/** A picture of counts: one bar a line, as long as its number. */
export interface Bars {
  readonly unit: string;
  readonly bars: readonly {
    readonly label: string;
    readonly n: number;
    /** Which of the two editions the things counted stand in; both for what goes on. */
    readonly side: 'old' | 'new' | 'both';
    readonly fate?: Fate;
  }[];
}

/** One slide, or one section of the handout; plain values for whoever draws them. */
export interface Slide {
  readonly title: string;
  /** One sentence that answers the title. */
  readonly lead: string;
  readonly points: readonly string[];
  readonly bars?: Bars;
  readonly example?: WorkedExample;
  /** What the speaker says. */
  readonly notes: string;
}

export interface Briefing {
  readonly title: string;
  readonly subtitle: string;
  readonly publisher: string;
  readonly caution: string;
  readonly language: string;
  readonly from: string;
  readonly to: string;
  readonly slides: readonly Slide[];
}

/** What a steward presents on the day. Every number is counted from the crosswalk, every example is a row of it. */
export function briefing(publication: Publication): Briefing {
  const { from, to } = publication.joint;
  const { title, publisher = '', caution = '', language } = to.settings;
  return {
    title,
    subtitle: `${editionLine(to.header)}. What changed since ${from.header.name}, and what to do now.`,
    publisher,
    caution,
    language,
    from: from.header.name,
    to: to.header.name,
    slides: [
      howMuch(publication),
      whereItWent(publication),
      duties(publication),
      ...whyWithdrawn(publication),
      ...workedExamples(publication).map(exampleSlide),
      ...dates(to.header.dates),
      nextSteps(publication),
      cautions(publication),
    ],
  };
}

function howMuch({ statistics: s }: Publication): Slide {
  const { fates, old, total } = s.whole;
  const percent = Math.round(Math.abs(s.reduction) * 100);
  const shown = FATES.filter(f => f !== 'new' && (f !== 'unaccounted' || fates.unaccounted > 0));
  return {
    title: 'What changed, and by how much',
    lead: `${old} ${s.counted} of ${s.from} became ${total} in ${s.to}: ${percent} % ${s.reduction < 0 ? 'more' : 'fewer'}.`,
    points: [],
    bars: {
      unit: s.counted,
      bars: [
        ...shown.map(fate => ({
          label: fate === 'unaccounted' ? 'no record' : `${fate}: ${FATE_MEANINGS[fate]}`,
          n: fates[fate as Exclude<Fate, 'new'>],
          side: fate === 'withdrawn' || fate === 'unaccounted' ? ('old' as const) : ('both' as const),
          fate,
        })),
        { label: `new: ${FATE_MEANINGS.new}`, n: s.whole.new, side: 'new', fate: 'new' },
      ],
    },
    notes: `Each ${s.counted === 'items' ? 'item' : 'requirement'} of ${s.from} is counted once, by what became of it; what is new (${thousands(s.whole.new)}) is counted in ${s.to}. A merged one lost its number; what became of its duty is told under "What is asked now" and in the table.`,
  };
}

function whereItWent({ statistics: s }: Publication): Slide {
  return {
    title: 'Part by part',
    lead: `How many ${s.counted} each part of ${s.from} had, and how many it lost to withdrawal.`,
    points: [],
    bars: {
      unit: s.counted,
      bars: s.parts.map(p => ({
        label: `${`${p.number} ${p.title}`.trim()}${p.fates.withdrawn > 0 ? ` (${p.fates.withdrawn} withdrawn)` : ''}`,
        n: p.old,
        side: 'old' as const,
      })),
    },
    notes: `The new ones stand in these parts of ${s.to}: ${sentence(inWords(s.newByPart.map(p => `${`${p.number} ${p.title}`.trim()} ${p.new}`)) || 'none')}`,
  };
}

/**
 * Paths from a requirement (from an item where there are none) to an heir, one for each installation type that goes on,
 * by what became of the duty. Counted without types, one that is unclear for one type would be so for all.
 */
function dutyCounts({ joint, marks, statistics }: Publication) {
  const counts = { same: 0, stricter: 0, relaxed: 0, mixed: 0, unclear: 0 };
  for (const link of joint.crosswalk.links.filter(isPair)) {
    if (statistics.counted === 'requirements' && !joint.old.get(link.from)?.obliges) continue;
    const { duty, dutyByType } = marks(link);
    const each = dutyByType.length > 0 ? dutyByType.map(d => d.duty) : [duty];
    for (const one of each) if (one !== 'ends') counts[one]++;
  }
  return { counts, paths: Object.values(counts).reduce((sum, n) => sum + n, 0) };
}

function duties(publication: Publication): Slide {
  const { counts, paths } = dutyCounts(publication);
  const bar = (label: string, n: number) => ({ label, n, side: 'both' as const });
  return {
    title: 'What is asked now',
    lead: `${counted(paths, 'path')} lead to an heir, counted for each installation type; ${counts.same} ask the same as before.`,
    points: [],
    bars: {
      unit: 'paths',
      bars: [
        bar('the same', counts.same),
        bar('stricter', counts.stricter),
        bar('relaxed', counts.relaxed),
        bar('stricter in some ways, relaxed in others', counts.mixed),
        bar('read both texts', counts.unclear),
      ],
    },
    notes:
      'Stricter and relaxed are said only where the texts prove it for that installation type. Where a rewording leaves a doubt, it says: read both texts. That is no sign that the duty stayed.',
  };
}

function whyWithdrawn(publication: Publication): Slide[] {
  const { statistics: s, joint, decisions } = publication;
  const reasons = [...joint.to.settings.withdrawalReasons, ...joint.from.settings.withdrawalReasons];
  const all = Object.entries(s.whole.withdrawnBy).sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
  if (all.length === 0 && decisions.length === 0) return [];
  const unexplained = s.whole.withdrawnBy['no reason given'] ?? 0;
  const bars = all.map(([code, n]) => {
    const meaning = reasons.find(r => r.code === code)?.meaning;
    return { label: meaning ? `${code}: ${meaning}` : code, n, side: 'old' as const };
  });
  return [
    {
      title: 'How it was done, and why',
      lead: `${counted(s.whole.fates.withdrawn, `${s.counted.slice(0, -1)} was`, `${s.counted} were`)} withdrawn, ${unexplained === 0 ? 'each with a reason' : `${unexplained} of them without a reason`}; the commonest reasons why others changed stand below.`,
      points: [...commonReasons(publication), ...decisions.map(d => sentence(d.title))],
      ...(bars.length > 0 ? { bars: { unit: s.counted, bars } } : {}),
      notes: [
        'These are the reasons that the lineage records, counted.',
        ...decisions.map(
          d => `${sentence(d.title)} ${sentence(d.reason)} Scope: ${sentence(d.scope)} Decided by: ${d.authority}.`,
        ),
      ].join(' '),
    },
  ];
}

/** The reasons that most records give for joining an old item to its heirs. */
function commonReasons({ joint, statistics }: Publication): string[] {
  const counts = new Map<string, Set<string>>();
  for (const link of joint.crosswalk.links.filter(isPair)) {
    if (!link.reason || (statistics.counted === 'requirements' && !joint.old.get(link.from)?.obliges)) continue;
    counts.set(link.reason, (counts.get(link.reason) ?? new Set()).add(link.from));
  }
  return [...counts]
    .sort(([a, n], [b, m]) => m.size - n.size || (a < b ? -1 : 1))
    .slice(0, 3)
    .map(([reason, olds]) => `${capital(reason)}: ${olds.size} ${statistics.counted}`);
}

function exampleSlide(example: WorkedExample): Slide {
  return {
    title: `Example: ${example.kind}`,
    lead: example.headline,
    points: example.why,
    example,
    notes: `${example.headline} ${example.why.join(' ')} This is a row of the published table: the shortest of its kind${example.recorded ? ' whose record says why' : ''}.`,
  };
}

function dates(all: EditionDates): Slide[] {
  const found = datesIn(all);
  if (found.length === 0) return [];
  const until = all.transitionEnds && dateWords(all.transitionEnds);
  return [
    {
      title: 'The dates',
      lead: all.effective
        ? `In force from ${dateWords(all.effective)}${until ? `, with a transition until ${until}` : ''}.`
        : `${found[0]!.what} ${found[0]!.when}.`,
      points: found.map(d => `${d.what.slice(0, 1).toUpperCase()}${d.what.slice(1)} ${d.when}`),
      notes:
        'Which edition a running job follows is settled by its contract and by the policy of the agency, not by these dates alone.',
    },
  ];
}

function nextSteps(publication: Publication): Slide {
  const { counts } = dutyCounts(publication);
  const { whole, from, to } = publication.statistics;
  const changed = counts.stricter + counts.relaxed + counts.mixed;
  return {
    title: 'What each of you does next',
    lead: `Nobody has to learn ${to} by heart: look up the old number, and read what became of it.`,
    points: [
      `Crew leads and inspectors: keep lookup.html on the phone; find out which edition the job follows before the first line is checked.`,
      `Trainers: teach what is new (${thousands(whole.new)}), go over ${counted(changed, 'path', 'paths')} whose duty changed (counted by installation type), stop teaching what was withdrawn (${thousands(whole.fates.withdrawn)}) unless law asks for it.`,
      `Agency coordinators: go through open jobs, local rules and variances that cite ${from}; set each beside the disposition table.`,
      `Auditors: read the derivation table and the list of what is not settled; take a sample and compare both texts.`,
      `Whoever keeps data: take data/ as it is, and check it against SHA256SUMS.`,
    ],
    notes: `A number alone does not say which edition it means: write the edition beside it from today on.`,
  };
}

function cautions(publication: Publication): Slide {
  const { joint, findings } = publication;
  const { caution } = joint.to.settings;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const { counts } = dutyCounts(publication);
  const elsewhere = reusedNumbers(publication);
  const open = findings.filter(f => f.severity !== 'note');
  return {
    title: 'Cautions',
    lead: 'The edition itself is what counts; these tables only lead to it.',
    points: [
      ...(caution ? [caution] : []),
      `${counted(elsewhere, 'number')} of ${from} name something else in ${to}: never look an old number up in the new edition.`,
      `Of ${counted(counts.unclear, 'path')} it is not known whether they ask more or less: read both texts.`,
      ...(open.length > 0 ? [`Not settled: ${counted(open.length, 'finding')}. ${open[0]!.message}`] : []),
    ],
    notes: open.map(f => f.message).join(' ') || 'Nothing is left unsettled by the records.',
  };
}

/** Numbers that both editions print, where the new item at the number is no heir of the old one. */
function reusedNumbers({ joint }: Publication): number {
  return joint.from.entries.filter(({ id, number }) => {
    const there = number === '' ? [] : joint.new.withNumber(number);
    return there.length > 0 && !there.some(e => joint.leaving(id).some(l => l.to === e.id));
  }).length;
}
