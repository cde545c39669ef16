import { capital } from '../../model/said-words.ts';
import { MILESTONES } from '../../release/schedule.ts';
import { type DraftForm, daySaid, refuse } from './draft-form.ts';

/** The days of a draft: one field a milestone; an emptied one takes its day away. */
export const days: DraftForm = {
  word: 'Set days',
  says: 'When it is sent out, published and in force. A day that is emptied is taken away.',
  heading: name => `Days of ${name}`,
  fields: ({ header }) =>
    MILESTONES.map(([name, words]) => ({
      name,
      label: capital(words),
      kind: 'date',
      value: [header.dates[name] ?? ''],
    })),
  operation: ({ header }, typed) => {
    const changed = MILESTONES.flatMap(([name, words]) => {
      const day = daySaid(typed, name, `the day of "${words}"`);
      return day === (header.dates[name] ?? '') ? [] : [[name, day] as const];
    });
    if (changed.length === 0) throw refuse('No day was changed; change one, or go back.');
    return { op: 'set-days', days: Object.fromEntries(changed) };
  },
};
