// What csv-parse takes from node's `stream`, for a browser: chunks in, each answered before the next one comes. Its own
// build for browsers brings streams of an older kind that take no plain array of bytes and cannot be destroyed.
export class Transform {
  #told = new Map();

  on(event, told) {
    this.#told.set(event, [...(this.#told.get(event) ?? []), told]);
    return this;
  }

  once(event, told) {
    return this.on(event, told);
  }

  emit(event, ...said) {
    for (const told of this.#told.get(event) ?? []) told(...said);
  }

  write(chunk, done) {
    this._transform(Buffer.from(chunk.buffer, chunk.byteOffset, chunk.length), 'buffer', error => {
      if (error) this.emit('error', error);
      done(error);
    });
    return true;
  }

  end(done) {
    this._flush(error => (error ? this.emit('error', error) : done?.()));
  }

  destroy() {}
}
