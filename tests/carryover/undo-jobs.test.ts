import { describe, expect, it } from 'vitest';
import { undoCarry } from '../../src/commands/carrying/undo-carry.ts';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const JOBS = 'Job,Item\nA,3.1.1\nA,3.1.3\n';

async function carried(start: Record<string, string> = {}) {
  const { files, held } = memoryFiles({ in: JOBS, ...start });
  const before = new Map(held);
  const options = { input: 'in', out: 'out', decisionsOut: 'ask.csv', priceChanges: 'dearer.csv' };
  await carryJobs({ files, progress: () => {} }, joint, marks, options);
  const again = () => carryJobs({ files, progress: () => {} }, joint, marks, options);
  return { files, held, before, again };
}

describe('undoing a run', () => {
  it('leaves every file as it was before, byte for byte', async () => {
    for (const record of ['out', 'out.fishplate.json']) {
      const { files, held, before } = await carried();
      expect(held.size).toBeGreaterThan(before.size);
      await undoCarry({ files }, record);
      expect(held).toEqual(before);
    }
  });

  it('brings back what stood under the name of the output, also after a second run', async () => {
    const { files, held, before, again } = await carried({ out: 'a list of mine' });
    expect(held.get('out.before')?.toString()).toBe('a list of mine');
    await again();
    expect(await undoCarry({ files }, 'out')).toMatchObject({ restored: ['out'] });
    expect(held).toEqual(before);
  });

  it.each(['out', 'ask.csv', 'out.before'])('does nothing once %s has been worked on', async name => {
    const { files, held } = await carried({ out: 'a list of mine' });
    held.set(name, Buffer.concat([held.get(name)!, Buffer.from('x')]));
    const before = new Map(held);
    await expect(undoCarry({ files }, 'out')).rejects.toThrow(new RegExp(`^${name} is not what the run left there`));
    expect(held).toEqual(before);
  });

  it('takes back several runs, or none of them', async () => {
    const { files, held, before } = await carried();
    const more = { input: 'in', out: 'other' };
    await carryJobs({ files, progress: () => {} }, joint, marks, more);
    const after = new Map(held);
    held.set('other', Buffer.from('mine'));
    await expect(undoCarry({ files }, 'out', 'other')).rejects.toThrow(/^other is not what/);
    expect(held.get('out')).toEqual(after.get('out'));
    held.set('other', after.get('other')!);
    await undoCarry({ files }, 'out', 'other');
    expect(held).toEqual(before);
  });

  it('refuses a file that is no record', async () => {
    const { files } = memoryFiles({ 'x.fishplate.json': '{}' });
    await expect(undoCarry({ files }, 'x')).rejects.toThrow(/no record of a run/);
  });
});
