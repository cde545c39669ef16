import ejs from 'ejs';

/** Templates of pages and the files that go beside them, by name (`part.ejs`, `site.css`); whoever calls has read them. */
export type Templates = ReadonlyMap<string, string>;

type Fill = (values: object) => string;
const compiled = new WeakMap<Templates, Map<string, Fill>>();

/** Fills a template with values, which it sees as `v`; `<%- include('fate', {…}) %>` takes another one in. */
export function fillTemplate(templates: Templates, name: string, values: object): string {
  const known = compiled.get(templates) ?? new Map<string, Fill>();
  compiled.set(templates, known);
  let fill = known.get(name);
  if (!fill) {
    fill = ejs.compile(fileOf(templates, `${name}.ejs`), {
      _with: false,
      localsName: 'v',
      includer: path => ({ template: fileOf(templates, `${path}.ejs`) }),
    }) as Fill;
    known.set(name, fill);
  }
  return fill(values);
}

/** A file among the templates. A missing one is a defect of the installation, not of the user's data. */
export function fileOf(templates: Templates, name: string): string {
  const text = templates.get(name);
  if (text === undefined) throw new Error(`the template ${name} is missing`);
  return text;
}
