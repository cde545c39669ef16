import { askedBy, type Retention, retentionBetween, saidBy } from '../../content/links/retention.ts';
import type { Lost } from '../../content/lost/lost.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { textHash } from '../../drafting/answers.ts';
import { LOSS_ANSWERS, parseLossAnswers } from '../../format/loss-answers.ts';
import type { Finding } from '../../model/finding.ts';
import type { Item, ItemId, TypeId } from '../../model/item.ts';
import type { LossAnswer } from '../../model/loss-answer.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readDecisions, readEditionAt } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { authorOf } from '../../store/repository.ts';
import { type ReadJoint, readJoint } from '../reading/read-crosswalk.ts';
import { coveredByRule } from './covered-losses.ts';
import { lossKey } from './loss-key.ts';

/** One thing that an old item says and none of its heirs does for these types, or says otherwise. */
export interface AuditLine {
  /** Names the question; the file of its answer is called so. Empty where nothing is asked (`changed`). */
  readonly key: string;
  readonly item: ItemId;
  readonly number: string;
  readonly title: string;
  readonly types: readonly TypeId[];
  readonly heirs: readonly { readonly id: ItemId; readonly number: string; readonly title: string }[];
  /** `changed`: a value that the heirs state otherwise. `type`: neither an heir nor a withdrawal for these types. */
  readonly kind: Lost['kind'] | 'type' | 'changed';
  readonly text: string;
  /** Where it begins in `oldText`. */
  readonly start: number;
  /** Of `changed`: the new value, in the heir's words. */
  readonly becomes: string;
  /**
   * `open`: nobody has answered. `again`: somebody has, and a text has changed since. `settled`: answered. `decision`:
   * an edition-wide decision covers it. `duty`: no loss.
   */
  readonly state: 'open' | 'again' | 'settled' | 'decision' | 'duty';
  readonly decision: string;
  readonly answer?: LossAnswer;
  readonly oldText: string;
  readonly heirText: string;
  /** Hashes of the texts that an answer rests on. */
  readonly texts: readonly string[];
  /** Who made the change: by the lineage record, else whoever wrote the newer edition. */
  readonly changedBy: string;
}

export interface AuditReport extends ReadJoint {
  readonly from: string;
  readonly to: string;
  readonly retention: readonly Retention[];
  readonly lines: readonly AuditLine[];
  readonly items: ReadonlyMap<ItemId, Item>;
  readonly heirs: ReadonlyMap<ItemId, Item>;
  /** Old items with a text. */
  readonly asked: number;
}

/** Asks, of everything that an older edition says, whether the newer one still says it for each installation type. */
export async function auditEditions(catalog: Catalog, from: string, to: string): Promise<AuditReport> {
  return withAnswers(catalog, await auditTexts(catalog, from, to));
}

/** The audit before anybody's answers: it rests on both editions alone, so that it need not be done anew for each. */
export async function auditTexts(catalog: Catalog, from: string, to: string): Promise<AuditReport> {
  const [a, b] = [await locate(catalog, from), await locate(catalog, to)];
  const held = holding(catalog, a, b);
  const read = await readJoint(held, a.name, b.name);
  const { joint } = read;
  const [older, newer] = await Promise.all([readEditionAt(held, a), readEditionAt(held, b)]);
  // An edition passed through may have decided as well; the first has nothing to decide.
  const decisions = await Promise.all(read.path.slice(1).map(name => readDecisions(held, name)));
  const author = await authorOf(catalog.repo, b.commit);
  const [items, heirs] = [older, newer].map(e => new Map(e.items.map(i => [i.id, i])));
  const texts = { from: (id: ItemId) => items!.get(id), to: (id: ItemId) => heirs!.get(id) };
  const retention = retentionBetween(joint, texts);
  const context = { joint, texts, publishedBy: `${author.name} <${author.email}>` };
  return {
    ...read,
    from: joint.from.header.name,
    to: joint.to.header.name,
    retention,
    lines: await coveredByRule(
      retention.flatMap(r => linesOf(r, context)),
      decisions.flat(),
    ),
    items: items!,
    heirs: heirs!,
    asked: new Set(retention.map(r => r.item)).size,
  };
}

/** The same with what people have answered by now. */
export async function withAnswers(catalog: Catalog, report: AuditReport): Promise<AuditReport> {
  const { answers, findings } = parseLossAnswers(await readBeside(catalog, LOSS_ANSWERS));
  const lines = report.lines.map((line): AuditLine => {
    const answer = line.key === '' ? undefined : answers.get(line.key);
    if (!answer) return line;
    const holds = answer.texts.join() === line.texts.join();
    return { ...line, answer, state: holds ? 'settled' : line.state === 'decision' ? 'decision' : 'again' };
  });
  return { ...report, lines, findings: [...report.findings, ...findings] };
}

interface Context {
  readonly joint: Joint;
  readonly texts: Parameters<typeof retentionBetween>[1];
  readonly publishedBy: string;
}

function linesOf(r: Retention, { joint, texts, publishedBy }: Context): AuditLine[] {
  const { number, title } = joint.old.get(r.item)!;
  const oldText = askedBy(texts.from(r.item)!);
  const heirs = r.heirs.map(id => ({ id, number: joint.new.get(id)!.number, title: joint.new.get(id)!.title }));
  const heirTexts = r.heirs.map(id => saidBy(joint, id, texts));
  const hashes = [oldText, ...heirTexts].map(textHash);
  const links = joint.leaving(r.item).filter(l => l.to === null || r.heirs.includes(l.to));
  const shared = {
    item: r.item,
    number,
    title,
    types: r.types,
    heirs,
    oldText,
    heirText: heirTexts.join('\n'),
    texts: hashes,
    changedBy: links.find(l => l.by !== undefined)?.by ?? publishedBy,
  };
  const ask = (kind: AuditLine['kind'], text: string, start: number, decision = ''): AuditLine => {
    const key = lossKey(joint.from.header.name, joint.to.header.name, r.item, r.types, kind, text);
    return { ...shared, key, kind, text, start, becomes: '', state: decision ? 'decision' : 'open', decision };
  };
  return [
    ...(r.fate === 'ends' ? [ask('type', r.types.join(', '), 0)] : []),
    ...r.lost.map(l => ask(l.kind, l.text, l.start, l.decision)),
    ...r.changed.map(
      ({ text, start, to }): AuditLine => ({
        ...shared,
        key: '',
        kind: 'changed',
        text,
        start,
        becomes: to,
        state: 'duty',
        decision: '',
      }),
    ),
  ];
}

/** The losses that nobody has settled, as findings; what a release has to wait for. */
export function openLosses({ lines, to }: AuditReport): Finding[] {
  return lines
    .filter(l => l.state === 'open' || l.state === 'again')
    .map(l => ({
      rule: 'loss-open',
      severity: 'warning' as const,
      subject: l.item,
      message: told(l, to),
      data: { key: l.key, kind: l.kind, text: l.text, types: l.types, state: l.state },
    }));
}

function told({ number, title, types, heirs, kind, text, state }: AuditLine, to: string): string {
  const who = [number, title].filter(Boolean).join(' ');
  const where = types.length > 0 ? ` (${types.join(', ')})` : '';
  if (kind === 'type') return `${who} has neither an heir nor a withdrawal in ${to}${text && ` for ${text}`}.`;
  const again = state === 'again' ? ' It was settled, and a text has changed since.' : '';
  return `${who}${where}: "${text}" is stated by no heir (${heirs.map(h => h.number || h.id).join(', ')}).${again}`;
}
