import { CatalogError } from '../model/errors.ts';

/**
 * What the git library reads of an object. Its own error for one that is missing, cut off or of another kind tells the
 * reader nothing to do and would pass for a defect of ours.
 *
 * @throws CatalogError BadCatalog
 */
export async function soundObject<T>(oid: string, reading: Promise<T>): Promise<T> {
  try {
    return await reading;
  } catch (error) {
    if (error instanceof CatalogError) throw error;
    throw new CatalogError(
      'BadCatalog',
      `The object ${oid} is missing or damaged; git fsck tells what else is, and git fetch from a clone of the catalog brings it back.`,
      { oid, cause: String((error as Error).message) },
    );
  }
}
