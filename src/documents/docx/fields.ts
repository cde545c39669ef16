import type { XmlElement } from '../../office/read-xml.ts';

interface Field {
  code: string;
  shows: boolean;
}

/** Follows fields through the runs of a part; they may begin in one paragraph and end in another. */
export interface Fields {
  note(fldChar: XmlElement): void;
  code(instruction: string): void;
  /** Whether text here belongs to a field's instruction, which nobody sees. */
  inCode(): boolean;
  /** Why text here cannot be changed: Word writes it anew from the field's instruction. */
  fixed(): string | undefined;
}

export function followFields(): Fields {
  const open: Field[] = [];
  return {
    note(fldChar) {
      const type = fldChar.attributes.get('w:fldCharType');
      if (type === 'begin') open.push({ code: '', shows: false });
      else if (type === 'separate' && open.length > 0) open.at(-1)!.shows = true;
      else if (type === 'end') open.pop();
    },
    code(instruction) {
      const field = open.at(-1);
      if (field && !field.shows) field.code += instruction;
    },
    inCode: () => open.some(f => !f.shows),
    fixed: () => open.map(f => fixedByField(f.code)).find(why => why !== undefined),
  };
}

/** Links and forms show what somebody typed; all other fields show what Word finds, and lose any change to it. */
export function fixedByField(instruction: string): string | undefined {
  const name = /^\s*([a-z]+)/i.exec(instruction)?.[1]?.toUpperCase() ?? '';
  if (['HYPERLINK', 'FORMTEXT', 'QUOTE'].includes(name)) return undefined;
  if (name === 'TOC') return 'in the table of contents, which Word fills in';
  return `in a field that Word fills in${name === '' ? '' : ` (${name})`}`;
}
