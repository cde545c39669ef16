import type { DeskDraft } from '../../commands/drafts/draft-desk.ts';

/** What pages call a draft, or somebody's own branch of one: `Draft 2030`, `Branch roofs of 2030`. */
export function calledOf({ name, header }: Pick<DeskDraft, 'name' | 'header'>): string {
  return name === header.name ? `Draft ${name}` : `Branch ${name} of ${header.name}`;
}
