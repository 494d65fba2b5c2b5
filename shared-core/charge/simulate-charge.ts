import {
  prepareStrings,
  solveCharge,
  startStrings,
  type ChargeSource,
  type StringState,
} from './charge-circuit.ts';
import type { ChargeEnd, ChargeResult, ChargeStage } from './charge-result.ts';
import type { ChargePack } from './charge-unit.ts';
import type { ChargerProgram } from './charger-program.ts';
import { ChargeRecorder } from './charge-recorder.ts';
import { advance, unitVoltage } from './unit-state.ts';

export interface ChargeWishes {
  /** Pull the plug after so many hours of charging. */
  readonly longestHours: number;
  /** Stop at this charge of the pack [%]; null to let the charger decide. */
  readonly targetPercent: number | null;
  /** Hours of float or rest shown after the charge has ended. */
  readonly afterHours: number;
  /** Largest change of charge in a step [1]; 0.004 is exact to about 0.1 %, 0.02 suits sums over weeks. */
  readonly shareStep: number;
}

export const usualWishes: ChargeWishes = {
  longestHours: 100,
  targetPercent: null,
  afterHours: 0,
  shareStep: 0.004,
};

const shortestStepH = 2 / 3600;

/**
 * Simulates one charge: constant current up to the end voltage, that voltage until the current has fallen to the tail
 * current, then float or stop; a wall supply is a voltage behind a resistance. Ends by tail current, timer, an opening
 * BMS, the charge wanted, or the time allowed.
 *
 * Assumptions: temperature stays as it is; wells level (see `ChargeUnit`); a charger that meets an open BMS takes the
 * pack for full, as charge ends on zero current. Source: derived from the unit equations; implicit midpoint steps with
 * the moment of reaching the end voltage interpolated.
 */
export function simulateCharge(
  pack: ChargePack,
  program: ChargerProgram,
  wishes: ChargeWishes = usualWishes,
): ChargeResult {
  const strings = startStrings(pack);
  const recorder = new ChargeRecorder(strings, program);
  const capacityAh = recorder.capacityAh;
  const longestStepH = Math.min(wishes.shareStep * 25, 0.5);
  const limitH = Math.min(wishes.longestHours, program.maximumHours ?? Infinity);
  let stage: ChargeStage = 'bulk';
  let timeH = 0;
  let ended: ChargeEnd | null = null;
  const at = (stepH: number) => {
    prepareStrings(strings, stepH);
    return solveCharge(strings, sourceOf(program, stage, pack.leadOhm));
  };
  const regulated = program.kind !== 'wall-supply';
  let now = at(0);
  if (now.currentA < 1e-4 * capacityAh) ended = 'no-current';
  while (ended === null) {
    if (
      stage === 'bulk' &&
      regulated &&
      now.voltageV + now.currentA * pack.leadOhm >= program.endVoltageV - 1e-4
    ) {
      stage = 'absorption';
      recorder.bulkHours = timeH;
      now = at(0);
      if (timeH === 0 && now.currentA < 1e-4 * capacityAh) {
        ended = 'no-current';
        break;
      }
    }
    const perHour = Math.max(now.currentA, 0.001 * capacityAh) / capacityAh;
    let stepH = Math.min(longestStepH, wishes.shareStep / perHour, limitH - timeH);
    if (timeH === 0) stepH = Math.min(stepH, shortestStepH * 5);
    let middle = at(stepH);
    if (stage === 'bulk' && regulated) {
      const lead = now.currentA * pack.leadOhm;
      const rise = 2 * (middle.voltageV - now.voltageV);
      const room = program.endVoltageV - now.voltageV - lead;
      if (rise > room) {
        stepH = Math.max(shortestStepH / 10, (stepH * room) / rise);
        middle = at(stepH);
      }
    }
    if (stage === 'absorption' && program.tailCurrentA !== null) {
      const fall = 2 * (now.currentA - middle.currentA);
      const room = now.currentA - program.tailCurrentA;
      if (fall > room) {
        stepH = Math.max(shortestStepH, (stepH * room) / fall);
        middle = at(stepH);
      }
    }
    const storedAh = storedIn(strings, stepH);
    timeH += stepH;
    now = at(0);
    recorder.record({
      timeH,
      stepH,
      stage,
      storedAh,
      ...now,
      meanV: middle.voltageV,
      meanA: middle.currentA,
    });
    ended = endOf(strings, recorder, program, wishes, stage, timeH, limitH);
  }
  recorder.finish(ended, timeH, stage);
  runOn(pack, strings, program, recorder, wishes, ended, timeH);
  return recorder.result();
}

