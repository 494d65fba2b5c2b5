import { createComparePool, type ComparePool } from '../workers/compare-pool.ts';

let pool: ComparePool | null = null;

/** More workers than this bring nothing: the pieces get too few. */
const mostWorkers = 8;

/** The one pool of the page, from two workers to as many as the machine has cores. Its workers start when needed. */
export function comparePool(): ComparePool {
  pool ??= createComparePool(
    Math.min(mostWorkers, Math.max(2, navigator.hardwareConcurrency)),
    () => new Worker(new URL('../workers/compare.worker.ts', import.meta.url), { type: 'module' }),
  );
  return pool;
}
