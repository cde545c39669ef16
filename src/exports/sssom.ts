import { stringify } from 'csv-stringify/sync';
import type { Link } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { typeName } from '../model/settings.ts';
import { type CrosswalkLine, crosswalkLines } from './crosswalk-lines.ts';
import { dataNames, localName, NO_ADDRESS } from './data-names.ts';
import type { Publication } from './publication.ts';

/** The columns, in the order of the SSSOM 1.1 slots; those behind `comment` are ours and defined in the header. */
export const SSSOM_COLUMNS = [
  'record_id',
  'subject_id',
  'subject_label',
  'predicate_id',
  'object_id',
  'object_label',
  'mapping_justification',
  'mapping_cardinality',
  'mapping_date',
  'confidence',
  'comment',
  'group_id',
  'fate',
  'subject_extent',
  'object_extent',
  'duty',
  'ends_for',
  'reason_code',
  'effective_date',
] as const;

const OURS: readonly (readonly [slot: string, type: string])[] = [
  ['group_id', 'xsd:integer'],
  ['fate', 'xsd:string'],
  ['subject_extent', 'xsd:string'],
  ['object_extent', 'xsd:string'],
  ['duty', 'xsd:string'],
  ['ends_for', 'xsd:string'],
  ['reason_code', 'xsd:string'],
  ['effective_date', 'xsd:date'],
];

/** The standard's own word for a mapping set whose publisher states no licence. */
const NO_LICENSE = 'https://w3id.org/sssom/license/unspecified';

/**
 * The crosswalk as a mapping set in SSSOM TSV 1.1. A row is a pair; a regrouping is told by `group_id`.
 *
 * An item that ends for some installation types and goes on for others has no row of its own for the end: `NoTermFound`
 * beside its heirs would deny them. Their rows say it under `ends_for`.
 */
export function writeSssom(publication: Publication): string {
  const lines = sssomLines(publication);
  const cells = lines.map(line => rowOf(publication, line, cardinality(line, lines)));
  const table = stringify([SSSOM_COLUMNS, ...cells], { delimiter: '\t', record_delimiter: '\n' });
  return header(publication) + table;
}

/** The lines of the crosswalk that have a row. */
function sssomLines({ joint, marks }: Publication): CrosswalkLine[] {
  const goesOn = (entry: Entry | undefined) => entry && joint.leaving(entry.id).some(l => l.to !== null);
  return crosswalkLines(joint, marks).filter(l => l.to !== undefined || !goesOn(l.from));
}

function header(publication: Publication): string {
  const { joint } = publication;
  const { from, to } = joint;
  const names = dataNames(publication.base ?? NO_ADDRESS);
  const [a, b] = [from.header.name, to.header.name];
  const date = to.header.dates.published;
  const lines = [
    'sssom_version: "1.1"',
    'curie_map:',
    `  map: ${quoted(`${names.crosswalk(a, b)}/mapping/`)}`,
    `  new: ${quoted(names.items(b))}`,
    `  old: ${quoted(names.items(a))}`,
    '  semapv: "https://w3id.org/semapv/vocab/"',
    '  skos: "http://www.w3.org/2004/02/skos/core#"',
    '  sssom: "https://w3id.org/sssom/"',
    `  word: ${quoted(names.vocabulary)}`,
    '  xsd: "http://www.w3.org/2001/XMLSchema#"',
    `mapping_set_id: ${quoted(names.crosswalk(a, b))}`,
    `mapping_set_version: ${quoted(`${b}.${to.header.erratum}`)}`,
    `mapping_set_title: ${quoted(`${to.settings.title}: ${a} to ${b}`)}`,
    `license: ${quoted(NO_LICENSE)}`,
    `subject_source: ${quoted(names.edition(a))}`,
    `subject_source_version: ${quoted(a)}`,
    `object_source: ${quoted(names.edition(b))}`,
    `object_source_version: ${quoted(b)}`,
    ...(date ? [`mapping_date: ${quoted(date)}`] : []),
    'extension_definitions:',
    ...OURS.flatMap(([slot, type]) => [
      `  - slot_name: ${slot}`,
      `    property: ${quoted(`word:${slot}`)}`,
      `    type_hint: ${quoted(type)}`,
    ]),
  ];
  return lines.map(line => `#${line}\n`).join('');
}

/** A JSON string is a YAML string, whatever a title holds. */
const quoted = (text: string) => JSON.stringify(text);

