import { locate, mainCommit } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { remember } from '../remember.ts';
import { type FollowedReports, followReports } from './intake-count.ts';

/** What came in from the work, counted for the people who write the next edition. */
export interface IntakeDesk {
  /** All reports, followed to a draft or an edition. */
  reports(edition: string): Promise<FollowedReports>;
}

const MOST = 4;

export function intakeDesk(reading: Catalog): IntakeDesk {
  const known = remember(MOST, (key: string) => followReports(reading, (JSON.parse(key) as [string])[0]));
  return {
    reports: async edition =>
      known(JSON.stringify([edition, (await locate(reading, edition)).commit, await mainCommit(reading)])),
  };
}
