import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { LossAnswer, LossVerdict } from '../../model/loss-answer.ts';
import type { Catalog } from '../../store/open.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { type Person, writtenAs } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import type { AuditLine, AuditReport } from './audit-editions.ts';
import { answerTo, isSamePerson, lossChange, troubleWith } from './settle-losses.ts';

export interface Verdict {
  readonly key: string;
  readonly verdict: string;
  readonly because: string;
}

/** Keeps one verdict under the name of whoever gave it; throws BadArgument where it cannot be given so. */
export async function settleLoss(ports: Ports, catalog: Catalog, report: AuditReport, said: Verdict, by: Person) {
  const line = report.lines.find(l => l.key !== '' && l.key === said.key);
  const trouble = troubleWith(line, said.key, said.verdict, said.because, writtenAs(by));
  if (trouble || !line) throw new CatalogError('BadArgument', trouble ?? '', { key: said.key });
  const date = dayOf(ports.now());
  const answer = answerTo(report, line, said.verdict as LossVerdict, said.because, writtenAs(by), date);
  await keep(ports, catalog, line, answer, by, `${said.verdict}`);
}

/** Adds the name of a second person who has read a settled loss and agrees. */
export async function signLoss(ports: Ports, catalog: Catalog, report: AuditReport, key: string, by: Person) {
  const line = report.lines.find(l => l.key !== '' && l.key === key);
  const trouble = troubleSigning(line, writtenAs(by));
  if (trouble || !line?.answer) throw new CatalogError('BadArgument', trouble ?? '', { key });
  const date = dayOf(ports.now());
  await keep(ports, catalog, line, { ...line.answer, second: { by: writtenAs(by), date } }, by, 'signed');
}

/** Why somebody cannot sign a loss as the second person; undefined where they can. */
export function troubleSigning(line: AuditLine | undefined, by: string): string | undefined {
  if (line?.state !== 'settled' || !line.answer) return 'Only what is settled can be signed; load the page again.';
  if (line.answer.second) return `${line.number} "${line.text}" is signed by ${line.answer.second.by} already.`;
  if (isSamePerson(line.answer.by, by)) return 'You settled this yourself; let a second person sign it.';
  if (isSamePerson(line.changedBy, by)) return 'You made this change; let somebody else sign that nothing is lost.';
  return undefined;
}

async function keep(ports: Ports, catalog: Catalog, line: AuditLine, answer: LossAnswer, by: Person, what: string) {
  const author = { name: by.name, email: by.address, date: ports.now() };
  const message = `Loss ${answer.from} to ${answer.to}, ${line.number || line.item}: ${what}`;
  await changeBeside(catalog, [lossChange(line, answer)], author, message);
}
