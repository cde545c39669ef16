/**
 * The names that look most like one that was not found, best first: by edit distance (Levenshtein), and among equals
 * those with the longer common beginning. A name that shares less than half of its characters is not offered.
 */
export function nearestNames(name: string, known: Iterable<string>, most = 3): string[] {
  const ranked: { candidate: string; distance: number; shared: number }[] = [];
  for (const candidate of new Set(known)) {
    if (candidate === '' || Math.abs(candidate.length - name.length) > name.length / 2) continue;
    const distance = editDistance(name, candidate);
    if (distance * 2 > Math.max(name.length, candidate.length)) continue;
    ranked.push({ candidate, distance, shared: commonBeginning(name, candidate) });
  }
  ranked.sort((a, b) => a.distance - b.distance || b.shared - a.shared || (a.candidate < b.candidate ? -1 : 1));
  return ranked.slice(0, most).map(r => r.candidate);
}

/** Least number of single-character insertions, deletions and substitutions (Levenshtein 1966). kitten/sitting = 3. */
export function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length]!;
}

function commonBeginning(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}
