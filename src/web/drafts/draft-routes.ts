import type { DeskDraft, DraftDesk } from '../../commands/drafts/draft-desk.ts';
import type { WrittenOperation } from '../../commands/drafts/draft-operations.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item } from '../../model/item.ts';
import { leftLink, leftOperationLink, operationLink, wholeLink, workItemLink, workLink } from '../links.ts';
import { firstValue, pageOf } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, requirePerson } from '../signed-in.ts';
import { type DraftForm, type OperationForm, type Typed, typedIn } from './draft-form.ts';
import { DRAFT_FORMS, formIn, ITEM_FORMS, OLD_FORMS } from './draft-forms.ts';
import { draftItemPage } from './draft-item-page.ts';
import { draftLeftPage } from './draft-left-page.ts';
import { draftOperationPage, type OperationRequest } from './draft-operation-page.ts';
import { inPageWords, isRefusal } from './draft-refusal.ts';
import { draftWorkPage, type WorkRequest } from './draft-work-page.ts';

/** Work on a draft: what was done, its items, and what can be done to them. For people with a name only. */
export function draftRoutes({ get, post, show }: Routes, desk: DraftDesk): void {
  const reading = async (asked: Answering) => {
    requirePerson(asked.request);
    return desk.read((asked.request.params as { draft: string }).draft);
  };
  const showWork = async (asked: Answering, more: Partial<WorkRequest> = {}) => {
    const draft = await reading(asked);
    const { query } = asked.request;
    const done = firstValue(query, 'done') === 'yes';
    const request = { page: pageOf(query), csrf: csrfField(asked.request), done, ...more };
    const title = `Work on ${draft.name}`;
    await show(asked, 'draft-work', draftWorkPage(draft, request), title, more.trouble ? 400 : 200);
  };
  get('/desk/:draft/work', asked => showWork(asked));

  get('/desk/:draft/find', async asked => {
    const { name } = await reading(asked);
    const sought = firstValue(asked.request.query, 'item', 200) ?? '';
    try {
      asked.response.redirect(303, workItemLink(name, await desk.find(name, sought)));
    } catch (error) {
      if (!isRefusal(error)) throw error;
      await showWork(asked, { sought, trouble: sought === '' ? 'Type the number of an item.' : inPageWords(error) });
    }
  });

  post('/desk/:draft/undo/:commit', async asked => {
    const person = requirePerson(asked.request);
    const { draft, commit } = asked.request.params as { draft: string; commit: string };
    try {
      await desk.undo(draft, commit, person);
    } catch (error) {
      if (!isRefusal(error)) throw error;
      return showWork(asked, { trouble: inPageWords(error) });
    }
    asked.response.redirect(303, workLink(draft, [['done', 'yes']]));
  });

  get('/desk/:draft/item/:id', async asked => {
    const draft = await reading(asked);
    const item = itemIn(draft, (asked.request.params as { id: string }).id);
    const done = firstValue(asked.request.query, 'done') === 'yes';
    const page = draftItemPage(draft, item, csrfField(asked.request), done);
    await show(asked, 'draft-item', page, `${item.number} ${item.title} (draft ${draft.name})`);
  });

  get('/desk/:draft/left', async asked => {
    const draft = await reading(asked);
    await show(asked, 'draft-left', draftLeftPage(draft, pageOf(asked.request.query)), `Gone from ${draft.name}`);
  });

  const askingAboutItem = async (asked: Answering): Promise<Asking> => {
    const draft = await reading(asked);
    const { id, op } = asked.request.params as { id: string; op: string };
    const item = itemIn(draft, id);
    const form = formNamed(ITEM_FORMS, op);
    const back = { word: `Back to ${nameOf(item)}`, href: workItemLink(draft.name, id) };
    return { ...askingFor(draft, item, form), action: operationLink(draft.name, id, op), back };
  };
  const askingAboutOld = async (asked: Answering): Promise<Asking> => {
    const draft = await reading(asked);
    const { id, op } = asked.request.params as { id: string; op: string };
    const item = draft.old.get(id);
    if (!item) throw new CatalogError('UnknownItem', `${draft.oldName} has no item ${id}; choose one of the list.`);
    const form = formNamed(OLD_FORMS, op);
    const back = { word: `What has gone from ${draft.name}`, href: leftLink(draft.name) };
    return { ...askingFor(draft, item, form), action: leftOperationLink(draft.name, id, op), back };
  };
  const askingAboutWhole =
    (op: string, form: DraftForm) =>
    async (asked: Answering): Promise<Asking> => {
      const draft = await reading(asked);
      const { name } = draft;
      return {
        draft,
        heading: form.heading(name),
        says: form.says,
        fields: form.fields(draft),
        operation: typed => form.operation(draft, typed),
        action: wholeLink(name, op),
        back: { word: `Work on ${name}`, href: workLink(name) },
      };
    };
  const showForm = async (asked: Answering, about: Asking, more: Partial<OperationRequest> = {}) => {
    const page = draftOperationPage({ ...about, csrf: csrfField(asked.request), ...more });
    await show(asked, 'draft-operation', page, page.heading, more.trouble ? 400 : 200);
  };

  /** The form comes first, then what it would do, and only from there it is done. */
  const step = async (asked: Answering, asking: (asked: Answering) => Promise<Asking>) => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const about = await asking(asked);
    const { name } = about.draft;
    const typed = typedIn(about.fields, request.body as Record<string, unknown>);
    const chosen = firstValue(request.body, 'step', 10);
    if (chosen === 'change') return showForm(asked, about, { typed });
    try {
      const operation = about.operation(typed);
      if (chosen !== 'do') {
        return await showForm(asked, about, { typed, foresight: await desk.look(name, operation, person) });
      }
      const seen = firstValue(request.body, 'seen', 64) ?? '';
      try {
        await desk.do(name, operation, seen, person);
      } catch (error) {
        if (!(error instanceof CatalogError && error.code === 'Changed')) throw error;
        const foresight = await desk.look(name, operation, person);
        return await showForm(asked, about, { typed, foresight, anew: true });
      }
    } catch (error) {
      if (!isRefusal(error)) throw error;
      return showForm(asked, about, { typed, trouble: inPageWords(error) });
    }
    const done = [['done', 'yes']] as const;
    const stays = about.item !== undefined && (await desk.read(name)).places.get(about.item.id) !== undefined;
    response.redirect(303, stays ? workItemLink(name, about.item!.id, done) : workLink(name, done));
  };
  const form = (path: string, asking: (asked: Answering) => Promise<Asking>) => {
    get(path, async asked => showForm(asked, await asking(asked)));
    post(path, asked => step(asked, asking));
  };
  form('/desk/:draft/item/:id/:op', askingAboutItem);
  form('/desk/:draft/left/:id/:op', askingAboutOld);
  for (const [op, whole] of Object.entries(DRAFT_FORMS)) form(`/desk/:draft/${op}`, askingAboutWhole(op, whole));
}

interface Asking extends Omit<OperationRequest, 'csrf'> {
  readonly draft: DeskDraft;
  /** Absent for what is about the draft as a whole. */
  readonly item?: Item;
  readonly operation: (typed: Typed) => WrittenOperation;
}

function askingFor(draft: DeskDraft, item: Item, form: OperationForm): Omit<Asking, 'action' | 'back'> {
  return {
    draft,
    item,
    heading: `${form.word} ${nameOf(item)}`,
    says: form.says,
    fields: form.fields(draft, item),
    operation: typed => form.operation(draft, item, typed),
  };
}

function formNamed(forms: Readonly<Record<string, OperationForm>>, op: string): OperationForm {
  const form = formIn(forms, op);
  if (form) return form;
  throw new CatalogError('UnknownItem', `Nothing called ${op} can be done here; go back to the item.`);
}

function itemIn({ places, name }: DeskDraft, id: string): Item {
  const item = places.get(id);
  if (item) return item;
  throw new CatalogError(
    'UnknownItem',
    `The draft ${name} has no item ${id} any more; look among what has gone from it, or open another.`,
  );
}

const nameOf = ({ number, title, id }: Item) => number || title || id;
