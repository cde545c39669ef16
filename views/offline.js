// Has the browser keep what is needed to look up a number where there is no network, and this page. On the page for
// looking up, which then stands in for others, it looks up what the address asks for.
(async () => {
  const said = document.getElementById('kept');
  // Shown in the place of a page that is not there: what is on top says it already.
  if (said && document.getElementById('no-network')) said.hidden = true;
  const asked = () => {
    const [, kind, first = '', second = ''] = location.pathname.split('/').map(decodeURIComponent);
    if (kind === 'at') return { edition: first, text: second };
    if (kind === 'item') return { text: first };
    return { text: new URLSearchParams(location.search).get('q') ?? '' };
  };
  const input = document.getElementById('asked');
  if (input) {
    const { edition, text } = asked();
    const named = [...document.querySelectorAll('#answers section')].find(
      section => section.querySelector('h2').textContent === `Edition ${edition}`,
    );
    // The edition that is asked for answers first; the number may stand in others too.
    if (named) named.parentElement.prepend(named);
    input.value = text;
    if (text !== '') input.dispatchEvent(new Event('input'));
  }
  if (!navigator.serviceWorker) {
    if (said) said.textContent = 'This browser keeps no pages at this address: it does so over https and on localhost only.';
    return;
  }
  // The worker sees what is opened from now on, but not the page that brought it.
  const first = !navigator.serviceWorker.controller;
  try {
    const registration = await navigator.serviceWorker.register('/offline-worker.js', { updateViaCache: 'none' });
    // Asked from within the worker, Chromium leaves the new one waiting for as long as a page is open.
    await registration.update();
  } catch {
    // No network, or a browser that was told to keep nothing: all else works the same.
    return;
  }
  const { active } = await navigator.serviceWorker.ready;
  if (first) active.postMessage({ keep: location.pathname + location.search });
  if (said) said.textContent = 'The numbers are kept on this device: this page opens without a network.';
})();
