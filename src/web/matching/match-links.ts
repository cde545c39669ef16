/** The addresses of reviews of matched links. */
export const matchLink = (review: string, ...rest: readonly string[]) =>
  `/${['desk', 'match', review, ...rest].map(encodeURIComponent).join('/')}`;

export const questionLink = (review: string, code: string) => matchLink(review, 'q', code);
