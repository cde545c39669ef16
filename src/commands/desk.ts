import type { Catalog } from '../store/open.ts';
import { type LossesDesk, lossesDesk } from './audit/losses-desk.ts';
import { type CommentsDesk, commentsDesk } from './comments/comments-desk.ts';
import { type DraftDesk, draftDesk } from './drafts/draft-desk.ts';
import { type IntakeDesk, intakeDesk } from './intake/intake-desk.ts';
import { type NotesDesk, notesDesk } from './intake/notes-desk.ts';
import type { MatchDesk } from './matching/match-desk.ts';
import { type PeopleSource, peopleOf } from './people.ts';
import type { Ports } from './ports/ports.ts';
import { type ReleaseDesk, releaseDesk } from './releasing/release-desk.ts';

/** What people with a name may do in the viewer. */
export interface Desk {
  readonly people: PeopleSource;
  readonly losses: LossesDesk;
  readonly release: ReleaseDesk;
  readonly notes: NotesDesk;
  readonly comments: CommentsDesk;
  readonly intake: IntakeDesk;
  readonly work: DraftDesk;
  /** Reviews of matched links; absent: none are held. */
  readonly matches?: MatchDesk;
}

/**
 * @param reading the catalog as it is read
 * @param writing opens it for writing, asked at the first step: a viewer may run where nothing can be written
 */
export function deskOf(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>, matches?: MatchDesk): Desk {
  return {
    people: peopleOf(reading),
    losses: lossesDesk(ports, reading, writing),
    release: releaseDesk(ports, reading, writing),
    notes: notesDesk(ports, reading, writing),
    comments: commentsDesk(ports, reading, writing),
    intake: intakeDesk(reading),
    work: draftDesk(ports, reading, writing),
    ...(matches ? { matches } : {}),
  };
}
