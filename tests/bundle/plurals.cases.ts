import { expect, it } from 'vitest';
import { briefing } from '../../src/exports/briefing.ts';
import { siteLead } from '../../src/exports/site.ts';
import { demoPublication } from './publication.ts';

it('one that was withdrawn, and one that is new, are told as one', async () => {
  const publication = await demoPublication();
  const { statistics } = publication;
  const whole = { ...statistics.whole, new: 1, fates: { ...statistics.whole.fates, withdrawn: 1 } };
  const one = { ...publication, statistics: { ...statistics, whole } };
  const words = `${siteLead(one.statistics)} ${JSON.stringify(briefing(one))}`;
  expect(words).toContain('1 was withdrawn and 1 is new');
  expect(words).not.toMatch(/\b1 (?:were|are|requirements|ones|new ones|withdrawn ones|paths)\b/);
}, 60_000);
