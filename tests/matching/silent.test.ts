import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/matching/answers.ts';
import type { BareRow } from '../../src/matching/bare-row.ts';
import { MATCHING_STEPS, MOST_SILENT, matchRows } from '../../src/matching/match-rows.ts';
import { deepFreeze } from '../freeze.ts';
import { BELIEVING } from './believing.ts';

const rows = (...texts: string[]): readonly BareRow[] =>
  deepFreeze(texts.map((text, at) => ({ number: `${at + 1}`, level: '', parent: -1, title: '', text, table: 0 })));

const match = (from: readonly BareRow[], to: readonly BareRow[], answers: readonly Answer[] = []) =>
  matchRows(from, to, BELIEVING, answers);

const RUSSIAN = rows(
  'Подпруга должна быть из хлопковой тесьмы шириной не менее 80 мм.',
  'Стремена должны быть на 25 мм шире сапога.',
  'Набивка седла должна быть из шерсти.',
);
const GERMAN = rows(
  'Der Sattelgurt muss aus Baumwolle sein und mindestens 80 mm breit sein.',
  'Die Steigbügel müssen 25 mm breiter als der Stiefel sein.',
  'Die Füllung des Sattels muss aus Wolle bestehen.',
);
const ENGLISH = rows(
  'The girth is of cotton webbing, 80 mm wide at least.',
  'The stirrups are 25 mm wider than the boot.',
  'The saddle is stuffed with wool.',
);

describe('rows of which the other table has no word', () => {
  it.each([
    ['another script', RUSSIAN],
    ['another language, in which some words look English', GERMAN],
  ])('are told, never accepted and never shown as sure, though they share numbers and units: %s', (_, foreign) => {
    for (const [from, to] of [
      [foreign, ENGLISH],
      [ENGLISH, foreign],
    ] as const) {
      const matching = match(from, to);
      expect(matching.unknown).toEqual(from === foreign ? { from: [0, 1, 2], to: [] } : { from: [], to: [0, 1, 2] });
      expect(matching.links.length).toBeGreaterThan(0);
      expect(matching.links.every(l => l.band === 'look' && l.confidence <= MOST_SILENT)).toBe(true);
      expect(matching.runnersUp(0, 1)[0]).toMatchObject({ confidence: MOST_SILENT, silent: true });
    }
  });

  it('are certain where a person says so', () => {
    const { links } = match(RUSSIAN, ENGLISH, [{ kind: 'yes', from: 0, to: 0, because: '' }]);
    expect(links.find(l => l.from === 0 && l.to === 0)).toMatchObject({ confidence: 1, band: 'accept' });
  });

  it('are linked by their words within one language, whichever it is', () => {
    const again = rows(
      'Стремена шире сапога на 25 мм.',
      'Ширина хлопковой тесьмы подпруги 80 мм.',
      'Набивка из шерсти.',
    );
    const { unknown, links } = match(RUSSIAN, again);
    expect(unknown).toEqual({ from: [], to: [] });
    expect(links.filter(l => l.band === 'accept').map(l => `${l.from}>${l.to}`)).toEqual(
      expect.arrayContaining(['0>1', '1>0', '2>2']),
    );
  });

  it('are none in English that says the same in other words: the matcher knows those', () => {
    const matching = match(rows('The wall is of brick.', 'The gate is locked.'), rows('A barrier of stone.'));
    expect(matching.unknown).toEqual({ from: [], to: [] });
    expect(matching.runnersUp(0, 1)[0]).toMatchObject({ silent: false });
  });

  it('make no accepted end of an old row and no accepted new row either', () => {
    const none = {
      ...BELIEVING,
      early: { base: -9, trees: [] },
      late: { base: -9, trees: [] },
      last: { base: -9, trees: [] },
    };
    const { links } = matchRows(RUSSIAN, ENGLISH, none);
    expect(links.map(l => `${l.from}>${l.to}`)).toContain('0>null');
    expect(links.every(l => l.band === 'look' && l.confidence <= MOST_SILENT)).toBe(true);
  });

  it('are held back too where a row has no words at all', () => {
    const { links } = match(rows('', 'The gate is locked.'), rows('', 'The gate is locked.'));
    const of = (from: number, to: number) => links.find(l => l.from === from && l.to === to);
    expect(of(0, 0)).toMatchObject({ band: 'look', confidence: MOST_SILENT });
    expect(of(1, 1)).toMatchObject({ band: 'accept' });
  });
});

it('each step of a matching is told before it is done', () => {
  const told: string[] = [];
  matchRows(RUSSIAN, ENGLISH, BELIEVING, [], step => told.push(step));
  expect(told).toHaveLength(MATCHING_STEPS);
  expect(told[2]).toMatch(/^comparing \d+ pairs of rows$/);
  expect(told.at(-1)).toBe('weighing what speaks for each, round 4 of 4');
});
