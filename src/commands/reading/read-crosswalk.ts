import { isPair, marksOf, type PairLink, type Texts } from '../../content/links/marks.ts';
import { identityCrosswalk } from '../../crosswalk/compose.ts';
import { composeSteps } from '../../crosswalk/compose-steps.ts';
import { checkConservation } from '../../crosswalk/conserve.ts';
import { invertCrosswalk } from '../../crosswalk/invert.ts';
import { type Joint, joinEditions } from '../../crosswalk/joint.ts';
import { linkByLineage } from '../../crosswalk/lineage.ts';
import { pathBetween } from '../../crosswalk/path.ts';
import type { Marks } from '../../model/crosswalk.ts';
import type { EditionHeader } from '../../model/edition.ts';
import type { Finding } from '../../model/finding.ts';
import type { ItemId } from '../../model/item.ts';
import { holding, listDrafts, listEditions, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex, readItems, readLineage } from '../../store/read.ts';

/** Two editions of a catalog joined, and what the steps between them lose. No text was read. */
export interface ReadJoint {
  readonly joint: Joint;
  /** Conservation findings of every step between the two; a composed crosswalk alone would hide them. */
  readonly findings: readonly Finding[];
  /** The editions passed through, older to newer. */
  readonly path: readonly string[];
  /** Whether it was read from the newer to the older edition: a derivation table. */
  readonly backwards: boolean;
}

/** A crosswalk between any two editions of a catalog, with its marks: the texts of the changed items were read. */
export interface ReadCrosswalk extends ReadJoint {
  readonly marks: (link: PairLink) => Marks;
}

/** One step between an edition and the one it replaces. */
export async function readStep(catalog: Catalog, from: string, to: string): Promise<Joint> {
  const [older, newer, records] = await Promise.all([
    readIndex(catalog, from),
    readIndex(catalog, to),
    readLineage(catalog, to),
  ]);
  const links = linkByLineage(older.entries, newer.entries, records);
  return joinEditions(older, newer, { from: older.header.name, to: newer.header.name, links });
}

/** Reads the crosswalk between two editions, over all between; from the newer to the older one it is inverted. */
export async function readCrosswalk(catalog: Catalog, from: string, to: string): Promise<ReadCrosswalk> {
  const read = await readJoint(catalog, from, to);
  return { ...read, marks: await marksReader(catalog, read.joint) };
}

/** The same without marks, for who only counts: reading the changed texts takes longer than all the rest. */
export async function readJoint(catalog: Catalog, from: string, to: string): Promise<ReadJoint> {
  const [a, b] = [await locate(catalog, from), await locate(catalog, to)];
  // An erratum asked for by number (2024.0) is read at that erratum, a branch at its own commit, at either end.
  const held = holding(catalog, a, b);
  const { editions, backwards } = pathBetween(await allHeaders(held), a.name, b.name);
  const steps: Joint[] = [];
  for (let at = 1; at < editions.length; at++) {
    steps.push(await readStep(held, editions[at - 1]!, editions[at]!));
  }
  const older = steps[0]?.from ?? (await readIndex(catalog, from));
  const newer = steps.at(-1)?.to ?? older;
  const composed = steps.length === 0 ? identityCrosswalk(older.header.name, older.entries) : composeSteps(steps);
  const joint = backwards
    ? joinEditions(newer, older, invertCrosswalk(composed))
    : joinEditions(older, newer, composed);
  return {
    joint,
    findings: steps.flatMap(checkConservation),
    path: editions,
    backwards,
  };
}

/** Carrying to an older edition is rarely meant: with `--from` and `--to` changed about nothing else would say so. */
export function backwardsFindings({ joint, backwards }: ReadJoint): readonly Finding[] {
  if (!backwards) return [];
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  return [
    {
      severity: 'warning',
      rule: 'backwards',
      subject: to,
      message: `${to} is older than ${from}, so this goes back to what was replaced; to go forward: --from ${to} --to ${from}.`,
    },
  ];
}

/** Published editions and drafts alike. */
export async function allHeaders(catalog: Catalog): Promise<EditionHeader[]> {
  const drafts = await Promise.all((await listDrafts(catalog)).map(async d => (await readIndex(catalog, d)).header));
  return [...(await listEditions(catalog)), ...drafts];
}

/** Reads the texts of the items whose content differs along a link, and of no others; marks are then plain lookups. */
async function marksReader(catalog: Catalog, joint: Joint): Promise<(link: PairLink) => Marks> {
  const texts = await readTexts(catalog, joint);
  const known = new Map<PairLink, Marks>();
  return link => {
    const before = known.get(link);
    if (before) return before;
    const marks = marksOf(joint, link, texts);
    known.set(link, marks);
    return marks;
  };
}

async function readTexts(catalog: Catalog, joint: Joint): Promise<Texts> {
  const [older, newer] = [new Set<ItemId>(), new Set<ItemId>()];
  for (const link of joint.crosswalk.links) {
    if (!isPair(link) || joint.old.get(link.from)?.hash === joint.new.get(link.to)?.hash) continue;
    older.add(link.from);
    newer.add(link.to);
  }
  const [from, to] = await Promise.all([
    readItems(catalog, joint.from, joint.old, older),
    readItems(catalog, joint.to, joint.new, newer),
  ]);
  return { from: id => from.get(id), to: id => to.get(id) };
}
