import { fieldChanges } from '../../content/wording/changes.ts';
import { CONTENT_FIELDS, type Item, type ItemContent } from '../../model/item.ts';
import { diffWords, type TextChange } from '../../text/word-diff.ts';

/** A field of two items, marked: what the old side shows and what the new side shows. Empty where the field is absent. */
export interface FieldText {
  readonly field: keyof ItemContent;
  readonly changed: boolean;
  readonly old: readonly TextChange[];
  readonly new: readonly TextChange[];
}

/** Installation types by name, inherited ones resolved: an item that inherits them says nothing itself. */
interface TypeNames {
  readonly from: readonly string[];
  readonly to: readonly string[];
}

/** All fields that either item fills, in the order in which they are written, with their words marked. */
export function compareItems(from: Item, to: Item, types: TypeNames): FieldText[] {
  const changed = new Set(fieldChanges(from, to).map(c => c.field));
  const fields: FieldText[] = [];
  for (const field of CONTENT_FIELDS) {
    const [a, b] =
      field === 'appliesTo' ? [types.from.join(', '), types.to.join(', ')] : [plain(from[field]), plain(to[field])];
    if (a === '' && b === '') continue;
    const differs = field === 'appliesTo' ? a !== b : changed.has(field);
    const changes = differs ? diffWords(a, b) : [{ kind: 'same' as const, text: a }];
    fields.push({
      field,
      changed: differs,
      old: changes.filter(c => c.kind !== 'added'),
      new: changes.filter(c => c.kind !== 'removed'),
    });
  }
  return fields;
}

function plain(value: ItemContent[keyof ItemContent]): string {
  if (value === undefined) return '';
  if (typeof value === 'string') return value;
  return value
    .map(part => (typeof part === 'string' ? part : `${part.when.replace('-', ' ')}${part.how ? `: ${part.how}` : ''}`))
    .join('; ');
}
