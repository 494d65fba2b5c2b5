import type { ChargePack } from './charge-unit.ts';
import { prepare, startState, unitSlope, unitVoltage, type UnitState } from './unit-state.ts';

/** A string on its way through a charge. */
export interface StringState {
  readonly units: readonly UnitState[];
  readonly count: number;
  readonly linkOhm: number;
  currentA: number;
}

/** What stands at the charger's end: a current, or a voltage behind a resistance. */
export type ChargeSource =
  | { readonly kind: 'current'; readonly currentA: number }
  | { readonly kind: 'voltage'; readonly voltageV: number; readonly resistanceOhm: number };

export function startStrings(pack: ChargePack): StringState[] {
  return pack.strings.map((string) => ({
    units: string.units.map(startState),
    count: string.count,
    linkOhm: string.linkOhm,
    currentA: 0,
  }));
}

export function prepareStrings(strings: readonly StringState[], stepH: number): void {
  for (const string of strings)
    for (const state of string.units) prepare(state, string.currentA, stepH);
}

/** Voltage of a string and its slope [V, Ω] at a current. */
function stringLine(string: StringState, currentA: number): { voltageV: number; slopeOhm: number } {
  let voltageV = currentA * string.linkOhm;
  let slopeOhm = string.linkOhm;
  for (const state of string.units) {
    const unitV = unitVoltage(state, currentA);
    voltageV += state.unit.count * unitV;
    slopeOhm += state.unit.count * unitSlope(state, unitV);
  }
  return { voltageV, slopeOhm };
}

/** Current of a string at a voltage [A]; the voltage is concave in the current, so Newton closes in from the left. */
function stringCurrent(
  string: StringState,
  voltageV: number,
): { currentA: number; slopeOhm: number } {
  let currentA = string.currentA;
  let slopeOhm = 1;
  for (let pass = 0; pass < 60; pass += 1) {
    const line = stringLine(string, currentA);
    slopeOhm = line.slopeOhm;
    const change = (voltageV - line.voltageV) / slopeOhm;
    currentA += change;
    if (Math.abs(change) < 1e-6) break;
  }
  return { currentA, slopeOhm };
}

/**
 * Shares the source's current among the strings: writes each string's current and returns the pack's terminal voltage
 * and total current. A charger takes nothing back, so the total is never negative.
 */
export function solveCharge(
  strings: readonly StringState[],
  source: ChargeSource,
): { voltageV: number; currentA: number } {
  const only = strings.length === 1 ? strings[0] : undefined;
  if (only !== undefined && source.kind === 'current') {
    only.currentA = source.currentA / only.count;
    return { voltageV: stringLine(only, only.currentA).voltageV, currentA: source.currentA };
  }
  if (source.kind === 'voltage' && source.resistanceOhm === 0) {
    const totalA = currentsAt(strings, source.voltageV).totalA;
    return totalA >= 0
      ? { voltageV: source.voltageV, currentA: totalA }
      : solveCharge(strings, { kind: 'current', currentA: 0 });
  }
  let voltageV =
    strings[0] === undefined ? 0 : stringLine(strings[0], strings[0].currentA).voltageV;
  for (let pass = 0; pass < 60; pass += 1) {
    const { totalA, conductanceS } = currentsAt(strings, voltageV);
    const wanted =
      source.kind === 'current'
        ? source.currentA
        : (source.voltageV - voltageV) / source.resistanceOhm;
    const sourceS = source.kind === 'current' ? 0 : 1 / source.resistanceOhm;
    const change = (wanted - totalA) / (conductanceS + sourceS);
    voltageV += change;
    if (Math.abs(change) < 1e-6) break;
  }
  const { totalA } = currentsAt(strings, voltageV);
  if (totalA < -1e-6) return solveCharge(strings, { kind: 'current', currentA: 0 });
  return { voltageV, currentA: Math.max(0, totalA) };
}

function currentsAt(
  strings: readonly StringState[],
  voltageV: number,
): { totalA: number; conductanceS: number } {
  let totalA = 0;
  let conductanceS = 0;
  for (const string of strings) {
    const { currentA, slopeOhm } = stringCurrent(string, voltageV);
    string.currentA = currentA;
    totalA += currentA * string.count;
    conductanceS += string.count / slopeOhm;
  }
  return { totalA, conductanceS };
}
