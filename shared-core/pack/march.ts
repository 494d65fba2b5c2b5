import { headLow, headsPerOne, propagator } from './circuit.ts';
import type { Circuit } from './circuit.ts';
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
  const { stringStart, charge, lag, polarisationV, warmth, ohm, emfV, count, tables, heatJ } =
    circuit;
  const { linkOhm, multiplicity, stringEmfV, stringOhm, stringCurrentA, previousCurrentA, bus } =
    circuit;
  const strings = stringOhm.length;
  if (circuit.closed.includes(0) || circuit.previousStepS !== stepS) return 0;
  if (circuit.hysteresisV.some((volts) => volts > 0)) return 0;
  if (circuit.units.length === 1) {
    return marchSingle(circuit, terms, harnessOhm, stepS, steps, into);
  }
  const factors = propagator(circuit, stepS);
  const moved = circuit.inverseChargePerAs.map((perAs) => perAs * stepS);
  // What the current at the end of a step corrects is added at the start of the next one.
  const missed = new Float64Array(strings);
  const mean = new Float64Array(strings);
  const conductance = new Float64Array(strings);
  const { currentA: fixedA, powerW, conductanceS } = terms;
  const { watchBelowV, watchAboveA, watchUnitBelowV } = into;
  const last = tables[0]!.length / 2 - 1.000001;
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
      const correction = missed[string]!;
      const meanBefore = mean[string]!;
      let emf = 0;
      let resistance = linkOhm[string]!;
      const end = stringStart[string + 1]!;
      for (let unit = stringStart[string]!; unit < end; unit += 1) {
        const entry = 4 * unit;
        const warm = warmth[unit]!;
        const before = polarisationV[unit]!;
        const lagFactor = factors[entry + 1]!;
        const polarisationFactor = warm * factors[entry + 3]!;
        heatJ[unit] = heatJ[unit]! + stepS * meanBefore * (meanBefore * ohm[unit]! + before);
        const newCharge = charge[unit]! - (correction + used) * moved[unit]!;
        const newLag = (lag[unit]! + correction * lagFactor) * factors[entry]! + used * lagFactor;
        const newPolarisationV =
          (before + correction * polarisationFactor) * factors[entry + 2]! +
          used * polarisationFactor;
        const place = Math.min(last, Math.max(0, (newCharge - newLag - headLow) * headsPerOne));
        const table = tables[unit]!;
        const index = place | 0;
        const fraction = place - index;
        const lowV = table[2 * index]!;
        const lowOhm = table[2 * index + 1]!;
        const unitV = lowV + (table[2 * index + 2]! - lowV) * fraction - newPolarisationV;
        const unitOhm = (lowOhm + (table[2 * index + 3]! - lowOhm) * fraction) * warm;
        if (unitV - current * unitOhm < watchUnitBelowV[unit]!) suspect = true;
        charge[unit] = newCharge;
        lag[unit] = newLag;
        polarisationV[unit] = newPolarisationV;
        emfV[unit] = unitV;
        ohm[unit] = unitOhm;
        emf += count[unit]! * unitV;
        resistance += count[unit]! * unitOhm;
      }
      previousCurrentA[string] = current;
      missed[string] = used;
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
      mean[string] = level;
      missed[string] = level - missed[string]!;
    }
    taken += 1;
    if (taken % stepsPerWarming === 0) warmGently(circuit, stepsPerWarming * stepS);
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
  settleCorrection(circuit, factors, moved, missed, mean, stepS);
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

/** `warm` for the small rises between two calls: `exp(-x)` is taken as `1 - x`. */
export function warmGently(circuit: Circuit, spanS: number): void {
  const { temperatureC, heatPerK, coolingPerS, coldRatePerK, ambientC, warmth, heatJ } = circuit;
  for (let unit = 0; unit < heatJ.length; unit += 1) {
    const before = temperatureC[unit]!;
    const after =
      before +
      Math.max(0, heatJ[unit]!) * heatPerK[unit]! -
      spanS * coolingPerS[unit]! * (before - ambientC);
    heatJ[unit] = 0;
    temperatureC[unit] = after;
    warmth[unit] = warmth[unit]! * (1 - coldRatePerK[unit]! * (after - before));
  }
}

/** Adds what the last step's end current corrects, so that the state is the one `correct` leaves. */
function settleCorrection(
  circuit: Circuit,
  factors: Float64Array,
  moved: Float64Array,
  missed: Float64Array,
  mean: Float64Array,
  stepS: number,
): void {
  const { stringStart, charge, lag, polarisationV, warmth, ohm, heatJ } = circuit;
  for (let string = 0; string < missed.length; string += 1) {
    for (let unit = stringStart[string]!; unit < stringStart[string + 1]!; unit += 1) {
      heatJ[unit] =
        heatJ[unit]! + stepS * mean[string]! * (mean[string]! * ohm[unit]! + polarisationV[unit]!);
      charge[unit] = charge[unit]! - missed[string]! * moved[unit]!;
      lag[unit] = lag[unit]! + missed[string]! * factors[4 * unit + 1]!;
      polarisationV[unit] =
        polarisationV[unit]! + missed[string]! * warmth[unit]! * factors[4 * unit + 3]!;
    }
  }
}
