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
  const sure = count(accept);
  const f1 = (2 * precision * recall) / (precision + recall || 1);
  const at = [0.25, 0.35, 0.55].map(t => { const c = count(t); const [p, r] = [c.hit / Math.max(1, c.got), c.hit / links]; return ((2 * p * r) / (p + r || 1)).toFixed(3); });
  return `P ${precision.toFixed(3)} R ${recall.toFixed(3)} F1 ${f1.toFixed(3)} [${at.join(' ')}] | accept ${(sure.got / links).toFixed(2)} at ${(sure.hit / Math.max(1, sure.got)).toFixed(3)}`;
}
