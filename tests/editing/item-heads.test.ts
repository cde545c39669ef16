import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nameItemColumns, refuseUnknownHeads } from '../../src/editing/item-heads.ts';
import { ourLineageHeads } from '../../src/editing/lineage-heads.ts';
import type { Table } from '../../src/model/table.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { fishplateIn } from '../cli/run-here.ts';
import { deepFreeze } from '../freeze.ts';

const table = (csv: string, file = 't.csv'): Table => deepFreeze(readTable(file, new TextEncoder().encode(csv)));
const read = (csv: string, told = new Map<string, string>()) =>
  Object.fromEntries(nameItemColumns(table(csv), told).read);

describe('the heads of a table of items', () => {
  it('are known by the words that offices use for them', () => {
    expect(read('Klausel;Überschrift;Wortlaut\n1;Wand;Die Wand hält.\n1.1;Anker;Anker halten.\n')).toEqual({
      number: 'Klausel',
      title: 'Überschrift',
      text: 'Wortlaut',
    });
    expect(read('no.,Heading,Wording\n1,Walls,Walls stand.\n')).toEqual({
      number: 'no.',
      title: 'Heading',
      text: 'Wording',
    });
    expect(read('N°;Intitulé;Libellé\n1;Murs;Les murs tiennent.\n').title).toBe('Intitulé');
    expect(read('Número;Título;Texto\n1;Muros;Los muros aguantan.\n').number).toBe('Número');
  });

  it('that head numbers in one office and texts in another are told apart by their cells', () => {
    expect(read('Clause,Requirement\n4.1,Walls shall stand.\n4.2,Roofs shall hold.\n')).toEqual({
      number: 'Clause',
      text: 'Requirement',
    });
    expect(read('No.,Clause\n4.1,Walls shall stand.\n4.2,Roofs shall hold.\n')).toEqual({
      number: 'No.',
      text: 'Clause',
    });
    expect(read('Requirement,Item,Text\nR-1,Walls,Walls shall stand.\nR-2,Roofs,Roofs hold.\n')).toEqual({
      number: 'Requirement',
      title: 'Item',
      text: 'Text',
    });
  });

  it('are ours first, whatever else could be meant, and what is told stands above all', () => {
    const csv = 'Wording,text,number\nold,new,1\n';
    expect(read(csv).text).toBe('text');
    expect(read(csv, new Map([['text', 'Wording']])).text).toBe('Wording');
  });

  it('are told in one note a table, and not at all where they are ours', () => {
    expect(nameItemColumns(table('number,title\n1,Walls\n')).findings).toEqual([]);
    const [only, ...others] = nameItemColumns(table('Nr;Bem.;Titel\n1;;Wand\n')).findings;
    expect(others).toEqual([]);
    expect(only?.message).toMatch(/Nr is read as number, Titel as title; Bem\. is not used/);
  });

  it('that say nothing are refused in one sentence with the option filled in, not with a line for each row', () => {
    const strange = table(
      'Kennung;Vorgabe neu;Thema\n1;Die Wand soll aus Ziegeln sein.;Wand\n1.1;Anker halten lange.;Anker\n',
    );
    expect(() => refuseUnknownHeads([strange])).toThrow(
      'Of the heads of t.csv none is known: Kennung, Vorgabe neu, Thema; say which is the number, which the title and which the text, for example --columns "number=Kennung,title=Thema,text=Vorgabe neu"',
    );
    expect(() => refuseUnknownHeads([table('number,Foo\n1,Walls shall stand.\n')])).toThrow(
      /heads of t\.csv number is known, and Foo is not; .*--columns text=Foo$/,
    );
    expect(() => refuseUnknownHeads([table('1.1,Walls,Stand\n1.2,Roofs,Hold\n')])).toThrow(
      /first line is an item already/,
    );
    expect(() => refuseUnknownHeads([table('number\n1\n')])).not.toThrow();
    expect(() => refuseUnknownHeads([table('number,Who\n1,A\n2,A\n3,A\n')])).toThrow(/--columns title=HEAD,text=HEAD$/);
  });

  it('that leave out what looks like the numbers are refused, unless it is said that there are none', () => {
    const bare = table('Lauf;Titel;Text\n1;Wand;Sie hält.\n1.1;Anker;Er hält.\n');
    expect(() => refuseUnknownHeads([bare])).toThrow(
      /Titel \(as title\), Text are known, and Lauf is not; .* --columns number=Lauf \(or number= /,
    );
    expect(() => refuseUnknownHeads([bare], new Map([['number', '']]))).not.toThrow();
    expect([...nameItemColumns(table('No,Text\n1,Walls.\n'), new Map([['number', '']])).read]).toEqual([
      ['text', 'Text'],
    ]);
  });
});

describe('the heads of a table of lineage', () => {
  it('may say old and new', () => {
    const ours = ourLineageHeads(table('Alt;Neu;Grund\n1;2;\n3;;obsolete\n'));
    expect(ours.columns).toEqual(['from', 'to', 'reason']);
    expect(ours.rows[1]!.cells.get('reason')).toBe('obsolete');
  });

  it('are refused once where neither side is known', () => {
    expect(() => ourLineageHeads(table('A;B\n1;2\n3;4\n'))).toThrow(
      /its heads are A, B - call the column of old items from/,
    );
  });
});

describe('import and match', () => {
  let dir = '';
  beforeAll(() => {
    dir = mkdtempSync(join(tmpdir(), 'fishplate-heads-'));
    writeFileSync(
      join(dir, 'strange.csv'),
      'Kennung,"Thema, kurz",Vorgabe\n1,Wand,Die Wand hält.\n1.1,Anker,Anker halten.\n',
    );
  });
  afterAll(() => rmSync(dir, { recursive: true, force: true }));

  it('take --columns alike, also for a head with a comma', async () => {
    const columns = ['--columns', 'number=Kennung,title=Thema, kurz,text=Vorgabe'];
    const made = await fishplateIn(dir, 'import', 'strange.csv', '--edition', '1', '--catalog', 'c.git', ...columns);
    expect([made.status, made.stderr]).toEqual([0, '']);
    const matched = await fishplateIn(dir, 'match', 'strange.csv', 'strange.csv', ...columns);
    expect(matched.stdout).toContain('Wand');
  });

  it('say one sentence for one cause', async () => {
    const { status, stderr } = await fishplateIn(dir, 'import', 'strange.csv', '--edition', '1', '--catalog', 'd.git');
    expect([status, stderr.trim().split('\n').length, existsSync(join(dir, 'd.git'))]).toEqual([2, 1, false]);
    expect(stderr).toContain('--columns "number=Kennung,title=Thema, kurz,text=Vorgabe"');
  });

  it('tell a file that is missing before anything about the rows of another', async () => {
    const { stderr } = await fishplateIn(dir, 'match', 'strange.csv', 'nothere.csv');
    expect(stderr).toBe('fishplate: There is no file nothere.csv; check the name.\n');
  });

  it('refuse the name of an edition before tables are read, and leave nothing behind', async () => {
    const { stderr } = await fishplateIn(dir, 'import', 'nothere.csv', '--edition', '2016/7', '--catalog', 'e.git');
    expect([stderr.includes('cannot be an edition'), existsSync(join(dir, 'e.git'))]).toEqual([true, false]);
  });
});

describe('import of a second table without lineage', () => {
  it('says how it can be found out what became of which', async () => {
    const dir = mkdtempSync(join(tmpdir(), 'fishplate-second-'));
    try {
      writeFileSync(join(dir, 'a.csv'), 'No.,Title,Text\n1,Walls,Walls shall stand.\n');
      await fishplateIn(dir, 'import', 'a.csv', '--edition', '1', '--catalog', 'c.git');
      const { stdout } = await fishplateIn(dir, 'import', 'a.csv', '--edition', '2', '--catalog', 'c.git');
      expect(stdout).toContain('fishplate match 1 2 --catalog c.git --out answers.csv');
    } finally {
      rmSync(dir, { recursive: true, force: true });
    }
  });
});
