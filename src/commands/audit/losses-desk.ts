import { CatalogError } from '../../model/errors.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { inTurn } from '../in-turn.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import { remember } from '../remember.ts';
import { type AuditReport, auditTexts, withAnswers } from './audit-editions.ts';
import { settleLoss, signLoss, type Verdict } from './settle-one-loss.ts';

/** The losses between two editions as a list that several people work off while a viewer runs. */
export interface LossesDesk {
  /** With what everybody has answered by now; throws UnknownEdition, and BadArgument for editions named backwards. */
  read(from: string, to: string): Promise<AuditReport>;
  settle(from: string, to: string, said: Verdict, by: Person): Promise<void>;
  sign(from: string, to: string, key: string, by: Person): Promise<void>;
}

const MOST_AUDITS = 6;

/**
 * @param reading the catalog as it is read
 * @param writing opens it for writing, asked at the first verdict: a viewer may run where nothing can be written
 */
export function lossesDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): LossesDesk {
  const audits = remember(MOST_AUDITS, (key: string) => {
    const [from, to] = JSON.parse(key) as [string, string];
    return auditTexts(reading, from, to);
  });
  const read = async (from: string, to: string): Promise<AuditReport> => {
    const [a, b] = [await locate(reading, from), await locate(reading, to)];
    const audit = await audits(JSON.stringify([from, to, a.commit, b.commit]));
    if (audit.backwards || from === to) {
      const what = from === to ? `${from} is compared with itself` : `${to} is older than ${from}`;
      throw new CatalogError('BadArgument', `${what}; name the older edition first, then a newer one.`, { from, to });
    }
    return withAnswers(reading, audit);
  };
  const turn = inTurn();
  return {
    read,
    settle: (from, to, said, by) =>
      turn(async () => settleLoss(ports, await writing(), await read(from, to), said, by)),
    sign: (from, to, key, by) => turn(async () => signLoss(ports, await writing(), await read(from, to), key, by)),
  };
}
