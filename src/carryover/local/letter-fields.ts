import type { Joint } from '../../crosswalk/joint.ts';
import type { Entry } from '../../model/edition.ts';
import type { LocalRecord } from '../../model/local.ts';
import { listed } from '../sentences.ts';
import type { EditionTexts } from '../stale/old-sayings.ts';
import { CAUTION } from './governs.ts';
import type { Pointing } from './local-pointing.ts';

/** What a letter to the holder of a local rule or variance can say, by the names of its placeholders. */
export const LETTER_FIELDS = [
  'catalog',
  'date',
  'holder',
  'approver',
  'place',
  'kind',
  'title',
  'state',
  'until',
  'from_edition',
  'to_edition',
  'effective',
  'old_number',
  'old_title',
  'old_text',
  'new_number',
  'new_title',
  'new_text',
  'became',
  'standing',
  'to_do',
  'caution',
] as const;
export type LetterFields = Readonly<Record<(typeof LETTER_FIELDS)[number], string>>;

/** @param standing whether the record still stands beside the newer edition, one sentence; empty where nobody can tell */
export function letterFields(
  joint: Joint,
  texts: EditionTexts,
  record: LocalRecord,
  pointing: Pointing,
  { standing, date }: { readonly standing: string; readonly date: string },
): LetterFields {
  const { settings, header } = joint.to;
  const { from: old, heirs } = pointing;
  const several = heirs.length > 1;
  const newText = (heir: Entry) => {
    const text = texts.to(heir.id) ?? '';
    return several ? `${heir.number || heir.title}: ${text}` : text;
  };
  return {
    catalog: settings.title,
    date,
    holder: record.holder ?? (record.kind === 'rule' ? record.approver : `The holder of "${record.title}"`),
    approver: record.approver,
    place: record.place,
    kind: record.kind === 'rule' ? 'local rule' : 'variance',
    title: record.title,
    state: record.state,
    until: record.until === null ? 'with no end stated' : `until ${record.until}`,
    from_edition: joint.from.header.name,
    to_edition: header.name,
    effective: header.dates.effective ?? header.dates.published ?? 'a day that is not fixed yet',
    old_number: record.cites.number,
    old_title: old?.title ?? '',
    old_text: (old && texts.from(old.id)) || 'It has no text of its own; see what stands below it.',
    new_number: listed(heirs.map(h => h.number || h.id)) || 'none',
    new_title: listed(heirs.map(h => h.title).filter(Boolean)),
    new_text: heirs.map(newText).join('\n') || `Nothing takes its place in ${header.name}.`,
    became: pointing.why,
    standing,
    to_do: pointing.toDo ?? `Cite ${listed(heirs.map(h => h.number || h.id))} of ${header.name} from now on.`,
    caution: CAUTION,
  };
}
