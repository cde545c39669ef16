import { InvalidArgumentError } from 'commander';

/** A port as an option's value; 0 is any free one. */
export function portNumber(text: string): number {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65_535) return port;
  throw new InvalidArgumentError('A port is a number from 0 to 65535.');
}
