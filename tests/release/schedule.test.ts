import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packDraft } from '../../src/commands/comments/comments-pack.ts';
import { readForms } from '../../src/commands/comments/comments-read.ts';
import { calendarOf, readSchedules, setDates } from '../../src/commands/releasing/schedule.ts';
import { type ScheduleFacts, scheduleOf } from '../../src/release/schedule.ts';
import { scheduleIcs } from '../../src/release/schedule-ics.ts';
import { writeBeside } from '../../src/store/write-beside.ts';
import { AUTHOR, fsck, nativeGit, temporaryFolder } from '../store/temp-catalog.ts';
import { catalogWithDraft, changeDraft } from './small-catalog.ts';

const FACTS: ScheduleFacts = {
  header: {
    name: '2030',
    erratum: 0,
    replaces: '2024',
    state: 'draft',
    dates: {
      commentOpens: '2029-01-10',
      commentCloses: '2029-03-10',
      finalised: '2029-05-01',
      effective: '2030-01-01',
    },
  },
  rounds: 1,
  comments: { open: 2, withoutChange: 1 },
  losses: 3,
  unaccounted: 0,
  variances: 0,
};
const states = (day: string, facts = FACTS) =>
  Object.fromEntries(scheduleOf(facts, day).milestones.map(m => [m.name, m.state]));

describe('a schedule', () => {
  it('says what is done, ahead, late and not set; a day itself is not late', () => {
    expect(states('2029-05-01')).toEqual({
      commentOpens: 'done',
      commentCloses: 'done',
      finalised: 'ahead',
      published: 'unset',
      effective: 'ahead',
      transitionEnds: 'unset',
      nextReview: 'unset',
    });
    expect(states('2029-05-02').finalised).toBe('late');
    expect(states('2029-05-02', { ...FACTS, rounds: 0 })).toMatchObject({
      commentOpens: 'late',
      commentCloses: 'late',
    });
    const ready = { ...FACTS, comments: { open: 0, withoutChange: 0 }, losses: 0 };
    expect(states('2029-05-02', ready).finalised).toBe('done');
    expect(states('2031-05-02', ready).effective).toBe('late');
  });

  it('names all that a milestone needs, and finds a late one', () => {
    const { findings } = scheduleOf(FACTS, '2029-06-01');
    expect(findings.map(f => f.message)).toEqual([
      '2030: "finalised" was due on 2029-05-01: 2 comments are not answered; 1 accepted comment has no change; 3 losses are not settled.',
    ]);
  });

  it('of a published edition waits for its variances and its next draft only', () => {
    const dates = { ...FACTS.header.dates, transitionEnds: '2030-06-30', nextReview: '2034-01-01' };
    const published = { ...FACTS, variances: 1, header: { ...FACTS.header, dates, state: 'published' as const } };
    const late = (facts: ScheduleFacts) => scheduleOf(facts, '2035-01-01').findings.map(f => f.data?.milestone);
    expect(late(published)).toEqual(['transition ends', 'next review']);
    expect(late({ ...published, replacedBy: '2036', variances: 0 })).toEqual([]);
  });

  it('tells days that are out of order, but lets a review come before the transition ends', () => {
    const withDates = (dates: object) =>
      scheduleOf({ ...FACTS, header: { ...FACTS.header, dates } }, '2020-01-01').findings.map(f => f.message);
    expect(withDates({ commentOpens: '2029-03-01', commentCloses: '2029-02-01' })).toEqual([
      '2030: "comment closes" (2029-02-01) comes before "comment opens" (2029-03-01).',
    ]);
    expect(withDates({ effective: '2030-01-01', transitionEnds: '2031-01-01', nextReview: '2030-06-01' })).toEqual([]);
    expect(withDates({ effective: '2030-01-01', transitionEnds: '2029-01-01' })).toHaveLength(1);
  });
});

