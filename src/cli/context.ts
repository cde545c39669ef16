import { randomBytes } from 'node:crypto';
import { userInfo } from 'node:os';
import type { Command } from 'commander';
import { realFiles } from '../commands/ports/files.ts';
import type { Author, Ports } from '../commands/ports/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { nameAndAddress } from '../model/person.ts';
import { type Catalog, findCatalog, openCatalog, openForWriting } from '../store/open.ts';

/** The options that every command has. */
interface SharedOptions {
  readonly catalog?: string;
  readonly author?: string;
  readonly quiet?: boolean;
}

/** The outside world of one command line. */
export function portsOf(command: Command): Ports {
  const { author, quiet } = command.optsWithGlobals<SharedOptions>();
  return {
    files: realFiles,
    now: () => new Date(),
    author: authorOf(author),
    random: bytes => randomBytes(bytes),
    progress: message => {
      if (!quiet) process.stderr.write(`${message} …\n`);
    },
  };
}

/** `Name <address>`: given outright, by FISHPLATE_AUTHOR, or the name of the account. */
function authorOf(told = process.env.FISHPLATE_AUTHOR): Author {
  if (told === undefined) return { name: userInfo().username, email: '' };
  const who = nameAndAddress(told);
  if (who) return { name: who.name, email: who.address };
  throw new CatalogError(
    'BadArgument',
    `The author ${JSON.stringify(told)} cannot be read; write it as "Name <address>".`,
  );
}

/** The folder named by --catalog, or the nearest catalog above. */
export async function catalogFolder(command: Command): Promise<string> {
  return command.optsWithGlobals<SharedOptions>().catalog ?? findCatalog(process.cwd());
}

export async function readingCatalog(command: Command): Promise<Catalog> {
  return openCatalog(await catalogFolder(command));
}

export async function writingCatalog(command: Command): Promise<Catalog> {
  return openForWriting(await catalogFolder(command));
}
