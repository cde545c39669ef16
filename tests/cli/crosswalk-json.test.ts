import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoCatalog } from '../demo-catalog.ts';
import { fsck, temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateIn as fishplate } from './run-here.ts';

interface End {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly level: number;
}
interface Evidence {
  readonly what: string;
  readonly from: string;
  readonly to: string;
}
interface JsonLink {
  readonly row: number;
  readonly fate: string;
  readonly from: End | null;
  readonly to: End | null;
  readonly fromExtent?: string;
  readonly toExtent?: string;
  readonly basis?: string;
  readonly confidence?: number;
  readonly reason?: string;
  readonly note?: string;
  readonly governs?: string;
  readonly marks?: Readonly<Record<string, unknown>> & { readonly evidence: readonly Evidence[] };
}
interface Part {
  readonly old: number;
  readonly fates: Readonly<Record<string, number>>;
}
interface JsonCrosswalk {
  readonly from: string;
  readonly to: string;
  readonly links: readonly JsonLink[];
  readonly findings: readonly { readonly rule: string; readonly severity: string; readonly message: string }[];
  readonly statistics: {
    readonly whole: Part & { readonly new: number; readonly total: number };
    readonly parts: readonly Part[];
  };
}
type Row = Readonly<Record<string, string>>;

const STEPS = [
  ['2018', '2024'],
  ['2014', '2018'],
  ['2014', '2024'],
  ['2024', '2018'],
] as const;

describe.each(STEPS)('the crosswalk of the demo from %s to %s as JSON', (from, to) => {
  let json: JsonCrosswalk;
  let rows: Row[];
  let told: string;
  beforeAll(async () => {
    const works = await demoCatalog();
    const read = (...more: string[]) => fishplate(works, 'crosswalk', from, to, ...more, '--catalog', works);
    const asJson = await read('--format', 'json');
    const asCsv = await read('--format', 'csv');
    expect(asJson.status).toBe(asCsv.status);
    expect(asJson.stderr).toBe(asCsv.stderr);
    json = JSON.parse(asJson.stdout);
    rows = parse(asCsv.stdout, { columns: true, bom: true });
    told = asCsv.stderr;
  });

  it('has the links of the csv, in its order, equal field by field', () => {
    expect([json.from, json.to]).toEqual([from, to]);
    expect(rows.length).toBeGreaterThan(300);
    expect(json.links.map(fieldsOf)).toEqual(rows.map(row => ({ ...row, note: undefined })));
  });

  it('says as fields of their own what the csv says in its note', () => {
    json.links.forEach((link, at) => {
      const { note } = rows[at]!;
      if (link.note !== undefined) expect(note).toContain(link.note);
      if (link.governs !== undefined) expect(note).toContain(`Now governed by ${link.governs}.`);
      if (note === '') expect([link.note, link.governs]).toEqual([undefined, undefined]);
    });
  });

  it('counts what the csv lists', () => {
    const { whole, parts } = json.statistics;
    // The demo's requirements are its items at the deepest level; the csv is joined to the levels by id.
    const levels = new Map(json.links.flatMap(l => [l.from, l.to]).map(end => [end?.id, end?.level]));
    const deepest = (side: 'from' | 'to') => Math.max(...json.links.map(l => l[side]?.level ?? 0));
    const requirements = (side: 'from' | 'to', fate?: string) =>
      new Set(
        rows
          .filter(r => levels.get(r[`${side}_id`]) === deepest(side) && (fate === undefined || r.fate === fate))
          .map(r => r[`${side}_id`]),
      ).size;
    for (const [fate, count] of Object.entries(whole.fates)) {
      expect(count, fate).toBe(requirements('from', fate));
      expect(
        parts.reduce((sum, part) => sum + part.fates[fate]!, 0),
        `${fate} in parts`,
      ).toBe(count);
    }
    const added = rows.filter(r => r.fate === 'new' && levels.get(r.to_id) === deepest('to'));
    expect([whole.old, whole.total, whole.new]).toEqual([requirements('from'), requirements('to'), added.length]);
  });

  it('holds the findings that the error stream tells', () => {
    const lines = told.split('\n').filter(Boolean);
    // The stream stops after twenty and says how many more there are.
    const more = Number(/^… and (\d+) more findings$/.exec(lines.at(-1) ?? '')?.[1] ?? 0);
    const shown = more > 0 ? lines.slice(0, -1) : lines;
    expect(json.findings.length).toBe(shown.length + more);
    const all = json.findings.map(f => `${f.severity}: ${f.message} [${f.rule}]`);
    expect(all.slice(0, shown.length)).toEqual(shown);
  });
});

