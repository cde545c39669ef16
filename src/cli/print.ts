import { counted } from '../model/counted.ts';
import { type Finding, findingLine } from '../model/finding.ts';
import { EXIT } from './exit-codes.ts';

const SHOWN = 20;

/** Prints findings to the error stream, so that data on the output stream stays clean. */
export function printFindings(findings: readonly Finding[]): void {
  for (const finding of findings.slice(0, SHOWN)) process.stderr.write(`${findingLine(finding)}\n`);
  if (findings.length > SHOWN) process.stderr.write(`… and ${counted(findings.length - SHOWN, 'more finding')}\n`);
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

export { counted as count, thousands } from '../model/counted.ts';
