import type { DeskDraft, Foresight } from '../../commands/drafts/draft-desk.ts';
import type { FormField } from '../signed-in.ts';
import { calledOf } from './draft-called.ts';
import { type ChangesShown, changesShown } from './draft-foreseen.ts';
import type { Field, Typed } from './draft-form.ts';

/** A form for one operation; or, once it is filled in, what it would do, before it is done. */
export interface DraftOperationPage {
  readonly draft: string;
  readonly called: string;
  readonly heading: string;
  readonly says: string;
  readonly action: string;
  readonly back: { readonly word: string; readonly href: string };
  readonly csrf: FormField;
  readonly trouble: string;
  readonly fields: readonly Field[];
  /** Absent while the form is asked for. */
  readonly foreseen?: ForeseenShown;
}

export interface ForeseenShown extends ChangesShown, Pick<Foresight, 'told' | 'tip'> {
  /** What was typed, to be sent again. */
  readonly hidden: readonly { readonly name: string; readonly value: string }[];
  /** Somebody has worked on the draft since it was looked at. */
  readonly anew: boolean;
}

export interface OperationRequest {
  readonly draft: Pick<DeskDraft, 'name' | 'header'>;
  readonly heading: string;
  readonly says: string;
  readonly fields: readonly Field[];
  readonly action: string;
  readonly back: DraftOperationPage['back'];
  readonly csrf: FormField;
  readonly typed?: Typed;
  readonly trouble?: string;
  readonly foresight?: Foresight;
  readonly anew?: boolean;
}

export function draftOperationPage(request: OperationRequest): DraftOperationPage {
  const { draft, heading, says, fields, action, back, csrf, typed, trouble = '', foresight, anew = false } = request;
  return {
    draft: draft.name,
    called: calledOf(draft),
    heading,
    says,
    action,
    back,
    csrf,
    trouble,
    fields: typed ? fields.map(f => ({ ...f, value: typed[f.name] ?? [] })) : fields,
    ...(foresight ? { foreseen: foreseenShown(foresight, typed ?? {}, anew) } : {}),
  };
}

function foreseenShown(found: Foresight, typed: Typed, anew: boolean): ForeseenShown {
  return {
    ...changesShown(found),
    told: found.told,
    tip: found.tip,
    hidden: Object.entries(typed).flatMap(([name, values]) => values.map(value => ({ name, value }))),
    anew,
  };
}
