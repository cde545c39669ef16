import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/model/finding.ts';
import type { FixedAnswers } from '../../src/model/fixed-answer.ts';
import {
  fixedQuestionLines,
  fixedQuestionProgress,
  openFixedQuestions,
} from '../../src/release/fixed-question-lines.ts';
import { gateOf } from '../../src/release/gate.ts';
import { returnedIds, withdrawalFindings } from '../../src/release/gate-lineage.ts';
import { numberFindings } from '../../src/release/gate-numbers.ts';
import { referenceFindings } from '../../src/release/gate-references.ts';
import { SETTINGS, smallDraft } from '../editing/small-draft.ts';

const { older, items } = smallDraft();
const stop = (rule: string): Finding => ({ rule, severity: 'error', subject: rule, message: rule });
const look = (rule: string): Finding => ({ rule, severity: 'warning', subject: rule, message: rule });
const NOTHING = {
  conservation: [],
  lineage: [],
  ids: [],
  losses: [],
  references: [],
  numbering: [],
  comments: [],
  review: [],
  dates: [],
  files: [],
};

describe('a release gate', () => {
  it('lists what stops, the most serious question first, and what does not apart', () => {
    const gate = gateOf({ ...NOTHING, review: [look('a'), stop('b')], conservation: [stop('c')], dates: [stop('d')] });
    expect(gate.stops.map(f => f.rule)).toEqual(['c', 'b', 'd']);
    expect(gate.remarks.map(f => f.rule)).toEqual(['a']);
    expect(gate.answers.find(a => a.question === 'review')).toMatchObject({ stops: 1 });
    expect(gateOf(NOTHING).stops).toEqual([]);
  });

  it('asks of a withdrawal for a known reason, for what governs, and for the day on which that was read', () => {
    const record = (reason: string, more = {}) => ({
      from: 'a1x',
      heirs: [],
      reason,
      basis: 'declared' as const,
      ...more,
    });
    const rules = (reason: string, more = {}) =>
      withdrawalFindings([record(reason, more)], SETTINGS, older!).map(f => f.rule);
    expect(rules('because')).toEqual(['reason-unknown']);
    expect(rules('law-governs')).toEqual(['governs-unsaid', 'governs-unchecked']);
    expect(rules('law-governs', { governs: 'the county code' })).toEqual(['governs-unchecked']);
    expect(rules('law-governs', { governs: 'the county code', governsChecked: '2029-12-01' })).toEqual([]);
    expect(rules('obsolete')).toEqual([]);
    // A reason beside an heir says why it changed; nothing is withdrawn.
    const kept = {
      ...record('sorted by subject'),
      heirs: [{ to: 'a1y', fromExtent: 'all' as const, toExtent: 'part' as const }],
    };
    expect(withdrawalFindings([kept], SETTINGS, older!)).toEqual([]);
  });

  it('stops an id that comes back under another title, and tells one that comes back as it was', () => {
    const before = new Map([['z', { edition: '2014', title: 'Lead flashings' }]]);
    const back = (title: string) =>
      returnedIds([{ id: 'z', number: '1', title }], new Set(), before).map(f => f.severity);
    expect([back('Zinc flashings'), back('Lead flashings')]).toEqual([['error'], ['warning']]);
    expect(returnedIds([{ id: 'z', number: '1', title: 'x' }], new Set(['z']), before)).toEqual([]);
  });

  it('tells gaps of printed numbers, and none of numbers that follow from the place', () => {
    const printed = {
      ...SETTINGS,
      numbering: { levels: SETTINGS.levels.map(() => ({ style: 'printed' as const })), numbersUnique: true },
    };
    const gapped = items.map(i => (i.id === 'a1y' ? { ...i, number: '1.1.4' } : i));
    expect(numberFindings(printed, gapped).map(f => f.message)).toEqual([
      '1.1.4 Title of a1y stands after 1.1.1: 2 numbers are skipped; fishplate draft renumber closes gaps.',
    ]);
    expect(numberFindings(printed, items)).toEqual([]);
    expect(numberFindings(SETTINGS, gapped)).toEqual([]);
  });

  it('stops a text that was left as it was while the item that it refers to was renumbered', () => {
    const references = [{ item: 'a1x', number: '2.1.1', certain: true }];
    const meant = () => ({ title: 'Title of b2x', heirs: ['b2x'] });
    const found = (unchanged: boolean) => referenceFindings({ items, references, meant, unchanged: () => unchanged });
    expect(found(true).map(f => f.message)).toEqual([
      '1.1.1 Title of a1x refers to 2.1.1, which meant "Title of b2x" and is now "Title of b1x"; what it meant is now 2.2.1.',
    ]);
    expect(found(false)).toEqual([]);
    const nowhere = referenceFindings({
      items,
      references: [{ item: 'a1x', number: '9.9', certain: true }],
      unchanged: () => false,
    });
    expect(nowhere.map(f => [f.rule, f.severity])).toEqual([['reference-to-nothing', 'error']]);
  });
});

describe('the fixed questions', () => {
  const evidence = [
    { item: 'b1x', rule: 'more-than-one-thing', told: 'two acts' },
    { item: 'a1', rule: 'intake', told: 'flooded twice' },
  ];
  const hash = (text: string) => text;
  const queue = (records: readonly FixedAnswers[] = [], of = items) =>
    fixedQuestionLines({ settings: SETTINGS, items: of, evidence, records, hash });

  it('are asked of every requirement and work item, what happened on sites first', () => {
    const lines = queue();
    expect(lines).toHaveLength(8 * 4 + 4 * 2);
    expect(lines.slice(0, 2).map(l => [l.item, l.question.code, ...l.evidence])).toEqual([
      ['a1', 'enough', 'flooded twice'],
      ['b1x', 'singular', 'two acts'],
    ]);
  });

  it('hold on the texts on which they were answered: a changed text asks again, a no waits for a change', () => {
    const { texts } = queue().find(l => l.item === 'b1x' && l.question.code === 'singular')!;
    const say = (answer: 'yes' | 'no'): FixedAnswers[] => [
      {
        edition: '2030',
        item: 'b1x',
        answers: [{ question: 'singular', answer, because: 'seen', by: 'Rowan', date: '2030-01-02', texts }],
      },
    ];
    const rules = (list: ReturnType<typeof queue>) =>
      openFixedQuestions(list, '2030').map(f => `${f.rule} ${f.subject} ${f.severity}`);
    const unasked = 'review-unasked 2030 note';
    const told = openFixedQuestions(queue(), '2030').find(f => f.rule === 'review-unasked')?.message;
    expect(told).toMatch(/fishplate review list 2030 --open$/);
    expect(rules(queue())).toEqual(['review-open a1 error', 'review-open b1x error', unasked]);
    expect(rules(queue(say('yes')))).toEqual(['review-open a1 error', unasked]);
    expect(rules(queue(say('no')))).toEqual(['review-no b1x error', 'review-open a1 error', unasked]);
    const changed = items.map(i => (i.id === 'b1x' ? { ...i, text: 'One thing.' } : i));
    expect(queue(say('no'), changed).find(l => l.item === 'b1x' && l.question.code === 'singular')?.state).toBe(
      'again',
    );
    expect(fixedQuestionProgress(queue(say('yes')))).toMatchObject({
      answered: 1,
      asked: 40,
      reviewers: [{ by: 'Rowan', answered: 1 }],
    });
  });
});
