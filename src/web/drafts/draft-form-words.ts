import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';
import type { Item, Verification, VerificationMoment } from '../../model/item.ts';
import { MOMENT_WORDS } from '../../model/said-words.ts';
import { type Field, needed, type OperationForm, refuse, said, type Typed, WHY, whySaid } from './draft-form.ts';

/** What changes words: one item said otherwise, several made one, one made several. */

const PLAIN = ['text', 'purpose', 'outcome', 'caution'] as const;

export const VERIFIED: Field = {
  name: 'verified',
  label: 'Verified',
  hint: `a line each, for example "${MOMENT_WORDS['before-covering']}: measure the fall"; or ${MOMENT_WORDS['at-completion']}, ${MOMENT_WORDS['by-document']}`,
  kind: 'text',
  rows: 3,
  value: [],
};

export const reword: OperationForm = {
  word: 'Reword',
  says: 'The item says the same in other words, or more, or less. Its number and place stay.',
  fields: (_, item) => [
    { name: 'text', label: 'Text', kind: 'text', rows: 5, value: [item.text ?? ''] },
    { name: 'purpose', label: 'Purpose', kind: 'text', rows: 2, value: [item.purpose ?? ''] },
    { name: 'outcome', label: 'Outcome', kind: 'text', rows: 2, value: [item.outcome ?? ''] },
    { name: 'caution', label: 'Caution', kind: 'text', rows: 2, value: [item.caution ?? ''] },
    { ...VERIFIED, value: [verifiedLines(item.verified)] },
    {
      name: 'references',
      label: 'References',
      hint: 'a line each',
      kind: 'text',
      rows: 2,
      value: [(item.references ?? []).join('\n')],
    },
    WHY,
  ],
  operation: (_, item, typed) => {
    const to: Record<string, unknown> = {};
    for (const field of PLAIN) {
      const now = said(typed, field);
      if (now !== (item[field] ?? '').trim()) to[field] = now;
    }
    if (said(typed, 'verified') !== verifiedLines(item.verified)) to.verified = verifiedIn(said(typed, 'verified'));
    const references = linesOf(said(typed, 'references'));
    if (references.join('\n') !== (item.references ?? []).join('\n')) to.references = references;
    if (Object.keys(to).length === 0) throw refuse('Nothing was changed; change a field, or go back to the item.');
    return { op: 'reword', id: item.id, to, ...whySaid(typed) };
  },
};

export const retitle: OperationForm = {
  word: 'Retitle',
  says: 'The item gets another title. Its words, number and place stay.',
  fields: (_, item) => [{ name: 'title', label: 'Title', kind: 'line', value: [item.title], required: true }, WHY],
  operation: (_, item, typed) => {
    const title = needed(typed, 'title', 'Give the title.');
    if (title === item.title)
      throw refuse(`It is called "${title}" already; change the title, or go back to the item.`);
    return { op: 'retitle', id: item.id, title, ...whySaid(typed) };
  },
};

export const incorporate: OperationForm = {
  word: 'Incorporate',
  says: "The item says what an outside standard says, in that standard's words. Source and permission go on record with it.",
  fields: () => [
    { name: 'text', label: 'Wording of the outside standard', kind: 'text', rows: 5, value: [], required: true },
    {
      name: 'source',
      label: 'Which standard, and which clause of it',
      hint: 'for example: Gutter code, clause 5.2',
      kind: 'line',
      value: [],
      required: true,
    },
    { name: 'edition', label: 'Its edition', hint: 'for example: 2023', kind: 'line', value: [], required: true },
    { name: 'permission', label: 'Who allowed it, and when', kind: 'line', value: [], required: true },
    WHY,
  ],
  operation: (_, item, typed) => ({
    op: 'incorporate',
    id: item.id,
    text: needed(typed, 'text', 'Copy the wording that is taken in.'),
    source: needed(typed, 'source', 'Name the standard and its clause.'),
    edition: needed(typed, 'edition', 'Name the edition of that standard.'),
    permission: needed(typed, 'permission', 'Say who allowed it, and when.'),
    ...whySaid(typed),
  }),
};

