import type { FitRun } from './fit-run.ts';
import { chargeAt } from '../../battery/deviated-curve.ts';
import type { CellPrior } from './prior.ts';

/** How a run began: the share of charge already out, and how sure that is; a sigma of 0 is not searched. */
export interface RunStart {
  readonly spent: number;
  readonly sigma: number;
  readonly known: 'given' | 'full' | 'rest-volts' | 'loaded-volts';
}

/**
 * Charge by the first volts below which a run is not taken as full. Full blocks rest at very different volts, and the
 * flat curve of LFP says nothing above the lower end of its plateau. Common practice, no source.
 */
const fullAbove = { agm: 0.85, gel: 0.85, flooded: 0.85, lfp: 0.4, nmc: 0.85 } as const;

/** How far the charge read from volts may be off: at rest, and under load with an assumed resistance. Common practice, no source. */
const voltsSigma = { rest: 0.1, loaded: 0.15, perhapsFull: 0.05 } as const;
/** Charge by loaded volts above which a lead block may still be full; the steep curve of NMC leaves no such doubt. */
const perhapsFullAbove = { agm: 0.55, gel: 0.55, flooded: 0.55, lfp: 0.4, nmc: 1 } as const;

/**
 * Charge of the fullest unit when a run began. What the user says counts; otherwise the volts before the load, or the
 * first ones under load, tell whether the run began full, and if not, about where.
 *
 * @param startPercent charge at the begin as told by the user [%]; null: unknown
 */
export function runStart(
  run: FitRun,
  prior: CellPrior,
  curve: Float64Array,
  startPercent: number | null,
): RunStart {
  if (startPercent !== null) return { spent: 1 - startPercent / 100, sigma: 0, known: 'given' };
  const rested = run.start > 0;
  const row = rested ? run.start - 1 : Math.min(run.start + 2, run.end);
  const lossV = rested
    ? 0
    : run.currentA[row]! * prior.resistanceOhm * (1 + prior.polarisationRatio / 2);
  const volts = Math.max(...run.cellV.map((column) => column[row]!)) + lossV + prior.hysteresisV;
  const charge = chargeAt(curve, volts);
  if (charge >= fullAbove[prior.chemistry]) return { spent: 0, sigma: 0, known: 'full' };
  // Under load the volts tell less: a run from a little below full looks like one from full with more resistance.
  if (!rested && charge >= perhapsFullAbove[prior.chemistry])
    return { spent: 0, sigma: voltsSigma.perhapsFull, known: 'loaded-volts' };
  return rested
    ? { spent: 1 - charge, sigma: voltsSigma.rest, known: 'rest-volts' }
    : { spent: 1 - charge, sigma: voltsSigma.loaded, known: 'loaded-volts' };
}

/**
 * Guess of the full charge from one run: what it delivered over the share between its begin and its end, where the end is
 * read from the usual curve [A·h].
 */
export function capacityGuess(run: FitRun, prior: CellPrior, spent: number): number {
  const row = Math.max(run.start, run.end - 1);
  const volts =
    Math.min(...run.cellV.map((column) => column[row]!)) +
    run.currentA[row]! * prior.resistanceOhm * (1 + prior.polarisationRatio) +
    prior.hysteresisV;
  const left = Math.min(0.9 - 0.9 * spent, chargeAt(prior.usualOpenCircuit, volts));
  const used = Math.max(0.1, 1 - spent - left);
  return Math.max(run.deliveredAh * 1.03, run.deliveredAh / used);
}
