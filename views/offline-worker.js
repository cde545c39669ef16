// STATE stands above: { version, catalog, edition, title, patience, files }. The server writes it, so a publication or
// another version of the program makes these bytes differ, and the browser installs them anew.
//
//   a page ──▶ network ──answers──▶ shown; kept if the server says that everybody sees it alike
//                 └────nothing────▶ kept? shown with its date. A number? its answer. Else what can be done.
//
// The network comes first, so nobody reads an old page while the new one can be had.
const LOOKUP = `fishplate-lookup-${STATE.catalog}-${STATE.version}`;
const PAGES = `fishplate-pages-${STATE.catalog}`;
const MOST_PAGES = 60;
const MOST_BYTES = 8_000_000;
const LARGEST_PAGE = 1_000_000;
const OUT_OF_ORDER = [502, 503, 504];

self.addEventListener('install', event => event.waitUntil(install()));
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('message', event => {
  if (typeof event.data?.keep === 'string') event.waitUntil(keepOpened(event.data.keep));
});
self.addEventListener('fetch', event => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin) return;
  if (request.mode === 'navigate') event.respondWith(answer(event, url));
  else if (STATE.files.includes(url.pathname)) event.respondWith(file(request, url.pathname));
});

/** Asked for without cookies: what is kept is what a stranger sees, whoever is signed in. */
const plain = path => fetch(new Request(path, { cache: 'no-cache', credentials: 'omit', redirect: 'error' }));

async function install() {
  const lookup = await caches.open(LOOKUP);
  await Promise.all(
    ['/lookup', ...STATE.files].map(async path => {
      const response = await plain(path);
      if (!response.ok) throw new Error(`${path}: ${response.status}`);
      await lookup.put(path, dated(response, await response.blob()));
    }),
  );
  await self.skipWaiting();
}

async function activate() {
  const ours = (await caches.keys()).filter(name => name.startsWith('fishplate-'));
  await Promise.all(ours.filter(name => name !== LOOKUP && name !== PAGES).map(name => caches.delete(name)));
  await self.clients.claim();
}

async function answer(event, url) {
  const path = url.pathname + url.search;
  const asked = fetch(event.request);
  event.waitUntil(asked.then(response => keep(path, response.clone())).catch(() => {}));
  const kept = await pageAt(path).catch(() => undefined);
  // Where a bar of signal comes and goes a request may hang for minutes.
  const late = kept ? new Promise(resolve => setTimeout(() => resolve('late'), STATE.patience)) : new Promise(() => {});
  const got = await Promise.race([asked.catch(() => undefined), late]);
  if (got && got !== 'late' && !OUT_OF_ORDER.includes(got.status)) return got;
  if (kept) return withNote(kept, keptNote(kept, url, got === 'late'), '');
  return (await instead(url).catch(() => undefined)) ?? asked;
}

const pageAt = async path => (await caches.open(PAGES)).match(path, { ignoreVary: true });

/** A style or a script. A gateway whose server is gone answers too, and not with one. */
async function file(request, path) {
  const response = await fetch(request).catch(() => Response.error());
  if (response.type !== 'error' && !OUT_OF_ORDER.includes(response.status)) return response;
  return (await (await caches.open(LOOKUP)).match(path, { ignoreVary: true })) ?? response;
}

/** What was opened before this worker was there to see it. */
async function keepOpened(path) {
  if (path.startsWith('/')) await keep(path, await plain(path)).catch(() => {});
}

/** Keeps a page that the server marked as one that everybody sees alike, and no other. */
async function keep(path, response) {
  const { headers, status } = response;
  if (!headers.has('Fishplate-Version') || status !== 200 || /no-store/.test(headers.get('Cache-Control') ?? '')) return;
  if (new URL(path, location).pathname === '/lookup') return;
  const body = await response.blob();
  if (body.size > LARGEST_PAGE) return;
  const title = /<title>([^<]*)/.exec(await body.text())?.[1] ?? path;
  const pages = await caches.open(PAGES);
  await pages.delete(path, { ignoreVary: true });
  await pages.put(path, dated(response, body, { 'Fishplate-Title': encodeURIComponent(title) }));
  await makeRoom(pages);
}

