import { Decisions } from '../carryover/decisions.ts';
import { parsePolicy } from '../carryover/jobs/job-policy.ts';
import type { Way } from '../carryover/jobs/job-reader.ts';
import { QUESTION_COLUMNS } from '../carryover/questions.ts';
import { carryJobs, type JobsReport, openJobs } from '../commands/jobs/carry-jobs.ts';
import { heldFiles } from '../commands/ports/held-files.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import { CatalogError } from '../model/errors.ts';
import { typeName } from '../model/settings.ts';
import { readTable } from '../tables/read-table.ts';
import { askedQuestions } from './asked-question.ts';
import { besideName, carriedName } from './carried-name.ts';
import type { Ask, CarriedJobs, CarryRequest, MadeFile, ReadAnswers, Refused } from './carry-request.ts';
import { answersTable, isQuestionnaire, notesOf, readAnswers } from './given-answers.ts';
import { ASKED_RULES, refusedAsks, tableAsks } from './table-asks.ts';
import { foundInTable, saidOfTable } from './table-words.ts';

const MEANINGS: Readonly<Record<OutcomeKind, string>> = {
  kept: 'The number stays and asks the same.',
  carried: 'A new number takes its place.',
  choose: 'A person has to decide.',
  withdrawn: 'No requirement takes its place.',
  unknown: 'The number names nothing, or not one thing.',
};

/** Findings about words of the table that a question may be about. */
const WORD_FIELDS: Readonly<Record<string, Ask['field']>> = {
  'unknown-state': 'stateNames',
  'unknown-type': 'typeNames',
};

/** Carries a table of jobs, with the same bytes as `carry jobs`; a questionnaire is read. @throws CatalogError */
export async function carryTable(
  way: Way,
  ways: ReadonlyMap<string, Way>,
  request: CarryRequest,
  progress: (message: string) => void,
): Promise<CarriedJobs | ReadAnswers | Refused> {
  const [file, ...more] = request.files;
  if (!file || more.length > 0)
    throw new CatalogError('BadArgument', 'Tables are carried one by one; choose one of them.');
  const { joint, marks } = way;
  const { name } = file;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const out = carriedName(name, to);
  const [asked, prices] = [besideName(name, to, 'decisions.csv'), besideName(name, to, 'price-changes.csv')];
  const given = answersTable(request.answers);
  // Not named as the table is: the ending of its name would say that it is read as JSON Lines.
  const answers = given && { ...given, name: `answers to ${name}.csv` };
  const { files, held } = heldFiles([[name, file.bytes], ...(answers ? [[answers.name, answers.bytes] as const] : [])]);
  const sheet = request.sheet === undefined ? {} : { sheet: request.sheet };
  const { header, sample } = await openJobs(files, { input: name, ...sheet });
  if (isQuestionnaire(header)) return readAnswers(file);
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
      ...(request.stateNames === undefined ? {} : { stateNames: request.stateNames }),
      ...(request.typeNames === undefined ? {} : { typeNames: request.typeNames }),
      ...(answers ? { decisions: answers.name } : {}),
      decisionsOut: asked,
      priceChanges: prices,
    });
  } catch (error) {
    // The columns are shown beside the sentence, so that a person can say what each one is.
    if (error instanceof CatalogError)
      return { kind: 'refused', sentence: error.message, header, asks: refusedAsks(error, { header, sample }) };
    throw error;
  }
  if (report.leftAlone) {
    return { kind: 'refused', sentence: `${name} was carried to ${to} already; choose the original table instead.` };
  }
  const nameOf = (type: string | undefined) => (type === undefined ? '' : typeName(joint.to.settings, type));
  const decisions = answers && new Decisions(readTable(answers.name, answers.bytes));
  const asks = tableAsks(way, ways, request, { header, sample }, report);
  const isAsked = ({ rule, subject }: { readonly rule: string; readonly subject: string }) =>
    asks.some(a => a.field === WORD_FIELDS[rule] && a.key === subject) ||
    (rule in WORD_FIELDS && asks.some(a => a.field === 'file'));
  const untold = report.findings.filter(f => !ASKED_RULES.has(f.rule) && !isAsked(f));
  const made = (what: MadeFile['what'], path: string): MadeFile => ({ name: path, what, bytes: held.get(path)! });
  return {
    kind: 'jobs',
    found: foundInTable(name, report),
    said: saidOfTable(report),
    outcomes: OUTCOMES.map(k => ({ kind: k, count: report.totals.outcomes[k], meaning: MEANINGS[k] })),
    notes: notesOf(untold),
    header,
    columns: Object.fromEntries(Object.entries(report.columns).map(([role, c]) => [role, c.at])),
    asks,
    questionColumns: QUESTION_COLUMNS,
    questions: askedQuestions(report.questions, decisions, edition => (ways.get(edition) ?? way).joint),
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
