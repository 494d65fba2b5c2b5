import { hysteresisRate, propagator } from './circuit.ts';
import type { Circuit } from './circuit.ts';
import { kneeTable, placeOfHead } from './head-tables.ts';
import type { LoadTerms } from '../run/load-source.ts';

/** Works out voltage source and resistance of each unit and string from the state. */
export function refresh(circuit: Circuit): void {
  const {
    stringStart,
    charge,
    lag,
    polarisationV,
    hysteresis,
    hysteresisV,
    warmth,
    count,
    emfV,
    ohm,
    belowTap,
    resistanceOhm,
    kneeOhm,
    restTables,
  } = circuit;
  const { linkOhm, stringEmfV, stringOhm, tapA } = circuit;
  for (let string = 0; string < stringOhm.length; string += 1) {
    let emf = 0;
    let resistance = linkOhm[string]!;
    const end = stringStart[string + 1]!;
    for (let unit = stringStart[string]!; unit < end; unit += 1) {
      const table = restTables[unit]!;
      const place = placeOfHead(charge[unit]! - lag[unit]!);
      const index = Math.floor(place);
      const fraction = place - index;
      const low = table[index]!;
      const lowKnee = kneeTable[index]!;
      const unitEmf =
        low +
        (table[index + 1]! - low) * fraction -
        polarisationV[unit]! +
        hysteresis[unit]! * hysteresisV[unit]!;
      const knee = lowKnee + (kneeTable[index + 1]! - lowKnee) * fraction;
      const unitOhm = (resistanceOhm[unit]! + kneeOhm[unit]! * knee) * warmth[unit]!;
      emfV[unit] = unitEmf;
      ohm[unit] = unitOhm;
      // A mid-point tap flows through the lower units besides the string's current.
      emf += count[unit]! * (unitEmf - belowTap[unit]! * tapA * unitOhm);
      resistance += count[unit]! * unitOhm;
    }
    stringEmfV[string] = emf;
    stringOhm[string] = resistance;
  }
}

/**
 * Balances the strings against the loads: upper root of `(g + G) V^2 - (g E - I0) V + P = 0` with E and g of the closed
 * strings seen through the harness. Leaves bus voltage, bus current and the current of each string in the circuit.
 *
 * The results go into the circuit and not through the return value, and a single string is solved without dividing:
 * both matter in runs of tens of thousands of steps.
 *
 * @returns false when no balance above zero volts exists (the loads ask for more than the pack can give) or when no
 * string is closed
 */
export function solveBus(circuit: Circuit, terms: LoadTerms, harnessOhm: number): boolean {
  const { stringEmfV, stringOhm, stringCurrentA, multiplicity, closed, bus } = circuit;
  if (stringOhm.length === 1 && closed[0] === 1 && terms.conductanceS === 0) {
    // One distinct string: V = E - R I with I = I0 + P/V.
    const times = multiplicity[0]!;
    const ohm = stringOhm[0]! / times + harnessOhm;
    const b = stringEmfV[0]! - terms.currentA * ohm;
    const { powerW } = terms;
    let busV = b;
    let busA = terms.currentA;
    if (powerW !== 0) {
      const discriminant = b * b - 4 * powerW * ohm;
      if (!(discriminant >= 0)) return false;
      busV = 0.5 * (b + Math.sqrt(discriminant));
      busA += powerW / busV;
    }
    bus[0] = busV;
    bus[1] = busA;
    stringCurrentA[0] = busA / times;
    return busV > 0;
  }
  let conductance = 0;
  let shortCurrent = 0;
  for (let string = 0; string < stringOhm.length; string += 1) {
    if (closed[string] === 0) continue;
    const g = multiplicity[string]! / stringOhm[string]!;
    conductance += g;
    shortCurrent += g * stringEmfV[string]!;
  }
  if (conductance === 0) return false;
  const g = 1 / (1 / conductance + harnessOhm);
  const emf = shortCurrent / conductance;
  const a = g + terms.conductanceS;
  const b = g * emf - terms.currentA;
  const discriminant = b * b - 4 * a * terms.powerW;
  if (!(discriminant >= 0)) return false;
  const busV = (b + Math.sqrt(discriminant)) / (2 * a);
  const busA = g * (emf - busV);
  const packV = busV + busA * harnessOhm;
  for (let string = 0; string < stringOhm.length; string += 1) {
    stringCurrentA[string] =
      closed[string] === 0 ? 0 : (stringEmfV[string]! - packV) / stringOhm[string]!;
  }
  bus[0] = busV;
  bus[1] = busA;
  return busV > 0;
}

/**
 * Advances the state over a step. The current is held at its value extrapolated to the middle of the step (two-step
 * Adams-Bashforth, second order); charge, lag and polarisation then follow exactly.
 */
