import { nameColumns } from '../editing/columns.ts';
import { reviewFolder, reviewPath, writeReview } from '../format/review-files.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';
import type { QuestionCode, ReviewAnswer } from '../model/review.ts';
import type { ReviewLine } from '../release/review-queue.ts';
import { locate } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { readBeside } from '../store/read-beside.ts';
import { type BesideChange, changeBeside } from '../store/write-beside.ts';
import { readTable } from '../tables/read-table.ts';
import { authorText } from './comments-store.ts';
import { type Ports, person } from './ports.ts';
import { reviewLines } from './review-edition.ts';

/** An answer as a person gives it. */
export interface GivenAnswer {
  /** Number or id of the item. */
  readonly item: string;
  readonly question: string;
  readonly answer: string;
  readonly because: string;
}

/**
 * Keeps answers to the fixed questions under the name of who gives them, on the texts as they stand. All or none: what
 * cannot be used is told, and nothing is written.
 */
export async function answerReview(
  ports: Ports,
  catalog: Catalog,
  edition: string,
  given: readonly GivenAnswer[],
): Promise<{ readonly answered: number }> {
  const at = await locate(catalog, edition);
  // Read before the questions: what somebody else answers meanwhile is then told, and not written over.
  const known = await readBeside(catalog, reviewFolder(at.name));
  const { lines } = await reviewLines(ports, catalog, { edition });
  const byName = groupBy(
    lines.flatMap(line => [line.item, line.number].map(name => ({ name, line }))),
    l => l.name,
  );
  const wrong: string[] = [];
  const kept: { readonly line: ReviewLine; readonly answer: ReviewAnswer }[] = [];
  for (const { item, question, answer, because } of given) {
    const found = (byName.get(item) ?? []).map(l => l.line);
    const line = found.find(l => l.question.code === question);
    if (!line) {
      const asked = [...new Set(found.map(l => l.question.code))].join(', ');
      wrong.push(
        found.length === 0
          ? `${item} is neither a requirement nor a work item of ${at.name}.`
          : `${item} is not asked "${question}"; its questions are ${asked}.`,
      );
    } else if (answer !== 'yes' && answer !== 'no')
      wrong.push(`${item} ${question}: answer yes or no, not "${answer}".`);
    else if (because === '' && (answer === 'no' || line.evidence.length > 0)) {
      const why = answer === 'no' ? 'a no' : 'a yes against which something speaks';
      wrong.push(`${item} ${question}: ${why} needs a reason.`);
    } else {
      const texts = line.texts;
      const date = ports.now().toISOString().slice(0, 10);
      kept.push({
        line,
        answer: { question: line.question.code, answer, because, by: authorText(ports), date, texts },
      });
    }
  }
  if (wrong.length > 0) {
    throw new CatalogError(
      'BadArgument',
      `${wrong[0]}${wrong.length > 1 ? ` (and ${wrong.length - 1} more)` : ''} Nothing was written; mend it and try again.`,
      {},
      wrong.map((message): Finding => ({ rule: 'bad-answer', severity: 'error', subject: at.name, message })),
    );
  }
  const changes: BesideChange[] = [];
  for (const [item, list] of groupBy(kept, k => k.line.item)) {
    const answers = new Map<QuestionCode, ReviewAnswer>();
    for (const { item: other, answer } of lines) if (other === item && answer) answers.set(answer.question, answer);
    for (const { answer } of list) answers.set(answer.question, answer);
    const path = reviewPath(at.name, item);
    const after = writeReview({ edition: at.name, item, answers: [...answers.values()] });
    changes.push({ path, before: known.get(path) ?? null, after });
  }
  if (changes.length > 0) {
    await changeBeside(catalog, changes, person(ports), `Review of ${at.name}: ${kept.length} answered`);
  }
  return { answered: kept.length };
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
      },
    ];
  });
}
