import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv, type AnySchemaObject } from 'ajv';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { joinEditions } from '../../src/crosswalk/joint.ts';
import { writeDataPackage } from '../../src/exports/data-package.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { demoPublication } from './publication.ts';

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly schema: {
    readonly fields: readonly {
      readonly name: string;
      readonly type: string;
      readonly constraints?: { readonly required?: boolean; readonly enum?: readonly string[] };
    }[];
    readonly primaryKey: readonly string[];
    readonly foreignKeys?: readonly {
      readonly fields: readonly string[];
      readonly reference: { readonly resource: string; readonly fields: readonly string[] };
    }[];
  };
}
type Row = Record<string, string>;

let publication: Publication;
let description: { readonly resources: readonly Resource[] };
const tables = new Map<string, Row[]>();
const key = (row: Row, fields: readonly string[]) => JSON.stringify(fields.map(f => row[f]));

beforeAll(async () => {
  publication = await demoPublication();
  const files = writeDataPackage(publication);
  description = JSON.parse(files.get('datapackage.json')!);
  for (const { name, path } of description.resources) {
    tables.set(name, parse(files.get(path)!, { columns: true }) as Row[]);
  }
}, 120_000);

describe('the data package', () => {
  it('says in a README what each table is and how many rows it has', () => {
    const readme = writeDataPackage(publication).get('README.md')!;
    for (const [name, rows] of tables) expect(readme).toContain(`| ${name}.csv | ${rows.length} |`);
    expect(readme).toContain('https://catalog.invalid/');
    const base = 'https://standards.example.org/works/';
    expect(writeDataPackage({ ...publication, base }).get('README.md')).not.toContain('invalid');
  });

  it('says of a table without rows why it has none', () => {
    const bare = <T extends { readonly settings: object }>(e: T): T => ({
      ...e,
      settings: { ...e.settings, installationTypes: [] },
    });
    const { joint } = publication;
    const joined = joinEditions(bare(joint.from), bare(joint.to), joint.crosswalk);
    const marks: typeof publication.marks = link => ({ ...publication.marks(link), dutyByType: [] });
    const files = writeDataPackage({ ...publication, joint: joined, marks });
    expect(files.get('README.md')).toMatch(/types\.csv \| 0 \(the catalog tells no installation types apart\)/);
    const { resources } = JSON.parse(files.get('datapackage.json')!) as {
      resources: { name: string; description?: string }[];
    };
    expect(resources.find(r => r.name === 'duties')?.description).toMatch(
      /what a link asks stands in links, column duty/,
    );
    expect(resources.find(r => r.name === 'links')?.description).toBeUndefined();
  });

  it('is what the published profile asks for', () => {
    // From the npm package datapackage 1.1.10 (MIT), src/profiles/tabular-data-package.json.
    const profile = readFileSync(join(import.meta.dirname, 'profiles', 'tabular-data-package.json'), 'utf8');
    const { $schema: _, ...schema } = JSON.parse(profile) as AnySchemaObject;
    const judge = new Ajv({ strict: false, validateFormats: false, allErrors: true }).compile(schema);
    expect(judge(description) ? [] : judge.errors).toEqual([]);
    expect(judge({ ...description, resources: [] })).toBe(false);
  });

  it('has the columns that it describes, filled where they must be, each cell of its type', () => {
    const types: Record<string, RegExp> = {
      integer: /^-?\d+$/,
      number: /^-?\d+(?:\.\d+)?$/,
      boolean: /^(?:true|false)$/,
      date: /^\d{4}-\d\d-\d\d$/,
      string: /^/,
    };
    for (const { name, schema } of description.resources) {
      for (const row of tables.get(name)!) {
        expect(Object.keys(row)).toEqual(schema.fields.map(f => f.name));
        for (const field of schema.fields) {
          const cell = row[field.name]!;
          if (cell === '') expect(field.constraints?.required, `${name}.${field.name}`).toBeUndefined();
          else if (!types[field.type]!.test(cell) || field.constraints?.enum?.includes(cell) === false) {
            throw new Error(`${name}.${field.name} holds ${cell}`);
          }
        }
      }
    }
  });

  it('has primary keys that are filled and stand once', () => {
    for (const { name, schema } of description.resources) {
      const rows = tables.get(name)!;
      expect(new Set(rows.map(r => key(r, schema.primaryKey))).size, name).toBe(rows.length);
      expect(rows.filter(r => schema.primaryKey.some(f => r[f] === ''))).toEqual([]);
    }
  });

  it('has foreign keys that lead to a row', () => {
    let followed = 0;
    for (const { name, schema } of description.resources) {
      for (const { fields, reference } of schema.foreignKeys ?? []) {
        const there = tables.get(reference.resource || name)!;
        const known = new Set(there.map(r => key(r, reference.fields)));
        const filled = tables.get(name)!.filter(r => fields.some(f => r[f] !== ''));
        expect(filled.filter(r => !known.has(key(r, fields)))).toEqual([]);
        followed += filled.length;
      }
    }
    expect(followed).toBeGreaterThan(5_000);
  });

  it('holds every item of both editions and every link', () => {
    const { from, to, crosswalk } = publication.joint;
    expect(tables.get('items')).toHaveLength(from.entries.length + to.entries.length);
    const linked = tables.get('links')!.filter(r => r.fate !== 'unaccounted');
    expect(linked).toHaveLength(crosswalk.links.length);
    expect(tables.get('links')!.filter(r => r.withdrawn_for).length).toBeGreaterThan(20);
  });
});
