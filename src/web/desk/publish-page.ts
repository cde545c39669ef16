import type { Publishable, PublishedShown } from '../../commands/releasing/release-desk.ts';
import type { EditionDates } from '../../model/edition.ts';
import { counted, dateWords, inWords } from '../../model/said-words.ts';
import { commentsLink, crosswalkLink, deskLink, editionLink, publishLink, workLink } from '../links.ts';
import type { FormField } from '../signed-in.ts';

/** What publishing would do, and the form that does it; for whoever may not, the command instead. */
export interface PublishPage {
  readonly draft: string;
  readonly sentence: string;
  readonly deskHref: string;
  readonly workHref: string;
  /** What it does, a sentence each. */
  readonly does: readonly string[];
  /** The questions of the gate at which it is stopped. */
  readonly stops: readonly { readonly asks: string; readonly told: string }[];
  /** Whether whoever reads the page may publish here. */
  readonly may: boolean;
  /** The same on the command line. */
  readonly command: string;
  readonly action: string;
  readonly csrf: FormField;
  readonly seen: string;
  readonly notes: string;
  readonly override: string;
  readonly trouble: string;
  /** What will stand on record, once it was asked for; the token is asked for then. */
  readonly record?: readonly string[];
}

export interface PublishPageRequest {
  readonly may: boolean;
  readonly csrf: FormField;
  /** Today, ISO 8601. */
  readonly day: string;
  readonly by: string;
  readonly notes: string;
  readonly override: string;
  readonly looked?: boolean;
  readonly trouble?: string;
}

export function publishPage(found: Publishable, request: PublishPageRequest): PublishPage {
  const { header, commit, gate } = found;
  const { may, csrf, notes, override, looked = false, trouble = '' } = request;
  const { name } = header;
  const { stops } = gate;
  return {
    draft: name,
    sentence:
      stops.length === 0
        ? `Nothing stops the publication of ${name}. Nothing is done yet.`
        : `${counted(stops.length, 'finding')} ${stops.length === 1 ? 'stops' : 'stop'} the publication of ${name}: settle ${stops.length === 1 ? 'it' : 'them'} first, or say why it is published all the same.`,
    deskHref: deskLink(name),
    workHref: workLink(name),
    does: doesWords(found, request.day),
    stops: gate.answers.filter(a => a.stops > 0).map(a => ({ asks: a.asks, told: counted(a.stops, 'finding') })),
    may,
    command: `fishplate publish ${name} --notes "what is new"${stops.length > 0 ? ' --override "why all the same"' : ''}`,
    action: publishLink(name),
    csrf,
    seen: commit,
    notes,
    override,
    trouble,
    ...(looked
      ? {
          record: [
            `Edition ${name}, published by ${request.by}`,
            ...notes.split(/\n+/).filter(Boolean),
            ...(stops.length > 0 ? [`Published with ${counted(stops.length, 'open finding')}: ${override}`] : []),
          ],
        }
      : {}),
  };
}

function doesWords({ header, items, left }: Publishable, today: string): string[] {
  const { name, replaces, dates } = header;
  return [
    `${counted(items, 'item')} become the edition ${name}${replaces === null ? '' : `, which replaces ${replaces}`}. Everybody who reads this catalog sees it at once.`,
    `Its day of publication is ${dateWords(dates.published ?? today)}${daysWords(dates)}.`,
    `The draft is closed. Nothing of ${name} can be changed afterwards; only what it says of where older items went on can be corrected, by an erratum. Publishing cannot be taken back.`,
    ...(left.length === 0
      ? []
      : [
          `Left out is what was done on ${inWords(left)}: ${left.length === 1 ? 'that branch has' : 'those branches have'} work that is not in ${name}.`,
        ]),
  ];
}

function daysWords({ effective, transitionEnds }: EditionDates): string {
  const holds = effective ? `it holds from ${dateWords(effective)}` : 'no day is set from which it holds';
  return transitionEnds
    ? `; ${holds}, and the one before may be used until ${dateWords(transitionEnds)}`
    : `; ${holds}`;
}

/** Where an edition is once it is published, and what is to be done next. */
export interface PublishedPage {
  readonly edition: string;
  readonly sentence: string;
  readonly said: readonly string[];
  readonly ways: readonly { readonly word: string; readonly href: string }[];
  /** Commands for whoever has the catalog at hand. */
  readonly commands: readonly { readonly does: string; readonly command: string }[];
}

export function publishedPage({ header, items, by, at, said }: PublishedShown): PublishedPage {
  const { name, replaces } = header;
  return {
    edition: name,
    sentence: `Edition ${name} is published: ${counted(items, 'item')}, by ${by}, on ${dateWords(at.slice(0, 10))}.`,
    said: said.split(/\n+/).filter(line => line !== ''),
    ways: [
      { word: `Read edition ${name}`, href: editionLink(name) },
      ...(replaces === null
        ? []
        : [{ word: `What became of ${replaces} in ${name}`, href: crosswalkLink(replaces, name) }]),
      { word: `Comments on ${name}`, href: commentsLink(name) },
    ],
    commands: [
      ...(replaces === null
        ? []
        : [
            {
              does: 'What is published with it: tables both ways, a site, one file for the phone, data, checksums',
              command: `fishplate bundle ${replaces} ${name} --out publication-${name}`,
            },
          ]),
      { does: 'The next draft', command: 'fishplate draft open NAME' },
      {
        does: 'If what it says of older items turns out to be wrong',
        command: `fishplate erratum ${name} --lineage corrections.csv --note "what is corrected"`,
      },
    ],
  };
}
