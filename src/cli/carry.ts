import type { Command } from 'commander';
import { addCarryDocs } from './carry-docs.ts';
import { addCarryJobs } from './carry-jobs.ts';
import { addCarryLocal } from './carry-local.ts';
import { addCarryUndo } from './carry-undo.ts';

export function addCarry(program: Command): void {
  const carry = program
    .command('carry')
    .description('Carry work in progress from one edition to another; originals stay untouched');
  addCarryJobs(carry);
  addCarryDocs(carry);
  addCarryLocal(carry);
  addCarryUndo(carry);
}
