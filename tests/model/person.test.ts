import { expect, it } from 'vitest';
import { isSamePerson } from '../../src/commands/audit/settle-losses.ts';
import { readPerson } from '../../src/commands/people.ts';
import { nameAndAddress } from '../../src/model/person.ts';

it('a name with a control character is nobody, at each door', () => {
  // A line end in a name would begin another line of a commit, and of a csv cell.
  for (const name of ['Ana\nBen', 'Ana\u0007', 'Ana\u0085Ben', 'Ana\tBen']) {
    expect(nameAndAddress(`${name} <a@b.example>`)).toBeUndefined();
    expect(() => readPerson(`${name} <a@b.example>`)).toThrow(/names nobody/);
  }
});

it.each([
  ['Ana Lee <ana@x.example>', 'A. Lee <ANA@x.example>', true],
  ['Ana Lee <ana@x.example>', ' ana  lee', true],
  ['Ana Lee <ana@x.example>', 'Ana Leigh <leigh@x.example>', false],
  ['Ana <ana@x.example', 'Ana', true],
  ['', '', false],
])('%s and %s: the same person is %s', (a, b, same) => {
  expect(isSamePerson(a, b)).toBe(same);
});
