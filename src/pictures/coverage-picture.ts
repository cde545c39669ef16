/** What is drawn for one requirement. */
export interface CoverageMark {
  /** `full` goes on, `half` has to be opened again, `empty` nobody teaches, `crossed` gone, `dot` gone and still due, or only mentioned. */
  readonly shape: 'full' | 'half' | 'empty' | 'crossed' | 'dot';
  /** Number and title, for who asks. */
  readonly said: string;
}

/** A part of an edition with a mark for each of its requirements. */
export interface CoverageRow {
  readonly label: string;
  readonly marks: readonly CoverageMark[];
}

/**
 * Squares in rows, one for each requirement, so that a part's size is seen and not only its share:
 *
 *     ▌ 3 Storage        ■ ■ ◩ ◩ □ □ □
 *     ▌ 4 Infiltration   ◩ ◩ ◩
 *
 * Plain numbers, so that a template draws them and nothing has to be measured in a browser.
 */
export interface CoveragePicture {
  readonly width: number;
  readonly height: number;
  readonly square: number;
  readonly rows: readonly {
    readonly label: string;
    readonly labelY: number;
    readonly marks: readonly (CoverageMark & { readonly x: number; readonly y: number })[];
  }[];
}

const SQUARE = 11;
const STEP = 14;
const LEFT = 12;
const LABEL = 18;
const BETWEEN = 12;

/** @param across squares in a line before it is broken */
export function coveragePicture(rows: readonly CoverageRow[], across = 32): CoveragePicture {
  let y = 4;
  const drawn = rows.map(({ label, marks }) => {
    const labelY = y + 12;
    const top = y + LABEL;
    y = top + Math.ceil(marks.length / across) * STEP + BETWEEN;
    const placed = marks.map((mark, n) => ({
      ...mark,
      x: LEFT + (n % across) * STEP,
      y: top + Math.floor(n / across) * STEP,
    }));
    return { label, labelY, marks: placed };
  });
  return { width: LEFT + across * STEP, height: Math.max(y, 4), square: SQUARE, rows: drawn };
}
