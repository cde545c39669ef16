import type { Learned } from './believe.ts';

const none = { base: -3, trees: [] };
export const LEARNED: Learned = { early: none, late: none, calibration: { slope: 1, shift: 0 } };
