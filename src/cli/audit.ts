import { type Command, InvalidArgumentError } from 'commander';
import type { AuditReport } from '../commands/audit/audit-editions.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

interface AuditOptions {
  readonly out?: string;
  readonly settle?: string;
  readonly by?: string;
  readonly sample?: number;
  readonly seed?: string;
  readonly read?: string;
  readonly json?: boolean;
}

export function addAudit(program: Command): void {
  program
    .command('audit')
    .description('Is anything lost: what each old text says and none of its heirs does, per installation type')
    .argument('<from>', 'edition, e.g. 2018')
    .argument('<to>', 'edition or draft')
    .option('--out <file>', 'a table with a line for each loss, to be filled in (csv, or xlsx by its ending)')
    .option('--settle <file>', 'keep the verdicts filled in there; needs --by')
    .option('--by <person>', 'who settles, as "Name <address>"; never the author of the change')
    .option('--sample <n>', 'audit kit: a worksheet with n old items, drawn by fate and part; needs --out', whole)
    .option('--seed <text>', 'with --sample: the same seed draws the same items', '1')
    .option('--read <file>', 'read a filled-in worksheet: the share of items found right, with its interval')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate audit 2018 2024 --out losses.csv
  fishplate audit 2018 2024 --settle losses.csv --by "Ana Reviewer <ana@example.org>"
  fishplate audit 2018 2024 --sample 60 --seed spring --out kit.xlsx
  fishplate audit 2018 2024 --read kit.xlsx

verdict  restored (put back), stated (an heir says it in other words) or dropped (on purpose: say why under because)
state    open, again (a text changed after it was settled), settled, decision (an edition-wide decision covers it),
         duty (a value changed: nothing is lost, but more or less is asked)

A value, material or condition is stated only beside its own subject, and for the type of the old item: what an heir
says "in villas" or "(in shops)" counts for those alone ("Villas: …" and "villa doors" are read by all types). Only
types that the item itself holds for are told apart.
A withdrawn item is covered by its reason. Exit code 1: done, and losses are open.`,
    )
    .action(async (from: string, to: string, options: AuditOptions, command: Command) => {
      const { auditEditions, openLosses } = await import('../commands/audit/audit-editions.ts');
      const ports = portsOf(command);
      if (options.sample !== undefined) checkWorksheet(options.out);
      if (options.read !== undefined) return readFilledKit(from, to, options.read, options, command);
      const catalog = options.settle === undefined ? await readingCatalog(command) : await writingCatalog(command);
      ports.progress(`Reading the texts of ${from} and ${to}`);
      const report = await auditEditions(catalog, from, to);
      if (report.backwards) {
        throw new CatalogError(
          'BadArgument',
          `${to} is older than ${from}; name the older edition first: fishplate audit ${to} ${from}`,
          {
            from,
            to,
          },
        );
      }
      if (options.settle !== undefined) return settle(report, options.settle, options, command, catalog);
      if (options.sample !== undefined) return writeKit(report, options.sample, options, command);
      if (options.out !== undefined) {
        const { auditCsv, auditXlsx } = await import('../commands/audit/audit-table.ts');
        await ports.files.write(options.out, options.out.endsWith('.xlsx') ? auditXlsx(report) : auditCsv(report));
      }
      if (options.json) printJson({ from, to, asked: report.asked, lines: report.lines });
      else printLines([...summary(report), ...(options.out === undefined ? [] : [`Written to ${options.out}.`])]);
      reportFindings([...report.findings, ...openLosses(report)]);
    });
}

async function settle(
  report: AuditReport,
  file: string,
  { by, json }: AuditOptions,
  command: Command,
  catalog: Awaited<ReturnType<typeof writingCatalog>>,
): Promise<void> {
  if (by === undefined) {
    throw new CatalogError(
      'BadArgument',
      `Say who settles: fishplate audit ${report.from} ${report.to} --settle ${file} --by "Name <address>"`,
    );
  }
  const { settleLosses } = await import('../commands/audit/settle-losses.ts');
  const { settled, kept, empty } = await settleLosses(portsOf(command), catalog, report, file, by);
  if (json) printJson({ settled, kept, empty });
  else
    printLines([
      `${count(settled, 'loss', 'losses')} settled by ${by}; ${kept} settled before; ${count(empty, 'row')} without a verdict.`,
    ]);
}

/** Asked before the texts are read, which takes a while. */
function checkWorksheet(out: string | undefined): void {
  if (out === undefined) {
    throw new CatalogError('BadArgument', 'Name the worksheet to write, as in: --sample 60 --out kit.xlsx');
  }
  if (!/\.xlsx$/i.test(out)) {
    throw new CatalogError(
      'BadArgument',
      `The worksheet is an Excel workbook; name it so: --out ${out.replace(/\.[^./\\]{1,8}$/, '')}.xlsx`,
    );
  }
}

async function writeKit(report: AuditReport, n: number, options: AuditOptions, command: Command): Promise<void> {
  const out = options.out!;
  const { auditKit, kitXlsx } = await import('../commands/audit/audit-kit.ts');
  const kit = auditKit(report, n, options.seed ?? '1');
  await portsOf(command).files.write(out, kitXlsx(report, kit));
  if (options.json) return printJson({ strata: kit.strata, sample: kit.rows.map(r => r.number) });
  const missed = kit.strata.filter(s => s.drawn === 0).length;
  printLines([
    `${count(kit.rows.length, 'item')} of ${count(kit.population, 'old item')} in ${count(kit.strata.length, 'stratum', 'strata')} written to ${out}.`,
    ...(missed > 0
      ? [`${missed} of them got no row; --sample ${kit.strata.length} or more gives each at least one.`]
      : []),
    'Fill in verdict (right or wrong), name and date; a second person fills in second_name and second_date.',
  ]);
}

async function readFilledKit(from: string, to: string, file: string, options: AuditOptions, command: Command) {
  const { readKit, toldKit } = await import('../commands/audit/read-kit.ts');
  const result = await readKit(portsOf(command), file, from, to);
  if (options.json) return printJson(result);
  printLines(toldKit(result));
  reportFindings(result.findings);
}

function summary({ from, to, asked, lines, retention }: AuditReport): string[] {
  const of = (state: string) => lines.filter(l => l.state === state).length;
  const withdrawn = new Set(retention.filter(r => r.fate === 'withdrawn').map(r => r.item)).size;
  const open = lines.filter(l => l.state === 'open' || l.state === 'again');
  const kinds = new Map<string, number>();
  for (const { kind } of open) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  const byKind = [...kinds].sort((a, b) => b[1] - a[1]).map(([kind, n]) => `${kind} ${n}`);
  return [
    `${from} → ${to}: ${count(asked, 'old text')} asked; ${count(withdrawn, 'item')} withdrawn for at least one type, covered by their reasons.`,
    `${count(open.length, 'loss', 'losses')} open${byKind.length > 0 ? ` (${byKind.join(', ')})` : ''}, ${of('settled')} settled, ${of('decision')} covered by a decision; ${count(of('duty'), 'value')} changed.`,
    ...everywhere(open),
    ...(of('again') > 0 ? [`${of('again')} of the open ones were settled before a text changed.`] : []),
  ];
}

/** Words lost in so many items are more often a name that the newer edition shortens than as many losses. */
const MANY = 10;

function everywhere(open: AuditReport['lines']): string[] {
  const items = new Map<string, Set<string>>();
  for (const { kind, text, item } of open) {
    if (kind === 'quantity' || kind === 'type') continue;
    const key = text.toLowerCase();
    items.set(key, (items.get(key) ?? new Set()).add(item));
  }
  const many = [...items].filter(([, ids]) => ids.size >= MANY).sort((a, b) => b[1].size - a[1].size);
  if (many.length === 0) return [];
  const told = many.map(([words, ids]) => `"${words}" in ${count(ids.size, 'item')}`).join(', ');
  return [`The same words again and again, perhaps a name that is shortened: ${told}.`];
}

function whole(text: string): number {
  const n = Number(text);
  if (!Number.isInteger(n) || n < 1) throw new InvalidArgumentError('Give a whole number from 1.');
  return n;
}
