import type { Migration } from './migration.ts';

/**
 * Every migration in order. Version 1 is the first format there is, so the table is empty; the next change of format
 * adds `0002-what-changed.ts` here and raises `planVersion`.
 */
export const migrations: readonly Migration[] = [];
