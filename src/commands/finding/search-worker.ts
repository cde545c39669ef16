import { parentPort, workerData } from 'node:worker_threads';
import { openCatalog } from '../../store/open.ts';
import { publishedCatalog } from '../reading/published-catalog.ts';
import { prepareSearch } from './prepare-search.ts';
import type { FromSearch, ToSearch } from './search-thread.ts';

/** The thread in which a server looks words up: builds every index, then answers. Started by search-thread.ts only. */
const port = parentPort!;
const say = (message: FromSearch) => port.postMessage(message);
const catalog = await openCatalog((workerData as { dir: string }).dir);
const published = publishedCatalog(catalog);

port.on('message', async ({ id, edition, text, most }: ToSearch) => {
  try {
    say({ id, found: (await (await published()).search(edition)).find(text, most) });
  } catch (error) {
    say({ id, trouble: String((error as Error)?.stack ?? error) });
  }
});

await prepareSearch(catalog, await published(), progress => say({ progress }));
say({ ready: true });
