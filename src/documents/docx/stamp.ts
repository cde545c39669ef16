/** In whose name changes are made, and when; without a date, Word shows none and the same input gives the same bytes. */
export interface Stamp {
  readonly author: string;
  /** ISO 8601, to the second, in UTC: 2024-03-01T00:00:00Z. */
  readonly date?: string;
}
