import { NO_ADDRESS } from '../exports/data-names.ts';

/** The pieces of a bundle that name items by an address. */
const NAMING: readonly string[] = ['sssom', 'xkos', 'package'];

/**
 * Says that the data of a bundle carry the placeholder. Told whatever is quiet: who takes the data over takes it over.
 *
 * @param only the pieces that were asked for; absent: all
 */
export function warnOfNoAddress(
  base: string | undefined,
  editions: readonly [from: string, to: string],
  only?: readonly string[],
): void {
  if (base !== undefined || only?.every(piece => !NAMING.includes(piece))) return;
  process.stderr.write(
    `The data for machines name items below ${NO_ADDRESS}, a placeholder that leads nowhere; before you pass them on, write them again with: fishplate bundle ${editions.join(' ')} --out FOLDER --base https://your.address/\n`,
  );
}
