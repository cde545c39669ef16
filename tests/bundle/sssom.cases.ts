import { parse } from 'csv-parse/sync';
import { load } from 'js-yaml';
import { beforeAll, describe, expect, it } from 'vitest';
import { addressIn } from '../../src/commands/bundles/publish-bundle.ts';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { crosswalkLines } from '../../src/exports/crosswalk-lines.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { predicateOf, writeSssom } from '../../src/exports/sssom.ts';
import { demoPublication } from './publication.ts';

/** The slots of SSSOM 1.1 that we may use, as VOCABULARY.md lists them. */
const SLOTS =
  'record_id subject_id subject_label predicate_id predicate_modifier object_id object_label mapping_justification author_id reviewer_id mapping_cardinality mapping_date review_date confidence similarity_score similarity_measure comment'.split(
    ' ',
  );

/** The terms of SEMAPV that SSSOM takes as a justification (semapv-terms.tsv, children of Matching, and MappingReview). */
const JUSTIFICATIONS =
  'LexicalMatching LogicalReasoning CompositeMatching UnspecifiedMatching SemanticSimilarityThresholdMatching LexicalSimilarityThresholdMatching StructuralMatching InstanceBasedMatching BackgroundKnowledgeBasedMatching MappingChaining MappingInversion MappingReview ManualMappingCuration'.split(
    ' ',
  );

type Row = Record<string, string>;
interface Header {
  readonly mapping_set_id: string;
  readonly license: string;
  readonly curie_map: Record<string, string>;
  readonly mapping_date: unknown;
  readonly extension_definitions: readonly { readonly slot_name: string; readonly property: string }[];
}

function read(text: string): { header: Header; columns: string[]; rows: Row[] } {
  const lines = text.split('\n');
  const from = lines.findIndex(l => !l.startsWith('#'));
  const yaml = lines.slice(0, from).map(l => l.slice(1));
  const rows = parse(lines.slice(from).join('\n'), { delimiter: '\t', columns: true }) as Row[];
  return { header: load(yaml.join('\n')) as Header, columns: lines[from]!.split('\t'), rows };
}

let publication: Publication;
let set: ReturnType<typeof read>;
beforeAll(async () => {
  publication = await demoPublication();
  set = read(writeSssom(publication));
}, 120_000);

