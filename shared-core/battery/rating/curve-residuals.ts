import type { DischargeCurve } from '../../plan/schema/block.ts';
import { openCircuitNodes } from '../deviated-curve.ts';
import { curveParameterNames } from './curve-parameters.ts';
import type { CurveCell, CurvePrior } from './curve-parameters.ts';
import { curveVoltageV, endMisfit } from './curve-volts.ts';

/** Points of a curve that enter the fit, at most. */
const pointsPerCurve = 48;
/** Independent readings a curve is worth, however many points it has: neighbours err alike. */
const readingsPerCurve = 16;
/** Error of the charge to the end of a curve, as a share. */
const endSigma = 0.002;

/** A curve in volts of one cell group, thinned. */
export interface CellCurve {
  readonly currentA: number;
  readonly hours: readonly number[];
  readonly voltageV: readonly number[];
}

/** A point at time zero is left out: whether it was read before or after the load came on cannot be told. */
export function cellCurve({ currentA, points }: DischargeCurve, cells: number): CellCurve {
  const loaded = points.filter(({ timeMin }) => timeMin > 0);
  const stride = Math.max(1, (loaded.length - 1) / (pointsPerCurve - 1));
  const count = Math.min(loaded.length, pointsPerCurve);
  const kept = Array.from(
    { length: count },
    (_, index) => loaded[Math.min(loaded.length - 1, Math.round(index * stride))]!,
  );
  return {
    currentA,
    hours: kept.map(({ timeMin }) => timeMin / 60),
    voltageV: kept.map(({ voltageV }) => voltageV / cells),
  };
}

/** Root mean square of model minus curve, per cell [V]. */
export function rmsV(cell: CurveCell, curve: CellCurve, hysteresisV: number): number {
  const sum = curve.hours.reduce((total, hours, index) => {
    const volt = curveVoltageV(cell, curve.currentA, hours, hysteresisV);
    return total + (volt - curve.voltageV[index]!) ** 2;
  }, 0);
  return Math.sqrt(sum / curve.hours.length);
}

/** Everything that pulls on a point of the search, each in units of its own sigma: volts, ends, what is usual, roughness. */
export function curveResiduals(
  prior: CurvePrior,
  curves: readonly CellCurve[],
  at: readonly number[],
  sigmaV: number,
  hysteresisV: number,
): Float64Array {
  const cell = prior.cellAt(at);
  const pulls: number[] = [];
  for (const { currentA, hours, voltageV } of curves) {
    const scale = Math.sqrt(Math.min(1, readingsPerCurve / hours.length)) / sigmaV;
    for (let index = 0; index < hours.length; index += 1) {
      const volt = curveVoltageV(cell, currentA, hours[index]!, hysteresisV);
      pulls.push((volt - voltageV[index]!) * scale);
    }
    const last = hours.length - 1;
    pulls.push(endMisfit(cell, currentA, hours[last]!, voltageV[last]!, hysteresisV) / endSigma);
  }
  for (const coordinate of at) pulls.push(coordinate);
  pushRoughness(at, pulls);
  return Float64Array.from(pulls);
}

/** Change of slope of the rest curve's deviation over the length it happens on, against half its usual size. */
function pushRoughness(at: readonly number[], pulls: number[]): void {
  const first = curveParameterNames.length;
  const nodes = openCircuitNodes;
  for (let node = 1; node < nodes.length - 1; node += 1) {
    const before = nodes[node]! - nodes[node - 1]!;
    const after = nodes[node + 1]! - nodes[node]!;
    const here = at[first + node]!;
    const bend =
      ((at[first + node + 1]! - here) / after - (here - at[first + node - 1]!) / before) *
      ((before + after) / 2);
    pulls.push(2 * bend);
  }
}