export const combine: OperationForm = {
  word: 'Combine',
  says: 'Other items become part of this one. It applies to every type that one of them applied to, and goes on under its own number.',
  fields: (_, item) => [
    {
      name: 'others',
      label: 'Numbers of the others',
      hint: 'with commas between them',
      kind: 'line',
      value: [],
      required: true,
    },
    { name: 'title', label: 'Title from now on', kind: 'line', value: [item.title], required: true },
    {
      name: 'text',
      label: 'Text from now on',
      hint: 'left empty: what each of them says, one after the other',
      kind: 'text',
      rows: 5,
      value: [],
    },
    WHY,
  ],
  operation: (_, item, typed) => {
    const ids = said(typed, 'others')
      .split(/[\s,;]+/)
      .filter(Boolean);
    if (ids.length === 0) throw refuse('Name at least one other item by its number.');
    const [title, text] = [said(typed, 'title'), said(typed, 'text')];
    const to = { ...(title && title !== item.title ? { title } : {}), ...(text ? { text } : {}) };
    const words = Object.keys(to).length > 0 ? { to } : {};
    return { op: 'combine', ids: [item.id, ...ids], into: item.id, ...words, ...whySaid(typed) };
  },
};

const PARTS = [2, 3] as const;

export const split: OperationForm = {
  word: 'Split',
  says: 'The item becomes several. It keeps what the first part says; the others stand right after it under numbers of their own.',
  fields: (draft, item) => [
    { name: 'title1', label: 'Title of the first part', kind: 'line', value: [item.title], required: true },
    { name: 'text1', label: 'Text of the first part', kind: 'text', rows: 4, value: [item.text ?? ''] },
    ...typesField(draft, item, 1),
    ...PARTS.flatMap((n): Field[] => {
      const which = n === 2 ? 'second' : 'third';
      const hint = n === 2 ? {} : { hint: 'left empty: there is none' };
      return [
        { name: `title${n}`, label: `Title of the ${which} part`, kind: 'line', value: [], required: n === 2, ...hint },
        { name: `text${n}`, label: `Text of the ${which} part`, kind: 'text', rows: 4, value: [] },
        ...typesField(draft, item, n),
      ];
    }),
    WHY,
  ],
  operation: (draft, item, typed) => {
    const gives = PARTS.flatMap(n => {
      const [title, text] = [said(typed, `title${n}`), said(typed, `text${n}`)];
      if (title === '' && text === '') return [];
      if (title === '') throw refuse(`Give the ${n === 2 ? 'second' : 'third'} part a title.`);
      return [{ title, ...(text ? { text } : {}), ...typesSaid(draft, item, typed, n) }];
    });
    if (gives.length === 0) throw refuse('Say what the second part is, with its title and text.');
    const [title, text] = [said(typed, 'title1'), said(typed, 'text1')];
    const keeps = {
      ...(title && title !== item.title ? { title } : {}),
      ...(text && text !== item.text ? { text } : {}),
      ...typesSaid(draft, item, typed, 1),
    };
    return { op: 'split', id: item.id, keeps, gives, ...whySaid(typed) };
  },
};

/** The installation types of a part: none is asked where the item has one, or the catalog knows none. */
function typesField({ settings, places }: DeskDraft, item: Item, part: number): Field[] {
  const types = places.types(item.id);
  if (types.length < 2) return [];
  const options = settings.installationTypes
    .filter(t => types.includes(t.id))
    .map(t => ({ value: t.id, word: t.name }));
  const which = ['first', 'second', 'third'][part - 1];
  return [{ name: `types${part}`, label: `The ${which} part applies to`, kind: 'ticks', value: types, options }];
}

function typesSaid({ places }: DeskDraft, item: Item, typed: Typed, part: number) {
  const types = places.types(item.id);
  if (types.length < 2) return {};
  const chosen = types.filter(t => typed[`types${part}`]?.includes(t));
  if (chosen.length === 0) throw refuse('Every part has to apply to at least one installation type.');
  return chosen.length === types.length ? {} : { appliesTo: chosen };
}

const linesOf = (text: string) =>
  text
    .split('\n')
    .map(line => line.trim())
    .filter(Boolean);

function verifiedLines(verified: readonly Verification[] = []): string {
  return verified.map(v => `${MOMENT_WORDS[v.when]}${v.how ? `: ${v.how}` : ''}`).join('\n');
}

/** Lines of the field as what they say; throws BadArgument for one that names no moment. */
export function verifiedIn(text: string): Verification[] {
  return linesOf(text).map(line => {
    const moment = (Object.keys(MOMENT_WORDS) as VerificationMoment[]).find(when =>
      line.toLowerCase().startsWith(MOMENT_WORDS[when].toLowerCase()),
    );
    const rest = moment === undefined ? '' : line.slice(MOMENT_WORDS[moment].length);
    if (moment === undefined || !/^\s*(?::|$)/.test(rest)) {
      throw refuse(
        `"${line}" does not say when it is verified; begin the line with ${Object.values(MOMENT_WORDS).join(', ')}, and a colon.`,
      );
    }
    const how = rest.replace(/^\s*:/, '').trim();
    return { when: moment, ...(how ? { how } : {}) };
  });
}
