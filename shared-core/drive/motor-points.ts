import { motorLimits } from '../formulas/drive/motor-limits.ts';
import type { Motor } from '../plan/schema/motor.ts';
import type { MotorConstants } from './motor-constants.ts';

/** What the fitted motor does at its rated voltage. */
export interface MotorPoints {
  readonly stallA: number;
  readonly bestEfficiency: number;
  readonly bestA: number;
  /** At the rated current; null where the label does not state one below the stall current. */
  readonly rated: {
    readonly rpm: number;
    readonly shaftW: number;
    /** Difference to the speed on the label, as a share of it; 0 where the label states none. */
    readonly rpmGap: number;
  } | null;
}

/**
 * Stall, best and rated point of a fitted motor at its rated voltage, to be held against the label.
 *
 * `w = (V - I R)/Ke`, `P = Ke w (I - I0)`. Source: motor equations (derived).
 */
export function motorPoints(motor: Motor, constants: MotorConstants): MotorPoints {
  const { resistanceOhm, backEmfVs, noLoadCurrentA } = constants;
  const volts = motor.ratedVoltageV;
  const limits = motorLimits({ resistanceOhm, constantVsPerRad: backEmfVs, noLoadCurrentA }, volts);
  return {
    stallA: limits.stallA,
    bestEfficiency: limits.bestEfficiency,
    bestA: limits.bestCurrentA,
    rated: ratedPoint(motor, constants, limits.stallA),
  };
}

function ratedPoint(motor: Motor, constants: MotorConstants, stallA: number): MotorPoints['rated'] {
  const { ratedCurrentA: currentA, ratedVoltageV: volts, ratedRpm } = motor;
  if (currentA === null || currentA >= stallA) return null;
  const radPerS = (volts - currentA * constants.resistanceOhm) / constants.backEmfVs;
  const rpm = (radPerS * 30) / Math.PI;
  return {
    rpm,
    shaftW: Math.max(0, constants.backEmfVs * radPerS * (currentA - constants.noLoadCurrentA)),
    rpmGap: ratedRpm === null ? 0 : Math.abs(rpm / ratedRpm - 1),
  };
}
