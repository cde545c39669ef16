/** A sha256 that is fed piece by piece. */
export interface Sha256 {
  update(bytes: Uint8Array): void;
  /** In hex. Once only, at the end. */
  digest(): string;
}

/**
 * Node's own where there is one, since it is several times as fast; elsewhere one of ours. It is asked for at run time:
 * an `import` of `node:crypto` would keep a browser from loading anything that hashes, and `crypto.subtle` takes no
 * pieces.
 */
export function sha256(): Sha256 {
  const native = globalThis.process?.getBuiltinModule?.('node:crypto').createHash('sha256');
  if (!native) return plainSha256();
  return { update: bytes => void native.update(bytes), digest: () => native.digest('hex') };
}

/** FIPS 180-4, in plain arithmetic. */
export function plainSha256(): Sha256 {
  const state = Uint32Array.from(FIRST_STATE);
  const words = new Int32Array(64);
  const block = new Uint8Array(64);
  const view = new DataView(block.buffer);
  let held = 0;
  let length = 0;

  const take = (from: DataView, at: number) => {
    for (let i = 0; i < 16; i++) words[i] = from.getUint32(at + i * 4);
    for (let i = 16; i < 64; i++) {
      const [a, b] = [words[i - 15]!, words[i - 2]!];
      const s0 = turn(a, 7) ^ turn(a, 18) ^ (a >>> 3);
      const s1 = turn(b, 17) ^ turn(b, 19) ^ (b >>> 10);
      words[i] = (words[i - 16]! + s0 + words[i - 7]! + s1) | 0;
    }
    let [a, b, c, d] = [state[0]! | 0, state[1]! | 0, state[2]! | 0, state[3]! | 0];
    let [e, f, g, h] = [state[4]! | 0, state[5]! | 0, state[6]! | 0, state[7]! | 0];
    for (let i = 0; i < 64; i++) {
      const one = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + ROUND[i]! + words[i]!) | 0;
      const two = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + one) | 0;
      d = c;
      c = b;
      b = a;
      a = (one + two) | 0;
    }
    const sums = [a, b, c, d, e, f, g, h];
    for (let i = 0; i < 8; i++) state[i] = state[i]! + sums[i]!;
  };

  const update = (bytes: Uint8Array) => {
    length += bytes.length;
    let at = 0;
    if (held > 0) {
      const piece = bytes.subarray(0, 64 - held);
      block.set(piece, held);
      held += piece.length;
      at = piece.length;
      if (held < 64) return;
      take(view, 0);
    }
    const whole = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
    for (; at + 64 <= bytes.length; at += 64) take(whole, at);
    block.set(bytes.subarray(at));
    held = bytes.length - at;
  };
  return {
    update,
    digest: () => {
      const bits = BigInt(length) * 8n;
      update(new Uint8Array([0x80]));
      while (held !== 56) update(new Uint8Array(held < 56 ? 56 - held : 64 - held));
      view.setBigUint64(56, bits);
      take(view, 0);
      return [...state].map(word => word.toString(16).padStart(8, '0')).join('');
    },
  };
}

const turn = (word: number, by: number) => (word >>> by) | (word << (32 - by));

/** The first 32 bits of the fractional parts of roots of the first primes: square roots begin, cube roots go round. */
const PRIMES = firstPrimes(64);
const FIRST_STATE = PRIMES.slice(0, 8).map(p => fraction(Math.sqrt(p)));
const ROUND = Int32Array.from(PRIMES.map(p => fraction(Math.cbrt(p))));

function fraction(root: number): number {
  return Math.floor((root - Math.floor(root)) * 2 ** 32);
}

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n++) if (primes.every(p => n % p !== 0)) primes.push(n);
  return primes;
}
