import { createHash } from 'node:crypto';
import { briefing } from '../../exports/briefing.ts';
import { writeBriefingHtml } from '../../exports/briefing-html.ts';
import { fileOf } from '../../exports/fill-template.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { remember } from '../remember.ts';
import { readPublication } from './bundle-source.ts';
import { readBundleTemplates } from './bundle-templates.ts';

/** The slides of a bundle as one page, with what a strict policy has to know of what stands in it. */
export interface BriefingPage {
  readonly html: string;
  /** Hashes of its style and its script, as `Content-Security-Policy` names them. */
  readonly style: string;
  readonly script: string;
}

const MOST_BRIEFINGS = 6;

/** Makes the briefing of two editions, older first, and keeps it as long as neither changes. */
export function briefingPages(catalog: Catalog): (from: string, to: string) => Promise<BriefingPage> {
  const pages = remember(MOST_BRIEFINGS, async (key: string): Promise<BriefingPage> => {
    const [from, to] = JSON.parse(key) as [string, string];
    const [publication, templates] = await Promise.all([
      readPublication(catalog, from, to, false),
      readBundleTemplates(),
    ]);
    return {
      html: writeBriefingHtml(briefing(publication), templates),
      style: policyHash(fileOf(templates, 'briefing.css')),
      script: policyHash(fileOf(templates, 'briefing.js')),
    };
  });
  return async (from, to) => {
    const [a, b] = [await locate(catalog, from), await locate(catalog, to)];
    return pages(JSON.stringify([from, to, a.commit, b.commit]));
  };
}

const policyHash = (text: string) => `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`;
