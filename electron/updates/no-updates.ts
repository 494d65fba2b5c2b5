import type { startUpdates as start } from './start-updates.ts';

/** Stands in for the updates in a build that names no feed, so that no code for them is shipped. */
export const startUpdates: typeof start = () => Promise.resolve();
