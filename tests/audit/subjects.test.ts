import { describe, expect, it } from 'vitest';
import { retentionBetween } from '../../src/content/links/retention.ts';
import { smallEditions } from './small-editions.ts';

/** What the audit says of one old text and its heir. */
function told(old: string, now: string) {
  const { joint, texts } = smallEditions([['1', 'Works', old]], [['2', 'Works', now]], [['1', '2']]);
  const [{ lost, changed }] = retentionBetween(joint, texts) as [ReturnType<typeof retentionBetween>[number]];
  return { lost: lost.map(l => l.text), changed: changed.map(c => `${c.text} → ${c.to}`) };
}

describe('what stands beside another thing now is stated no more', () => {
  it.each([
    ['the door shall be 900 mm wide and the window 600 mm', 'the door shall be 600 mm wide and the window 900 mm'],
    ['Test the pump at 900 mm and the valve at 600 mm', 'Test the pump at 600 mm and the valve at 900 mm'],
    [
      'Doors shall be 900 mm wide. Windows shall be 600 mm wide',
      'Windows shall be 900 mm wide. Doors shall be 600 mm wide',
    ],
  ])('values that were exchanged have changed: %s', (old, now) => {
    expect(told(`${old}.`, `${now}.`)).toEqual({ lost: [], changed: ['900 mm → 600 mm', '600 mm → 900 mm'] });
  });

  it('a value that only another thing has is lost', () => {
    const { lost } = told(
      'Doors shall be 900 mm wide. Windows shall be 600 mm wide.',
      'Windows shall be 900 mm wide. Doors shall be wide enough.',
    );
    expect(lost).toContain('900 mm');
  });

  it('materials that were exchanged have changed', () => {
    expect(
      told('Doors shall be of oak and windows of pine.', 'Doors shall be of pine and windows of oak.').changed,
    ).toEqual(['oak → pine', 'pine → oak']);
  });

  it('conditions that were exchanged are lost', () => {
    const { lost } = told(
      'If frost is forecast, lock the hatch. If rain is forecast, drain the pipe.',
      'If rain is forecast, lock the hatch. If frost is forecast, drain the pipe.',
    );
    expect(lost).toEqual(['If frost is forecast', 'If rain is forecast']);
  });

  it('a bound that was turned has changed', () => {
    expect(told('Lamps shall hang at least 2 m high.', 'Lamps shall hang at most 2 m high.').changed).toEqual([
      'at least 2 m → at most 2 m',
    ]);
  });

  it('both ends of a range are bounds', () => {
    expect(told('Water ponds at least 100 mm and at most 150 mm deep.', 'Water ponds 100 to 150 mm deep.')).toEqual({
      lost: [],
      changed: [],
    });
  });

  it.each([
    ['Doors shall be 900 mm wide and windows 600 mm.', 'Windows shall be 600 mm wide and doors 900 mm.'],
    ['Lay a block of 600 by 300 mm at the foot of the pipe.', 'At the foot of the pipe a block of 600 by 300 mm lies.'],
  ])('values in another order are where they were: %s', (old, now) => {
    expect(told(old, now)).toEqual({ lost: [], changed: [] });
  });
});
