import { type Finding, findingLine } from '../model/finding.ts';
import { EXIT } from './exit-codes.ts';

const SHOWN = 20;

/** Prints findings to the error stream, so that data on the output stream stays clean. */
export function printFindings(findings: readonly Finding[]): void {
  for (const finding of findings.slice(0, SHOWN)) process.stderr.write(`${findingLine(finding)}\n`);
  if (findings.length > SHOWN) process.stderr.write(`… and ${findings.length - SHOWN} more findings\n`);
}

/** Prints findings and sets the exit code: notes do not count, warnings and errors do. */
export function reportFindings(findings: readonly Finding[]): void {
  printFindings(findings);
  if (findings.some(f => f.severity !== 'note')) process.exitCode = EXIT.findings;
}

export function printLines(lines: readonly string[]): void {
  process.stdout.write(`${lines.join('\n')}\n`);
}

export function printJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}

/** `1 item`, `2 items`. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${thousands(n)} ${n === 1 ? one : many}`;
}

/** `12,345`. `toLocaleString` loads its language data first, which takes longer than a small crosswalk. */
export function thousands(n: number): string {
  return String(n).replace(/\B(?=(\d{3})+$)/g, ',');
}
