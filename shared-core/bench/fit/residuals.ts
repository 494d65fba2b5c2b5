import { decode } from './decode.ts';
import type { FitRun } from './fit-run.ts';
import { openCircuitNodes } from './open-circuit.ts';
import type { Parameter } from './parameters.ts';
import type { CellPrior } from './prior.ts';
import { replay } from './replay.ts';

/** A fit as a least-squares problem: which runs, which coordinates, how far a volt may be off. */
export interface FitProblem {
  readonly runs: readonly FitRun[];
  readonly parameters: readonly Parameter[];
  readonly prior: CellPrior;
  readonly referenceC: number;
}

/** Measured rows in the order of the residuals: run by run, unit by unit, rows of weight only. */
export interface Observations {
  readonly count: number;
  /** Volts per cell group. */
  readonly measuredV: Float64Array;
  /** Error of a volt that an uncertain charge causes where the curve is steep, per cell group [V]. */
  readonly chargeErrorV: Float64Array;
  readonly weight: Float64Array;
  readonly runOf: Uint16Array;
  readonly unitOf: Uint16Array;
  readonly rowOf: Uint32Array;
}

/** How well the charge of one run repeats that of another, and how well a log keeps it within a run. Common practice, no source. */
const chargeError = { several: 0.01, single: 0 } as const;

export function observe(runs: readonly FitRun[]): Observations {
  const places = runs.flatMap((run, runIndex) =>
    run.cellV.flatMap((_, unit) =>
      [...run.weight.keys()]
        .filter((row) => run.weight[row]! > 0)
        .map((row) => [runIndex, unit, row] as const),
    ),
  );
  return {
    count: places.length,
    measuredV: Float64Array.from(places, ([run, unit, row]) => runs[run]!.cellV[unit]![row]!),
    chargeErrorV: Float64Array.from(
      places,
      ([run, unit, row]) =>
        runs[run]!.fallV[unit]![row]! *
        (runs.length > 1 ? chargeError.several : chargeError.single),
    ),
    weight: Float64Array.from(places, ([run, , row]) => runs[run]!.weight[row]!),
    runOf: Uint16Array.from(places, ([run]) => run),
    unitOf: Uint16Array.from(places, ([, unit]) => unit),
    rowOf: Uint32Array.from(places, ([, , row]) => row),
  };
}

/** Volts per cell group of the model at every observation, for a point of the search. */
export function modelVolts(
  problem: FitProblem,
  observations: Observations,
  coordinates: readonly number[],
): Float64Array {
  const { cell, units } = decode(
    problem.parameters,
    coordinates,
    problem.prior,
    problem.referenceC,
  );
  const volts = new Float64Array(observations.count);
  let place = 0;
  problem.runs.forEach((run, runIndex) => {
    const replayed = new Float64Array(run.timeS.length);
    for (let unit = 0; unit < run.cellV.length; unit += 1) {
      replay(cell, run, units[unit] ?? units[0]!, replayed);
      while (
        place < observations.count &&
        observations.runOf[place] === runIndex &&
        observations.unitOf[place] === unit
      ) {
        volts[place] = replayed[observations.rowOf[place]!]!;
        place += 1;
      }
    }
  });
  return volts;
}

/**
 * Everything that pulls on a point of the search besides the volts, each in units of its own sigma: the priors, and the
 * roughness of the open-circuit curve's deviation.
 */
export function priorResiduals(problem: FitProblem, coordinates: readonly number[]): number[] {
  const pulls = [...coordinates];
  const { openCircuitRoughnessV } = problem.prior;
  const first = problem.parameters.findIndex((parameter) => parameter.name === 'openCircuit');
  const deviation = (node: number) =>
    problem.parameters[first + node]!.sigma * coordinates[first + node]!;
  for (let node = 1; node < openCircuitNodes.length - 1; node += 1) {
    const before = openCircuitNodes[node]! - openCircuitNodes[node - 1]!;
    const after = openCircuitNodes[node + 1]! - openCircuitNodes[node]!;
    // Change of slope over the length it happens on; curves bend more near empty, where nodes stand closer.
    const bend =
      ((deviation(node + 1) - deviation(node)) / after -
        (deviation(node) - deviation(node - 1)) / before) *
      ((before + after) / 2);
    pulls.push(bend / (openCircuitRoughnessV * 2));
  }
  return pulls;
}
