import type { PublishedCrosswalk } from '../../commands/reading/published-catalog.ts';
import { type Flow, type RailsPicture, railsPicture } from '../../pictures/rails-picture.ts';
import { linesLink, type Query } from '../links.ts';

/** The two rails, each ribbon a link to its lines, and the same as a table. */
export interface CrosswalkPicture {
  readonly wide: LinkedPicture;
  /** Absent where there are too many parts to be told apart on a phone. */
  readonly narrow?: LinkedPicture;
  /** Thickest first. */
  readonly flows: readonly {
    readonly from: string;
    readonly to: string;
    readonly n: number;
    readonly href: string;
  }[];
}

export type LinkedPicture = Omit<RailsPicture, 'ribbons' | 'ends'> & {
  readonly ribbons: readonly (RailsPicture['ribbons'][number] & { readonly href: string })[];
  readonly ends: readonly (RailsPicture['ends'][number] & { readonly href: string })[];
};

const MOST_PARTS_ON_A_PHONE = 40;

const pictures = new WeakMap<PublishedCrosswalk, CrosswalkPicture>();

/** Drawn once for each crosswalk: at 100,000 links, counting them takes longer than all the rest of the page. */
export function crosswalkPicture(crosswalk: PublishedCrosswalk): CrosswalkPicture {
  const known = pictures.get(crosswalk);
  if (known) return known;
  const { joint, statistics } = crosswalk;
  const kind: Query = statistics.counted === 'requirements' ? [['kind', 'requirements']] : [];
  const hrefOf = (flow: Flow) => {
    const ends: Query = [
      ...(flow.from === undefined ? [] : [['part', `old:${flow.from}`] as const]),
      ...(flow.to === undefined ? [] : [['part', `new:${flow.to}`] as const]),
      ...(flow.to === undefined ? [['fate', 'withdrawn'] as const, ['fate', 'unaccounted'] as const] : []),
      ...(flow.from === undefined ? [['fate', 'new'] as const] : []),
    ];
    return linesLink([...ends, ...kind]);
  };
  const linked = (picture: RailsPicture): LinkedPicture => ({
    ...picture,
    ribbons: picture.ribbons.map(r => ({ ...r, href: hrefOf(r) })),
    ends: picture.ends.map(e => ({ ...e, href: hrefOf(e) })),
  });
  const wide = linked(railsPicture(joint, 'wide'));
  const nameOf = (side: 'old' | 'new', id: string | undefined, none: string) => {
    const part = id === undefined ? undefined : joint[side].get(id);
    return part ? `${part.number} ${part.title}`.trim() : none;
  };
  const picture = {
    wide,
    ...(Math.max(wide.left.length, wide.right.length) > MOST_PARTS_ON_A_PHONE
      ? {}
      : { narrow: linked(railsPicture(joint, 'narrow')) }),
    flows: [...wide.ribbons, ...wide.ends].map(flow => ({
      from: nameOf('old', flow.from, 'new'),
      to: nameOf('new', flow.to, 'withdrawn'),
      n: flow.n,
      href: flow.href,
    })),
  };
  pictures.set(crosswalk, picture);
  return picture;
}
