import { fateSymbols } from '../pictures/fate-drawing.ts';
import type { Briefing } from './briefing.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';

/** The briefing as one page: slides for the arrow keys, or all of them one under the other, on paper one a page. */
export function writeBriefingHtml(briefing: Briefing, templates: Templates): string {
  return fillTemplate(templates, 'briefing', {
    ...briefing,
    css: fileOf(templates, 'briefing.css'),
    script: fileOf(templates, 'briefing.js'),
    symbols: fateSymbols(),
    slides: briefing.slides.map(slide => ({ ...slide, most: Math.max(1, ...(slide.bars?.bars ?? []).map(b => b.n)) })),
  });
}
