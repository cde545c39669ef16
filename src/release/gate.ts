import type { Finding } from '../model/finding.ts';

/** What is asked before an edition is published, in the order of how bad it is to get it wrong. */
export const GATE_QUESTIONS = [
  ['conservation', 'Is every old item accounted for, for each installation type?'],
  ['lineage', 'Is every withdrawal and every heir on record, with its reason?'],
  ['ids', 'Does every id mean what it always meant?'],
  ['losses', 'Is everything that no heir states any more settled and signed?'],
  ['references', 'Does every reference lead where it is meant to?'],
  ['numbering', 'Are the numbers without gaps and without doubles?'],
  ['comments', 'Is every comment answered, and every accepted one followed by its change?'],
  ['review', 'Are the fixed questions answered wherever something speaks against a yes?'],
  ['dates', 'Do the dates follow one another?'],
  ['files', 'Does every file read back, and the frozen table agree?'],
] as const;
export type GateQuestion = (typeof GATE_QUESTIONS)[number][0];

export interface GateAnswer {
  readonly question: GateQuestion;
  readonly asks: string;
  /** Everything that stops the publication, then what does not. */
  readonly findings: readonly Finding[];
  readonly stops: number;
}

export interface GateReport {
  /** What stops first, then what is worth a look, then what holds; within each the most serious question first. */
  readonly answers: readonly GateAnswer[];
  /** What stops the publication, the most serious first. */
  readonly stops: readonly Finding[];
  readonly remarks: readonly Finding[];
}

/** A release gate: open where nothing stops. Findings of severity error stop; warnings and notes are told. */
export function gateOf(found: Readonly<Record<GateQuestion, readonly Finding[]>>): GateReport {
  const answers = GATE_QUESTIONS.map(([question, asks]): GateAnswer => {
    const stops = found[question].filter(f => f.severity === 'error');
    const others = found[question].filter(f => f.severity !== 'error');
    return { question, asks, findings: [...stops, ...others], stops: stops.length };
  });
  const all = answers.flatMap(a => a.findings);
  const rank = (a: GateAnswer) => (a.stops > 0 ? 0 : a.findings.length > 0 ? 1 : 2);
  return {
    answers: [...answers].sort((a, b) => rank(a) - rank(b)),
    stops: all.filter(f => f.severity === 'error'),
    remarks: all.filter(f => f.severity !== 'error'),
  };
}

/** Findings that anywhere else are worth a look, and here stop. */
export function stopping(findings: readonly Finding[]): Finding[] {
  return findings.map(f => (f.severity === 'warning' ? { ...f, severity: 'error' } : f));
}