describe('the crosswalk as a mapping set (SSSOM)', () => {
  it('has a YAML header with what the standard requires, and defines every column of ours', () => {
    const { header, columns } = set;
    expect(header.mapping_set_id).toMatch(/^https:\/\//);
    expect(header.license).toMatch(/^https:\/\//);
    const ours = header.extension_definitions.map(e => e.slot_name);
    expect(columns.filter(c => !SLOTS.includes(c))).toEqual(ours);
    const known = columns.filter(c => SLOTS.includes(c));
    expect(known).toEqual(SLOTS.filter(s => known.includes(s)));
    for (const { property } of header.extension_definitions) {
      expect(header.curie_map).toHaveProperty(property.split(':')[0]!);
    }
  });

  it('uses no prefix that the header does not explain, and no record twice', () => {
    const ids = ['record_id', 'subject_id', 'predicate_id', 'object_id', 'mapping_justification'];
    for (const row of set.rows) {
      for (const id of ids) expect(row[id]).toMatch(/^[a-z]+:[^\s|]+$/i);
      for (const id of ids) expect(set.header.curie_map).toHaveProperty(row[id]!.split(':')[0]!);
    }
    expect(new Set(set.rows.map(r => r.record_id)).size).toBe(set.rows.length);
  });

  it('counts subjects and objects as they stand in the rows', () => {
    const pairs = set.rows.filter(r => !`${r.subject_id}${r.object_id}`.includes('NoTermFound'));
    const times = (column: string, id: string) => pairs.filter(r => r[column] === id).length;
    const many = (n: number) => (n > 1 ? 'n' : '1');
    for (const row of set.rows) {
      const counted =
        row.subject_id === 'sssom:NoTermFound'
          ? '0:1'
          : row.object_id === 'sssom:NoTermFound'
            ? '1:0'
            : `${many(times('object_id', row.object_id!))}:${many(times('subject_id', row.subject_id!))}`;
      expect(row.mapping_cardinality, row.record_id).toBe(counted);
    }
    expect(new Set(set.rows.map(r => r.mapping_cardinality)).size).toBe(6);
  });

  it('names every item of both editions, and denies no heir', () => {
    const { joint } = publication;
    const subjects = new Set(set.rows.map(r => r.subject_id));
    const objects = new Set(set.rows.map(r => r.object_id));
    expect(joint.from.entries.filter(e => !subjects.has(`old:${e.id}`))).toEqual([]);
    expect(joint.to.entries.filter(e => !objects.has(`new:${e.id}`))).toEqual([]);
    const ended = set.rows.filter(r => r.object_id === 'sssom:NoTermFound').map(r => r.subject_id);
    expect(set.rows.filter(r => ended.includes(r.subject_id) && r.object_id !== 'sssom:NoTermFound')).toEqual([]);
    const pairs = joint.crosswalk.links.filter(l => l.from !== null && l.to !== null).length;
    expect(set.rows.filter(r => !/^[01]:0|^0/.test(r.mapping_cardinality!))).toHaveLength(pairs);
  });

  it('says exact only where nothing but number and place changed, and calls the larger one broader', () => {
    const lines = crosswalkLines(publication.joint, publication.marks);
    const exact = set.rows.filter(r => r.predicate_id === 'skos:exactMatch');
    expect(exact.length).toBeGreaterThan(10);
    for (const row of exact) {
      const line = lines.find(l => `map:${l.from?.id}..${l.to?.id}` === row.record_id)!;
      expect([line.duty, line.appliesTo, row.mapping_cardinality]).toEqual(['same', 'same', '1:1']);
    }
    const merged = lines.find(l => l.fromExtent === 'all' && l.toExtent === 'part')!;
    expect(predicateOf(merged, 'n:1')).toBe('skos:broadMatch');
  });

  it('says of each row what it rests on: no curator is claimed where only the id is the same', () => {
    const { links } = publication.joint.crosswalk;
    const linkOf = (row: Row) => links.find(l => `map:${l.from ?? ''}..${l.to ?? ''}` === row.record_id);
    const restsOn = (term: string) => set.rows.filter(r => r.mapping_justification === `semapv:${term}`);
    const same = restsOn('LexicalMatching');
    expect(same.length).toBeGreaterThan(100);
    for (const row of same) {
      const link = linkOf(row)!;
      expect([link.by, link.reason, link.from === null || link.from === link.to]).toEqual([undefined, undefined, true]);
      expect(row.comment).toMatch(/no record of lineage/);
    }
    for (const row of restsOn('ManualMappingCuration')) {
      const { by, date, reason, note, decision, from, to } = linkOf(row)!;
      expect([by, date, reason, note, decision].some(Boolean) || (from !== null && from !== to), row.record_id).toBe(
        true,
      );
    }
    expect(restsOn('ManualMappingCuration').length).toBeGreaterThan(100);
    const terms = [...new Set(set.rows.map(r => r.mapping_justification!.replace('semapv:', '')))];
    expect(terms.filter(term => !JUSTIFICATIONS.includes(term))).toEqual([]);
  });

  it('calls what a person answered a review, what was guessed composite, what went over editions chaining', () => {
    const { joint } = publication;
    const pair = joint.crosswalk.links.find(l => l.from !== null && l.from === l.to)!;
    const told = (basis: 'confirmed' | 'inferred') => {
      const links = joint.crosswalk.links.map(l => (l === pair ? { ...l, basis } : l));
      const crosswalk = { ...joint.crosswalk, links };
      const other = { ...publication, marks: publication.marks, joint: joinEditions(joint.from, joint.to, crosswalk) };
      return read(writeSssom(other)).rows.find(r => r.record_id === `map:${pair.from}..${pair.to}`)
        ?.mapping_justification;
    };
    expect([told('confirmed'), told('inferred')]).toEqual(['semapv:MappingReview', 'semapv:CompositeMatching']);
  }, 60_000);

  it('names items below the address that is given, and refuses what is none', () => {
    const base = addressIn('https://standards.example.org/works');
    expect(read(writeSssom({ ...publication, base })).header.curie_map.new).toBe(
      'https://standards.example.org/works/edition/2024/item/',
    );
    expect(() => addressIn('works')).toThrow(/write it like/);
  });
});
