// Looks up a number of any edition, and words of the published one. All data came as scripts: a page that was opened
// from a folder may not fetch. Texts are put in as texts, never as markup.
(() => {
  const numbers = window.FISHPLATE_NUMBERS;
  const saved = window.FISHPLATE_SEARCH;
  const SILENT = new Set(['a', 'an', 'the', 'of', 'to', 'and', 'or', 'is', 'are', 'be', 'it', 'its', 'as', 'by', 'for']);
  const query = new URLSearchParams(location.search).get('q') || '';
  const input = document.getElementById('q');
  const state = document.getElementById('state');
  const found = document.getElementById('found');
  input.value = query;

  const fold = text =>
    text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/\u00ad/g, '')
      .replace(/[\u2010-\u2015\u2212]/g, '-');

  // The same terms as the index was made of: words folded, numbers whole.
  const termsOf = text => {
    const terms = [];
    for (const chunk of fold(text).match(/[\p{L}\p{M}\p{N}]+(?:[.:_/-]+[\p{L}\p{M}\p{N}]+)*/gu) || []) {
      const pieces = chunk.split(/[_/-]+/);
      if (pieces.length > 1 && /\p{N}/u.test(chunk)) terms.push(chunk);
      for (const piece of pieces) {
        if (/\p{N}/u.test(piece)) terms.push(piece);
        else for (const word of piece.split(/[.:]+/)) if (!SILENT.has(word)) terms.push(word);
      }
    }
    return [...new Set(terms)].slice(0, 16);
  };

  const element = (name, text, className) => {
    const made = document.createElement(name);
    made.textContent = text;
    if (className) made.className = className;
    return made;
  };
  const entry = (href, number, title, lines) => {
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = href;
    link.append(element('b', number, 'n'), ` ${title}`);
    item.append(link, ...lines.filter(Boolean).map(line => element('p', line)));
    return item;
  };
  const list = (title, items) => {
    const ordered = document.createElement('ol');
    ordered.append(...items);
    found.append(element('h2', title), ordered);
  };

  const byNumber = name => {
    const wanted = fold(name.trim()).replace(/^["'([{§#]+|["')\]},;:.!?]+$/g, '');
    let shown = 0;
    for (const { edition, entries } of numbers) {
      const hits = entries.filter(([, number]) => number !== '' && fold(number) === wanted);
      if (hits.length === 0) continue;
      shown += hits.length;
      list(
        `In ${edition}`,
        hits.map(([href, number, title, headline, second]) => entry(href, number, title, [headline, second])),
      );
    }
    return shown;
  };

  const byWords = text => {
    const terms = termsOf(text);
    if (terms.length === 0) return [];
    const index = lunr.Index.load(saved.index);
    const isNumber = term => /\p{N}/u.test(term);
    const stemmed = terms.flatMap(term => (isNumber(term) ? [term] : index.pipeline.runString(term)));
    const ask = (presence, clause) =>
      index.query(q => stemmed.forEach((term, at) => q.term(term, { usePipeline: false, presence, ...clause(term, at) })));
    const { REQUIRED, OPTIONAL } = lunr.Query.presence;
    const isWord = term => /^[\p{L}\p{M}]+$/u.test(term);
    const unfinished = (term, at) =>
      at === stemmed.length - 1 && isWord(term) && term.length > 2 ? { wildcard: lunr.Query.wildcard.TRAILING } : {};
    const alike = term => (isWord(term) && term.length >= 5 ? { editDistance: 1 } : {});
    const plain = () => ({});
    for (const [presence, clause] of [
      [REQUIRED, plain],
      [REQUIRED, unfinished],
      [REQUIRED, alike],
      [OPTIONAL, plain],
      [OPTIONAL, alike],
    ]) {
      const results = ask(presence, clause);
      if (results.length > 0) return results;
    }
    return [];
  };

  if (query.trim() === '') {
    state.textContent = 'Type a number of any edition, or words.';
    input.focus();
    return;
  }
  const exact = byNumber(query);
  const results = byWords(query);
  if (results.length > 0) {
    list(
      `In the texts of ${saved.edition}`,
      results.slice(0, 40).map(({ ref }) => entry(...saved.items[Number(ref)])),
    );
  }
  const said = [
    exact > 0 ? `${query} is a number of ${exact === 1 ? 'one item' : `${exact} items`}` : '',
    results.length > 0 ? `${results.length === 1 ? 'one item speaks' : `${results.length} items speak`} of it` : '',
  ].filter(Boolean);
  state.textContent =
    said.length > 0 ? `${said.join('; ')}.` : `Nothing found for ${query}. Try fewer words, or the lists below.`;
})();
