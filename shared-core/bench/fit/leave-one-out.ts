import { prepare, solveRuns, type FitRequest } from './fit-block.ts';
import { runStart } from './run-start.ts';
import { predict, type Prediction } from './predict.ts';

/**
 * The test that counts: each run in turn is left out, the others are fitted, and the run left out is predicted from full.
 * Empty with fewer than two runs. `done` is told how many of the runs are through.
 */
export function leaveOneOut(
  request: FitRequest,
  done?: (count: number, of: number) => void,
): Prediction[] {
  const prepared = prepare(request);
  if (!prepared.ok || prepared.runs.length < 2) return [];
  const { runs } = prepared;
  return runs.map((left, index) => {
    const { model, problem } = solveRuns(
      request,
      runs.filter((run) => run !== left),
    );
    const { cell, units } = model.decoded;
    const { spent } = runStart(left, problem.prior, cell.openCircuit, request.startPercent ?? null);
    const prediction = predict(cell, units, { ...left, spent }, request.layout.cells);
    done?.(index + 1, runs.length);
    return prediction;
  });
}
