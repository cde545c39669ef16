import type { EditionIndex, Entry } from '../model/edition.ts';
import { typeName } from '../model/settings.ts';
import { type CrosswalkLine, crosswalkLines } from './crosswalk-lines.ts';
import { type DataNames, dataNames, NO_ADDRESS } from './data-names.ts';
import type { Publication } from './publication.ts';

/**
 * Both editions as concept schemes and what joins them as an XKOS correspondence, in JSON-LD.
 *
 * One association a link: an association of a whole regrouping would join each of its sources to each of its targets,
 * and most of these pairs are false. A withdrawal has no target concept, an arrival no source concept; an item without
 * a record has no association, since nobody said anything of it.
 */
export function writeXkos(publication: Publication): string {
  const { joint } = publication;
  const names = dataNames(publication.base ?? NO_ADDRESS);
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const correspondence = names.crosswalk(from, to);
  const associations = crosswalkLines(joint, publication.marks)
    .filter(line => line.link)
    .map(line => associationOf(publication, names, line));
  const graph = [
    { ...schemeOf(names, joint.to), 'xkos:supersedes': { '@id': names.edition(from) } },
    schemeOf(names, joint.from),
    {
      '@id': correspondence,
      '@type': 'xkos:Correspondence',
      'skos:prefLabel': said(joint.to, `${joint.to.settings.title}: ${from} to ${to}`),
      'xkos:compares': [{ '@id': names.edition(from) }, { '@id': names.edition(to) }],
      'xkos:madeOf': associations.map(a => ({ '@id': a['@id'] })),
    },
    ...joint.from.entries.map(e => conceptOf(names, joint.from, e)),
    ...joint.to.entries.map(e => conceptOf(names, joint.to, e)),
    ...associations,
  ];
  const context = { ...PREFIXES, word: names.vocabulary };
  // A node a line: a change between two bundles is then read off line by line.
  return `{"@context": ${JSON.stringify(context)},\n"@graph": [\n${graph.map(n => JSON.stringify(n)).join(',\n')}\n]}\n`;
}

const PREFIXES = {
  skos: 'http://www.w3.org/2004/02/skos/core#',
  xkos: 'http://rdf-vocabulary.ddialliance.org/xkos#',
  dcterms: 'http://purl.org/dc/terms/',
  xsd: 'http://www.w3.org/2001/XMLSchema#',
} as const;

const said = ({ settings }: EditionIndex, text: string) => ({ '@value': text, '@language': settings.language });

function schemeOf(names: DataNames, edition: EditionIndex) {
  const { name, dates } = edition.header;
  return {
    '@id': names.edition(name),
    '@type': 'skos:ConceptScheme',
    'skos:prefLabel': said(edition, `${edition.settings.title}, ${name}`),
    ...(edition.settings.publisher ? { 'dcterms:publisher': edition.settings.publisher } : {}),
    ...(dates.published ? { 'dcterms:issued': { '@value': dates.published, '@type': 'xsd:date' } } : {}),
    ...(dates.effective ? { 'dcterms:available': { '@value': dates.effective, '@type': 'xsd:date' } } : {}),
  };
}

function conceptOf(names: DataNames, edition: EditionIndex, { id, number, title, parent }: Entry) {
  const { name } = edition.header;
  return {
    '@id': names.item(name, id),
    '@type': 'skos:Concept',
    ...(number ? { 'skos:notation': number } : {}),
    ...(title ? { 'skos:prefLabel': said(edition, title) } : {}),
    'skos:inScheme': { '@id': names.edition(name) },
    ...(parent === null
      ? { 'skos:topConceptOf': { '@id': names.edition(name) } }
      : { 'skos:broader': { '@id': names.item(name, parent) } }),
  };
}

function associationOf({ joint }: Publication, names: DataNames, line: CrosswalkLine) {
  const [a, b] = [joint.from.header.name, joint.to.header.name];
  const source = line.from && names.item(a, line.from.id);
  const target = line.to && names.item(b, line.to.id);
  const local = [source, target].map(iri => (iri ? iri.slice(iri.lastIndexOf('/') + 1) : '')).join('..');
  const types = line.link?.types?.map(t => typeName(joint.from.settings, t));
  return {
    '@id': `${names.crosswalk(a, b)}/association/${local}`,
    '@type': 'xkos:ConceptAssociation',
    ...(source ? { 'xkos:sourceConcept': { '@id': source } } : {}),
    ...(target ? { 'xkos:targetConcept': { '@id': target } } : {}),
    'word:group_id': line.row,
    'word:fate': line.fate,
    ...(line.duty ? { 'word:duty': line.duty } : {}),
    ...(line.reason ? { 'word:reason': line.reason } : {}),
    ...(types ? { 'word:ends_for': types } : {}),
    ...(line.note ? { 'skos:note': said(joint.to, line.note) } : {}),
  };
}