/** The page that was fetched longest ago goes first. */
async function makeRoom(pages) {
  const all = (await pages.keys()).reverse();
  let bytes = 0;
  for (const [at, request] of all.entries()) {
    const page = await pages.match(request, { ignoreVary: true });
    bytes += Number(page?.headers.get('Fishplate-Bytes') ?? 0);
    if (at >= MOST_PAGES || bytes > MOST_BYTES) await pages.delete(request, { ignoreVary: true });
  }
}

function dated(response, body, more = {}) {
  const headers = new Headers(response.headers);
  // The body is no longer as it was sent.
  for (const name of ['Content-Encoding', 'Content-Length']) headers.delete(name);
  const told = { 'Fishplate-Kept': new Date().toISOString(), 'Fishplate-Bytes': String(body.size), ...more };
  for (const [name, value] of Object.entries(told)) headers.set(name, value);
  return new Response(body, { headers });
}

/** The page for looking up in the place of one that is not there; with the answer, where the address asks for a number. */
async function instead(url) {
  const lookup = await (await caches.open(LOOKUP)).match('/lookup', { ignoreVary: true });
  if (!lookup) return undefined;
  const answers = /^\/(at\/|item\/|search$|lookup$)/.test(url.pathname) && url.pathname + url.search !== '/search';
  if (answers) return withNote(lookup, `<b>No network.</b> This was ${stateOf(lookup)}.`, await listOfPages());
  const sentence = '<b>No network, and this page was not kept:</b> look a number up here, or read one of the pages below.';
  return withNote(lookup, `${sentence} The numbers were ${stateOf(lookup)}.`, await listOfPages());
}

function keptNote(page, { pathname }, late) {
  const why = late ? `No answer in ${STATE.patience / 1000} seconds.` : 'No network.';
  const number = /^\/at\/[^/]+\/([^/]+)$/.exec(pathname)?.[1];
  const other = page.headers.get('Fishplate-Version') !== STATE.version;
  const next = !other
    ? '<a href="/lookup">Look up another number</a>'
    : number
      ? `Something was published since then: <a href="/lookup?q=${escaped(number)}">what became of it</a> as of ${escaped(STATE.edition)}.`
      : `Something was published since then: <a href="/lookup">look a number up</a> as of ${escaped(STATE.edition)}.`;
  return `<b>${why}</b> This page was ${stateOf(page)}. ${next}`;
}

function stateOf({ headers }) {
  const kept = new Date(headers.get('Fishplate-Kept'));
  const date = kept.toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' });
  return `kept on ${date}, edition state: ${escaped(decodeURIComponent(headers.get('Fishplate-Edition')))}`;
}

async function listOfPages() {
  const pages = await caches.open(PAGES);
  const links = [];
  for (const request of (await pages.keys()).reverse()) {
    const page = await pages.match(request, { ignoreVary: true });
    const { pathname, search } = new URL(request.url);
    // A title comes out of a page, where it was escaped already.
    const title = decodeURIComponent(page?.headers.get('Fishplate-Title') ?? '').replace(` - ${escaped(STATE.title)}`, '');
    const word = pathname === '/' ? 'First page' : title;
    links.push(`<li><a href="${escaped(pathname + search)}">${word}</a></li>`);
  }
  if (links.length === 0) return '';
  return `<section aria-labelledby="pages"><h2 id="pages">Pages kept on this device</h2><ul class="below">${links.join('')}</ul></section>`;
}

/** A kept page with a note on top and more at its end; its headers, and so its policy, stay. */
async function withNote(page, note, more) {
  const html = await page.text();
  const told = html
    .replace(/<main[^>]*>/, main => `${main}<p class="note" id="no-network">${note}</p>`)
    .replace('</main>', () => `${more}</main>`);
  return new Response(told, { headers: page.headers });
}

function escaped(text) {
  return text.replace(/[&<>"']/g, c => `&#${c.charCodeAt(0)};`);
}
