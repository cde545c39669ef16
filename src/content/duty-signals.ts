/** One reason why a text asks more or less than another, with the words of both sides. */
export interface Signal {
  readonly direction: 'stricter' | 'relaxed' | 'both' | 'unclear';
  /** A weak doubt gives way to a direction found elsewhere; a firm one does not. */
  readonly weak?: true;
  readonly about: string;
  readonly from: string;
  readonly to: string;
}

export const opposite = (direction: 'stricter' | 'relaxed') => (direction === 'stricter' ? 'relaxed' : 'stricter');
