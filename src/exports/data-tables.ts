import { BASES, EXTENTS, FATES } from '../model/crosswalk.ts';

interface Field {
  readonly name: string;
  readonly type: 'string' | 'integer' | 'number' | 'boolean' | 'date';
  readonly description: string;
  readonly constraints?: { readonly required?: true; readonly unique?: true; readonly enum?: readonly string[] };
}

/** A table of the data package: its columns, what makes a row its own, and where its columns lead. */
export interface DataTable {
  readonly name: 'editions' | 'types' | 'items' | 'applies' | 'reasons' | 'decisions' | 'links' | 'duties';
  readonly title: string;
  readonly fields: readonly Field[];
  readonly key: readonly string[];
  readonly leadsTo: readonly (readonly [fields: readonly string[], table: string, there: readonly string[]])[];
  /** What it means that there is no row. */
  readonly whenEmpty?: string;
}

const must = (name: string, description: string, type: Field['type'] = 'string'): Field => ({
  name,
  type,
  description,
  constraints: { required: true },
});
const may = (name: string, description: string, type: Field['type'] = 'string'): Field => ({ name, type, description });
const oneOf = (name: string, description: string, words: readonly string[]): Field => ({
  name,
  type: 'string',
  description,
  constraints: { enum: words },
});

const EDITION = must('edition', 'name of the edition');
const DUTIES = ['same', 'stricter', 'relaxed', 'mixed', 'unclear'];

/**
 * The tables of the data package. An item's key joins edition and id in one cell: a key of two cells of which the second
 * may be empty is broken for some readers and fine for others.
 */
export const DATA_TABLES: readonly DataTable[] = [
  {
    name: 'editions',
    title: 'The two editions',
    key: ['edition'],
    leadsTo: [],
    fields: [
      EDITION,
      must('erratum', 'number of the newest erratum, 0 for none', 'integer'),
      may('published', 'day of publication', 'date'),
      may('effective', 'day from which it is in force', 'date'),
      may('transition_ends', 'last day on which the edition before may still be followed', 'date'),
    ],
  },
  {
    name: 'types',
    title: 'Installation types of each edition',
    whenEmpty: 'the catalog tells no installation types apart',
    key: ['edition', 'type'],
    leadsTo: [[['edition'], 'editions', ['edition']]],
    fields: [EDITION, must('type', 'code of the installation type'), must('name', 'its name')],
  },
  {
    name: 'items',
    title: 'Items of both editions, in their order, with their texts',
    key: ['item'],
    leadsTo: [
      [['edition'], 'editions', ['edition']],
      [['parent'], 'items', ['item']],
    ],
    fields: [
      must('item', 'edition/id'),
      EDITION,
      must('id', 'stable id; its meaning may differ from edition to edition'),
      may('number', 'printed number; may be empty or shared'),
      may('parent', 'key of the item above; empty at the top'),
      must('level', 'depth in the outline, 1 at the top', 'integer'),
      must('level_name', 'name of the level'),
      may('title', 'title'),
      may('text', 'what the item says'),
      must('obliges', 'whether it is a requirement', 'boolean'),
    ],
  },
  {
    name: 'applies',
    title: 'Installation types that each item applies to, inherited ones included',
    whenEmpty: 'the catalog tells no installation types apart, so each item holds for all work',
    key: ['item', 'type'],
    leadsTo: [
      [['item'], 'items', ['item']],
      [['edition', 'type'], 'types', ['edition', 'type']],
    ],
    fields: [must('item', 'edition/id'), EDITION, must('type', 'code of the installation type')],
  },
  {
    name: 'reasons',
    title: 'Reasons of withdrawals',
    whenEmpty: 'nothing was withdrawn, and the catalog defines no reasons',
    key: ['reason'],
    leadsTo: [],
    fields: [must('reason', 'code'), may('meaning', 'the code in words')],
  },
  {
    name: 'decisions',
    title: 'Decisions that hold for the whole of the newer edition',
    whenEmpty: 'no edition-wide decision is on record',
    key: ['decision'],
    leadsTo: [],
    fields: [
      must('decision', 'id'),
      must('title', 'what was decided'),
      must('reason', 'why'),
      must('authority', 'who decided'),
      may('governs', 'what governs now'),
      must('scope', 'what it covers'),
      may('date', 'day of the decision', 'date'),
    ],
  },
  {
    name: 'links',
    title: 'What became of each item: a row a link; without a source new, without an heir withdrawn or unaccounted',
    whenEmpty: 'no item of either edition has a link',
    key: ['link'],
    leadsTo: [
      [['from'], 'items', ['item']],
      [['to'], 'items', ['item']],
      [['withdrawn_for'], 'reasons', ['reason']],
      [['decision'], 'decisions', ['decision']],
      [['points_to'], 'items', ['item']],
    ],
    fields: [
      must('link', 'counts the links, from 1', 'integer'),
      must('group', 'links of one regrouping share it; it answers for no single item', 'integer'),
      oneOf('fate', "the old item's own fate, or new", FATES),
      may('from', 'key of the old item'),
      may('to', 'key of the new item'),
      oneOf('from_extent', 'how much of the old item the link covers', EXTENTS),
      oneOf('to_extent', 'how much of the new item the link covers', EXTENTS),
      may('renumbered', 'whether the printed number changed', 'boolean'),
      may('moved', 'whether it stands under another heading', 'boolean'),
      oneOf('wording', 'how the words changed', ['same', 'editorial', 'substantive']),
      oneOf(
        'duty',
        'what the text asks of the types of the older item that go on, together; see the table duties',
        DUTIES,
      ),
      oneOf('applies_to', 'how the installation types changed', ['same', 'wider', 'narrower', 'shifted']),
      oneOf('basis', 'where the link comes from', BASES),
      may('confidence', '0 to 1', 'number'),
      may('withdrawn_for', 'code of the reason, of a withdrawal only'),
      may('reason', 'why two items are joined, as it was recorded'),
      may('governs', 'what governs now'),
      may('decision', 'decision that it rests on'),
      may('points_to', 'key of an item that the reader is pointed to; no heir'),
      may('note', 'what else a reader has to know'),
    ],
  },
  {
    name: 'duties',
    title: 'What each link asks of each installation type of the older edition',
    whenEmpty: 'the older edition tells no installation types apart; what a link asks stands in links, column duty',
    key: ['link', 'type'],
    leadsTo: [
      [['link'], 'links', ['link']],
      [['edition', 'type'], 'types', ['edition', 'type']],
    ],
    fields: [
      must('link', 'the link', 'integer'),
      must('edition', 'the older edition'),
      must('type', 'code of the installation type'),
      oneOf('duty', 'stricter asks more; ends: no longer covered by this heir', [...DUTIES, 'ends']),
    ],
  },
];
