import type { March } from '../pack/march.ts';
import type { Engine } from './engine.ts';

/** Sums and extremes at the pack terminals, integrated by the trapezoid rule over accepted steps. */
export interface Totals {
  chargeAs: number;
  energyWs: number;
  lowestBusV: number;
  peakA: number;
  beforeA: number;
  beforeW: number;
}

export function createTotals(): Totals {
  return {
    chargeAs: 0,
    energyWs: 0,
    lowestBusV: Number.POSITIVE_INFINITY,
    peakA: 0,
    beforeA: 0,
    beforeW: 0,
  };
}

/** Counts a step, or with `switched` takes the present values as the start of the next one. */
export function count(
  totals: Totals,
  { busV, busA, setup }: Engine,
  stepS: number,
  switched: boolean,
): void {
  const powerW = busA * (busV + busA * setup.harnessOhm);
  if (!switched) {
    totals.chargeAs += 0.5 * stepS * (totals.beforeA + busA);
    totals.energyWs += 0.5 * stepS * (totals.beforeW + powerW);
  }
  totals.beforeA = busA;
  totals.beforeW = powerW;
  if (busV < totals.lowestBusV) totals.lowestBusV = busV;
  if (busA > totals.peakA) totals.peakA = busA;
}

/** Counts many equal steps by their sums. */
export function countMarch(totals: Totals, { busV, busA, setup }: Engine, sums: March): void {
  totals.chargeAs += sums.chargeAs;
  totals.energyWs += sums.energyWs;
  totals.lowestBusV = Math.min(totals.lowestBusV, sums.lowestBusV);
  totals.peakA = Math.max(totals.peakA, sums.peakA);
  totals.beforeA = busA;
  totals.beforeW = busA * (busV + busA * setup.harnessOhm);
}
