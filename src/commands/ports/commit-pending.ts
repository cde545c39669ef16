import type { PendingFile } from './ports.ts';

/**
 * Puts several files in place together: all bytes are on the disk before the first name changes. Committed one by one, a
 * disk that fills between a table and its sidecar leaves a new table that its old sidecar takes for edited by hand.
 */
export async function commitAll(pending: readonly PendingFile[]): Promise<void> {
  for (const file of pending) await file.settle();
  for (const file of pending) await file.commit();
}