function sourceOf(program: ChargerProgram, stage: ChargeStage, leadOhm: number): ChargeSource {
  if (program.kind === 'wall-supply') {
    return {
      kind: 'voltage',
      voltageV: program.endVoltageV,
      resistanceOhm: program.sourceResistanceOhm + leadOhm,
    };
  }
  if (stage === 'bulk') return { kind: 'current', currentA: program.currentA };
  const voltageV =
    stage === 'float' ? (program.floatVoltageV ?? program.endVoltageV) : program.endVoltageV;
  return { kind: 'voltage', voltageV, resistanceOhm: leadOhm };
}

/** Books the step in every unit; returns what the pack stored [A·h]. */
function storedIn(strings: readonly StringState[], stepH: number): number {
  let storedShareAh = 0;
  for (const string of strings) {
    let sum = 0;
    let units = 0;
    for (const state of string.units) {
      sum +=
        state.unit.count *
        advance(state, string.currentA, unitVoltage(state, string.currentA), stepH);
      units += state.unit.count;
    }
    storedShareAh += (string.count * sum) / units;
  }
  return storedShareAh;
}

function endOf(
  strings: readonly StringState[],
  recorder: ChargeRecorder,
  program: ChargerProgram,
  wishes: ChargeWishes,
  stage: ChargeStage,
  timeH: number,
  limitH: number,
): ChargeEnd | null {
  const opening = opened(strings);
  if (opening !== null) return opening;
  if (wishes.targetPercent !== null && recorder.chargePercent >= wishes.targetPercent)
    return 'target';
  if (
    stage === 'absorption' &&
    program.tailCurrentA !== null &&
    recorder.currentA <= program.tailCurrentA * 1.001
  )
    return 'tail-current';
  if (timeH >= limitH - 1e-9)
    return program.maximumHours !== null && limitH === program.maximumHours ? 'timer' : 'unplugged';
  return null;
}

/** A BMS that has just opened, and why. */
function opened(strings: readonly StringState[]): ChargeEnd | null {
  for (const string of strings) {
    for (const { unit, voltageV } of string.units) {
      if (unit.opensAboveA !== null && string.currentA > unit.opensAboveA * 1.02)
        return 'bms-over-current';
      if (unit.opensAboveV !== null && voltageV > unit.opensAboveV) return 'bms-group-high';
    }
  }
  return null;
}

/** Float, or rest without current, after the charge. */
function runOn(
  pack: ChargePack,
  strings: readonly StringState[],
  program: ChargerProgram,
  recorder: ChargeRecorder,
  wishes: ChargeWishes,
  ended: ChargeEnd,
  endH: number,
): void {
  if (wishes.afterHours <= 0) return;
  const floats = program.floatVoltageV !== null && (ended === 'tail-current' || ended === 'timer');
  const stage: ChargeStage = floats ? 'float' : 'ended';
  const source: ChargeSource = floats
    ? sourceOf(program, 'float', pack.leadOhm)
    : { kind: 'current', currentA: 0 };
  const steps = 24;
  for (let index = 1; index <= steps; index += 1) {
    const stepH = wishes.afterHours / steps;
    prepareStrings(strings, stepH);
    const { voltageV, currentA } = solveCharge(strings, source);
    storedIn(strings, stepH);
    recorder.trail(endH + index * stepH, voltageV, currentA, stage);
  }
}
