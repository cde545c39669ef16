import { CatalogError } from '../../model/errors.ts';
import type { OperationOf } from '../../model/operation.ts';
import type { DraftState } from '../draft-state.ts';

/**
 * Gives an installation type, a level or a glossary term another name. Codes stay: jobs and lineage hold on to them.
 * Texts that say the old word stay as they are; the drafting rules find them.
 */
export function rename(state: DraftState, { what, name, to }: OperationOf<'rename'>): DraftState {
  const { settings } = state;
  if (what === 'type') {
    const { installationTypes } = settings;
    if (!installationTypes.some(t => t.id === name || t.name === name))
      unknown(
        what,
        name,
        installationTypes.map(t => t.id),
      );
    refuseTaken(
      what,
      to,
      installationTypes.filter(t => t.id !== name && t.name !== name).flatMap(t => [t.id, t.name]),
    );
    const renamed = installationTypes.map(t => (t.id === name || t.name === name ? { ...t, name: to } : t));
    return { ...state, settings: { ...settings, installationTypes: renamed } };
  }
  if (what === 'level') {
    const { levels } = settings;
    if (!levels.some(l => l.name === name))
      unknown(
        what,
        name,
        levels.map(l => l.name),
      );
    refuseTaken(
      what,
      to,
      levels.map(l => l.name).filter(l => l !== name),
    );
    return { ...state, settings: { ...settings, levels: levels.map(l => (l.name === name ? { ...l, name: to } : l)) } };
  }
  const known = new Set(state.items.flatMap(i => i.terms ?? []));
  if (!known.has(name)) unknown(what, name, [...known].sort());
  const items = state.items.map(item =>
    item.terms?.includes(name) ? { ...item, terms: [...new Set(item.terms.map(t => (t === name ? to : t)))] } : item,
  );
  return { ...state, items };
}

/** Two of one name could not be told apart; of terms that is meant: two words for one thing become one. */
function refuseTaken(what: string, to: string, taken: readonly string[]): void {
  if (!taken.includes(to)) return;
  throw new CatalogError('BadArgument', `There is another ${what} called ${JSON.stringify(to)}; give another name.`);
}

function unknown(what: string, name: string, known: readonly string[]): never {
  throw new CatalogError(
    'BadArgument',
    known.length === 0
      ? `The draft has no ${what} ${JSON.stringify(name)}, nor any other; nothing is to be renamed.`
      : `The draft has no ${what} ${JSON.stringify(name)}; use one of: ${known.slice(0, 20).join(', ')}.`,
  );
}
