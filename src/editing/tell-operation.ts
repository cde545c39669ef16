import type { ItemId } from '../model/item.ts';
import type { Operation } from '../model/operation.ts';
import { type DraftState, nameOf } from './draft-state.ts';

/** What an operation does, in one line for people, told before it is done: numbers are those of the draft as it was. */
export function tellOperation(state: DraftState, operation: Operation): string {
  const name = (id: ItemId) => {
    const item = state.items.find(i => i.id === id);
    return item ? nameOf(item) : id;
  };
  const old = (id: ItemId) => {
    const item = state.older?.items.find(i => i.id === id);
    return item ? nameOf(item) : id;
  };
  const under = (id: ItemId | null) => (id === null ? 'at the top' : `under ${name(id)}`);
  switch (operation.op) {
    case 'reword':
      return `Reword ${name(operation.id)}`;
    case 'retitle':
      return `Retitle ${name(operation.id)} as "${operation.title}"`;
    case 'move':
      return `Move ${name(operation.id)} ${under(operation.under)}`;
    case 'combine':
      return `Combine ${operation.ids
        .filter(id => id !== operation.into)
        .map(name)
        .join(', ')} into ${name(operation.into)}`;
    case 'split':
      return `Split ${name(operation.id)} into ${operation.gives.length + 1}`;
    case 'withdraw':
      return `Withdraw ${name(operation.id)}${operation.types ? ` for ${operation.types.join(', ')}` : ''}: ${operation.reason}`;
    case 'incorporate':
      return `Incorporate ${operation.source}, ${operation.edition}, in ${name(operation.id)}`;
    case 'add':
      return `Add "${operation.item.title}" ${under(operation.under)}`;
    case 'applies-to':
      return `Apply ${name(operation.id)} to ${operation.types.join(', ')}`;
    case 'rename':
      return `Rename the ${operation.what} ${operation.name} to ${operation.to}`;
    case 'set-days':
      return `Set days: ${Object.entries(operation.days)
        .map(([name, day]) => `${name} ${day || 'taken away'}`)
        .join(', ')}`;
    case 'renumber':
      return 'Renumber without gaps';
    case 'decide':
      return `Decide: ${operation.decision.title}`;
    case 'link':
      return `Link old ${old(operation.from)} to ${name(operation.to)}`;
    case 'unlink':
      return `Take back the link of old ${old(operation.from)} to ${name(operation.to)}`;
    case 'restore':
      return `Restore old ${old(operation.from)} ${under(operation.under)}`;
  }
}
