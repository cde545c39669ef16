import { dayOf } from '../../model/day.ts';
import type { EditionHeader } from '../../model/edition.ts';
import type { FixedQuestionLine } from '../../release/fixed-question-lines.ts';
import type { Schedule } from '../../release/schedule.ts';
import {
  holding,
  isJoined,
  type Located,
  listDraftBranches,
  listDrafts,
  locate,
  mainCommit,
} from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { type Publication, readPublication } from '../../store/publication.ts';
import { readIndex } from '../../store/read.ts';
import { refuseBranch } from '../drafts/read-draft.ts';
import { inTurn } from '../in-turn.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import { remember } from '../remember.ts';
import { answerFixedQuestions, type GivenAnswer } from './answer-fixed-questions.ts';
import { askFixedQuestions } from './ask-fixed-questions.ts';
import { type PublishRequest, publishDraft } from './publish-draft.ts';
import { type ReleaseReport, releaseGate } from './release-gate.ts';
import { readSchedules } from './schedule.ts';

/** What stands between a draft and its publication, for the people who work on it while a viewer runs. */
export interface ReleaseDesk {
  drafts(): Promise<readonly string[]>;
  gate(draft: string): Promise<ReleaseReport>;
  schedule(draft: string): Promise<Schedule | undefined>;
  review(draft: string): Promise<readonly FixedQuestionLine[]>;
  /** What publishing would do. Throws BadArgument for a branch. */
  publication(draft: string): Promise<Publishable>;
  /** Throws Changed where the draft no longer stands where it was looked at, BadCatalog where something stops it. */
  publish(draft: string, how: Omit<PublishRequest, 'draft'>, by: Person): Promise<void>;
  /** What is on record about a published edition; undefined where none has the name. */
  published(edition: string): Promise<PublishedShown | undefined>;
  /** Throws BadArgument where the answer cannot be kept. */
  answer(draft: string, given: GivenAnswer, by: Person): Promise<void>;
}

/** A draft as it would be published. */
export interface Publishable {
  readonly header: EditionHeader;
  /** The commit that was looked at. */
  readonly commit: string;
  readonly items: number;
  /** What the gate finds at this commit. */
  readonly gate: ReleaseReport;
  /** Branches with work that is not in it. */
  readonly left: readonly string[];
}

export interface PublishedShown extends Publication {
  readonly header: EditionHeader;
  readonly items: number;
}

const MOST = 4;

/** @param writing opens the catalog for writing, asked at the first answer */
export function releaseDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): ReleaseDesk {
  const quiet = { ...ports, progress: () => {} };
  // Answers and comments stand on main, texts on the draft: both commits are part of what a reading rests on.
  const state = async (draft: string, at?: Located) =>
    JSON.stringify([at ?? (await locate(reading, draft)), await mainCommit(reading)]);
  const foundIn = (key: string) => (JSON.parse(key) as [Located])[0];
  const gates = remember(MOST, (key: string) => {
    const at = foundIn(key);
    return releaseGate(quiet, holding(reading, at), at.name);
  });
  const reviews = remember(MOST, (key: string) => {
    const at = foundIn(key);
    return askFixedQuestions(quiet, holding(reading, at), { edition: at.name });
  });
  const turn = inTurn();
  return {
    drafts: () => listDrafts(reading),
    gate: async draft => gates(await state(draft)),
    schedule: async draft => {
      const date = dayOf(ports.now());
      return (await readSchedules(quiet, reading, { edition: draft, date }))[0];
    },
    review: async draft => (await reviews(await state(draft))).lines,
    publication: async draft => {
      const at = await locate(reading, draft);
      refuseBranch(at);
      const { header, entries } = await readIndex(holding(reading, at), at.name);
      const left: string[] = [];
      for (const { name, tip } of await listDraftBranches(reading, at.name)) {
        if (!(await isJoined(reading, tip, at.commit))) left.push(name);
      }
      return { header, commit: at.commit, items: entries.length, gate: await gates(await state(draft, at)), left };
    },
    publish: async (draft, how, by) => {
      const author = { name: by.name, email: by.address };
      await turn(async () => publishDraft({ ...quiet, author }, await writing(), { draft, ...how }));
    },
    published: async edition => {
      const publication = await readPublication(reading, edition);
      if (!publication) return undefined;
      const { header, entries } = await readIndex(reading, edition);
      return { ...publication, header, items: entries.length };
    },
    answer: async (draft, given, by) => {
      const author = { name: by.name, email: by.address };
      await turn(async () => answerFixedQuestions({ ...quiet, author }, await writing(), draft, [given]));
    },
  };
}
