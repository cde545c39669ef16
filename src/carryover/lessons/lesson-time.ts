/** A heading of a lesson; `level` is how deep it stands, where its file says so. */
export interface LessonHeading {
  readonly text: string;
  readonly level?: number;
}

const AMOUNT = String.raw`(\d{1,3}(?:[.,]\d{1,2})?)\s*(?:(h|hours?)\b(?:\s*(?:and\s+)?(\d{1,2})\s*(?:m|min|minutes?)\b)?|(?:min|minutes?)\b)`;
// Of a reaction or of drying it is no time of the lesson: no other word stands before it.
const BEFORE = String.raw`(?:^[ \t]*(?:[-*•][ \t]+)?|[^\p{L}\p{N}\s-][ \t]*|\b(?:lesson|total|class|course|session|teaching|training|planned|estimated|expected|overall)[ \t]+)`;
const STATED = new RegExp(String.raw`${BEFORE}(?:time|duration|length)\s*:\s*["']?${AMOUNT}`, 'imu');
const BARE = /^[ \t]*(hours|minutes)\s*:\s*["']?(\d{1,3}(?:[.,]\d{1,2})?)["']?[ \t]*$/im;
const OF_SECTION = new RegExp(String.raw`[([]${AMOUNT}[)\]]\s*#*\s*$`, 'i');

/**
 * The minutes that a lesson says it takes ("Time: 45 minutes", "Duration: 1 h 30 min", "hours: 1.5"): the first such line
 * or, where there is none, the sum of what its headings say ("Slides (1.5 h)"); undefined where it does not say. Nothing is
 * estimated.
 */
export function minutesStated(texts: readonly string[], headings: readonly LessonHeading[] = []): number | undefined {
  for (const text of texts) {
    const stated = STATED.exec(text);
    if (stated) return minutesOf(stated);
    const [, word, bare] = BARE.exec(text) ?? [];
    if (bare !== undefined) return Math.round(numberOf(bare) * (/^h/i.test(word!) ? 60 : 1));
  }
  return minutesOfHeadings(headings);
}

/**
 *   # Slings (3 h)         3 h, not 6: what stands below a heading is a part of its time.
 *   ## Sleeves (1.5 h)     Where the parts say more than the whole, theirs is the time.
 *   ## Angles (1.5 h)
 */
function minutesOfHeadings(headings: readonly LessonHeading[]): number | undefined {
  interface Open {
    readonly level: number;
    readonly own: number;
    below: number;
  }
  const stated = headings.map(({ text }) => OF_SECTION.exec(text));
  if (stated.every(s => s === null)) return undefined;
  const open: Open[] = [{ level: Number.NEGATIVE_INFINITY, own: 0, below: 0 }];
  const close = (level: number) => {
    while (open.length > 1 && open.at(-1)!.level >= level) {
      const { own, below } = open.pop()!;
      open.at(-1)!.below += Math.max(own, below);
    }
  };
  for (const [at, { level = 1 }] of headings.entries()) {
    close(level);
    const found = stated[at];
    open.push({ level, own: found ? minutesOf(found) : 0, below: 0 });
  }
  close(Number.NEGATIVE_INFINITY);
  return open[0]!.below;
}

function minutesOf([, value, hours, minutes]: RegExpExecArray): number {
  return Math.round(hours === undefined ? numberOf(value!) : numberOf(value!) * 60 + Number(minutes ?? 0));
}

function numberOf(written: string): number {
  return Number(written.replace(',', '.'));
}
