import { join } from 'node:path';

/** The folder of the installed package, where `catalog` and `views` lie. */
export const PACKAGE_ROOT = join(import.meta.dirname, '..', '..');
