import { type Answer, splitAnswered, textHash } from '../../drafting/answers.ts';
import { checkDrafts, type DraftRemark } from '../../drafting/check-drafts.ts';
import { loadLanguage } from '../../drafting/language.ts';
import type { Term } from '../../drafting/rule.ts';
import { isRequirement } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { Item } from '../../model/item.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readEdition } from '../../store/read.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Ports } from '../ports/ports.ts';
import { readTerms } from './check-texts.ts';
import { intendedAnswers } from './intended.ts';

export interface DraftingRequest {
  /** A draft or an edition. */
  readonly edition: string;
  /** Glossary; see {@link readTerms}. */
  readonly terms?: string;
  /** csv of job lines with the columns `number` and `state`; a state such as "not applicable" or "n/a" is counted. */
  readonly jobs?: string;
}

export interface DraftingReport {
  readonly texts: number;
  /** What nobody has answered. */
  readonly remarks: readonly DraftRemark[];
  /** The same as notes: how a text is written never stops anything. */
  readonly findings: readonly Finding[];
  /** What somebody answered with "intended, because ...", until the text changes. */
  readonly answered: readonly AnsweredRemark[];
}

export interface AnsweredRemark {
  readonly remark: DraftRemark;
  readonly answer: Answer;
  /** As a finding whose sentence ends with the answer. */
  readonly finding: Finding;
}

/** Asks the drafting rules of every requirement of a draft, each with the purpose of its work item beside it. */
export async function checkDrafting(ports: Ports, catalog: Catalog, request: DraftingRequest): Promise<DraftingReport> {
  const { name } = await locate(catalog, request.edition);
  const { settings, items } = await readEdition(catalog, request.edition);
  const terms: Term[] | undefined = request.terms === undefined ? undefined : await readTerms(ports, request.terms);
  const rates = request.jobs === undefined ? undefined : await readRates(ports, request.jobs);
  const byId = new Map(items.map(item => [item.id, item]));
  const asked = items.filter(item => isRequirement(settings, item) && item.text);
  const drafts = asked.map(item => {
    const purpose = item.purpose ?? (item.parent === null ? undefined : byId.get(item.parent)?.purpose);
    const notApplicable = rates?.get(item.number);
    const context = { ...(terms && { terms }), ...(purpose && { purpose }), ...(notApplicable && { notApplicable }) };
    return { id: item.id, called: item.number, text: item.text!, context };
  });
  const answers = await intendedAnswers(catalog, name, { settings, items });
  const { open, answered } = splitAnswered(
    checkDrafts(drafts, await loadLanguage()),
    id => byId.get(id)!.text!,
    answers,
  );
  return {
    texts: drafts.length,
    remarks: open,
    findings: open.map(r => noteOf(r, byId.get(r.id)!)),
    answered: answered.map(({ remark, answer }) => {
      const note = noteOf(remark, byId.get(remark.id)!);
      return { remark, answer, finding: { ...note, message: `${note.message} ${tellAnswer(answer)}` } };
    }),
  };
}

/** `Intended, because the plan gives the value (Ana Steward, 2024-02-01).` */
export function tellAnswer({ because, by, date }: Answer): string {
  return `Intended, because ${because.trim().replace(/[.\s]+$/, '')} (${by.replace(/ *<.*$/, '')}, ${date}).`;
}

function noteOf({ rule, start, end, words, message, id }: DraftRemark, item: Item): Finding {
  const called = [item.number, item.title].filter(Boolean).join(' ');
  const data = { start, end, words, textHash: textHash(item.text!) };
  return { rule, severity: 'note', subject: id, message: `${called || id}: ${message}`, data };
}

/** How often each number was marked as not applicable. */
async function readRates(ports: Ports, file: string): Promise<Map<string, { lines: number; notApplicable: number }>> {
  const table = readTable(file, await ports.files.read(file));
  for (const name of ['number', 'state']) {
    if (!table.columns.includes(name)) {
      const message = `${file} needs the columns number and state, but it has ${table.columns.join(', ')}; name its columns so.`;
      throw new CatalogError('BadTable', message, { file });
    }
  }
  const rates = new Map<string, { lines: number; notApplicable: number }>();
  for (const { cells } of table.rows) {
    const number = cells.get('number') ?? '';
    const rate = rates.get(number) ?? { lines: 0, notApplicable: 0 };
    rate.lines++;
    if (
      /^(?:n\s?[/.]?\s?a\.?|not applicable|does not apply|inapplicable|not present)$/i.test(cells.get('state') ?? '')
    ) {
      rate.notApplicable++;
    }
    rates.set(number, rate);
  }
  return rates;
}
