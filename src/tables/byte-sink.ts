/** Collects pieces of bytes into one block. Joining a million small buffers one by one takes longer than parsing them. */
export class ByteSink {
  #bytes: Buffer;
  #length = 0;

  constructor(size = 1 << 16) {
    this.#bytes = Buffer.allocUnsafe(size);
  }

  get length(): number {
    return this.#length;
  }

  append(piece: Buffer, from = 0, to = piece.length): void {
    const end = this.#length + to - from;
    if (end > this.#bytes.length) {
      const grown = Buffer.allocUnsafe(Math.max(end, this.#bytes.length * 2));
      this.#bytes.copy(grown, 0, 0, this.#length);
      this.#bytes = grown;
    }
    piece.copy(this.#bytes, this.#length, from, to);
    this.#length = end;
  }

  /** Hands over everything collected so far; the sink starts again with a block of its own. */
  take(): Buffer {
    const taken = this.#bytes.subarray(0, this.#length);
    this.#bytes = Buffer.allocUnsafe(this.#bytes.length);
    this.#length = 0;
    return taken;
  }
}
