import { randomFrom, shuffle } from './catalogs.mjs';

/**
 * Harder versions of a pair, so that nothing is learned that holds for a few catalogs only: numbers re-used, titles
 * taken away, a third of the newer edition's words replaced by others, the outline taken away.
 */
export function harder(pair) {
  const { from, to, truth, group } = pair;
  const renumbered = (rows, share = 1) => {
    const order = shuffle(rows.length, 11);
    const random = randomFrom(13);
    const segments = rows.map(r => r.number.length);
    const groups = new Map();
    rows.forEach((_, i) => {
      if (random() < share) groups.set(segments[i], [...(groups.get(segments[i]) ?? []), i]);
    });
    const numbers = rows.map(r => r.number);
    for (const list of groups.values()) {
      const mixed = list.map(i => i).sort((a, b) => order[a] - order[b]);
      list.forEach((i, k) => {
        numbers[i] = rows[mixed[k]].number;
      });
    }
    return rows.map((r, i) => ({ ...r, number: numbers[i] }));
  };
  const untitled = rows => rows.map(r => (r.text === '' ? r : { ...r, title: '' }));
  const reworded = (rows, share, seed) => {
    const random = randomFrom(seed);
    const fate = new Map();
    const word = w => {
      const key = w.toLowerCase();
      if (key.length < 4) return w;
      if (!fate.has(key)) fate.set(key, random() < share ? `zq${key.slice(0, 3)}${fate.size}` : key);
      // Half of the changes hold everywhere (a term was renamed), half only here and there.
      return fate.get(key) === key || (fate.size % 2 === 0 && random() < 0.4) ? w : fate.get(key);
    };
    const text = t => t.replace(/\p{L}+/gu, w => (random() < share * 0.4 && w.length > 3 ? '' : word(w)));
    return rows.map(r => ({ ...r, title: text(r.title), text: text(r.text) }));
  };
  // Real revisions write some rows anew from end to end and hardly touch the others.
  const patchy = rows => {
    const random = randomFrom(21);
    const [light, heavy] = [reworded(rows, 0.1, 22), reworded(rows, 0.9, 23)];
    return rows.map((_, i) => (random() < 0.4 ? heavy[i] : light[i]));
  };
  // Rows end and others begin in the same place, under the same number: what is left over on both sides is no pair.
  const replaced = () => {
    const random = randomFrom(31);
    const heirs = new Map([...truth].filter(([, list]) => list.length === 1).map(([i, [j]]) => [i, j]));
    const sources = new Map();
    for (const list of truth.values()) for (const j of list) sources.set(j, (sources.get(j) ?? 0) + 1);
    const leaf = (rows, at) => rows[at].parent < 0 || !parentsOf(rows).has(at);
    const single = [...heirs].filter(
      ([i, j]) => sources.get(j) === 1 && leaf(from, i) && leaf(to, j) && random() < 0.4,
    );
    const order = shuffle(single.length, 32);
    const next = [...reworded(to, 0.25, 33)];
    const gone = new Set();
    const links = new Map(truth);
    for (let k = 0; k + 1 < order.length; k += 2) {
      // What the second pair's new row says takes the place of what the first pair's says; its old row goes.
      const [[i1, j1], [i2, j2]] = [single[order[k]], single[order[k + 1]]];
      if (from[i1].parent === from[i2].parent) continue;
      next[j1] = { ...next[j1], title: next[j2].title, text: next[j2].text };
      next[j2] = { ...next[j2], title: '', text: '' };
      links.set(i1, []);
      links.delete(i2);
      gone.add(i2);
    }
    return without(
      from,
      next,
      links,
      gone,
      at => next[at].title === '' && next[at].text === '' && to[at].title + to[at].text !== '',
    );
  };
  // Children and neighbours are taken into a row that stays: each becomes one of its sentences.
  const folded = () => {
    const random = randomFrom(41);
    const next = reworded(to, 0.15, 42);
    const links = new Map(truth);
    const into = new Map();
    const parents = parentsOf(to);
    let last = -1;
    to.forEach((row, j) => {
      if (parents.has(j)) {
        last = j;
        return;
      }
      const up = row.parent >= 0 && random() < 0.5 ? row.parent : last;
      if (up >= 0 && up !== j && random() < 0.3) into.set(j, into.get(up) ?? up);
      else last = j;
    });
    for (const [j, up] of into) {
      const said = [next[j].title, next[j].text].filter(Boolean).join(': ');
      // The host has to say something for a piece to be added to it.
      next[up] = { ...next[up], text: [next[up].text, said].filter(Boolean).join(random() < 0.5 ? '. ' : '\n') };
    }
    for (const [i, list] of links) links.set(i, [...new Set(list.map(j => into.get(j) ?? j))]);
    return without(from, next, links, new Set(), at => into.has(at));
  };
  const flat = rows => rows.map(r => ({ ...r, parent: -1 }));
  const texts = from.some(r => r.text !== '');
  return [
    { name: `${pair.name} renumbered`, group, from, to: renumbered(to), truth },
    { name: `${pair.name} reworded`, group, from, to: renumbered(reworded(to, 0.35, 5)), truth },
    ...(texts
      ? [
          {
            name: `${pair.name} untitled`,
            group,
            from: untitled(from),
            to: untitled(renumbered(reworded(to, 0.15, 6))),
            truth,
          },
        ]
      : []),
    { name: `${pair.name} retold`, group, from, to: reworded(to, 0.55, 3), truth },
    { name: `${pair.name} patchy`, group, from, to: patchy(to), truth },
    { name: `${pair.name} replaced`, group, ...replaced() },
    { name: `${pair.name} folded`, group, ...folded() },
    { name: `${pair.name} flat`, group, from: flat(from), to: flat(reworded(to, 0.2, 9)), truth },
  ];
}

const parentsOf = rows => new Set(rows.map(r => r.parent));

/** The pair without some old and new rows; positions in parents and in the truth are moved up. */
function without(from, to, truth, goneOld, isGoneNew) {
  const keep = (rows, isGone) => {
    const place = new Map();
    rows.forEach((_, at) => {
      if (!isGone(at)) place.set(at, place.size);
    });
    const left = rows.filter((_, at) => place.has(at)).map(r => ({ ...r, parent: place.get(r.parent) ?? -1 }));
    return { place, left };
  };
  const [old, next] = [keep(from, at => goneOld.has(at)), keep(to, isGoneNew)];
  const links = new Map();
  for (const [i, list] of truth) {
    if (!old.place.has(i)) continue;
    links.set(
      old.place.get(i),
      list.map(j => next.place.get(j)).filter(j => j !== undefined),
    );
  }
  return { from: old.left, to: next.left, truth: links };
}
