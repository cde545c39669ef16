/** What bytes are written to: a stream of node, or anything that takes them as one does. */
export interface ByteWriter {
  /** False: wait for `drain` before writing more. */
  write(bytes: Uint8Array | string, done?: (error?: Error | null) => void): boolean;
  once(event: 'drain' | 'error', told: (error: Error) => void): unknown;
  off(event: 'drain' | 'error', told: (error: Error) => void): unknown;
  /** Why it takes no more. */
  readonly errored: Error | null;
}

/** A file that appears under its name only when it is whole. */
export interface PendingFile {
  readonly stream: ByteWriter;
  /** Ends the stream and syncs: the bytes are on the disk, and the name is as it was. */
  settle(): Promise<void>;
  /** Settles where that is not done yet, and renames into place. */
  commit(): Promise<void>;
  /** Throws away what was written; the name is left as it was. */
  abandon(): Promise<void>;
}

/** The files of the person who runs a command. Failing calls throw a CatalogError that says what to do. */
export interface Files {
  read(path: string): Promise<Uint8Array>;
  stream(path: string): AsyncIterable<Uint8Array>;
  /** Writes by a temporary file and rename; a half-written output never stands under `path`. */
  write(path: string, bytes: Uint8Array | string): Promise<void>;
  create(path: string): Promise<PendingFile>;
  exists(path: string): Promise<boolean>;
  makeFolder(path: string): Promise<void>;
  /** Takes a file away; one that is gone already is no failure. */
  remove(path: string): Promise<void>;
  /** Whether both names lead to the same file, links followed. */
  same(a: string, b: string): Promise<boolean>;
  /**
   * Does work on a file while nobody else who asks likewise does any, in whatever process; throws Busy where somebody
   * goes on for seconds. Absent: nobody else reaches these files.
   */
  alone?<T>(path: string, work: () => Promise<T>): Promise<T>;
}

export interface Author {
  readonly name: string;
  readonly email: string;
}

/** What a command may use of the outside world, besides the catalog that it is given. */
export interface Ports {
  readonly files: Files;
  readonly now: () => Date;
  readonly author: Author;
  /** Random bytes for new ids; seeded in the demo and in tests. */
  readonly random: (bytes: number) => Uint8Array;
  /** Called at steps of work that may take over two seconds. */
  readonly progress: (message: string) => void;
}

/** The author of a commit made now. */
export function person(ports: Ports) {
  return { ...ports.author, date: ports.now() };
}
