/** Link precision, recall and F1 of the pairs at least `threshold` likely, and of those in the band accept. */
export function figuresOf({ prepared: { pairs }, labels, truth }, beliefs, threshold = 0.45, accept = 0.96) {
  let links = 0;
  for (const heirs of truth.values()) links += heirs.length;
  const count = least => {
    let [got, hit] = [0, 0];
    for (let p = 0; p < pairs.size; p++) {
      if (!truth.has(pairs.from[p]) || beliefs[p] < least) continue;
      got++;
      hit += labels[p];
    }
    return { got, hit };
  };
  const { got, hit } = count(threshold);
  const [precision, recall] = [hit / Math.max(1, got), hit / links];
  const sure = [accept, 0.98, 0.99].map(count);
  const f1 = (2 * precision * recall) / (precision + recall || 1);
  const at = [0.25, 0.35, 0.55].map(t => {
    const c = count(t);
    const [p, r] = [c.hit / Math.max(1, c.got), c.hit / links];
    return ((2 * p * r) / (p + r || 1)).toFixed(3);
  });
  return `P ${precision.toFixed(3)} R ${recall.toFixed(3)} F1 ${f1.toFixed(3)} [${at.join(' ')}] | accept ${sure.map(s => `${(s.got / links).toFixed(2)} at ${(s.hit / Math.max(1, s.got)).toFixed(3)}`).join(', ')} | look at ${lookAt({ prepared: { pairs }, labels, truth }, beliefs, threshold)} of 1,000`;
}

/** Links of 1,000 that a person has to look at, least likely first, until 99 of 100 of all links are right. */
export function lookAt({ prepared: { pairs }, labels, truth }, beliefs, threshold) {
  const links = [];
  for (let p = 0; p < pairs.size; p++) {
    if (truth.has(pairs.from[p]) && beliefs[p] >= threshold) links.push([beliefs[p], labels[p]]);
  }
  links.sort((a, b) => a[0] - b[0]);
  let wrong = links.reduce((sum, [, label]) => sum + (1 - label), 0);
  let looked = 0;
  // A link that was looked at and found wrong is mended: it counts as right from then on.
  while (looked < links.length && wrong > links.length * 0.01) wrong -= 1 - links[looked++][1];
  return Math.round((1000 * looked) / Math.max(1, links.length));
}
