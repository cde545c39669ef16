import jsonld, { type Quad } from 'jsonld';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Publication } from '../../src/exports/publication.ts';
import { writeXkos } from '../../src/exports/xkos.ts';
import { demoPublication } from './publication.ts';

const XKOS = 'http://rdf-vocabulary.ddialliance.org/xkos#';
const SKOS = 'http://www.w3.org/2004/02/skos/core#';
const TYPE = 'http://www.w3.org/1999/02/22-rdf-syntax-ns#type';

let publication: Publication;
let quads: Quad[];
const subjects = (predicate: string, object?: string) =>
  quads
    .filter(q => q.predicate.value === predicate && (!object || q.object.value === object))
    .map(q => q.subject.value);

beforeAll(async () => {
  publication = await demoPublication();
  const documentLoader = () => Promise.reject(new Error('nothing may be loaded'));
  quads = await jsonld.toRDF(JSON.parse(writeXkos(publication)), { documentLoader, safe: true });
}, 120_000);

describe('the crosswalk as a correspondence (XKOS), read by another library', () => {
  it('is one correspondence of two schemes, of which the newer supersedes the older', () => {
    expect(subjects(TYPE, `${XKOS}Correspondence`)).toHaveLength(1);
    const compared = quads.filter(q => q.predicate.value === `${XKOS}compares`).map(q => q.object.value);
    expect(compared).toHaveLength(2);
    const supersedes = quads.filter(q => q.predicate.value === `${XKOS}supersedes`);
    expect(supersedes.map(q => [q.subject.value.slice(-4), q.object.value.slice(-4)])).toEqual([['2024', '2018']]);
  });

  it('has an association for each link, with a source, a target or both, as the crosswalk has them', () => {
    const { links } = publication.joint.crosswalk;
    const all = subjects(TYPE, `${XKOS}ConceptAssociation`);
    const sources = new Set(subjects(`${XKOS}sourceConcept`));
    const targets = new Set(subjects(`${XKOS}targetConcept`));
    expect(new Set(all).size).toBe(links.length);
    expect(sources.size).toBe(links.filter(l => l.from !== null).length);
    expect(targets.size).toBe(links.filter(l => l.to !== null).length);
    const made = quads.filter(q => q.predicate.value === `${XKOS}madeOf`).map(q => q.object.value);
    expect(new Set(made)).toEqual(new Set(all));
    expect(all.filter(a => !sources.has(a) && !targets.has(a))).toEqual([]);
  });

  it('joins only concepts that stand in a scheme, each under a concept that stands there', () => {
    const { joint } = publication;
    const concepts = new Set(subjects(TYPE, `${SKOS}Concept`));
    expect(concepts.size).toBe(joint.from.entries.length + joint.to.entries.length);
    const leads = ['broader'].map(w => SKOS + w).concat(`${XKOS}sourceConcept`, `${XKOS}targetConcept`);
    const lost = quads.filter(q => leads.includes(q.predicate.value) && !concepts.has(q.object.value));
    expect(lost).toEqual([]);
    expect(new Set(subjects(`${SKOS}inScheme`))).toEqual(concepts);
  });
});
