import { afterEach, expect, it, vi } from 'vitest';
import { warnOfNoAddress } from '../../src/cli/no-address.ts';
import { fishplateHere } from './run-here.ts';

const EDITIONS = ['2018', '2024'] as const;

afterEach(() => vi.restoreAllMocks());

function saidOf(...told: Parameters<typeof warnOfNoAddress>): string {
  const spy = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  warnOfNoAddress(...told);
  const said = spy.mock.calls.map(([text]) => String(text)).join('');
  spy.mockRestore();
  return said;
}

it('a bundle whose data carry the placeholder says so, with what to do; one with an address or without such data does not', () => {
  expect(saidOf(undefined, EDITIONS)).toMatch(/placeholder .* fishplate bundle 2018 2024 .* --base https:/);
  expect(saidOf(undefined, EDITIONS, ['tables', 'xkos'])).not.toBe('');
  expect(saidOf('https://standards.example.org/works/', EDITIONS)).toBe('');
  expect(saidOf(undefined, EDITIONS, ['tables', 'site'])).toBe('');
});

it('publish refuses an address that is none, or that no bundle uses, before anything is published', async () => {
  const none = await fishplateHere('--catalog', '/nowhere/c.git', 'publish', '2030', '--base', 'works');
  expect([none.status, none.stderr]).toEqual([2, expect.stringContaining('works is no address')]);
  const address = 'https://standards.example.org/works/';
  const idle = await fishplateHere('--catalog', '/nowhere/c.git', 'publish', '2030', '--base', address);
  expect([idle.status, idle.stderr]).toEqual([2, expect.stringContaining('add --bundle FOLDER')]);
});
