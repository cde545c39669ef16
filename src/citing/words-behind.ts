/** Only what can follow a citation stands behind it. */
export function endsThere(after: string): boolean {
  return /^\s*(?:$|[.,;:!?)\]"”’|*]|(?:and|or|to|for|in|is|are|was|on|before|after|when|if|first|again|where|with|as|which|that|also|instead|too|but|because|since|so|by|of|from|at|not|than|then|here|there|now|still|only|about|under|over|until|while|who|has|have|had|will|would|can|cannot|may)\b)/i.test(
    after,
  );
}

/** Something is said of a citation: it asks, allows, is met. */
export function saysSomething(after: string): boolean {
  return SAYS.test(after);
}

const SAYS =
  /^\s*(?:\([^)]{0,60}\)\s*)?,?\s*(?:also|only|still|now|then|already|expressly|clearly|plainly|merely|simply|never|no longer|does not|did not|do not)?\s*(?:appl(?:y|ies|ied)|asks?|asked|requires?|required|says?|said|must|shall|should|demands?|demanded|wants?|allows?|allowed|forbids?|permits?|permitted|reads?|covers?|covered|speaks?|deals?|tells?|gives?|leaves?|sets?|is (?:met|kept|fulfilled|clear|not|violated|satisfied|breached|silent|observed)|are (?:met|kept|fulfilled|clear|not|satisfied|observed)|was (?:met|kept|fulfilled|not|violated|satisfied|breached)|were (?:met|kept|not)|has been|have been|needs?|means?|names?|calls?|limits?|prescribes?|states?|stated|holds?|concerns?|replaces?|replaced|disappeared|became|becomes)(?![\p{L}])/iu;

/** Whether a number begins its line, but for marks of a list, a table, a quotation. */
export function startsLine(before: string): boolean {
  return /(?:^|[\r\n])[\s#*_>|([-]*$/.test(before);
}
