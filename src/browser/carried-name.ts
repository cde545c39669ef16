/** `jobs.csv` carried to 2024 is `jobs-2024.csv`. */
export function carriedName(name: string, to: string): string {
  const dot = name.lastIndexOf('.');
  return dot > 0 ? `${name.slice(0, dot)}-${to}${name.slice(dot)}` : `${name}-${to}`;
}

/** What comes with it: `jobs-2024-decisions.csv`. */
export function besideName(name: string, to: string, what: string): string {
  const dot = name.lastIndexOf('.');
  return `${dot > 0 ? name.slice(0, dot) : name}-${to}-${what}`;
}
