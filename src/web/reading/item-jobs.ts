import type { JobsCiting } from '../../commands/finding/held-jobs.ts';
import { type CitingLine, MOST_JOBS, MOST_LINES } from '../../commands/finding/jobs-citing.ts';
import { counted, inWords } from '../../model/said-words.ts';
import type { Life } from './item-life.ts';

/** Job lines that cite an item, under its number of today or under an older or newer one. */
export interface ItemJobs {
  readonly sentence: string;
  /** What keeps the count from being whole; empty where nothing does. */
  readonly caution: string;
  /** The first of them, open ones before others. */
  readonly lines: readonly {
    readonly file: string;
    readonly place: string;
    readonly job: string;
    readonly state: string;
    readonly as: string;
  }[];
  readonly more: number;
  /** Whether any of the lines shown names its job, and its state. */
  readonly withJobs: boolean;
  readonly withStates: boolean;
}

const ORDER = ['open', 'inspected', 'signed', 'invoiced', 'complete'];

/** Undefined where all tables are read and none of their lines cites the item in any stage of its life. */
export function itemJobs(jobs: JobsCiting, { stages }: Life): ItemJobs | undefined {
  const read = jobs.read();
  if (!read) {
    return { ...NOTHING, sentence: 'The job lines are still being read; look again in a minute.' };
  }
  const found = stages.flatMap(({ edition, items }) =>
    items.flatMap(({ id, number }) => {
      const citing = jobs.of(edition, id);
      return citing ? [{ ...citing, as: `${number} of ${edition}` }] : [];
    }),
  );
  const { length } = read.unread;
  const caution =
    length > 0
      ? `${length} of ${counted(read.files, 'file')} of jobs could not be read and ${length === 1 ? 'is' : 'are'} not counted.`
      : '';
  if (found.length === 0) return caution ? { ...NOTHING, caution, sentence: NONE } : undefined;
  const lines = found.reduce((sum, f) => sum + f.lines, 0);
  const unsure = found.reduce((sum, f) => sum + f.unsure, 0);
  const all = found.flatMap(f => f.first.map(line => ({ ...told(line), open: line.state === 'open', as: f.as })));
  const shown = [...all.filter(l => l.open), ...all.filter(l => !l.open)].slice(0, MOST_LINES);
  const shared = `${counted(unsure, 'line')} of them ${unsure === 1 ? 'does' : 'do'} not say which of several items of that number ${unsure === 1 ? 'it means' : 'they mean'}.`;
  return {
    sentence: sentenceOf(lines, jobsIn(found), statesIn(found)),
    caution: [unsure > 0 && shared, caution].filter(Boolean).join(' '),
    lines: shown,
    more: lines - shown.length,
    withJobs: shown.some(l => l.job !== ''),
    withStates: shown.some(l => l.state !== ''),
  };
}

const NOTHING = { caution: '', lines: [], more: 0, withJobs: false, withStates: false };
const NONE = 'None of the job lines that could be read cites it.';

const told = ({ file, line, row, job, state }: CitingLine) => ({
  file,
  place: `${row ? 'row' : 'line'} ${line}`,
  job,
  state,
});

/** `12 lines of 4 jobs cite this item: 3 open, 7 inspected, 2 invoiced.` */
function sentenceOf(lines: number, jobs: string, states: ReadonlyMap<string, number>): string {
  const said = [...states].filter(([state]) => state !== '').map(([state, n]) => `${n.toLocaleString('en')} ${state}`);
  const unknown = states.get('') ?? 0;
  const parts = [...said, ...(unknown > 0 && said.length > 0 ? [`${unknown} without a state`] : [])];
  const cites = lines === 1 ? 'cites' : 'cite';
  return `${counted(lines, 'line')}${jobs && ` of ${jobs}`} ${cites} this item${parts.length > 0 ? `: ${inWords(parts)}` : ''}.`;
}

interface Counted {
  readonly jobs: ReadonlySet<string>;
  readonly states: Readonly<Record<string, number>>;
}

function jobsIn(found: readonly Counted[]): string {
  const { size } = new Set(found.flatMap(f => [...f.jobs]));
  if (size === 0) return '';
  // Beyond so many they are not told apart any more.
  return found.some(f => f.jobs.size >= MOST_JOBS) ? `${size} jobs or more` : counted(size, 'job');
}

function statesIn(found: readonly Counted[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { states } of found) {
    for (const [state, n] of Object.entries(states)) sums.set(state, (sums.get(state) ?? 0) + n);
  }
  const place = (state: string) => (ORDER.includes(state) ? ORDER.indexOf(state) : ORDER.length);
  return new Map([...sums].sort(([a], [b]) => place(a) - place(b)));
}
