import { expect, it } from 'vitest';
import { showConflicts } from '../../src/commands/drafts/show-conflicts.ts';
import { applyOperation } from '../../src/editing/apply-operation.ts';
import { mergeDrafts } from '../../src/editing/merging/merge-drafts.ts';
import type { Operation } from '../../src/model/operation.ts';
import { DOER, smallDraft } from './small-draft.ts';

const base = smallDraft();
const made = (...operations: Operation[]) => operations.reduce((s, o) => applyOperation(s, o, DOER), base);
const law = (title: string): Operation => ({
  op: 'decide',
  decision: { id: 'law', title, reason: 'It governs.', authority: 'Committee', scope: 'Ladders' },
});

it('shows every kind of conflict once, by what it is about, with what both sides say of it', () => {
  const ours = made(
    { op: 'rename', what: 'type', name: 'house', to: 'House A' },
    { op: 'rename', what: 'level', name: 'Part', to: 'Chapter' },
    law('One'),
    { op: 'set-days', days: { effective: '2030-01-01' } },
    { op: 'reword', id: 'a1x', to: { text: 'Ours.', purpose: 'ours' } },
    { op: 'move', id: 'a1y', under: 'b1' },
    { op: 'withdraw', id: 'a2x', reason: 'obsolete' },
    { op: 'withdraw', id: 'b2', reason: 'obsolete' },
  );
  const theirs = made(
    { op: 'rename', what: 'type', name: 'house', to: 'House B' },
    { op: 'rename', what: 'level', name: 'Part', to: 'Section' },
    law('Two'),
    { op: 'set-days', days: { effective: '2030-02-01' } },
    { op: 'reword', id: 'a1x', to: { text: 'Theirs.', purpose: 'theirs' } },
    { op: 'move', id: 'a2y', under: 'b2' },
    { op: 'move', id: 'a1y', under: 'a2' },
    { op: 'withdraw', id: 'a2x', reason: 'law-governs', governs: 'the county code', governsChecked: '2029-01-01' },
  );
  const sides = { base, ours, theirs };
  const shown = showConflicts(mergeDrafts(sides, new Map()).conflicts, sides).map(c => [
    c.name,
    ...c.fields.map(f =>
      [f.field ?? f.label, ...[f.old, f.new].map(side => side.map(t => t.text).join(''))].join(' | '),
    ),
  ]);
  expect(shown).toEqual(
    expect.arrayContaining([
      ['1.1.1 Title of a1x', 'text | Ours. | Theirs.', 'purpose | ours | theirs'],
      ['2.1.3 Title of a1y', 'Place | under 2.1 Title of b1 | under 1.2 Title of a2'],
      ['2.2 Title of b2', 'Text | ended | Title of b2'],
      ['1.2.1 Title of a2x', 'Older item | ends: obsolete | ends: law-governs, governed by the county code'],
      ["The catalog's levels", 'Value | Chapter; Work item; Requirement | Section; Work item; Requirement'],
      ['Installation type house', 'Value | house, House A | house, House B'],
      ['Day: effective', 'Value | 2030-01-01 | 2030-02-01'],
      ['Decision law', 'Value | law, One, It governs., Committee, Ladders | law, Two, It governs., Committee, Ladders'],
    ]),
  );
  expect(shown).toHaveLength(8);
});
