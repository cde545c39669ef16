import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as api from '../src/index.ts';

const SRC = join(import.meta.dirname, '..', 'src');

/** Which folder of src may import which; DEVELOPERS.md explains it. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  model: [],
  text: [],
  office: ['model'],
  format: ['model'],
  search: ['model', 'text'],
  crosswalk: ['model'],
  documents: ['model', 'office'],
  tables: ['model', 'office'],
  content: ['model', 'text', 'crosswalk'],
  drafting: ['model', 'text'],
  matching: ['model', 'text'],
  editing: ['model', 'text', 'crosswalk'],
  citing: ['model', 'text'],
  carryover: ['model', 'text', 'citing', 'crosswalk', 'content'],
  pictures: ['model'],
  exports: ['model', 'text', 'office', 'tables', 'documents', 'crosswalk', 'content', 'pictures', 'search'],
  release: ['model', 'text', 'crosswalk', 'content'],
  store: ['model', 'format'],
  databases: ['model'],
  commands: [
    'model',
    'text',
    'office',
    'pictures',
    'format',
    'search',
    'crosswalk',
    'documents',
    'tables',
    'content',
    'drafting',
    'editing',
    'matching',
    'citing',
    'carryover',
    'exports',
    'release',
    'store',
    'databases',
  ],
  browser: ['commands', 'model', 'citing', 'crosswalk', 'carryover', 'documents', 'tables', 'office'],
  web: ['commands', 'model', 'pictures', 'release'],
  cli: ['commands', 'model', 'web', 'store', 'databases', 'content', 'crosswalk', 'exports', 'carryover', 'release'],
};

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter(f => f.endsWith('.ts'));
const folderOf = (file: string) => file.replaceAll('\\', '/').split('/')[0]!;

/** @param which `values` leaves out what is imported as a type only: nothing of it is there when the program runs */
function importsOf(file: string, which: 'all' | 'values' = 'all'): string[] {
  const written = readFileSync(join(SRC, file), 'utf8');
  const source = which === 'all' ? written : written.replace(/^(?:import|export) type [^;]+;/gm, '');
  return [...source.matchAll(/(?:from|import)\s*\(?'([^']+)'/g)].map(m => m[1]!);
}

/** What works on bytes alone, and what loads a package when it is first asked for; both may stand anywhere. */
const PURE_MODULES = ['node:crypto', 'node:module'];
const NODE = /^node:|^(?:fs|https?|net|tls|dns|dgram|child_process|worker_threads|os|process)(?:\/|$)/;

/** What a source reaches of the world outside its arguments: files, network, clock, chance, environment. */
function outsideIn(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
  const modules = [...code.matchAll(/(?:from|import)\s*\(?'([^']+)'/g)].map(m => m[1]!);
  const called = [
    ...code.matchAll(
      /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\b|(?:globalThis\.|(?<![\w.]))fetch\(|\bset(?:Timeout|Interval|Immediate)\b|\bMath\.random\b|\bprocess\.\w+|\bXMLHttpRequest\b|\bWebSocket\b/g,
    ),
  ].map(m => m[0]);
  return [...modules.filter(name => NODE.test(name) && !PURE_MODULES.includes(name)), ...called];
}

describe('the folders of src', () => {
  it('import only what the table allows', () => {
    const wrong = files.flatMap(file =>
      importsOf(file)
        .filter(name => name.startsWith('.'))
        .map(name => folderOf(relative(SRC, normalize(join(SRC, dirname(file), name)))))
        .filter(to => file.includes('/') && to !== folderOf(file) && !MAY_IMPORT[folderOf(file)]?.includes(to))
        .map(to => `${file} imports ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  it('leave files, the network, the clock and chance to store, databases, commands, cli and web', () => {
    const inside = files.filter(f => !['store', 'databases', 'commands', 'cli', 'web'].includes(folderOf(f)));
    const wrong = inside.flatMap(file =>
      outsideIn(readFileSync(join(SRC, file), 'utf8')).map(what => `${file} has ${what}`),
    );
    expect(wrong).toEqual([]);
    expect(inside.length).toBeGreaterThan(300);
  });

  it.each([
    "import { get } from 'node:https';",
    "import { lookup } from 'node:dns';",
    "import { readFileSync } from 'fs';",
    "const fs = await import('node:fs/promises');",
    'const at = Date.now();',
    'const today = new Date();',
    'const today = new Date( );',
    'const began = performance.now();',
    'await fetch(url);',
    'globalThis.fetch(url);',
    'setTimeout(work, 10);',
    'const id = Math.random();',
    'const me = process.env.USER;',
  ])('which would be seen: %s', line => {
    expect(outsideIn(line)).toHaveLength(1);
  });

  it.each([
    'const at = new Date(text);',
    'const day = Date.UTC(1899, 11, 30);',
    "import { createHash } from 'node:crypto';",
    '// as new Date() would say it',
    '/** Reads no clock: `Date.now` differs with each run. */',
    'const performances = ports.fetch(url);',
  ])('and what is no reach for the outside is not: %s', line => {
    expect(outsideIn(line)).toEqual([]);
  });

  it('say what day it is by model/day.ts', () => {
    const other = files.filter(f =>
      /toISOString\(\)\s*\.(slice\(0, 10\)|startsWith)/.test(readFileSync(join(SRC, f), 'utf8')),
    );
    expect(other.map(f => f.replaceAll('\\', '/')).sort()).toEqual(['model/day.ts']);
  });

  it('reach nothing of node from the part that runs in a browser, and no language model', () => {
    const reached = new Set<string>();
    const work = ['browser/carry-engine.ts'];
    for (let file = work.pop(); file !== undefined; file = work.pop()) {
      if (reached.has(file)) continue;
      reached.add(file);
      const within = importsOf(file, 'values').filter(name => name.startsWith('.'));
      work.push(...within.map(name => normalize(join(dirname(file), name)).replaceAll('\\', '/')));
    }
    const outside = [...reached].flatMap(file =>
      importsOf(file, 'values')
        .filter(name => /^node:|^wink/.test(name))
        .map(name => `${file} imports ${name}`),
    );
    expect(outside).toEqual([]);
    expect(reached.size).toBeGreaterThan(50);
  });

  it('leave the git library to store', () => {
    const wrong = files.filter(f => importsOf(f).includes('isomorphic-git') && folderOf(f) !== 'store');
    expect(wrong).toEqual([]);
  });

  it('leave the database engines to databases', () => {
    const engines = ['pg', 'node-sqlite3-wasm'];
    const wrong = files.filter(f => importsOf(f).some(name => engines.includes(name)) && folderOf(f) !== 'databases');
    expect(wrong).toEqual([]);
  });

  it('have no drawer for things without a name', () => {
    expect(files.filter(f => /(^|[\\/])(utils?|helpers?|common|misc)([\\/]|\.)/.test(f))).toEqual([]);
  });
});

describe('the public API', () => {
  it('is this list', () => {
    expect(Object.keys(api).sort()).toMatchInlineSnapshot(`
      [
        "CatalogError",
        "carryDocs",
        "carryJobs",
        "checkCatalog",
        "checkConservation",
        "composeCrosswalks",
        "crosswalkLines",
        "crosswalkStatistics",
        "findCatalog",
        "groupIntoRows",
        "identityCrosswalk",
        "importTables",
        "invertCrosswalk",
        "isPair",
        "joinEditions",
        "linkByLineage",
        "listDrafts",
        "listEditions",
        "marksOf",
        "openCatalog",
        "openForWriting",
        "readCrosswalk",
        "readEdition",
        "readIndex",
        "readLineage",
        "resolveCitation",
        "tellHop",
        "tellTrace",
        "traceItem",
        "traceNumber",
        "writeCrosswalkCsv",
        "writeCrosswalkJson",
      ]
    `);
  });
});
