/** A share with the interval in which the true share lies with 95 % confidence. */
export interface Share {
  readonly hits: number;
  readonly of: number;
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** 97.5 % of a standard normal distribution lie below. */
const Z = 1.959963984540054;

/**
 * The score interval of Wilson (1927) without continuity correction. The plain interval, share ± 1.96 standard errors,
 * has no width at all for 0 of 30, which is what an audit hopes to find.
 */
export function wilson(hits: number, of: number): Share {
  if (of === 0) return { hits, of, share: Number.NaN, low: 0, high: 1 };
  const p = hits / of;
  const z2 = Z * Z;
  const centre = p + z2 / (2 * of);
  const spread = Z * Math.sqrt((p * (1 - p)) / of + z2 / (4 * of * of));
  const scale = 1 + z2 / of;
  return {
    hits,
    of,
    share: p,
    low: hits === 0 ? 0 : (centre - spread) / scale,
    high: hits === of ? 1 : (centre + spread) / scale,
  };
}

/** A group of the whole, of which some members were looked at. */
export interface StratumResult {
  readonly population: number;
  readonly looked: number;
  readonly hits: number;
}

/**
 * The share in the whole: each group's share weighs as much as the group is large, not as much as was drawn of it. Its
 * interval is Wilson's on the effective size of the sample, 1 over the sum of squared weights (Kish 1965); where everything
 * was looked at there is nothing to be uncertain of. Groups of which nothing was looked at are left out.
 */
export function stratified(strata: readonly StratumResult[]): Share & { readonly effective: number } {
  const seen = strata.filter(s => s.looked > 0);
  const whole = seen.reduce((sum, s) => sum + s.population, 0);
  const looked = seen.reduce((sum, s) => sum + s.looked, 0);
  const hits = seen.reduce((sum, s) => sum + s.hits, 0);
  if (whole === 0) return { ...wilson(0, 0), effective: 0 };
  const share = seen.reduce((sum, s) => sum + (s.population / whole) * (s.hits / s.looked), 0);
  // A weighted sum of few draws is worth fewer draws; shares of 0 and 1 have no variance to measure it by.
  const weights = seen.reduce((sum, s) => sum + (s.population / whole) ** 2 / s.looked, 0);
  const effective = Math.min(looked, 1 / weights);
  const { low, high } = wilson(share * effective, effective);
  const every = looked === whole;
  return { hits, of: looked, share, low: every ? share : low, high: every ? share : high, effective };
}