export function advance(circuit: Circuit, stepS: number): void {
  const {
    stringStart,
    stringCurrentA,
    previousCurrentA,
    closed,
    belowTap,
    tapA,
    charge,
    lag,
    polarisationV,
  } = circuit;
  const { inverseChargePerAs, warmth, hysteresisV, hysteresis, usedCurrentA } = circuit;
  const factors = propagator(circuit, stepS);
  const { previousStepS } = circuit;
  const weight =
    previousStepS > 0 && stepS <= 4 * previousStepS ? (0.5 * stepS) / previousStepS : 0;
  for (let string = 0; string < stringCurrentA.length; string += 1) {
    const current = stringCurrentA[string]!;
    const middle =
      closed[string] === 0 ? 0 : current + weight * (current - previousCurrentA[string]!);
    previousCurrentA[string] = current;
    usedCurrentA[string] = middle;
    const end = stringStart[string + 1]!;
    for (let unit = stringStart[string]!; unit < end; unit += 1) {
      const unitCurrent = middle + belowTap[unit]! * tapA;
      const entry = 4 * unit;
      const moved = unitCurrent * stepS * inverseChargePerAs[unit]!;
      charge[unit] = charge[unit]! - moved;
      lag[unit] = lag[unit]! * factors[entry]! + unitCurrent * factors[entry + 1]!;
      polarisationV[unit] =
        polarisationV[unit]! * factors[entry + 2]! +
        unitCurrent * warmth[unit]! * factors[entry + 3]!;
      if (hysteresisV[unit]! > 0) {
        // h' = -rate |I|/Q (h + sign I), exact for the current of the step.
        const goal = -Math.sign(moved);
        hysteresis[unit] =
          goal + (hysteresis[unit]! - goal) * Math.exp(-hysteresisRate * Math.abs(moved));
      }
    }
  }
  circuit.previousStepS = stepS;
}

/**
 * Corrects an accepted step once the current at its end is known: the mean of both ends (trapezoid) takes the place of
 * the extrapolated current. Charge, lag and polarisation answer linearly, so the difference is simply added; the error of
 * a step falls to a fifth. The heat of the step is noted on the way.
 */
export function correct(circuit: Circuit, stepS: number): void {
  const {
    stringStart,
    stringCurrentA,
    previousCurrentA,
    usedCurrentA,
    closed,
    charge,
    lag,
    polarisationV,
  } = circuit;
  const { inverseChargePerAs, warmth, ohm, heatJ, belowTap, tapA } = circuit;
  const factors = propagator(circuit, stepS);
  for (let string = 0; string < stringCurrentA.length; string += 1) {
    if (closed[string] === 0) continue;
    const mean = 0.5 * (stringCurrentA[string]! + previousCurrentA[string]!);
    const missed = mean - usedCurrentA[string]!;
    const end = stringStart[string + 1]!;
    for (let unit = stringStart[string]!; unit < end; unit += 1) {
      const unitCurrent = mean + belowTap[unit]! * tapA;
      const entry = 4 * unit;
      const endV = polarisationV[unit]!;
      const startV =
        (endV -
          (usedCurrentA[string]! + belowTap[unit]! * tapA) * warmth[unit]! * factors[entry + 3]!) /
        factors[entry + 2]!;
      heatJ[unit] =
        heatJ[unit]! + stepS * unitCurrent * (unitCurrent * ohm[unit]! + 0.5 * (startV + endV));
      charge[unit] = charge[unit]! - missed * stepS * inverseChargePerAs[unit]!;
      lag[unit] = lag[unit]! + missed * factors[4 * unit + 1]!;
      polarisationV[unit] = polarisationV[unit]! + missed * warmth[unit]! * factors[4 * unit + 3]!;
    }
  }
}

/** Brings the temperature of the units up to date with the heat of the last `spanS` seconds, and their resistance with it. */
export function warm(circuit: Circuit, spanS: number): void {
  const { heatJ, temperatureC, warmth, heatPerK, coolingPerS, coldRatePerK, ambientC, units } =
    circuit;
  for (let unit = 0; unit < units.length; unit += 1) {
    const before = temperatureC[unit]!;
    const after =
      before +
      Math.max(0, heatJ[unit]!) * heatPerK[unit]! -
      spanS * coolingPerS[unit]! * (before - ambientC);
    heatJ[unit] = 0;
    temperatureC[unit] = after;
    warmth[unit] = Math.exp(-coldRatePerK[unit]! * (after - units[unit]!.model.temperatureC));
  }
}

/** Voltage at the terminals of one unit [V]. */
export function unitVoltageV(circuit: Circuit, string: number, unit: number): number {
  const current = circuit.stringCurrentA[string]! + circuit.belowTap[unit]! * circuit.tapA;
  return circuit.emfV[unit]! - current * circuit.ohm[unit]!;
}

/** Forgets the last step's current: the loads have just switched, so it says nothing about the next step. */
export function forgetSlope(circuit: Circuit): void {
  circuit.previousStepS = 0;
}
