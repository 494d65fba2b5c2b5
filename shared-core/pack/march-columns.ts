import type { Circuit } from './circuit.ts';
import { headLow, headsPerOne, kneeTable } from './head-tables.ts';

/**
 * Places of a unit's figures in the one column a march works on. One column and not one for each figure, and as few
 * figures as will do: every access costs the loop more than an addition. Volts, ohms and joules are those of all equal
 * units together, so that the loop need not multiply by their count.
 */
export const at = {
  /** Charge when the march began, and what one ampere takes from it in a step. */
  chargeBefore: 0,
  moved: 1,
  lag: 2,
  lagKeep: 3,
  lagTake: 4,
  polarisationV: 5,
  polarisationKeep: 6,
  polarisationTake: 7,
  heatJ: 8,
  ohm: 9,
  /** Head from which on the straight piece holds, voltage and resistance there, and their slopes over the head. */
  pieceHead: 10,
  pieceV: 11,
  pieceVPerHead: 12,
  pieceOhm: 13,
  pieceOhmPerHead: 14,
  watchBelowV: 15,
} as const;
export const unitWidth = 16;

/** Length of a straight piece of the tables over the head. */
export const pieceLength = 1 / headsPerOne;

/** Lays the units of a circuit out in one column. */
export function marchColumn(
  circuit: Circuit,
  factors: Float64Array,
  stepS: number,
  watchUnitBelowV: Float64Array,
): Float64Array {
  const column = new Float64Array(circuit.units.length * unitWidth);
  for (let unit = 0; unit < circuit.units.length; unit += 1) {
    const base = unit * unitWidth;
    const count = circuit.count[unit]!;
    column[base + at.chargeBefore] = circuit.charge[unit]!;
    column[base + at.moved] = circuit.inverseChargePerAs[unit]! * stepS;
    column[base + at.lag] = circuit.lag[unit]!;
    column[base + at.lagKeep] = factors[4 * unit]!;
    column[base + at.lagTake] = factors[4 * unit + 1]!;
    column[base + at.polarisationV] = count * circuit.polarisationV[unit]!;
    column[base + at.polarisationKeep] = factors[4 * unit + 2]!;
    column[base + at.polarisationTake] = count * factors[4 * unit + 3]! * circuit.warmth[unit]!;
    column[base + at.heatJ] = count * circuit.heatJ[unit]!;
    column[base + at.ohm] = count * circuit.ohm[unit]!;
    column[base + at.watchBelowV] = count * watchUnitBelowV[unit]!;
    enterPiece(circuit, column, base, circuit.charge[unit]! - circuit.lag[unit]!);
  }
  return column;
}

/**
 * Takes the straight piece of a unit's tables that holds at a head. Between two entries the tables are straight anyway, and
 * a unit stays there for many steps: most steps need no look-up at all.
 */
export function enterPiece(
  circuit: Circuit,
  column: Float64Array,
  base: number,
  head: number,
): void {
  const unit = base / unitWidth;
  const table = circuit.restTables[unit]!;
  const many = circuit.count[unit]!;
  const manyWarm = many * circuit.warmth[unit]!;
  const place = (head - headLow) * headsPerOne;
  const last = table.length - 1;
  const inside = place >= 0 && place < last;
  const index = Math.max(0, Math.min(last, Math.floor(place)));
  const voltageV = table[index]!;
  const knee = kneeTable[index]!;
  // Beyond the ends of the table its last entry holds; such a piece is left again at once.
  column[base + at.pieceHead] = inside ? headLow + index / headsPerOne : head;
  column[base + at.pieceV] = many * voltageV;
  column[base + at.pieceOhm] =
    manyWarm * (circuit.resistanceOhm[unit]! + circuit.kneeOhm[unit]! * knee);
  column[base + at.pieceVPerHead] = inside
    ? many * (table[index + 1]! - voltageV) * headsPerOne
    : 0;
  column[base + at.pieceOhmPerHead] = inside
    ? manyWarm * circuit.kneeOhm[unit]! * (kneeTable[index + 1]! - knee) * headsPerOne
    : 0;
}

/** `warm` for the small rises between two calls, on the column of a march: `exp(-x)` is taken as `1 - x`. */
export function warmColumn(circuit: Circuit, column: Float64Array, spanS: number): void {
  const { temperatureC, heatPerK, coolingPerS, coldRatePerK, ambientC, warmth, count } = circuit;
  for (let unit = 0; unit < temperatureC.length; unit += 1) {
    const base = unit * unitWidth;
    const before = temperatureC[unit]!;
    const heatJ = column[base + at.heatJ]! / count[unit]!;
    const rise =
      Math.max(0, heatJ) * heatPerK[unit]! - spanS * coolingPerS[unit]! * (before - ambientC);
    column[base + at.heatJ] = 0;
    temperatureC[unit] = before + rise;
    const change = 1 - coldRatePerK[unit]! * rise;
    warmth[unit] = warmth[unit]! * change;
    column[base + at.polarisationTake] = column[base + at.polarisationTake]! * change;
    column[base + at.pieceOhm] = column[base + at.pieceOhm]! * change;
    column[base + at.pieceOhmPerHead] = column[base + at.pieceOhmPerHead]! * change;
  }
}

/** How the current of a string stands after the last step of a march. */
export interface StringTally {
  /** Sum of the currents the string was advanced with, one for each step [A]. */
  readonly drawnA: Float64Array;
  /** Mean current of the last step, and what it lies above the one the step was advanced with [A]. */
  readonly meanA: Float64Array;
  readonly missedA: Float64Array;
}

/** Writes the state back, with what the last step's end current corrects added: the state `correct` leaves. */
export function settleColumn(
  circuit: Circuit,
  column: Float64Array,
  { drawnA, meanA, missedA }: StringTally,
  stepS: number,
): void {
  for (let string = 0; string < drawnA.length; string += 1) {
    const mean = meanA[string]!;
    const missed = missedA[string]!;
    const end = circuit.stringStart[string + 1]!;
    for (let unit = circuit.stringStart[string]!; unit < end; unit += 1) {
      const base = unit * unitWidth;
      const count = circuit.count[unit]!;
      const moved = column[base + at.moved]!;
      const lag = column[base + at.lag]!;
      const polarisationV = column[base + at.polarisationV]!;
      const ohm = column[base + at.ohm]!;
      const before = column[base + at.chargeBefore]!;
      const head = before - drawnA[string]! * moved - lag;
      const restV =
        column[base + at.pieceV]! +
        column[base + at.pieceVPerHead]! * (head - column[base + at.pieceHead]!);
      circuit.emfV[unit] = (restV - polarisationV) / count;
      circuit.ohm[unit] = ohm / count;
      circuit.heatJ[unit] =
        (column[base + at.heatJ]! + stepS * mean * (mean * ohm + polarisationV)) / count;
      circuit.charge[unit] = before - (drawnA[string]! + missed) * moved;
      circuit.lag[unit] = lag + missed * column[base + at.lagTake]!;
      circuit.polarisationV[unit] =
        (polarisationV + missed * column[base + at.polarisationTake]!) / count;
    }
  }
}
