import { setTimeout as wait } from 'node:timers/promises';
import { errorCode } from './file-system.ts';

/** A virus scanner or an indexer holds a fresh file for a moment and answers with one of these. */
const passing: ReadonlySet<string> = new Set(['EPERM', 'EACCES', 'EBUSY']);

/** Waits between tries [ms]; 0.6 s in all, after which the fault is taken as lasting. */
const pausesMs = [10, 30, 80, 160, 320];

/** Does a step again while it fails for a reason that tends to pass. */
export const retry = async <T>(step: () => Promise<T>): Promise<T> => {
  for (const pauseMs of pausesMs) {
    try {
      return await step();
    } catch (error) {
      if (!passing.has(errorCode(error))) throw error;
      await wait(pauseMs);
    }
  }
  return step();
};
