import { applyOperation } from '../../editing/apply-operation.ts';
import type { DraftState } from '../../editing/draft-state.ts';
import { tellOperation } from '../../editing/tell-operation.ts';
import { operationLine, parseOperationLines, type WrittenOperation } from '../../format/operation-lines.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { ItemId } from '../../model/item.ts';
import type { NewItem, Operation } from '../../model/operation.ts';
import type { Catalog } from '../../store/open.ts';
import { type DraftStep, saveDraftSteps } from '../../store/write-draft.ts';
import { mintIds } from '../importing/mint-ids.ts';
import { type Ports, person } from '../ports/ports.ts';
import { named, namedInDraft } from '../reading/named-item.ts';
import { draftToWrite, type ReadDraft, readDraft } from './read-draft.ts';

export type { WrittenOperation };

export interface OperationsRequest {
  /** A draft, or a branch of it; absent = the only draft. */
  readonly draft?: string;
  readonly operations: readonly WrittenOperation[];
  /** The commit that whoever asks has seen; absent: whatever stands there. Throws Changed where somebody was faster. */
  readonly seen?: string;
}

export interface OperationsReport {
  readonly draft: string;
  /** What was done, a line each. */
  readonly done: readonly string[];
  /** Ids of the items that it made. */
  readonly made: readonly ItemId[];
}

/** The trailer of a commit's message that holds the operation. */
export const OPERATION = 'Operation: ';

/** Does operations to a draft, a commit each, all of them or none. Items are told by id or by number. */
export async function operateOnDraft(
  ports: Ports,
  catalog: Catalog,
  request: OperationsRequest,
): Promise<OperationsReport> {
  const { header, branch, steps, made } = await prepareOperations(ports, catalog, request);
  if (steps.length > 0) await saveDraftSteps(catalog, branch, steps, person(ports));
  return { draft: header.name, done: steps.map(s => s.told), made };
}

/** Operations as they would be done to a draft; nothing is written. */
export interface PreparedOperations extends Omit<ReadDraft, 'state'> {
  readonly before: DraftState;
  readonly after: DraftState;
  readonly steps: readonly (DraftStep & { readonly told: string })[];
  readonly made: readonly ItemId[];
}

/**
 * Does operations to a draft in memory, for whoever writes them and for whoever only looks.
 *
 * @param read the draft, where it is at hand
 */
export async function prepareOperations(
  ports: Ports,
  catalog: Catalog,
  request: OperationsRequest,
  read?: ReadDraft,
): Promise<PreparedOperations> {
  const { header, branch, state } = read ?? (await readDraft(catalog, request.draft));
  if (request.seen !== undefined && request.seen !== branch.tip) {
    throw new CatalogError('Changed', `Somebody has worked on ${header.name} since; look at it again.`, {
      tip: branch.tip,
    });
  }
  const ids = await mintFor(ports, catalog, request.operations);
  const author = person(ports);
  const doer = { by: author.name, date: dayOf(author.date) };
  const steps = [];
  let now = state;
  for (const [at, written] of request.operations.entries()) {
    if (at > 0 && at % 100 === 0) ports.progress(`${at} of ${request.operations.length} operations`);
    const operation = withIds(now, written, ids);
    const told = tellOperation(now, operation);
    try {
      now = applyOperation(now, operation, doer);
    } catch (error) {
      if (error instanceof CatalogError && request.operations.length > 1) throw inLine(error, at);
      throw error;
    }
    const message = `${told}${operation.note ? `\n\n${operation.note}` : ''}\n\n${OPERATION}${operationLine(operation)}`;
    steps.push({ edition: draftToWrite(header, now), message, told });
  }
  return { header, branch, before: state, after: now, steps, made: ids.used };
}

/** Operations from a file of JSON Lines. Nothing is done where a line cannot be read. */
export async function readOperations(ports: Ports, file: string): Promise<readonly WrittenOperation[]> {
  const source = new TextDecoder().decode(await ports.files.read(file));
  const { operations, findings } = parseOperationLines(file, source);
  if (findings.length > 0) {
    throw new CatalogError(
      'BadArgument',
      `${findings.length} of the lines of ${file} cannot be used, the first one: ${findings[0]!.message} Nothing was done; mend the file and try again.`,
      {},
      findings,
    );
  }
  return operations;
}

function inLine(error: CatalogError, at: number): CatalogError {
  const sentence = `Operation ${at + 1} cannot be done: ${error.message} Nothing was done.`;
  return new CatalogError(error.code, sentence, error.data, error.findings);
}

interface Ids {
  readonly used: ItemId[];
  next(): ItemId;
}

async function mintFor(ports: Ports, catalog: Catalog, operations: readonly WrittenOperation[]): Promise<Ids> {
  const wanted = operations
    .flatMap(o => (o.op === 'add' ? [o.item] : o.op === 'split' ? o.gives : []))
    .filter(i => i.id === undefined).length;
  const ids = wanted === 0 ? [] : await mintIds(ports, catalog, String(wanted));
  const used: ItemId[] = [];
  return {
    used,
    next: () => {
      const id = ids[used.length]!;
      used.push(id);
      return id;
    },
  };
}

/** The fields of operations that name items of the draft; `from` names one of the edition that it replaces. */
const NAMING = new Set(['id', 'ids', 'into', 'pointsTo', 'under', 'after']);

/** An operation with every item told by its id, and an id for every new one. */
function withIds(state: DraftState, written: WrittenOperation, ids: Ids): Operation {
  const here = (name: string) => namedInDraft(state, name);
  const old = (name: string) => named(state.older?.items ?? [], name, state.older?.header.name ?? 'no older edition');
  const made = (item: Partial<NewItem>) => ({ ...item, id: item.id ?? ids.next() });
  const names = (field: string) =>
    NAMING.has(field) || (field === 'to' && (written.op === 'link' || written.op === 'unlink'));
  const told = (field: string, value: unknown): unknown => {
    if (field === 'item') return made(value as Partial<NewItem>);
    if (field === 'gives') return (value as Partial<NewItem>[]).map(made);
    if (field === 'from') return old(value as string);
    if (!names(field) || value === null) return value;
    return Array.isArray(value) ? value.map(here) : here(value as string);
  };
  const fields = Object.entries(written).filter(([, value]) => value !== undefined);
  return Object.fromEntries(fields.map(([field, value]) => [field, told(field, value)])) as unknown as Operation;
}
