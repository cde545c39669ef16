import type { Command } from 'commander';
import { issueToken, readPerson, revokeTokens, writtenAs } from '../commands/people.ts';
import { readPeople } from '../store/people.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { count, printJson, printLines } from './print.ts';

/** Who may write in the viewer: each person by a token of their own. */
export function addPeople(program: Command): void {
  const people = program
    .command('people')
    .description('Who may write in the viewer, each under their own name: give, list and revoke tokens')
    .addHelpText(
      'after',
      `
Examples:
  fishplate people add "A. Reviewer <reviewer@office.example>" --catalog works.git
  fishplate people add "B. Editor <editor@office.example>" --publishes --catalog works.git
  fishplate people list --catalog works.git
  fishplate people revoke reviewer@office.example --catalog works.git`,
    );

  people
    .command('add')
    .description('Give a person a token to sign in with; it is printed once and kept nowhere')
    .argument('<person>', '"Name <address>"')
    .option('--publishes', 'with this token the person may publish from the viewer as well, which nobody can take back')
    .option('--json', 'as JSON')
    .action(async (who: string, options: { publishes?: boolean; json?: boolean }, command: Command) => {
      const person = readPerson(who);
      const { publishes = false } = options;
      const token = await issueToken(portsOf(command), await writingCatalog(command), person, { publishes });
      if (options.json) return printJson({ ...person, token, ...(publishes ? { publishes } : {}) });
      printLines([
        `The token of ${writtenAs(person)}:`,
        `  ${token}`,
        'Hand it to nobody else: whatever is done with it stands under this name. It cannot be shown again.',
      ]);
    });

  people
    .command('list')
    .description('List who was given a token, and whether it still holds')
    .option('--json', 'as JSON')
    .action(async (options: { json?: boolean }, command: Command) => {
      const known = (await readPeople(await readingCatalog(command))).map(({ token: _, ...rest }) => rest);
      if (options.json) return printJson(known);
      if (known.length === 0) {
        return printLines(['Nobody has a token; give one with: fishplate people add "Name <address>"']);
      }
      printLines(
        known.map(
          p =>
            `${writtenAs(p)}, since ${p.created}${p.publishes ? ', may publish' : ''}${p.revoked === undefined ? '' : `, revoked ${p.revoked}`}`,
        ),
      );
    });

  people
    .command('revoke')
    .description('End every token of an address; whoever is signed in with one is signed out')
    .argument('<address>')
    .action(async (address: string, _options: unknown, command: Command) => {
      const revoked = await revokeTokens(portsOf(command), await writingCatalog(command), address);
      printLines([`${count(revoked, 'token')} of ${address} revoked.`]);
    });
}