describe('a calendar file', () => {
  const schedule = scheduleOf({ ...FACTS, header: { ...FACTS.header, name: 'ö, 2030' } }, '2029-04-01');
  const text = scheduleIcs('Works; roofs', [schedule], new Date('2029-01-01T08:09:10Z'));

  it('keeps to RFC 5545: CRLF, lines of 75 bytes, escaped texts, names that stay', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    const lines = text.replaceAll('\r\n ', '').split('\r\n');
    expect(lines.filter(l => l === 'BEGIN:VEVENT')).toHaveLength(4);
    expect(lines).toContain('SUMMARY:ö\\, 2030: finalised');
    expect(lines).toContain('DTSTART;VALUE=DATE:20290501');
    expect(lines).toContain('DTSTAMP:20290101T080910Z');
    expect(lines).toContain(
      'DESCRIPTION:Needs: 2 comments are not answered\\; 1 accepted comment has no change\\; 3 losses are not settled.',
    );
    const uids = lines.filter(l => l.startsWith('UID:'));
    expect(new Set(uids).size).toBe(4);
    const later = scheduleIcs('Works; roofs', [schedule], new Date('2029-02-02T00:00:00Z'));
    expect(
      later
        .replaceAll('\r\n ', '')
        .split('\r\n')
        .filter(l => l.startsWith('UID:')),
    ).toEqual(uids);
  });
});

describe('the schedule of a catalog', () => {
  it('counts what stands in it: rounds, comments, losses, variances', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    await setDates(ports, catalog, '2030', [
      'Comment opens=2029-01-10',
      'finalised=2029-05-01',
      'effective=2030-01-01',
    ]);
    const needs = async () => {
      const [schedule] = await readSchedules(ports, catalog, { edition: '2030', date: '2029-05-02' });
      return Object.fromEntries(schedule!.milestones.map(m => [m.words, m.needs]));
    };
    expect((await needs())['comment opens']).toEqual(['the draft has not been sent out']);
    const out = temporaryFolder();
    await packDraft(ports, catalog, { draft: '2030', out });
    expect(await needs()).toMatchObject({ 'comment opens': [], finalised: [] });
    const form = join(out, 'form.csv');
    writeFileSync(form, 'MB/NC,Clause,Type,Comments\nUVA,1.1,te,Set it.\n');
    await readForms(ports, catalog, { files: [form], edition: '2030' });
    changeDraft(dir, { 'outline.json': () => JSON.stringify(['w1', 'w2']), 'items/w3.json': () => null });
    const record = {
      id: 'v',
      kind: 'variance',
      place: 'p',
      title: '',
      text: 'x',
      cites: { edition: '2018', number: '1.1' },
    };
    const requested = { ...record, from: '2020-01-01', until: null, approver: 'desk', state: 'requested' };
    await writeBeside(catalog, new Map([['local/p/v.json', JSON.stringify(requested)]]), AUTHOR, 'Local');
    expect(await needs()).toMatchObject({
      finalised: ['1 comment is not answered', '3 items have neither an heir nor a withdrawal'],
      'transition ends': ['the draft is not published', '1 variance from an older edition is not decided'],
    });
    const all = await readSchedules(ports, catalog, { date: '2029-05-02' });
    expect(all.map(s => s.edition)).toEqual(['2018', '2030']);
    expect(await calendarOf(ports, catalog, all)).toContain('UID:2030-finalised@works');
    fsck(dir);
  });

  it('sets and takes away days of a draft only, as a commit on its branch', async () => {
    const { catalog, ports, dir } = await catalogWithDraft();
    await setDates(ports, catalog, '2030', ['effective=2030-01-01', 'next_review=2035-01-01']);
    await setDates(ports, catalog, '2030', ['next-review=']);
    expect(JSON.parse(nativeGit(dir, 'show', 'draft/2030:draft.json'))).toEqual({
      name: '2030',
      replaces: '2018',
      dates: { effective: '2030-01-01' },
    });
    await expect(setDates(ports, catalog, '2030', ['effective=1.1.2030'])).rejects.toThrow('NAME=YEAR-MONTH-DAY');
    await expect(setDates(ports, catalog, '2030', ['effective=2030-02-30'])).rejects.toThrow('NAME=YEAR-MONTH-DAY');
    await expect(setDates(ports, catalog, '2030', ['launch=2030-01-01'])).rejects.toThrow('comment-opens');
    await expect(setDates(ports, catalog, '2018', ['effective=2030-01-01'])).rejects.toThrow('is published');
  });
});