function rowOf({ joint, line: way }: Publication, line: CrosswalkLine, counted: string): string[] {
  const { from, to, link } = line;
  const own = to ? [] : (link?.types ?? []);
  const ends = from && to ? joint.leaving(from.id).flatMap(l => (l.to === null ? (l.types ?? []) : [])) : own;
  const steps = way.length - 1 - way.findIndex(e => e.index.header.name === joint.from.header.name);
  const [a, b] = [from ? localName(from.id) : '', to ? localName(to.id) : ''];
  return [
    // An item may end for several reasons, each for types of its own: a row each, and no two of one name.
    `map:${a}..${b}${own.map(t => `..${localName(t)}`).join('')}`,
    from ? `old:${a}` : NO_TERM,
    labelOf(from),
    predicateOf(line, counted),
    to ? `new:${b}` : NO_TERM,
    labelOf(to),
    justificationOf(link, steps),
    counted,
    link?.date ?? '',
    line.confidence === undefined ? '' : String(line.confidence),
    oneLine([
      to && line.reason && `${line.reason}.`,
      line.note,
      link?.by && `Recorded by ${link.by}.`,
      link && steps === 1 && isUnrecorded(link) ? (link.from === null ? NO_SOURCE : SAME_ID) : undefined,
    ]),
    String(line.row),
    line.fate,
    line.fromExtent,
    line.toExtent,
    line.duty,
    [...new Set(ends)].map(t => typeName(joint.from.settings, t)).join(', '),
    to ? '' : line.reason,
    joint.to.header.dates.effective ?? '',
  ];
}

const NO_TERM = 'sssom:NoTermFound';

const labelOf = (entry: Entry | undefined) => (entry ? oneLine([entry.number, entry.title]) : '');

const oneLine = (parts: readonly (string | undefined)[]) => parts.filter(Boolean).join(' ').replace(/\s+/g, ' ').trim();

/**
 * `exactMatch` is transitive, so it is said only where nothing but number and place changed. `A narrowMatch B` says that
 * B is the narrower one: all of a small item went into part of a larger one is `broadMatch`.
 */
export function predicateOf(line: CrosswalkLine, counted: string): string {
  const { fromExtent, toExtent } = line;
  if (!line.from || !line.to) return 'skos:relatedMatch';
  if (fromExtent === 'all' && toExtent === 'all') {
    const same = line.wording !== 'substantive' && line.duty === 'same' && line.appliesTo === 'same';
    return same && counted === '1:1' ? 'skos:exactMatch' : 'skos:closeMatch';
  }
  if (fromExtent === 'all' && toExtent === 'part') return 'skos:broadMatch';
  if (fromExtent === 'part' && toExtent === 'all') return 'skos:narrowMatch';
  return 'skos:relatedMatch';
}

/**
 * What a row rests on, in a term of SEMAPV (semapv-terms.tsv of mapping-commons/semantic-mapping-vocabulary). That an id
 * is the same, or is in no older edition, is a comparison of signs, which nobody judged: calling it curation would
 * claim a curator for every untouched item.
 *
 *   equal id, or an id that is new, and no record ... LexicalMatching
 *   a record of lineage ............................. ManualMappingCuration
 *   inferred, then answered by a person ............. MappingReview
 *   inferred by the matcher, words and outline ...... CompositeMatching
 *   over editions between ........................... MappingChaining
 *   gone without a record ........................... UnspecifiedMatching
 */
function justificationOf(link: Link | undefined, steps: number): string {
  if (!link) return 'semapv:UnspecifiedMatching';
  if (steps > 1) return 'semapv:MappingChaining';
  if (link.basis === 'inferred') return 'semapv:CompositeMatching';
  if (link.basis === 'confirmed') return 'semapv:MappingReview';
  return isUnrecorded(link) ? 'semapv:LexicalMatching' : 'semapv:ManualMappingCuration';
}

const SAME_ID = 'Same id in both editions; no record of lineage says more.';
const NO_SOURCE = 'Its id is not in the older edition, and no record of lineage names a source.';

/** Whether a link follows from the ids alone: a record that says nothing more than they do is no record either. */
function isUnrecorded({ from, to, basis, by, date, reason, note, decision }: Link): boolean {
  const told = [by, date, reason, note, decision].some(said => said !== undefined);
  return basis === 'declared' && !told && (from === null || from === to);
}

const counts = new WeakMap<readonly CrosswalkLine[], Map<string, number>>();

/** How many subjects an object has, and how many objects a subject, in the whole set: `n:1` is a merger. */
function cardinality(line: CrosswalkLine, all: readonly CrosswalkLine[]): string {
  if (!line.from) return '0:1';
  if (!line.to) return '1:0';
  let known = counts.get(all);
  if (!known) {
    known = new Map();
    for (const { from, to } of all) {
      if (!from || !to) continue;
      for (const key of [`from ${from.id}`, `to ${to.id}`]) known.set(key, (known.get(key) ?? 0) + 1);
    }
    counts.set(all, known);
  }
  const many = (key: string) => (known.get(key)! > 1 ? 'n' : '1');
  return `${many(`to ${line.to.id}`)}:${many(`from ${line.from.id}`)}`;
}
