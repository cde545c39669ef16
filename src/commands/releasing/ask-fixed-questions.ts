import { textHash } from '../../drafting/answers.ts';
import { fixedAnswerFolder, parseFixedAnswers } from '../../format/fixed-answer-files.ts';
import type { Finding } from '../../model/finding.ts';
import {
  type FixedQuestionEvidence,
  type FixedQuestionLine,
  fixedQuestionLines,
} from '../../release/fixed-question-lines.ts';
import { followReport } from '../../release/intake.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readEdition } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { allReports } from '../intake/intake-count.ts';
import type { Ports } from '../ports/ports.ts';
import { readJoint } from '../reading/read-crosswalk.ts';
import { remember } from '../remember.ts';
import { checkDrafting } from '../texts/check-drafting.ts';

export interface FixedQuestionsRequest {
  readonly edition: string;
  /** csv of job lines with the columns `number` and `state`; how often a requirement did not apply is evidence. */
  readonly jobs?: string;
}

/** The fixed questions of an edition or draft with the evidence beside each, those first that matter most. */
export async function askFixedQuestions(
  ports: Ports,
  catalog: Catalog,
  { edition: name, jobs }: FixedQuestionsRequest,
): Promise<{ readonly lines: readonly FixedQuestionLine[]; readonly findings: readonly Finding[] }> {
  const at = await locate(catalog, name);
  const { settings, items } = await readEdition(catalog, name);
  const drafting = await checkDrafting(ports, catalog, { edition: name, ...(jobs === undefined ? {} : { jobs }) });
  const { records, findings } = parseFixedAnswers(await readBeside(catalog, fixedAnswerFolder(at.name)));
  const evidence: FixedQuestionEvidence[] = [
    // An answered remark stays beside its question: whoever asks for all sees what the answer was about.
    ...[...drafting.remarks, ...drafting.answered.map(a => a.remark)].map(r => ({
      item: r.id,
      rule: r.rule,
      told: `${r.message} ("${short(r.words)}")`,
    })),
    ...(await reportsOn(catalog, name)),
  ];
  return { lines: fixedQuestionLines({ settings, items, evidence, records, hash: textHash }), findings };
}

/** What came in from sites about the items of older editions, at the items that carry them on. */
async function reportsOn(catalog: Catalog, edition: string): Promise<FixedQuestionEvidence[]> {
  const { records } = await allReports(catalog);
  const jointFrom = remember(20, async (from: string) => (await readJoint(catalog, from, edition)).joint);
  const evidence: FixedQuestionEvidence[] = [];
  for (const record of records) {
    const { now } = followReport(record, await jointFrom(record.edition));
    const told = `${record.kind}, ${record.cause}: "${short(record.text)}" (${record.from}, ${record.date})`;
    for (const { id } of now) evidence.push({ item: id, rule: 'intake', told });
  }
  return evidence;
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 57).trimEnd()}…` : line;
}
