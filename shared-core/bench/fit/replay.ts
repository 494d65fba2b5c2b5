import { kneeFactor } from '../../battery/knee.ts';
import type { FitRun } from './fit-run.ts';
import { readTable } from '../../battery/deviated-curve.ts';

/** Values of one cell group, in the notation of `BlockModel`; resistances per cell group at `referenceC`. */
export interface CellValues {
  readonly capacityAh: number;
  /** (1 - c)/c: charge bound per charge at hand; 0 without rate loss. */
  readonly boundRatio: number;
  readonly levellingPerS: number;
  readonly resistanceOhm: number;
  readonly polarisationOhm: number;
  readonly polarisationS: number;
  readonly kneeOhm: number;
  readonly coldRatePerK: number;
  readonly referenceC: number;
  readonly openCircuit: Float64Array;
  readonly hysteresisV: number;
  /** Warming per joule and cooling rate of one cell group, used where no temperature was logged. */
  readonly heatCapacityJPerK: number;
  readonly coolingPerS: number;
}

/** How one unit differs in one run. */
export interface UnitState {
  readonly capacityShare: number;
  readonly resistanceShare: number;
  readonly startCharge: number;
}

/**
 * Volts per cell group that the block model gives for a logged current, written into `into`; the heat set free, in watts
 * per cell group, into `lossInto`.
 *
 * Between rows the current is constant at its mean; charge, lag and polarisation then have closed forms:
 * `sigma -= I dt/Q`, `d = d e^{-k'dt} + I a/(Q k') (1 - e^{-k'dt})`, `v_p = v_p e^{-dt/tau} + I R1 (1 - e^{-dt/tau})`,
 * and `V = OCV(sigma - d) - h - w I (R0 + K f(s)) - v_p` with the warmth factor `w = exp(-rate (T - T_ref))` on R0, R1 and
 * K. The equations are those of `BlockModel`, so that a fitted value means the same in a run.
 */
export function replay(
  cell: CellValues,
  run: FitRun,
  unit: UnitState,
  into: Float64Array,
  lossInto?: Float64Array,
): void {
  const { timeS, currentA, meanA, temperatureC } = run;
  const chargeAs = cell.capacityAh * unit.capacityShare * 3600;
  const lagPerA = cell.boundRatio > 0 ? cell.boundRatio / (chargeAs * cell.levellingPerS) : 0;
  let charge = unit.startCharge - run.spent;
  let lag = 0;
  let polarisationV = 0;
  let warm = temperatureC?.[0] ?? cell.referenceC;
  const air = warm;
  let warmth = unit.resistanceShare * Math.exp(-cell.coldRatePerK * (warm - cell.referenceC));
  let lossW = 0;
  for (let row = 0; row < timeS.length; row += 1) {
    if (row > 0) {
      const step = timeS[row]! - timeS[row - 1]!;
      const mean = meanA[row]!;
      if (temperatureC === null)
        warm +=
          step * (Math.max(0, lossW) / cell.heatCapacityJPerK - cell.coolingPerS * (warm - air));
      else warm = temperatureC[row]!;
      warmth = unit.resistanceShare * Math.exp(-cell.coldRatePerK * (warm - cell.referenceC));
      charge -= (mean * step) / chargeAs;
      if (lagPerA > 0) {
        const kept = Math.exp(-cell.levellingPerS * step);
        lag = lag * kept + mean * lagPerA * (1 - kept);
      }
      const kept = Math.exp(-step / cell.polarisationS);
      polarisationV = polarisationV * kept + mean * warmth * cell.polarisationOhm * (1 - kept);
    }
    const head = charge - lag;
    const current = currentA[row]!;
    const open = readTable(cell.openCircuit, head);
    const voltage =
      open -
      cell.hysteresisV -
      current * warmth * (cell.resistanceOhm + cell.kneeOhm * kneeFactor(head)) -
      polarisationV;
    lossW = current * (open - cell.hysteresisV - voltage);
    into[row] = voltage;
    if (lossInto !== undefined) lossInto[row] = lossW;
  }
}
