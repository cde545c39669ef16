import type { Command } from 'commander';
import { checkCatalog } from '../commands/reading/check-catalog.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog } from './context.ts';
import { EXIT } from './exit-codes.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface CheckOptions {
  readonly json?: boolean;
  readonly texts?: string;
  readonly drafting?: boolean;
  readonly release?: boolean;
  readonly terms?: string;
  readonly jobs?: string;
  readonly out?: string;
  readonly all?: boolean;
}

export function addCheck(program: Command): void {
  program
    .command('check')
    .description(
      'Read everything and say what is wrong: files, frozen tables, lineage, losses; or how texts are written',
    )
    .argument('[edition]', 'an edition or draft (default: all)')
    .option('--drafting', 'ask the drafting rules of the texts of that edition or draft')
    .option(
      '--release',
      'ask everything that has to be true before that draft is published; exit code 1 while it is not',
    )
    .option('--texts <file>', 'ask the drafting rules of a csv with the columns id and text; no catalog is needed')
    .option('--terms <file>', 'glossary for the drafting rules: csv with term, deprecated, use')
    .option('--jobs <file>', 'with --drafting: csv with number and state, to count where a requirement did not apply')
    .option('--out <file>', 'with --drafting or --texts: a csv with a line for each finding')
    .option('--all', 'with --drafting: also what was answered as intended, each with its answer')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate check
  fishplate check 2030 --drafting --out remarks.csv
  fishplate check 2030 --release                           what stops its publication, most serious first
  fishplate check --texts texts.csv --out remarks.csv      id,rule,place,message; place is start-end and the words

What the drafting rules say are notes: they do not change the exit code; ids of a table that are empty or stand twice
do (1). A remark that is intended is answered once, and is silent until the text changes:
  fishplate review answer 4.2.3 vague-word intended --because "the light plan gives the value" --edition 2030
That answers the question of the review against which the rule speaks, with all its remarks on the text;
applies-sometimes is answered at the work item.`,
    )
    .action(async (edition: string | undefined, options: CheckOptions, command: Command) => {
      refuseIgnored(edition, options);
      if (options.texts !== undefined) return checkTable(options.texts, options, command);
      if (options.release) return checkRelease(edition, options, command);
      if (options.drafting) return checkTextsOf(edition, options, command);
      const { checked, findings } = await checkCatalog(await readingCatalog(command), edition);
      if (options.json) printJson({ checked, findings });
      else printLines([`Checked ${checked.join(', ') || 'an empty catalog'}: ${count(findings.length, 'finding')}.`]);
      reportFindings(findings);
    });
}

/** What would be passed over in silence is refused: whoever names an edition beside a table thinks that it is read. */
function refuseIgnored(edition: string | undefined, options: CheckOptions): void {
  const { texts, drafting, release } = options;
  const refuse = (message: string) => {
    throw new CatalogError('BadArgument', message);
  };
  if (texts !== undefined) {
    if (edition !== undefined) {
      refuse(
        `--texts reads a table and no edition; leave out ${edition}, or read it with: check ${edition} --drafting`,
      );
    }
    if (drafting) refuse('--texts asks the drafting rules of a table already; leave out --drafting.');
    if (release) refuse('--release is about a draft, --texts about a table; give one of the two.');
  } else if (drafting && release) {
    refuse(
      '--release asks whether a draft may be published, --drafting how its texts are written; give one of the two.',
    );
  }
  const needed: readonly [keyof CheckOptions, boolean, string][] = [
    ['jobs', drafting === true, '--drafting'],
    ['all', drafting === true, '--drafting'],
    ['terms', drafting === true || texts !== undefined, '--drafting or --texts'],
    ['out', drafting === true || texts !== undefined, '--drafting or --texts'],
  ];
  for (const [name, used, where] of needed) {
    if (options[name] !== undefined && !used) {
      refuse(`--${name} goes with ${where}; give ${where} as well, or leave it out.`);
    }
  }
}

const SHOWN = 10;

async function checkRelease(edition: string | undefined, options: CheckOptions, command: Command): Promise<void> {
  if (edition === undefined) {
    throw new CatalogError(
      'BadArgument',
      'Name the draft that is to be published, as in: fishplate check 2030 --release.',
    );
  }
  const { releaseGate } = await import('../commands/releasing/release-gate.ts');
  const report = await releaseGate(portsOf(command), await readingCatalog(command), edition);
  if (report.stops.length > 0) process.exitCode = EXIT.findings;
  else if (report.remarks.some(f => f.severity === 'warning')) process.exitCode = EXIT.findings;
  if (options.json) return printJson(report);
  printLines([
    report.stops.length === 0
      ? `Nothing stops the publication of ${report.edition}.`
      : `${count(report.stops.length, 'finding')} ${report.stops.length === 1 ? 'stops' : 'stop'} the publication of ${report.edition}.`,
    ...report.answers.flatMap(({ asks, findings, stops }) => [
      '',
      `${stops > 0 ? `STOP ${thousands(stops)}` : findings.length > 0 ? 'look' : 'yes'}  ${asks}`,
      ...findings.slice(0, SHOWN).map(f => `  ${f.message}`),
      ...(findings.length > SHOWN ? [`  … and ${thousands(findings.length - SHOWN)} more; --json lists all.`] : []),
    ]),
  ]);
}

async function checkTable(texts: string, options: CheckOptions, command: Command): Promise<void> {
  // Loaded here, so that a plain check does not wait for the tables' and the language's code.
  const { checkTexts, remarksCsv } = await import('../commands/texts/check-texts.ts');
  const { terms, out, json } = options;
  const report = await checkTexts(portsOf(command), { texts, ...(terms && { terms }), ...(out && { out }) });
  reportFindings(report.findings);
  if (json) return printJson(report);
  if (out === undefined) process.stdout.write(remarksCsv(report.remarks));
  else printLines([told(report), `Written to ${out}.`]);
}

async function checkTextsOf(edition: string | undefined, options: CheckOptions, command: Command): Promise<void> {
  if (edition === undefined) {
    throw new CatalogError('BadArgument', 'Name the draft or edition to read, as in: fishplate check 2030 --drafting.');
  }
  const { checkDrafting, tellAnswer } = await import('../commands/texts/check-drafting.ts');
  const { remarksCsv } = await import('../commands/texts/check-texts.ts');
  const ports = portsOf(command);
  const { terms, jobs, out, all } = options;
  const request = { edition, ...(terms && { terms }), ...(jobs && { jobs }) };
  const report = await checkDrafting(ports, await readingCatalog(command), request);
  const { answered } = report;
  if (out !== undefined) {
    const silent = answered.map(({ remark, answer }) => ({
      ...remark,
      message: `${remark.message} ${tellAnswer(answer)}`,
    }));
    await ports.files.write(out, remarksCsv(all ? [...report.remarks, ...silent] : report.remarks));
  }
  const shown = [...report.findings, ...(all ? answered.map(a => a.finding) : [])];
  if (options.json) {
    return printJson({ checked: [edition], findings: shown, answered: answered.length });
  }
  printLines([
    told(report),
    ...(answered.length === 0
      ? []
      : [
          `${count(answered.length, 'remark')} more ${answered.length === 1 ? 'was' : 'were'} answered as intended${all ? '' : '; --all shows them with their answers'}.`,
        ]),
    ...(out === undefined ? [] : [`Written to ${out}.`]),
  ]);
  if (out === undefined) reportFindings(shown);
}

/** How many findings of each rule, the most first. */
function told({ texts, remarks }: { texts: number; remarks: readonly { rule: string }[] }): string {
  const byRule = new Map<string, number>();
  for (const { rule } of remarks) byRule.set(rule, (byRule.get(rule) ?? 0) + 1);
  const sorted = [...byRule].sort((a, b) => b[1] - a[1]);
  const rules = sorted.map(([rule, n]) => `${rule} ${n}`).join(', ');
  return `${count(texts, 'text')} read, ${count(remarks.length, 'finding')}${rules ? `: ${rules}` : ''}.`;
}
