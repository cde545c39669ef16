import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { issueToken, peopleOf, readPerson, revokeTokens } from '../../src/commands/people.ts';
import { type Catalog, openOrCreate } from '../../src/store/open.ts';
import { readPeople } from '../../src/store/people.ts';
import { testPorts } from '../demo-catalog.ts';

const [A, B] = [
  { name: 'Reviewer A', address: 'a@example.org' },
  { name: 'Reviewer B', address: 'b@example.org' },
];

let dir: string;
let catalog: Catalog;
let file: string;
beforeEach(async () => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-people-'));
  catalog = await openOrCreate(join(dir, 'works.git'));
  file = join(catalog.dir, 'fishplate', 'people.json');
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

test('a token finds its person and no other token does', async () => {
  const ports = testPorts();
  const [a, b] = [await issueToken(ports, catalog, A), await issueToken(ports, catalog, B)];
  const people = peopleOf(catalog);
  expect(await people.find(a)).toMatchObject(A);
  expect(await people.find(b)).toMatchObject(B);
  for (const wrong of ['', 'fp-', a.slice(0, -1), a.toUpperCase(), `${a}x`])
    expect(await people.find(wrong)).toBeUndefined();
});

test('a token publishes only if it was given for that, and another one of the same person does not', async () => {
  const ports = testPorts();
  const [plain, given] = [
    await issueToken(ports, catalog, A),
    await issueToken(ports, catalog, A, { publishes: true }),
  ];
  const people = peopleOf(catalog);
  expect([(await people.find(plain))!.publishes, (await people.find(given))!.publishes]).toEqual([undefined, true]);
  expect((await readPeople(catalog)).map(p => p.publishes)).toEqual([undefined, true]);
});

test('the token itself stands nowhere in the catalog, and a clone takes nobody along', async () => {
  const token = await issueToken(testPorts(), catalog, A);
  expect(readFileSync(file, 'utf8')).toContain(A.name);
  expect(readFileSync(file, 'utf8')).not.toContain(token.slice(3));
  execFileSync('git', ['clone', '--quiet', '--bare', catalog.dir, join(dir, 'clone.git')], { stdio: 'ignore' });
  expect(existsSync(join(dir, 'clone.git', 'fishplate', 'people.json'))).toBe(false);
  execFileSync('git', ['-C', catalog.dir, 'fsck', '--strict'], { stdio: 'ignore' });
});

test('a revoked token finds nobody, and what the person was given stays on record', async () => {
  const ports = testPorts();
  const [a, second] = [await issueToken(ports, catalog, A), await issueToken(ports, catalog, A)];
  const key = (await peopleOf(catalog).find(a))!.key;
  expect(await revokeTokens(ports, catalog, 'A@Example.org')).toBe(2);
  const people = peopleOf(catalog);
  expect([await people.find(a), await people.find(second), await people.holds(key)]).toEqual([
    undefined,
    undefined,
    false,
  ]);
  expect((await readPeople(catalog)).map(p => [p.name, p.revoked])).toEqual([
    ['Reviewer A', '2024-02-01'],
    ['Reviewer A', '2024-02-01'],
  ]);
  await expect(revokeTokens(ports, catalog, A.address)).rejects.toThrow('nobody has one');
});

test('two who are added at the same moment are both there', async () => {
  const all = Array.from({ length: 8 }, (_, at) => ({ name: `N${at}`, address: `n${at}@example.org` }));
  await Promise.all(all.map(who => issueToken(testPorts(who.name), catalog, who)));
  expect((await readPeople(catalog)).map(p => p.name).sort()).toEqual(all.map(p => p.name));
});

test('one address is one person', async () => {
  await issueToken(testPorts(), catalog, A);
  await expect(issueToken(testPorts('2'), catalog, { ...A, name: 'Somebody else' })).rejects.toThrow(
    'a@example.org is the address of Reviewer A already',
  );
});

test('a damaged file lets nobody in and says how to mend it', async () => {
  const token = await issueToken(testPorts(), catalog, A);
  for (const text of ['', '{', '[]', '{"people":[{"name":"A","address":"a","token":"","created":"2024-02-01"}]}']) {
    writeFileSync(file, text);
    await expect(peopleOf(catalog).find(token)).rejects.toThrow('is damaged, so nobody can sign in; remove it');
  }
});

test('a person is a name with an address', () => {
  expect(readPerson(' Reviewer A  <a@example.org> ')).toEqual(A);
  for (const wrong of ['Reviewer A', '<a@example.org>', 'A <>', 'A\nB <a@b>', 'A <a@b> C'])
    expect(() => readPerson(wrong)).toThrow('write it as "Name <address>"');
});
