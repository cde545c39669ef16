import type { Joint } from '../../crosswalk/joint.ts';
import type { TypeId } from '../../model/item.ts';

/**
 * Reads an installation type from a cell: its code or its name, in either edition, since a renamed type keeps its code.
 *
 * @param renamed names that neither edition knows any more, and the name or code that each of them means now
 */
export function typeReader(
  joint: Joint,
  renamed: Readonly<Record<string, string>> = {},
): (cell: string) => TypeId | undefined {
  const byName = new Map<string, TypeId>();
  for (const edition of [joint.to, joint.from]) {
    for (const type of edition.settings.installationTypes) {
      byName.set(fold(type.name), type.id);
      byName.set(fold(type.id), type.id);
    }
  }
  for (const [old, now] of Object.entries(renamed)) {
    const type = byName.get(fold(now));
    if (type !== undefined && !byName.has(fold(old))) byName.set(fold(old), type);
  }
  return cell => byName.get(fold(cell));
}

function fold(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}
