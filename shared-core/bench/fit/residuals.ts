import { decode } from './decode.ts';
import type { FitRun } from './fit-run.ts';
import { openCircuitNodes } from '../../battery/deviated-curve.ts';
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
  /** 1 where the measured volts are only a ceiling for the model's. */
  readonly ceiling: Uint8Array;
}

/** How well the charge of one run repeats that of another, and how well a log keeps it within a run. Common practice, no source. */
const chargeError = { several: 0.003, single: 0 } as const;

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
    ceiling: Uint8Array.from(places, ([run, , row]) => (row >= runs[run]!.ceilingFrom ? 1 : 0)),
  };
}

/** Model minus measured at every observation [V]; a model below a ceiling is not off. */
export function misfits(observations: Observations, volts: Float64Array): Float64Array {
  return volts.map((volt, place) => {
    const off = volt - observations.measuredV[place]!;
    return observations.ceiling[place] === 1 ? Math.max(0, off) : off;
  });
}

/** Volts per cell group of the model at every observation, for a point of the search. */
export function modelVolts(
  problem: FitProblem,
  observations: Observations,
  coordinates: readonly number[],
): Float64Array {
  const { cell, units, spent } = decode(
    problem.parameters,
    coordinates,
    problem.prior,
    problem.referenceC,
  );
  const volts = new Float64Array(observations.count);
  let place = 0;
  problem.runs.forEach((run, runIndex) => {
    const begun = { ...run, spent: spent.get(runIndex) ?? run.spent };
    const replayed = new Float64Array(run.timeS.length);
    for (let unit = 0; unit < run.cellV.length; unit += 1) {
      replay(cell, begun, units[unit] ?? units[0]!, replayed);
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
  const pulls = [...coordinates, labelPull(problem, coordinates)];
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

/** How far a block's rated capacity may lie above and below its label (1 sigma of the logarithm): makers promise a minimum, age takes away. Common practice, no source. */
const labelSigma = { above: 0.06, below: 0.12 } as const;

/**
 * The label as evidence: charge over the rated time, `Q - I a (1 - e^{-k't})/k'` with `I` the rated current, against what
 * is promised. It keeps one run from explaining its charge by wells that the label contradicts.
 */
function labelPull({ parameters, prior }: FitProblem, coordinates: readonly number[]): number {
  const value = (name: Parameter['name']) => {
    const place = parameters.findIndex((parameter) => parameter.name === name);
    const { prior: centre, sigma, min, max } = parameters[place]!;
    return Math.min(max, Math.max(min, centre + sigma * coordinates[place]!));
  };
  const { capacityAh, hours } = prior.rated;
  const perHour = Math.exp(value('levelling')) * 3600;
  const boundAh =
    ((capacityAh / hours) * value('boundRatio') * -Math.expm1(-perHour * hours)) / perHour;
  const found = Math.max(0.05, (Math.exp(value('capacity')) - boundAh) / capacityAh);
  const off = Math.log(found);
  return off / (off > 0 ? labelSigma.above : labelSigma.below);
}
