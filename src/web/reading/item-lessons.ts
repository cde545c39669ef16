import type { LessonsCiting } from '../../commands/finding/lessons-citing.ts';
import type { Life } from './item-life.ts';

/** A lesson that cites an item, under its number of today or under an older or newer one. */
export interface ItemLesson {
  readonly file: string;
  readonly cites: readonly { readonly as: string; readonly places: string }[];
}

/** The most places of one lesson that are named. */
const MOST = 8;

/** Lessons that cite an item in any stage of its life. */
export function itemLessons(lessons: LessonsCiting, { stages }: Life): readonly ItemLesson[] {
  const byFile = new Map<string, { as: string; places: string }[]>();
  for (const { edition, items } of stages) {
    for (const { number } of items) {
      for (const { file, places } of lessons.of(edition, number)) {
        const cites = byFile.get(file) ?? [];
        byFile.set(file, cites);
        const more = places.length > MOST ? ` and ${places.length - MOST} more` : '';
        cites.push({ as: `${number} of ${edition}`, places: places.slice(0, MOST).join(', ') + more });
      }
    }
  }
  return [...byFile].map(([file, cites]) => ({ file, cites })).sort((a, b) => (a.file < b.file ? -1 : 1));
}
