/** `1 item`, `2,000 items`. */
export function counted(n: number, one: string, many = `${one}s`): string {
  return `${thousands(n)} ${n === 1 ? one : many}`;
}

/** `12,345`. `toLocaleString` loads its language data first, which takes longer than a small crosswalk. */
export function thousands(n: number): string {
  return String(n).replace(/\B(?=(\d{3})+$)/g, ',');
}
