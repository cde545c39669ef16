import { CatalogError, type ErrorCode } from '../model/errors.ts';

/** By SQLSTATE or by the system's word: what it was, and what to do. */
const SENTENCES: Readonly<Record<string, readonly [ErrorCode, (name: string) => string]>> = {
  '28P01': ['BadArgument', name => `${name} does not take this user and password; check PGPASSWORD or ~/.pgpass.`],
  '28000': ['BadArgument', name => `${name} does not let this user in; ask its administrator.`],
  '3D000': ['BadArgument', name => `There is no database ${name}; check the last part of the address.`],
  '42501': [
    'WriteFailed',
    name =>
      `This user may not do that in ${name}; ask for the right to read the table and to create tables beside it. What was not finished was taken back.`,
  ],
  '25006': [
    'WriteFailed',
    name => `${name} is read-only; name the server that takes changes. What was not finished was taken back.`,
  ],
  '55P03': [
    'Busy',
    name => `A table of ${name} is locked by somebody else; run again later. What was not finished was taken back.`,
  ],
  '40001': [
    'Changed',
    name => `${name} was changed by somebody else meanwhile; run again. What was not finished was taken back.`,
  ],
  '40P01': [
    'Busy',
    name => `${name} is busy with another change; run again later. What was not finished was taken back.`,
  ],
  '53100': [
    'WriteFailed',
    name => `The disk of ${name} is full; free some space and run again. What was not finished was taken back.`,
  ],
  '53300': ['Busy', name => `${name} takes no more connections now; run again later.`],
  '57P01': ['Busy', name => `${name} was shut down by its administrator; run again when it is up.`],
  '57P03': ['Busy', name => `${name} is starting up; run again in a moment.`],
  '57014': ['Busy', name => `${name} stopped the work, as its time limit says; run again with --batch.`],
  '2BP01': [
    'Changed',
    name =>
      `Something in ${name} was built upon our tables; take that away first. What was not finished was taken back.`,
  ],
  ECONNREFUSED: ['BadArgument', name => `No server answers at ${name}; start it, or check host and port.`],
  ENOENT: ['BadArgument', name => `No server answers at ${name}; start it, or check the folder of its socket.`],
  ENOTFOUND: ['BadArgument', name => `The host of ${name} is not known; check its name.`],
  EAI_AGAIN: ['BadArgument', name => `The host of ${name} is not known now; check the name and the network.`],
  ETIMEDOUT: ['BadArgument', name => `${name} does not answer; check host, port and network.`],
  EHOSTUNREACH: ['BadArgument', name => `${name} cannot be reached; check the network.`],
};

/**
 * What went wrong, as a sentence that ends in what to do. A statement of ours that the server does not understand is a
 * defect and stays what it is.
 *
 * @param name the database for people, without its password
 */
export function postgresFailure(error: unknown, name: string): unknown {
  if (error instanceof CatalogError || !(error instanceof Error)) return error;
  const { code } = error as { code?: unknown };
  const known = typeof code === 'string' ? SENTENCES[code] : undefined;
  if (known) return new CatalogError(known[0], known[1](name), { name, code });
  if (typeof code === 'string' && /^42/.test(code)) return error;
  if (/password must be a string/.test(error.message)) {
    const sentence = `${name} asks for a password; give it in PGPASSWORD or in ~/.pgpass.`;
    return new CatalogError('BadArgument', sentence, { name });
  }
  if (/timeout expired/.test(error.message)) return new CatalogError('BadArgument', SENTENCES.ETIMEDOUT![1](name));
  if (/terminated|ECONNRESET|EPIPE|not queryable/.test(`${error.message} ${code}`)) {
    return new CatalogError(
      'Busy',
      `The connection to ${name} broke; run again. What was not finished was taken back.`,
    );
  }
  if (typeof code !== 'string' && !/SSL/.test(error.message)) return error;
  const sentence = `${name} refused (${error.message}); mend that and run again. What was not finished was taken back.`;
  return new CatalogError('WriteFailed', sentence, { name, code });
}
