/** Collects pieces of bytes into one block. Joining a million small buffers one by one takes longer than parsing them. */
export class ByteSink {
  #bytes: Uint8Array;
  #length = 0;

  constructor(size = 1 << 16) {
    this.#bytes = new Uint8Array(size);
  }

  get length(): number {
    return this.#length;
  }

  append(piece: Uint8Array, from = 0, to = piece.length): void {
    const end = this.#length + to - from;
    if (end > this.#bytes.length) {
      const grown = new Uint8Array(Math.max(end, this.#bytes.length * 2));
      grown.set(this.#bytes.subarray(0, this.#length));
      this.#bytes = grown;
    }
    this.#bytes.set(from === 0 && to === piece.length ? piece : piece.subarray(from, to), this.#length);
    this.#length = end;
  }

  /** Hands over everything collected so far; the sink starts again with a block of its own. */
  take(): Uint8Array {
    const taken = this.#bytes.subarray(0, this.#length);
    this.#bytes = new Uint8Array(this.#bytes.length);
    this.#length = 0;
    return taken;
  }
}
