import { describe, expect, it } from 'vitest';
import { loadLanguage } from '../../src/drafting/language.ts';
import { DRAFTING_RULES, remarksOn } from '../../src/drafting/rules.ts';
import { deepFreeze } from '../freeze.ts';

const language = await loadLanguage();

describe.each(DRAFTING_RULES.map(rule => [rule.name, rule] as const))('%s', (name, rule) => {
  it.each(rule.bad.map(e => [e.text, e] as const))('remarks on: %s', (text, { context }) => {
    const found = remarksOn(language.read(text), deepFreeze(context ?? {})).filter(r => r.rule === name);
    expect(found.length).toBeGreaterThan(0);
    for (const r of found) expect(r.words).toBe(text.slice(r.start, r.end));
  });

  it.each(rule.good.map(e => [e.text, e] as const))('is silent on: %s', (text, { context }) => {
    expect(remarksOn(language.read(text), context ?? {}).filter(r => r.rule === name)).toEqual([]);
  });
});
