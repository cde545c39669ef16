import type { Settings } from '../../model/settings.ts';
import { type DraftForm, daySaid, needed, refuse, said, WHY, whySaid } from './draft-form.ts';

/** What is done to a draft as a whole: decisions, names, numbers. */

export const decide: DraftForm = {
  word: 'Decide',
  says: 'A decision that holds for the whole edition goes on record. Withdrawals and settled losses can refer to it.',
  heading: name => `Decide for all of ${name}`,
  fields: () => [
    { name: 'title', label: 'What was decided', kind: 'line', value: [], required: true },
    { name: 'reason', label: 'Because', kind: 'text', rows: 3, value: [], required: true },
    { name: 'authority', label: 'Who decided', kind: 'line', value: [], required: true },
    {
      name: 'scope',
      label: 'What it covers',
      hint: 'for example: every clause about ladders and scaffolds',
      kind: 'text',
      rows: 2,
      value: [],
      required: true,
    },
    { name: 'governs', label: 'What governs instead', hint: 'if something does', kind: 'line', value: [] },
    { name: 'date', label: 'Day on which it was decided', kind: 'date', value: [] },
    {
      name: 'id',
      label: 'Short name',
      hint: 'letters, digits and hyphens, for example worker-safety; left empty: made from what was decided',
      kind: 'line',
      value: [],
    },
  ],
  operation: (_, typed) => {
    const title = needed(typed, 'title', 'Say what was decided.');
    const governs = said(typed, 'governs');
    const date = daySaid(typed, 'date', 'the day on which it was decided');
    const decision = {
      id: said(typed, 'id') || shortNameOf(title),
      title,
      reason: needed(typed, 'reason', 'Say why it was decided.'),
      authority: needed(typed, 'authority', 'Say who decided.'),
      scope: needed(typed, 'scope', 'Say what it covers.'),
      ...(governs ? { governs } : {}),
      ...(date ? { date } : {}),
    };
    return { op: 'decide', decision };
  },
};

const LONGEST_NAME = 40;

/** `Worker safety is left to the law` becomes `worker-safety-is-left-to-the-law`. */
function shortNameOf(title: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
  let name = '';
  for (const word of words) {
    if (`${name}-${word}`.length > LONGEST_NAME) break;
    name = name === '' ? word : `${name}-${word}`;
  }
  if (name === '') throw refuse('Give it a short name of letters, digits and hyphens.');
  return name;
}

export const rename: DraftForm = {
  word: 'Rename',
  says: 'An installation type, a level or a glossary term is called otherwise. Texts that say the old word stay as they are.',
  heading: name => `Rename in ${name}`,
  fields: ({ settings, terms }) => [
    {
      name: 'what',
      label: 'What',
      kind: 'choice',
      value: [],
      required: true,
      options: [
        { value: '', word: 'choose one' },
        ...settings.installationTypes.map(t => ({ value: `type ${t.id}`, word: t.name, group: 'Installation types' })),
        ...settings.levels.map(l => ({ value: `level ${l.name}`, word: l.name, group: 'Levels' })),
        ...terms.map(term => ({ value: `term ${term}`, word: term, group: 'Glossary terms' })),
      ],
    },
    { name: 'to', label: 'Its name from now on', kind: 'line', value: [], required: true },
    WHY,
  ],
  operation: (_, typed) => {
    const [, what, name] =
      /^(type|level|term) (.+)$/s.exec(needed(typed, 'what', 'Choose what gets another name.')) ?? [];
    if (what === undefined || name === undefined) throw refuse('Choose what gets another name from the list.');
    const to = needed(typed, 'to', 'Give the name from now on.');
    return { op: 'rename', what: what as 'type' | 'level' | 'term', name, to, ...whySaid(typed) };
  },
};

export const renumber: DraftForm = {
  word: 'Renumber',
  says: 'Every item is numbered by its place, without gaps, from now on. Numbers that were kept as printed are given up; the lineage says which became which.',
  heading: name => `Renumber ${name}`,
  fits: ({ settings }) => !numberedByPlace(settings),
  fields: () => [WHY],
  operation: ({ name, settings }, typed) => {
    if (!numberedByPlace(settings)) return { op: 'renumber', ...whySaid(typed) };
    throw refuse(`${name} is numbered by place already, without gaps; nothing is to be renumbered.`);
  },
};

const numberedByPlace = ({ numbering, levels }: Settings) =>
  numbering.numbersUnique && levels.every((_, n) => !['printed', undefined].includes(numbering.levels[n]?.style));
