import { readUniform } from '../battery/uniform-table.ts';
import type { ChargeUnit } from './charge-unit.ts';

/** A unit on its way through a charge. Mutable: one per unit and simulation. */
export interface UnitState {
  readonly unit: ChargeUnit;
  share: number;
  polarisationV: number;
  /** Voltage of the last step. */
  voltageV: number;
  highestV: number;
  gassedAh: number;
  bledAh: number;
  /** Straight line the unit follows during the step: `V = sourceV + I * slopeOhm`. */
  sourceV: number;
  slopeOhm: number;
  decay: number;
}

export function startState(unit: ChargeUnit): UnitState {
  const voltageV = openCircuitV(unit, unit.startShare);
  return {
    unit,
    share: unit.startShare,
    polarisationV: 0,
    voltageV,
    highestV: voltageV,
    gassedAh: 0,
    bledAh: 0,
    sourceV: voltageV,
    slopeOhm: unit.resistanceOhm,
    decay: 1,
  };
}

/** Open-circuit voltage while charging [V]; beyond full the last slope goes on, because lithium can be overcharged. */
export function openCircuitV(unit: ChargeUnit, share: number): number {
  const base = readUniform(unit.openCircuit, share) + unit.hysteresisV;
  return share <= 1 ? base : base + openCircuitSlope(unit, 1) * (share - 1);
}

/** Slope of the open-circuit voltage over the charge [V], at least a trace so that steps stay stable. */
function openCircuitSlope(unit: ChargeUnit, share: number): number {
  const { values } = unit.openCircuit;
  const cells = values.length - 1;
  const index = Math.min(cells - 1, Math.max(0, Math.floor(share * cells)));
  return Math.max(0, (values[index + 1]! - values[index]!) * cells);
}

/**
 * Prepares the unit's line for a step of `stepH` hours in which about `currentA` will flow. Open-circuit voltage and
 * polarisation are taken at the middle of the step (implicit midpoint), which keeps long steps stable and second order.
 */
export function prepare(state: UnitState, currentA: number, stepH: number): void {
  const { unit } = state;
  const halfShare = stepH / (2 * unit.capacityAh);
  const ahead = state.share + Math.max(0, currentA) * halfShare;
  const room = Math.max(unit.acceptanceRoom * 0.02 + 1e-4, 1 + unit.acceptanceRoom - ahead);
  const acceptanceOhm = unit.acceptanceOhm / room;
  state.decay = unit.polarisationS > 0 ? Math.exp((-stepH * 1800) / unit.polarisationS) : 0;
  state.sourceV = openCircuitV(unit, state.share) + state.polarisationV * state.decay;
  state.slopeOhm =
    unit.resistanceOhm +
    acceptanceOhm +
    unit.polarisationOhm * (1 - state.decay) +
    openCircuitSlope(unit, ahead) * halfShare;
}

/** Side current of the unit at a voltage [A]. */
export function gassingA(unit: ChargeUnit, voltageV: number): number {
  const { gassing } = unit;
  return gassing === null
    ? 0
    : gassing.currentA * Math.exp(Math.min(50, gassing.perVolt * (voltageV - gassing.referenceV)));
}

/**
 * Voltage of one unit when `currentA` enters it: the root of `I = (V - E)/R + I_gas(V)`. The function is convex and
 * rising, so Newton's method started right of the root closes in from one side.
 */
export function unitVoltage(state: UnitState, currentA: number): number {
  const plainV = state.sourceV + currentA * state.slopeOhm;
  const { gassing } = state.unit;
  if (gassing === null) return plainV;
  let voltageV = plainV;
  if (currentA > 0) {
    const allGasV = gassing.referenceV + Math.log(currentA / gassing.currentA) / gassing.perVolt;
    if (allGasV > state.sourceV && allGasV < voltageV) voltageV = allGasV;
  }
  for (let pass = 0; pass < 30; pass += 1) {
    const gas = gassingA(state.unit, voltageV);
    const error = (voltageV - state.sourceV) / state.slopeOhm + gas - currentA;
    const slope = 1 / state.slopeOhm + gas * gassing.perVolt;
    const next = voltageV - error / slope;
    if (Math.abs(next - voltageV) < 1e-9) return next;
    voltageV = next;
  }
  return voltageV;
}

/** Volts per ampere at the voltage found. */
export function unitSlope(state: UnitState, voltageV: number): number {
  const { gassing } = state.unit;
  const gasSlope = gassing === null ? 0 : gassingA(state.unit, voltageV) * gassing.perVolt;
  return 1 / (1 / state.slopeOhm + gasSlope);
}

/** Books the step. Returns the charge stored in one unit [A·h]. */
export function advance(
  state: UnitState,
  currentA: number,
  voltageV: number,
  stepH: number,
): number {
  const { unit } = state;
  const gas = gassingA(unit, voltageV);
  const bleed =
    unit.balancing !== null && voltageV >= unit.balancing.startV ? unit.balancing.currentA : 0;
  const intoPlates = currentA - gas - bleed;
  state.share = Math.max(0, state.share + (intoPlates * stepH) / unit.capacityAh);
  const wholeDecay = state.decay * state.decay;
  state.polarisationV =
    state.polarisationV * wholeDecay + currentA * unit.polarisationOhm * (1 - wholeDecay);
  state.voltageV = voltageV;
  if (voltageV > state.highestV) state.highestV = voltageV;
  state.gassedAh += gas * stepH;
  state.bledAh += bleed * stepH;
  return intoPlates * stepH;
}
