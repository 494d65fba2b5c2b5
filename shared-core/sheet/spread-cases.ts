import { defaultSpreadWishes } from '../compare/spread/spread-wishes.ts';
import type { RunResult } from '../run/result.ts';

/** Rows of the time series that all cases of a driven outing may take together; about two seconds of work. */
const rowBudget = 1_600_000;
const fewestCases = 50;

/**
 * Cases for the spread of an outing: as many as on screen, fewer where each second is driven and a run is long work, so
 * that a sheet is made while the reader waits. The count depends on the plan only, never on the machine it runs on.
 *
 * @param run the planned run of the same outing
 */
export function spreadCases(run: RunResult): number {
  const { caseCount } = defaultSpreadWishes;
  if (run.drive === null) return caseCount;
  const rows = run.series.timeS.length + run.drive.series.timeS.length;
  return Math.min(caseCount, Math.max(fewestCases, Math.round(rowBudget / Math.max(1, rows))));
}
