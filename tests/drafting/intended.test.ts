import { expect, it } from 'vitest';
import { answerFixedQuestions } from '../../src/commands/releasing/answer-fixed-questions.ts';
import { askFixedQuestions } from '../../src/commands/releasing/ask-fixed-questions.ts';
import { checkDrafting } from '../../src/commands/texts/check-drafting.ts';
import { fishplateHere } from '../cli/run-here.ts';
import { catalogWithDraft, changeDraft } from '../release/small-catalog.ts';

const edition = '2030';

async function draftWithRemarks() {
  const made = await catalogWithDraft('Provide adequate light. The lamp shall be lit and the door should be locked');
  const rulesOn = async (item: string) => {
    const { remarks, answered } = await checkDrafting(made.ports, made.catalog, { edition });
    const of = (list: readonly { id: string; rule: string }[]) => list.filter(r => r.id === item).map(r => r.rule);
    return { open: of(remarks), answered: of(answered.map(a => a.remark)) };
  };
  return { ...made, rulesOn };
}

it('a remark that is answered "intended, because" is silent until the text changes, and what it was is kept', async () => {
  const { catalog, ports, dir, rulesOn } = await draftWithRemarks();
  const before = await rulesOn('w1a');
  expect(before.open).toContain('vague-word');
  const given = { item: '1.1', question: 'vague-word', answer: 'intended', because: 'the light plan gives the value.' };
  await answerFixedQuestions(ports, catalog, edition, [given]);
  const now = await rulesOn('w1a');
  expect(now.open).not.toContain('vague-word');
  expect(now.answered).toContain('vague-word');
  expect(now.open.length + now.answered.length).toBe(before.open.length);
  expect((await rulesOn('w2a')).open, 'another requirement with the same words').toContain('vague-word');
  const { answered } = await checkDrafting(ports, catalog, { edition });
  expect(answered[0]!.finding.message).toMatch(
    /Intended, because the light plan gives the value \(Steward, 2024-02-01\)\.$/,
  );
  // The question still shows what it was about.
  const { lines } = await askFixedQuestions(ports, catalog, { edition });
  const line = lines.find(l => l.item === 'w1a' && l.question.code === 'verifiable')!;
  expect([line.state, line.evidence.length > 0]).toEqual(['yes', true]);

  changeDraft(dir, { 'items/w1.json': text => text.replace('adequate light', 'adequate and even light') });
  expect((await rulesOn('w1a')).open).toContain('vague-word');
  expect((await rulesOn('w1a')).answered).toEqual([]);
});

it('"intended" needs its reason, and what is asked of a work item is answered there', async () => {
  const { catalog, ports } = await draftWithRemarks();
  const answer = (question: string, because: string) =>
    answerFixedQuestions(ports, catalog, edition, [{ item: '1.1', question, answer: 'intended', because }]);
  await expect(answer('vague-word', ' ')).rejects.toThrow(/^1\.1 verifiable: "intended" needs a reason\./);
  await expect(answer('applies-sometimes', 'so it is')).rejects.toThrow(
    /^1\.1 is not asked "together", which is asked of its work item; name that\./,
  );
});

it('the command counts what was answered, and shows it with --all', async () => {
  const { dir, catalog, ports } = await draftWithRemarks();
  const given = { item: '1.1', question: 'vague-word', answer: 'intended', because: 'the light plan gives the value' };
  const check = (...more: string[]) => fishplateHere('--catalog', dir, 'check', edition, '--drafting', ...more);
  expect((await check()).stdout).not.toContain('answered as intended');
  await answerFixedQuestions(ports, catalog, edition, [given]);
  const { stdout, stderr, status } = await check();
  expect(stdout).toMatch(
    /^\d+ remarks? more (?:was|were) answered as intended; --all shows them with their answers\.$/m,
  );
  expect([status, stderr]).toEqual([0, expect.not.stringContaining('Intended, because')]);
  const all = await check('--all', '--json');
  const told = (JSON.parse(all.stdout) as { findings: { subject: string; rule: string; message: string }[] }).findings;
  expect(told.find(f => f.subject === 'w1a' && f.rule === 'vague-word')!.message).toMatch(
    /Intended, because the light plan gives the value \(Steward, 2024-02-01\)\.$/,
  );
});
