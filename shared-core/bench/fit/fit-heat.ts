import type { FitRun } from './fit-run.ts';
import { replay, type CellValues, type UnitState } from './replay.ts';

export interface FittedHeat {
  /** Heat capacity of one cell group [J/K] and its resistance to the air [K/W]. */
  readonly heatCapacityJPerK: number;
  readonly heatResistanceKPerW: number;
}

/** Warming that stands clear of drift of the room and of the sensor [K]. */
const leastRiseK = 3;

/**
 * Heat capacity and cooling from logged temperatures. With the heat `P` of the fitted model,
 * `C (T - T0) = integral P dt - (1/Rth) integral (T - T0) dt`; divided by C this is linear in 1/C and 1/(Rth C), and both
 * follow by least squares over all rows of the runs that warm enough. The air is taken to have the temperature of the start.
 *
 * @returns null where no run warms by 3 K or the temperatures contradict the heat
 */
export function fitHeat(
  cell: CellValues,
  units: readonly UnitState[],
  runs: readonly FitRun[],
): FittedHeat | null {
  let [heatHeat, heatCool, coolCool, heatRise, coolRise] = [0, 0, 0, 0, 0];
  for (const run of runs) {
    const { temperatureC } = run;
    if (temperatureC === null || temperatureC[run.end]! - temperatureC[run.start]! < leastRiseK)
      continue;
    const loss = meanLoss(cell, units, run);
    let heat = 0;
    let cool = 0;
    for (let row = run.start + 1; row <= run.end; row += 1) {
      const step = run.timeS[row]! - run.timeS[row - 1]!;
      const rise = temperatureC[row]! - temperatureC[run.start]!;
      heat += (step * (loss[row]! + loss[row - 1]!)) / 2;
      cool -= step * rise;
      heatHeat += step * heat * heat;
      heatCool += step * heat * cool;
      coolCool += step * cool * cool;
      heatRise += step * heat * rise;
      coolRise += step * cool * rise;
    }
  }
  const determinant = heatHeat * coolCool - heatCool * heatCool;
  if (!(determinant > 1e-9 * heatHeat * coolCool)) return null;
  const perHeat = (coolCool * heatRise - heatCool * coolRise) / determinant;
  const cooling = (heatHeat * coolRise - heatCool * heatRise) / determinant;
  if (!(perHeat > 0)) return null;
  // No cooling found in the time of the run: say so with a resistance that leaves it out.
  const rate = Math.max(cooling, 1e-6);
  return { heatCapacityJPerK: 1 / perHeat, heatResistanceKPerW: perHeat / rate };
}

function meanLoss(cell: CellValues, units: readonly UnitState[], run: FitRun): Float64Array {
  const mean = new Float64Array(run.timeS.length);
  const volts = new Float64Array(run.timeS.length);
  const loss = new Float64Array(run.timeS.length);
  for (const unit of units) {
    replay(cell, run, unit, volts, loss);
    loss.forEach((value, row) => (mean[row] = mean[row]! + Math.max(0, value) / units.length));
  }
  return mean;
}
