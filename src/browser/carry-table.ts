import { Decisions } from '../carryover/decisions.ts';
import { parsePolicy } from '../carryover/jobs/job-policy.ts';
import type { Way } from '../carryover/jobs/job-reader.ts';
import { QUESTION_COLUMNS, type Question, questionRows } from '../carryover/questions.ts';
import { carryJobs, type JobsReport, openJobs } from '../commands/jobs/carry-jobs.ts';
import { heldFiles } from '../commands/ports/held-files.ts';
import { tableBytes } from '../commands/ports/table-bytes.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import { CatalogError } from '../model/errors.ts';
import { counted, inWords } from '../model/said-words.ts';
import { typeName } from '../model/settings.ts';
import { readTable } from '../tables/read-table.ts';
import { besideName, carriedName } from './carried-name.ts';
import type { CarriedJobs, CarryRequest, GivenFile, MadeFile, Refused } from './carry-request.ts';

const MEANINGS: Readonly<Record<OutcomeKind, string>> = {
  kept: 'The number stays and asks the same.',
  carried: 'A new number takes its place.',
  choose: 'A person has to decide.',
  withdrawn: 'No requirement takes its place.',
  unknown: 'The number names nothing, or not one thing.',
};

/** Carries a table of jobs, with the same bytes as `carry jobs`. @throws CatalogError */
export async function carryTable(
  way: Way,
  ways: ReadonlyMap<string, Way>,
  request: CarryRequest,
  progress: (message: string) => void,
): Promise<CarriedJobs | Refused> {
  const { joint, marks } = way;
  const { name, bytes } = request.file;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const out = carriedName(name, to);
  const [asked, prices] = [besideName(name, to, 'decisions.csv'), besideName(name, to, 'price-changes.csv')];
  const given = answersOf(request);
  const { files, held } = heldFiles([[name, bytes], ...(given ? [[given.name, given.bytes] as const] : [])]);
  const sheet = request.sheet === undefined ? {} : { sheet: request.sheet };
  const { header } = await openJobs(files, { input: name, ...sheet });
  let report: JobsReport;
  try {
    const { policy } = request;
    report = await carryJobs({ files, progress }, joint, marks, {
      input: name,
      out,
      columns: request.columns ?? {},
      others: async () => new Map([...ways].filter(([edition]) => edition !== from)),
      ...sheet,
      ...(policy ? { policy: parsePolicy(new TextDecoder().decode(policy.bytes), policy.name) } : {}),
      ...(request.dates === undefined ? {} : { dates: request.dates }),
      ...(given ? { decisions: given.name } : {}),
      decisionsOut: asked,
      priceChanges: prices,
    });
  } catch (error) {
    // The columns are shown beside the sentence, so that a person can say what each one is.
    if (error instanceof CatalogError) return { kind: 'refused', sentence: error.message, header };
    throw error;
  }
  if (report.leftAlone) {
    return { kind: 'refused', sentence: `${name} was carried to ${to} already; choose the original table instead.` };
  }
  const nameOf = (type: string | undefined) => (type === undefined ? '' : typeName(joint.to.settings, type));
  const decisions = given && new Decisions(readTable(given.name, given.bytes));
  const rows = questionRows(report.questions, decisions);
  const made = (what: MadeFile['what'], path: string, as = path): MadeFile => ({
    name: as,
    what,
    bytes: held.get(path)!,
  });
  return {
    kind: 'jobs',
    found: foundIn(name, report),
    said: saidOf(report),
    outcomes: OUTCOMES.map(k => ({ kind: k, count: report.totals.outcomes[k], meaning: MEANINGS[k] })),
    notes: report.findings.map(({ severity, message }) => ({ severity, message })),
    header,
    columns: Object.fromEntries(Object.entries(report.columns).map(([role, c]) => [role, c.at])),
    questionColumns: QUESTION_COLUMNS,
    questions: report.questions.map((q, at) => ({
      cells: rows[at]!.map(String),
      typeName: nameOf(q.type),
      title: titleOf(q, way, ways),
      heirs: q.outcome.heirs.map(h => ({ number: h.number, title: h.title })),
    })),
    cases: report.cases.map(c => ({
      lines: c.lines,
      number: c.number,
      typeName: nameOf(c.type),
      outcome: c.outcome,
      heirs: c.heirs.map(h => `${h.number} ${h.title}`.trim()),
      why: c.why,
    })),
    files: [
      made('carried', out),
      made('decisions', asked),
      made('prices', prices),
      made('mark', `${out}.fishplate.json`),
    ],
  };
}

/** The title of the old item that a question is about, in the edition that its lines cite. */
function titleOf({ edition, outcome }: Question, main: Way, ways: ReadonlyMap<string, Way>): string {
  const { old } = (ways.get(edition) ?? main).joint;
  return (outcome.from !== undefined && old.get(outcome.from)?.title) || '';
}

/** The questionnaire as the person filled it in on the page, or as it was kept from an earlier time. */
function answersOf({ file, answers, earlier }: CarryRequest): GivenFile | undefined {
  if (answers === undefined) return earlier && { ...earlier, name: `answers: ${earlier.name}` };
  const bytes = tableBytes('answers.csv', 'Decisions', QUESTION_COLUMNS, answers);
  return { name: `answers to ${file.name}`, bytes };
}

function foundIn(name: string, { totals, columns, editions, from }: JobsReport): string {
  const stands = Object.entries(columns).map(([role, c]) => `the ${role} in column ${c.header}`);
  const cited = Object.entries(editions).map(([edition, n]) => `${edition} (${counted(n, 'line')})`);
  const edition = cited.length > 0 ? inWords(cited) : from;
  return `${name} is a table of ${counted(totals.lines, 'line')}: ${inWords(stands)}. It is read in edition ${edition}.`;
}

function saidOf({ totals, to }: JobsReport): string {
  const { kept, carried, choose, withdrawn, unknown } = totals.outcomes;
  const told = [
    [kept, 'stay as they are', 'stays as it is'],
    [carried, 'get a new number', 'gets a new number'],
    [choose, 'wait for a decision', 'waits for a decision'],
    [withdrawn, 'have no successor', 'has no successor'],
    [unknown, 'name no one item', 'names no one item'],
  ] as const;
  const parts = told
    .filter(([n]) => n > 0)
    .map(([n, many, one]) => `${n.toLocaleString('en')} ${n === 1 ? one : many}`);
  const more = [
    ...(totals.closed > 0
      ? [`${totals.closed.toLocaleString('en')} of them ${totals.closed === 1 ? 'is' : 'are'} finished and left alone`]
      : []),
    ...(totals.folded > 0
      ? [`${counted(totals.folded, 'line does', 'lines do')} the same work as an earlier one`]
      : []),
    ...(totals.added > 0
      ? [`${counted(totals.added, 'line is', 'lines are')} added that jobs have to meet for the first time`]
      : []),
  ];
  const sum = `Of ${counted(totals.lines, 'line')} carried to ${to}, ${inWords(parts)}.`;
  const agree = totals.agree ? '' : ' THE TOTALS DO NOT AGREE.';
  return `${sum}${more.length > 0 ? ` ${capitalised(inWords(more))}.` : ''}${agree}`;
}

function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
