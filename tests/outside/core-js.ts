import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

export interface CitedClause {
  readonly number: string;
  /** As the comment spells it, with its parameters. */
  readonly title: string;
}

const folder = join(dirname(createRequire(import.meta.url).resolve('core-js-2/package.json')), 'modules');

/**
 * The comment lines of core-js 2.6.12, modules/*.js, that cite a clause of the 2015 edition with its title beside it:
 * `// 22.1.3.3 Array.prototype.copyWithin(target, start, end = this.length)`.
 */
export function citingLines(): string[] {
  const files = readdirSync(folder).filter(name => name.endsWith('.js'));
  const lines = files.flatMap(name => readFileSync(join(folder, name), 'utf8').split('\n'));
  return lines.flatMap(line => (citedIn(line) ? [line.slice(line.indexOf('//'))] : []));
}

/** Of `20.3.4.36 / 15.9.5.43 Date.prototype.toISOString()` the first number is of 2015, the second of edition 5.1. */
export function citedIn(line: string): CitedClause | undefined {
  const cited = /\/\/\s*(?:getting tag from )?((?:[A-Z]|\d+)(?:\.\d+)+)(?:\s*\/\s*[\d.]+)?\s+(.*\S)/.exec(line);
  return cited ? { number: cited[1]!, title: cited[2]! } : undefined;
}

/**
 * What a clause is called, whoever spells it: without its parameters, which core-js writes in its own way, and with one
 * spelling of well-known symbols (`[ @@iterator ]` up to 2022, `[ %Symbol.iterator% ]` now).
 */
export function clauseName(title: string): string {
  return title
    .replace(/%Symbol\.(\w+)%/g, '@@$1')
    .replace(/\s*\[\s*@@(\w+)\s*\]/g, '[@@$1]')
    .replace(/\s*\(.*$/, '')
    .replace(/\s+/g, ' ')
    .trim();
}
