import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { HtmlValidate } from 'html-validate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBundleTemplates } from '../../src/commands/bundles/bundle-templates.ts';
import { changesSince } from '../../src/commands/bundles/changes-since.ts';
import { changesOf } from '../../src/exports/changes.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { writeChangesCsv, writeChangesFeed, writeChangesPage } from '../../src/exports/write-changes.ts';
import { elementsIn, readXml, textBelow } from '../../src/office/read-xml.ts';
import { openCatalog } from '../../src/store/open.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';
import { demoPublication } from './publication.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-changes-'));
const file = (name: string) => join(folder, name);
const ask = async (request: object) =>
  changesSince(testPorts(), await openCatalog(await demoCatalog()), {
    since: '2018',
    out: file('out.csv'),
    ...request,
  });
let publication: Publication;
beforeAll(async () => {
  publication = await demoPublication();
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('what changed since', () => {
  it('names every item that did not stay as it was, and no other', () => {
    const { joint, marks } = publication;
    const wrong: string[] = [];
    const told = new Set(changesOf(publication).map(c => c.old?.id ?? c.new!.id));
    for (const { id } of joint.from.entries) {
      const links = joint.leaving(id);
      const same = links.every(l => {
        if (l.from === null || l.to === null) return false;
        const m = marks({ ...l, from: l.from, to: l.to });
        return !m.renumbered && !m.moved && m.wording === 'same' && m.duty === 'same' && m.appliesTo === 'same';
      });
      if (told.has(id) !== (!same || links.length === 0)) wrong.push(id);
    }
    for (const { id } of joint.to.entries) if (joint.fateOfNew(id) === 'new' && !told.has(id)) wrong.push(id);
    expect(wrong).toEqual([]);
  });

  it('finds the edition that stood on a day, and keeps to a part and to the numbers that are followed', async () => {
    writeFileSync(file('ours.txt'), '3.1.1.1\n8.3.2.2, 99.9\n');
    const report = await ask({ since: '2023-10-01', items: file('ours.txt') });
    expect([report.from, report.to, report.unknown]).toEqual(['2018', '2024', ['99.9']]);
    expect(new Set(report.changes.map(c => c.old?.number))).toEqual(new Set(['3.1.1.1', '8.3.2.2']));
    const rows = parse(readFileSync(file('out.csv')), { columns: true }) as Record<string, string>[];
    expect(rows.map(r => r.number_2018)).toEqual(report.changes.map(c => c.old?.number));
    const part = changesOf(publication, { part: '3' });
    expect(part.length).toBeGreaterThan(40);
    expect(part.every(c => [c.old, c.new].some(e => e?.number.split('.')[0] === '3'))).toBe(true);
  }, 120_000);

  it('is a feed that an XML reader takes, with an id of its own for each change', () => {
    const changes = changesOf(publication);
    const feed = readXml(writeChangesFeed(publication, changes), 'feed');
    const entries = elementsIn(feed).filter(e => e.name.endsWith('entry'));
    expect(entries).toHaveLength(changes.length);
    const part = (e: (typeof entries)[number], name: string) =>
      textBelow(elementsIn(e).find(x => x.name.endsWith(name))!);
    expect(new Set(entries.map(e => part(e, 'id'))).size).toBe(entries.length);
    for (const entry of entries) {
      expect(part(entry, 'updated')).toBe('2024-02-01T00:00:00Z');
      expect(part(entry, 'title')).not.toBe('');
    }
  });

  it('lets no title act: not in the page, not in the feed, not in the table', async () => {
    const [change] = changesOf(publication);
    const evil = [
      { ...change!, old: { ...change!.old!, title: '=1+1</td><script>alert(1)</script>\u0001' }, said: '' },
    ];
    const page = writeChangesPage(publication, evil, await readBundleTemplates());
    expect(page).not.toContain('<script>');
    const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(page);
    expect(report.results.flatMap(r => r.messages.map(m => m.ruleId))).toEqual([]);
    expect(() => readXml(writeChangesFeed(publication, evil), 'feed')).not.toThrow();
    expect(writeChangesCsv(publication, evil)).toContain("'=1+1");
  });

  it('says what to do instead where it cannot be done, and writes nothing', async () => {
    const before = readdirSync(folder);
    const bad: [object, RegExp][] = [
      [{ since: '1999-01-01', out: file('a.csv') }, /name an edition or a later day/],
      [{ since: '2024-05-01', out: file('a.csv') }, /name an earlier day/],
      [{ part: '77', out: file('a.csv') }, /give the number of a part/],
      [{ out: file('a.doc') }, /end its name in/],
      [{ items: file('none.txt'), out: file('a.csv') }, /none\.txt/],
    ];
    for (const [request, sentence] of bad) await expect(ask(request)).rejects.toThrow(sentence);
    expect(readdirSync(folder)).toEqual(before);
  }, 120_000);
});
