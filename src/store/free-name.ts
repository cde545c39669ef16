import { editionName } from '../format/schemas.ts';
import { CatalogError } from '../model/errors.ts';
import { draftRef, listEditionTags } from './names.ts';
import type { Catalog } from './open.ts';
import { readRef } from './refs.ts';

/** Refuses a name that cannot be an edition's. Throws BadArgument. */
export function refuseUnfit(name: string): void {
  if (editionName.safeParse(name).success) return;
  throw new CatalogError(
    'BadArgument',
    `${JSON.stringify(name)} cannot be an edition's name; use up to 60 letters, digits, dots, hyphens and underscores, for example 2024.`,
  );
}

/** Refuses a name that cannot be an edition's, or that an edition, an erratum or a draft has. */
export async function refuseTaken(catalog: Catalog, name: string): Promise<void> {
  refuseUnfit(name);
  const tags = await listEditionTags(catalog.repo);
  const taken = tags.some(t => t.name === name || `${t.name}.${t.erratum}` === name);
  const shadowing = tags.some(t => t.name.startsWith(`${name}.`) && /^\d+$/.test(t.name.slice(name.length + 1)));
  if (taken || shadowing || (await readRef(catalog.repo.fs, catalog.repo.gitdir, draftRef(name))) !== null) {
    throw new CatalogError(
      'EditionExists',
      `Edition ${name} exists already (as an edition, an erratum or a draft) and cannot be replaced; choose another name, or correct its lineage with: fishplate erratum ${name}`,
      { name },
    );
  }
}
