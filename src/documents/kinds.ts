import { CatalogError } from '../model/errors.ts';

export type DocumentKind = 'markdown' | 'plain' | 'html' | 'docx' | 'pptx' | 'pdf';

const KINDS: Readonly<Record<string, DocumentKind>> = {
  md: 'markdown',
  markdown: 'markdown',
  txt: 'plain',
  html: 'html',
  htm: 'html',
  docx: 'docx',
  pptx: 'pptx',
  pdf: 'pdf',
};

const SAVE_AS: Readonly<Record<string, string>> = {
  doc: 'is in the old format of Word; save it as .docx and run again',
  docm: 'may hold macros, which are never touched; save it as .docx and run again',
  dotx: 'is a template; save a document made from it as .docx and run again',
  dotm: 'is a template and may hold macros; save a document made from it as .docx and run again',
  odt: 'is an OpenDocument text; save it as .docx and run again',
  rtf: 'is in rich text format; save it as .docx and run again',
  ppt: 'is in the old format of PowerPoint; save it as .pptx and run again',
  pptm: 'may hold macros, which are never touched; save it as .pptx and run again',
  ppsx: 'is a slide show; save it as .pptx and run again',
  odp: 'is an OpenDocument presentation; save it as .pptx and run again',
};

/**
 * The kind of a document by the end of its name.
 *
 * @throws CatalogError BadArgument for kinds that are not read
 */
export function kindOfDocument(name: string): DocumentKind {
  const ending = /\.([^./\\]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';
  if (Object.hasOwn(KINDS, ending)) return KINDS[ending]!;
  const what = Object.hasOwn(SAVE_AS, ending)
    ? SAVE_AS[ending]
    : 'is of a kind that is not read; give .md, .markdown, .txt, .html, .htm, .docx, .pptx or .pdf files';
  throw new CatalogError('BadArgument', `${name} ${what}.`, { path: name });
}
