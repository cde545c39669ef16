import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryJobs } from '../../src/commands/jobs/carry-jobs.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(input: string | Uint8Array, chunk?: number) {
  const { files, held, text } = memoryFiles({ 'jobs.jsonl': input }, chunk);
  const report = await carryJobs({ files, progress: () => {} }, joint, marks, { input: 'jobs.jsonl', out: 'out' });
  return { report, out: text('out')!, held };
}

const LINES = [
  '{"job":"A","no":"3.1.1","type":"house","state":"open","rooms":[1,2],"size":1.50}',
  '{"job": "A", "no": "3.2.1", "type": "house", "state": "signed", "note": "ä \\u00e4 😀"}',
  '{ "job":"B","no":"3.1.9","type":"house" }',
];

describe('jobs in JSON Lines', () => {
  it('come back with every byte of their own and our fields before the closing brace', async () => {
    const { out, report } = await carry(`${LINES.join('\r\n')}\r\n`);
    const theirs = out.split('\r\n').filter(line => line.includes('"origin":"input"'));
    expect(theirs.map(line => line.replace(/,"new_number".*?"carried_to":"2024"/, ''))).toEqual(LINES);
    expect(theirs.map(line => JSON.parse(line).outcome)).toEqual(['carried', 'choose', 'unknown']);
    expect(
      out
        .split('\r\n')
        .filter(l => l.includes('"added"'))
        .map(l => JSON.parse(l).new_number),
    ).toEqual(['3.1.4']);
    expect(report.totals).toMatchObject({ lines: 3, added: 1, agree: true });
  });

  it('are the same wherever the chunks end, and without a line end at the end', async () => {
    const whole = await carry(LINES.join('\n'));
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 90 }), async chunk => {
        expect((await carry(LINES.join('\n'), chunk)).out).toBe(whole.out);
      }),
      { numRuns: 15 },
    );
  });

  it.each([
    ['{"no":"3.1.1"}\n{"no":\n', /Line 2 of jobs.jsonl is not valid JSON/],
    ['{"no":"3.1.1"}\n[1]\n', /Line 2 of jobs.jsonl is no object/],
    [Buffer.concat([Buffer.from('{"no":"3.1.1"}\n{"no":"'), Buffer.from([0xff]), Buffer.from('"}\n')]), /not UTF-8/],
  ])('are refused with the line where one is wrong, and nothing is written', async (input, sentence) => {
    const { files, held } = memoryFiles({ in: input });
    await expect(carryJobs({ files, progress: () => {} }, joint, marks, { input: 'in', out: 'out' })).rejects.toThrow(
      sentence instanceof RegExp ? new RegExp(sentence.source.replace('jobs.jsonl', 'in')) : sentence,
    );
    expect([...held.keys()]).toEqual(['in']);
  });
});
