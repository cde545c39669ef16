import type { ReviewLine } from '../release/review-queue.ts';
import type { Schedule } from '../release/schedule.ts';
import { listDrafts, locate, mainCommit } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { answerReview, type GivenAnswer } from './answer-review.ts';
import { inTurn } from './in-turn.ts';
import type { Person } from './people.ts';
import type { Ports } from './ports.ts';
import { type ReleaseReport, releaseGate } from './release-gate.ts';
import { remember } from './remember.ts';
import { reviewLines } from './review-edition.ts';
import { readSchedules } from './schedule.ts';

/** What stands between a draft and its publication, for the people who work on it while a viewer runs. */
export interface ReleaseDesk {
  drafts(): Promise<readonly string[]>;
  gate(draft: string): Promise<ReleaseReport>;
  schedule(draft: string): Promise<Schedule | undefined>;
  review(draft: string): Promise<readonly ReviewLine[]>;
  /** Throws BadArgument where the answer cannot be kept. */
  answer(draft: string, given: GivenAnswer, by: Person): Promise<void>;
}

const MOST = 4;

/** @param writing opens the catalog for writing, asked at the first answer */
export function releaseDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): ReleaseDesk {
  const quiet = { ...ports, progress: () => {} };
  // Answers and comments stand on main, texts on the draft: both commits are part of what a reading rests on.
  const state = async (draft: string) =>
    JSON.stringify([draft, (await locate(reading, draft)).commit, await mainCommit(reading)]);
  const nameIn = (key: string) => (JSON.parse(key) as [string])[0];
  const gates = remember(MOST, (key: string) => releaseGate(quiet, reading, nameIn(key)));
  const reviews = remember(MOST, (key: string) => reviewLines(quiet, reading, { edition: nameIn(key) }));
  const turn = inTurn();
  return {
    drafts: () => listDrafts(reading),
    gate: async draft => gates(await state(draft)),
    schedule: async draft => {
      const date = ports.now().toISOString().slice(0, 10);
      return (await readSchedules(quiet, reading, { edition: draft, date }))[0];
    },
    review: async draft => (await reviews(await state(draft))).lines,
    answer: async (draft, given, by) => {
      const author = { name: by.name, email: by.address };
      await turn(async () => answerReview({ ...quiet, author }, await writing(), draft, [given]));
    },
  };
}
