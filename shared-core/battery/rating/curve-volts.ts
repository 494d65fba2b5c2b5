import { readTable } from '../deviated-curve.ts';
import { kneeFactor } from '../knee.ts';
import type { CurveCell } from './curve-parameters.ts';

/** Head of the available well after `hours` of constant current from full: closed form of the two wells. */
export function headAfter(cell: CurveCell, currentA: number, hours: number): number {
  const lagHours = -Math.expm1(-cell.levellingPerH * hours) / cell.levellingPerH;
  return 1 - (currentA * (hours + cell.boundRatio * lagHours)) / cell.capacityAh;
}

function volts(
  cell: CurveCell,
  head: number,
  currentA: number,
  hours: number,
  hysteresisV: number,
) {
  const ohm =
    cell.resistanceOhm +
    cell.kneeOhm * kneeFactor(head) -
    cell.polarisationOhm * Math.expm1((-hours * 3600) / cell.polarisationS);
  return readTable(cell.restV, head) - hysteresisV - currentA * ohm * warmth(cell, currentA, hours);
}

/** Share of the resistance left as the cell warms by its own loss: one heat node, the loss taken as steady. */
function warmth(cell: CurveCell, currentA: number, hours: number): number {
  const lossW = currentA * currentA * (cell.resistanceOhm + cell.polarisationOhm);
  const riseK = -lossW * cell.heatResistanceKPerW * Math.expm1((-hours * 3600) / cell.heatS);
  return Math.exp(-cell.coldRatePerK * riseK);
}

/** Voltage of a cell after `hours` of constant current from full [V]. */
export function curveVoltageV(
  cell: CurveCell,
  currentA: number,
  hours: number,
  hysteresisV: number,
): number {
  return volts(cell, headAfter(cell, currentA, hours), currentA, hours, hysteresisV);
}

/**
 * Charge the model gives over the charge the curve gave, minus 1, when both stop at the curve's last voltage. Written for
 * the head at which that voltage is met, so that it stays smooth however steep the end is.
 */
export function endMisfit(
  cell: CurveCell,
  currentA: number,
  hours: number,
  endVoltageV: number,
  hysteresisV: number,
): number {
  let low = 0;
  let high = 1;
  for (let round = 0; round < 36; round += 1) {
    const middle = (low + high) / 2;
    if (volts(cell, middle, currentA, hours, hysteresisV) < endVoltageV) low = middle;
    else high = middle;
  }
  return (
    (headAfter(cell, currentA, hours) - (low + high) / 2) * (cell.capacityAh / (currentA * hours))
  );
}
