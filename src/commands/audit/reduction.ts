import { askedBy } from '../../content/links/retention.ts';
import type { Entry } from '../../model/edition.ts';
import { typeName } from '../../model/settings.ts';
import type { AuditReport } from './audit-editions.ts';

/** One line of the split: so many old items, and by how many words the texts grew (+) or shrank (−). */
export interface ReductionRow {
  /** Installation type; empty for the whole edition. */
  readonly type: string;
  readonly what: string;
  readonly items: number;
  readonly words: number | undefined;
}

export interface Reduction {
  readonly rows: readonly ReductionRow[];
}

/**
 * Where a smaller catalog comes from: old texts combined with others, withdrawn by reason, and condensed, counted for
 * the whole and for each installation type. Lines add up: old − fewer by combining − withdrawn + more by splitting + new
 * = what the newer edition has.
 */
export function reductionOf(report: AuditReport): Reduction {
  const { joint } = report;
  const types = [...new Set(joint.from.settings.installationTypes.map(t => t.id))];
  return {
    rows: ['', ...types].flatMap(type =>
      split(report, type).map(r => ({ ...r, type: type && typeName(joint.from.settings, type) })),
    ),
  };
}

function split({ joint, items, heirs }: AuditReport, type: string): ReductionRow[] {
  const holds = (types: readonly string[]) => type === '' || types.includes(type);
  const olds = joint.from.entries.filter(e => items.get(e.id)?.text !== undefined && holds(joint.old.types(e.id)));
  const news = joint.to.entries.filter(e => heirs.get(e.id)?.text !== undefined && holds(joint.new.types(e.id)));
  const [isOld, isNew] = [olds, news].map(list => new Set(list.map((e: Entry) => e.id)));
  const words = (list: readonly Entry[], texts: typeof items) =>
    list.reduce((sum, e) => sum + wordCount(askedBy(texts.get(e.id)!)), 0);
  const heirsOf = (e: Entry) => joint.leaving(e.id).flatMap(l => (l.to !== null && isNew!.has(l.to) ? [l.to] : []));
  const sourcesOf = (e: Entry) =>
    joint.arriving(e.id).flatMap(l => (l.from !== null && isOld!.has(l.from) ? [l.from] : []));
  const going = olds.filter(e => heirsOf(e).length > 0);
  const gone = olds.filter(e => heirsOf(e).length === 0);
  const fed = news.filter(e => sourcesOf(e).length > 0);
  const fresh = news.filter(e => sourcesOf(e).length === 0);
  const reasons = new Map<string, Entry[]>();
  for (const e of gone) {
    const ended = joint
      .leaving(e.id)
      .filter(l => l.to === null && (type === '' || l.types === undefined || l.types.includes(type)));
    const given = new Set(ended.map(l => l.reason ?? 'no reason given'));
    const reason = given.size > 0 ? [...given].sort().join('; ') : 'no record';
    reasons.set(reason, [...(reasons.get(reason) ?? []), e]);
  }
  const row = (what: string, n: number, w?: number): ReductionRow => ({ type, what, items: n, words: w });
  return [
    row('old texts', olds.length, words(olds, items)),
    ...[...reasons].sort().map(([reason, list]) => row(`withdrawn: ${reason}`, -list.length, -words(list, items))),
    row('combined or split (balance)', fed.length - going.length),
    row('condensed (words of what goes on)', 0, words(fed, heirs) - words(going, items)),
    row('new', fresh.length, words(fresh, heirs)),
    row('new texts', news.length, words(news, heirs)),
  ];
}

const wordCount = (text: string) => text.split(/\s+/).filter(Boolean).length;