/** As the csv tells it, phrases of both texts in quotation marks. */
function tellOnce({ what, from, to }: Evidence): string {
  const phrases = [from, to].filter(Boolean).map(p => `"${p}"`);
  return [what, phrases.join(' → ')].filter(Boolean).join(': ');
}

/** A link of the JSON with the columns of the csv, but for the note. */
function fieldsOf(link: JsonLink): Record<string, string | undefined> {
  const { marks, from, to } = link;
  const yesNo = (mark: unknown) => (mark === undefined ? '' : mark ? 'yes' : 'no');
  const word = (name: string) => String(marks?.[name] ?? '');
  return {
    row: String(link.row),
    fate: link.fate,
    from_id: from?.id ?? '',
    from_number: from?.number ?? '',
    from_title: from?.title ?? '',
    from_extent: from ? (link.fromExtent ?? '') : '',
    to_id: to?.id ?? '',
    to_number: to?.number ?? '',
    to_title: to?.title ?? '',
    to_extent: to ? (link.toExtent ?? '') : '',
    renumbered: yesNo(marks?.renumbered),
    moved: yesNo(marks?.moved),
    wording: word('wording'),
    duty: word('duty'),
    applies_to: word('appliesTo'),
    basis: link.basis ?? '',
    confidence: link.confidence === undefined ? '' : String(link.confidence),
    reason: link.reason ?? '',
    note: undefined,
    evidence: (marks?.evidence ?? [])
      .map(tellOnce)
      .filter((e, at, all) => all.indexOf(e) === at)
      .join(' | '),
  };
}

describe('the same tables as JSON', () => {
  const rows = [
    { number: '1', level: 'Part', parent: '', title: 'Storage', text: '', id: 'p' },
    { number: '1.1', level: 'Requirement', parent: '1', title: 'Base', text: 'Set it "level",\non a base.', id: 'a' },
    { number: '1.2', level: 'Requirement', parent: '1', title: 'Lid', text: 'Fit a lid.', id: 'b' },
  ];
  const newer = rows.map(r => (r.id === 'b' ? { ...r, number: '1.3', text: 'Fit a lid; lock it.' } : r));
  const csv = (list: readonly Row[]) =>
    [Object.keys(list[0]!), ...list.map(r => Object.values(r).map(v => `"${v.replaceAll('"', '""')}"`))].join('\n');

  it('import to the same catalog, and give the same crosswalk', async () => {
    const dir = temporaryFolder();
    for (const [name, list] of [
      ['2018', rows],
      ['2024', newer],
    ] as const) {
      writeFileSync(join(dir, `${name}.csv`), csv(list));
      writeFileSync(join(dir, `${name}.json`), JSON.stringify({ items: list }));
    }
    const made: string[] = [];
    for (const kind of ['csv', 'json']) {
      const works = join(dir, `${kind}.git`);
      for (const name of ['2018', '2024']) {
        const args = ['import', `${name}.${kind}`, '--edition', name, '--catalog', works];
        expect(await fishplate(dir, ...args, '--published', '2024-02-01')).toMatchObject({ status: 0, stderr: '' });
      }
      fsck(works);
      made.push((await fishplate(dir, 'crosswalk', '2018', '2024', '--format', 'json', '--catalog', works)).stdout);
    }
    expect(made[1]).toBe(made[0]);
    expect(made[0]).toContain('"number": "1.3"');
  });
});
