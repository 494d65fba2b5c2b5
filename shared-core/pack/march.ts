import { propagator } from './circuit.ts';
import type { Circuit } from './circuit.ts';
import {
  at,
  enterPiece,
  marchColumn,
  pieceLength,
  settleColumn,
  unitWidth,
  warmColumn,
} from './march-columns.ts';
import { marchSingle } from './march-single.ts';
import type { LoadTerms } from '../run/load-source.ts';

/** What a march adds up, and where it must hand back to the careful stepping. */
export interface March {
  /** Bus voltage below which, and string current above which, something might trip. */
  readonly watchBelowV: number;
  readonly watchAboveA: number;
  /** Voltage per unit below which its BMS might open; -Infinity without one. */
  readonly watchUnitBelowV: Float64Array;
  chargeAs: number;
  energyWs: number;
  lowestBusV: number;
  peakA: number;
}

/** Movement of the bus in one step that calls for careful stepping [V]. */
export const fastMoveV = 0.05;

/** Steps between two updates of the temperatures. */
export const stepsPerWarming = 4;

/**
 * Takes many equal steps under steady loads: the equations of `advance`, `refresh`, `solveBus`, `correct` and `warm`
 * fused into one loop over flat columns, about three times as fast as calling them. It decides nothing: as soon as
 * anything could trip it stops before that step, and the careful stepping goes on.
 *
 * @param terms the loads, which must not change meanwhile @param steps how many steps at most
 * @returns steps taken; the circuit stands at the end of the last of them, solved
 */
export function march(
  circuit: Circuit,
  terms: LoadTerms,
  harnessOhm: number,
  stepS: number,
  steps: number,
  into: March,
): number {
  if (circuit.closed.includes(0) || circuit.previousStepS !== stepS) return 0;
  if (circuit.hysteresisV.some((volts) => volts > 0)) return 0;
  if (circuit.units.length === 1) {
    return marchSingle(circuit, terms, harnessOhm, stepS, steps, into);
  }
  const { stringStart, linkOhm, multiplicity, stringEmfV, stringOhm } = circuit;
  const { stringCurrentA, previousCurrentA, bus } = circuit;
  const { watchBelowV, watchAboveA, watchUnitBelowV } = into;
  const strings = stringOhm.length;
  const factors = propagator(circuit, stepS);
  const column = marchColumn(circuit, factors, stepS, watchUnitBelowV);
  // What the current at the end of a step corrects is added at the start of the next one.
  const drawnA = new Float64Array(strings);
  const missedA = new Float64Array(strings);
  const meanA = new Float64Array(strings);
  const conductance = new Float64Array(strings);
  const { currentA: fixedA, powerW, conductanceS } = terms;
  const watched = watchUnitBelowV.some(Number.isFinite);
  let busV = bus[0]!;
  let busA = bus[1]!;
  let taken = 0;
  let { chargeAs, energyWs, lowestBusV, peakA } = into;

  while (taken < steps && busV > watchBelowV) {
    let suspect = false;
    let allConductance = 0;
    let shortCurrent = 0;
    for (let string = 0; string < strings; string += 1) {
      const current = stringCurrentA[string]!;
      if (current > watchAboveA) suspect = true;
      const used = 1.5 * current - 0.5 * previousCurrentA[string]!;
      const correction = missedA[string]!;
      const drawn = drawnA[string]! + correction + used;
      const mean = meanA[string]!;
      const heating = stepS * mean;
      let emf = 0;
      let resistance = linkOhm[string]!;
      const end = stringStart[string + 1]! * unitWidth;
      for (let base = stringStart[string]! * unitWidth; base < end; base += unitWidth) {
        const before = column[base + at.polarisationV]!;
        column[base + at.heatJ] =
          column[base + at.heatJ]! + heating * (mean * column[base + at.ohm]! + before);
        const lagKeep = column[base + at.lagKeep]!;
        const lag =
          column[base + at.lag]! * lagKeep +
          (correction * lagKeep + used) * column[base + at.lagTake]!;
        column[base + at.lag] = lag;
        const keep = column[base + at.polarisationKeep]!;
        const polarisationV =
          before * keep + (correction * keep + used) * column[base + at.polarisationTake]!;
        column[base + at.polarisationV] = polarisationV;
        const head = column[base + at.chargeBefore]! - drawn * column[base + at.moved]! - lag;
        let along = head - column[base + at.pieceHead]!;
        if (!(along >= 0 && along <= pieceLength)) {
          enterPiece(circuit, column, base, head);
          along = head - column[base + at.pieceHead]!;
        }
        const unitV =
          column[base + at.pieceV]! + column[base + at.pieceVPerHead]! * along - polarisationV;
        const unitOhm = column[base + at.pieceOhm]! + column[base + at.pieceOhmPerHead]! * along;
        column[base + at.ohm] = unitOhm;
        if (watched && unitV - current * unitOhm < column[base + at.watchBelowV]!) suspect = true;
        emf += unitV;
        resistance += unitOhm;
      }
      drawnA[string] = drawn;
      previousCurrentA[string] = current;
      missedA[string] = used;
      stringEmfV[string] = emf;
      stringOhm[string] = resistance;
      if (strings > 1) {
        const g = multiplicity[string]! / resistance;
        conductance[string] = g;
        allConductance += g;
        shortCurrent += g * emf;
      }
    }
    const inner = strings === 1 ? stringOhm[0]! / multiplicity[0]! : 1 / allConductance;
    const sourceOhm = inner + harnessOhm;
    const a = 1 + conductanceS * sourceOhm;
    const b = (strings === 1 ? stringEmfV[0]! : shortCurrent * inner) - fixedA * sourceOhm;
    const newV = upperRoot(a, b, powerW * sourceOhm);
    const newA = fixedA + (powerW === 0 ? 0 : powerW / newV) + conductanceS * newV;
    if (strings === 1) stringCurrentA[0] = newA / multiplicity[0]!;
    else {
      const packV = newV + newA * harnessOhm;
      for (let string = 0; string < strings; string += 1) {
        stringCurrentA[string] =
          (stringEmfV[string]! - packV) * (conductance[string]! / multiplicity[string]!);
      }
    }
    for (let string = 0; string < strings; string += 1) {
      const level = 0.5 * (stringCurrentA[string]! + previousCurrentA[string]!);
      meanA[string] = level;
      missedA[string] = level - missedA[string]!;
    }
    taken += 1;
    if (taken % stepsPerWarming === 0) warmColumn(circuit, column, stepsPerWarming * stepS);
    chargeAs += 0.5 * stepS * (busA + newA);
    energyWs +=
      0.5 * stepS * (busA * (busV + busA * harnessOhm) + newA * (newV + newA * harnessOhm));
    // A bus that moves fast may pass the bound within the next step.
    if (!(Math.abs(newV - busV) < fastMoveV)) suspect = true;
    busV = newV;
    busA = newA;
    if (newV < lowestBusV) lowestBusV = newV;
    if (newA > peakA) peakA = newA;
    if (suspect) break;
  }
  settleColumn(circuit, column, { drawnA, meanA, missedA }, stepS);
  bus[0] = busV;
  bus[1] = busA;
  into.chargeAs = chargeAs;
  into.energyWs = energyWs;
  into.lowestBusV = lowestBusV;
  into.peakA = peakA;
  return taken;
}

/** Upper root of `a V^2 - b V + c = 0`; NaN where there is none. */
function upperRoot(a: number, b: number, c: number): number {
  return a === 1
    ? 0.5 * (b + Math.sqrt(b * b - 4 * c))
    : (b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
}
