import { type CitedBook, citedBook } from '../../citing/cited-book.ts';
import { placesOf } from '../../model/places.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex, readItems } from '../../store/read.ts';

/** An edition as what texts cite, with what its items say. Throws UnknownEdition. */
export async function readCitedBook(catalog: Catalog, name: string): Promise<CitedBook> {
  const index = await readIndex(catalog, name);
  const places = placesOf(index.settings, index.entries);
  const items = await readItems(
    catalog,
    index,
    places,
    index.entries.map(e => e.id),
  );
  return citedBook(index, { places, textOf: id => items.get(id)?.text });
}
