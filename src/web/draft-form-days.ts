import type { DeskDraft } from '../commands/draft-desk.ts';
import type { WrittenOperation } from '../commands/draft-operations.ts';
import { capital } from '../model/said-words.ts';
import { MILESTONES } from '../release/schedule.ts';
import { daySaid, type Field, refuse, type Typed } from './draft-form.ts';

/** The days of a draft as a form: one field a milestone; an emptied one takes its day away. */
export function dayFields({ header }: DeskDraft): readonly Field[] {
  return MILESTONES.map(([name, words]) => ({
    name,
    label: capital(words),
    kind: 'date',
    value: [header.dates[name] ?? ''],
  }));
}

export function daysOperation({ header }: DeskDraft, typed: Typed): WrittenOperation {
  const days = MILESTONES.flatMap(([name, words]) => {
    const day = daySaid(typed, name, `the day of "${words}"`);
    return day === (header.dates[name] ?? '') ? [] : [[name, day] as const];
  });
  if (days.length === 0) throw refuse('No day was changed; change one, or go back.');
  return { op: 'set-days', days: Object.fromEntries(days) };
}
