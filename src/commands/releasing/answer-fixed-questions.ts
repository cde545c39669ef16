import { nameColumns } from '../../editing/columns.ts';
import { fixedAnswerFolder, fixedAnswerPath, writeFixedAnswers } from '../../format/fixed-answer-files.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding, FindingPlace } from '../../model/finding.ts';
import type { FixedAnswer, QuestionCode } from '../../model/fixed-answer.ts';
import { groupBy } from '../../model/group-by.ts';
import type { FixedQuestionLine } from '../../release/fixed-question-lines.ts';
import { REVIEW_QUESTIONS } from '../../release/fixed-questions.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import { type BesideChange, changeBeside } from '../../store/write-beside.ts';
import { readTable } from '../../tables/read-table.ts';
import { authorText } from '../comments/comments-store.ts';
import { type Ports, person } from '../ports/ports.ts';
import { askFixedQuestions } from './ask-fixed-questions.ts';

/** An answer as a person gives it. */
export interface GivenAnswer {
  /** Number or id of the item. */
  readonly item: string;
  readonly question: string;
  readonly answer: string;
  readonly because: string;
  /** Of the table that it stands in. */
  readonly place?: FindingPlace;
}

/**
 * Keeps answers to the fixed questions under the name of who gives them, on the texts as they stand. All or none: what
 * cannot be used is told, and nothing is written.
 */
export async function answerFixedQuestions(
  ports: Ports,
  catalog: Catalog,
  edition: string,
  given: readonly GivenAnswer[],
): Promise<{ readonly answered: number; readonly spoke: readonly string[] }> {
  const at = await locate(catalog, edition);
  // Read before the questions: what somebody else answers meanwhile is then told, and not written over.
  const known = await readBeside(catalog, fixedAnswerFolder(at.name));
  const { lines } = await askFixedQuestions(ports, catalog, { edition });
  const byId = groupBy(lines, l => l.item);
  const byNumber = groupBy(lines, l => l.number);
  const wrong: Finding[] = [];
  const kept = new Map<FixedQuestionLine, { readonly answer: FixedAnswer; readonly place: FindingPlace | undefined }>();
  for (const one of given) {
    const { item, because, place } = one;
    const question = questionOf(one.question);
    // "Intended, because ..." is how people answer a remark; the question is then answered with yes.
    const answer = one.answer === 'intended' ? 'yes' : one.answer;
    const say = (message: string) => {
      wrong.push({ rule: 'bad-answer', severity: 'error', subject: at.name, message, ...(place ? { place } : {}) });
    };
    const found = byId.get(item) ?? byNumber.get(item) ?? [];
    const named = [...new Set(found.map(l => l.item))];
    const line = found.find(l => l.question.code === question);
    const earlier = line && kept.get(line);
    if (named.length > 1) {
      say(`${item} is the number of ${named.join(' and ')}; give the id of the one that is meant.`);
    } else if (!line) {
      const asked = found.map(l => l.question.code).join(', ');
      say(
        found.length === 0
          ? `${item} is neither a requirement nor a work item of ${at.name}.`
          : isOfWorkItem(question)
            ? `${item} is not asked "${question}", which is asked of its work item; name that.`
            : `${item} is not asked "${question}"; its questions are ${asked}.`,
      );
    } else if (earlier) {
      const where = earlier.place?.line === undefined ? '' : ` on line ${earlier.place.line}`;
      say(`${item} ${question} is answered${where} already; leave one of the two.`);
    } else if (answer !== 'yes' && answer !== 'no') {
      say(`${item} ${question}: answer yes or no, not "${answer}".`);
    } else if (because.trim() === '' && (answer === 'no' || one.answer === 'intended' || line.evidence.length > 0)) {
      const why =
        answer === 'no' ? 'a no' : one.answer === 'intended' ? '"intended"' : 'a yes against which something speaks';
      say(`${item} ${question}: ${why} needs a reason.`);
    } else {
      const date = dayOf(ports.now());
      const by = authorText(ports);
      kept.set(line, { answer: { question: line.question.code, answer, because, by, date, texts: line.texts }, place });
    }
  }
  if (wrong.length > 0) {
    throw new CatalogError(
      'BadArgument',
      `${wrong[0]!.message}${wrong.length > 1 ? ` (and ${wrong.length - 1} more)` : ''} Nothing was written; mend it and try again.`,
      {},
      wrong,
    );
  }
  const changes: BesideChange[] = [];
  for (const [item, list] of groupBy([...kept], ([line]) => line.item)) {
    const answers = new Map<QuestionCode, FixedAnswer>();
    for (const { item: other, answer } of lines) if (other === item && answer) answers.set(answer.question, answer);
    for (const [, { answer }] of list) answers.set(answer.question, answer);
    const path = fixedAnswerPath(at.name, item);
    const after = writeFixedAnswers({ edition: at.name, item, answers: [...answers.values()] });
    changes.push({ path, before: known.get(path) ?? null, after });
  }
  if (changes.length > 0) {
    await changeBeside(catalog, changes, person(ports), `Review of ${at.name}: ${kept.size} answered`);
  }
  // What is now answered, other rules' remarks on the same question among it.
  return { answered: kept.size, spoke: [...kept.keys()].flatMap(l => l.evidence) };
}

/** A drafting rule stands for the question that its remarks speak against. */
function questionOf(told: string): string {
  return REVIEW_QUESTIONS.find(q => q.code === told || q.rules.includes(told))?.code ?? told;
}

function isOfWorkItem(question: string): boolean {
  return REVIEW_QUESTIONS.some(q => q.code === question && q.of === 'work item');
}

/** Answers from a table with the columns item, question, answer and because, as `review --out` writes it. */
export async function readGivenAnswers(ports: Ports, file: string): Promise<readonly GivenAnswer[]> {
  const table = readTable(file, await ports.files.read(file));
  const { cell, has } = nameColumns(table, ['item', 'question', 'answer', 'because']);
  const lacking = (['item', 'question', 'answer'] as const).filter(c => !has(c));
  if (lacking.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${file} has no column ${lacking.join(', ')}; fill in the table that fishplate review --out writes.`,
      { file, lacking },
    );
  }
  return table.rows.flatMap(row => {
    const answer = (cell(row, 'answer') ?? '').trim().toLowerCase();
    if (answer === '') return [];
    return [
      {
        item: cell(row, 'item') ?? '',
        question: cell(row, 'question') ?? '',
        answer,
        because: cell(row, 'because') ?? '',
        place: { file, line: row.line },
      },
    ];
  });
}
