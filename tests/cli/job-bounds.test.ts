import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import { expect, it } from 'vitest';
import { addCarryJobs } from '../../src/cli/carry-jobs.ts';
import { WORKBOOK_LIMITS } from '../../src/tables/open-workbook.ts';

it('the bound of a workbook stands in the help of carry jobs and in the README, as it is', () => {
  const carry = new Command('carry');
  addCarryJobs(carry);
  let help = '';
  carry.commands[0]!.configureOutput({ writeOut: text => (help += text) }).outputHelp();
  const readme = readFileSync(join(import.meta.dirname, '..', '..', 'README.md'), 'utf8');
  for (const text of [help, readme]) {
    expect(text).toContain(`${WORKBOOK_LIMITS.sheetBytes / 2 ** 20} MB unpacked`);
    expect(text).toContain(`${WORKBOOK_LIMITS.cells / 1e6} million filled cells`);
  }
});
