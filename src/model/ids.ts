/** Crockford's base 32 alphabet in lower case: no i, l, o, u. */
const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz';
const BODY_LENGTH = 7;
/** The 36 characters of ISO/IEC 7064 in their order of value. */
const CHECKED = '0123456789abcdefghijklmnopqrstuvwxyz';

/**
 * The check character of ISO/IEC 7064 MOD 37,36 for a string of letters and digits. It catches every single wrong
 * character and 998 of 1,000 transpositions of neighbours. Capitals count as their small letters; throws on anything
 * else.
 */
export function checkCharacter(body: string): string {
  let sum = 36;
  for (const char of body.toLowerCase()) {
    const value = CHECKED.indexOf(char);
    if (value < 0) throw new Error(`no check character over ${JSON.stringify(char)}`);
    sum += value;
    if (sum > 36) sum -= 36;
    sum *= 2;
    if (sum >= 37) sum -= 37;
  }
  return CHECKED[(37 - sum) % 36]!;
}

/** Whether an id has the shape of a minted one and its check character agrees. */
export function isMintedId(id: string): boolean {
  if (id.length !== BODY_LENGTH + 1) return false;
  const body = id.slice(0, -1);
  return [...body].every(c => ALPHABET.includes(c)) && checkCharacter(body) === id.at(-1);
}

/**
 * A new id: seven random characters and a check character, drawn again while the check character falls outside the
 * alphabet or the id is taken.
 *
 * @param random gives that many random bytes
 * @param taken whether an id is in use, in any edition
 */
export function mintId(random: (bytes: number) => Uint8Array, taken: (id: string) => boolean): string {
  for (;;) {
    // 256 is a multiple of 32, so the remainder of a random byte is even.
    const body = [...random(BODY_LENGTH)].map(byte => ALPHABET[byte % 32]).join('');
    const id = body + checkCharacter(body);
    if (ALPHABET.includes(id.at(-1)!) && !taken(id)) return id;
  }
}
