import type { Motor } from '../plan/schema/motor.ts';
import type { MotorConstants, Origin } from './motor-constants.ts';

/** One thermal node of a motor: winding to air. */
export interface MotorHeat {
  readonly resistanceKPerW: number;
  readonly timeS: number;
  readonly maximumC: number;
  readonly resistanceOrigin: Origin;
  readonly timeOrigin: Origin;
  readonly maximumOrigin: Origin;
}

/** Rise of the winding at the rated point where no thermal resistance is given [K]: insulation class E to B, common practice. */
const ratedRiseK = 80;
const usualMaximumC = 120;
const usualTimeS = 1200;
/** Specific heat of a motor taken as half copper, half steel [J/(kg K)]. */
const specificHeatJPerKgK = 430;

/**
 * Thermal data of a motor, as given or from its rated point: the losses `I^2 R + Ke w I0` there heat it by 80 K.
 *
 * @returns null where neither thermal resistance nor rated current is known: no claim about temperature is made then.
 * Source: common practice, no source (80 K, 120 °C, 20 min).
 */
export function motorHeat(motor: Motor, constants: MotorConstants): MotorHeat | null {
  const resistanceKPerW = motor.heatResistanceKPerW ?? fromRatedPoint(motor, constants);
  if (resistanceKPerW === null) return null;
  const fromMass =
    motor.massKg === null ? null : motor.massKg * specificHeatJPerKgK * resistanceKPerW;
  return {
    resistanceKPerW,
    timeS: motor.heatTimeS ?? fromMass ?? usualTimeS,
    maximumC: motor.maximumTemperatureC ?? usualMaximumC,
    resistanceOrigin: motor.heatResistanceKPerW === null ? 'derived' : 'given',
    timeOrigin: motor.heatTimeS !== null ? 'given' : fromMass === null ? 'assumed' : 'derived',
    maximumOrigin: motor.maximumTemperatureC === null ? 'assumed' : 'given',
  };
}

function fromRatedPoint(motor: Motor, constants: MotorConstants): number | null {
  if (motor.ratedCurrentA === null) return null;
  const emfV = Math.max(0, motor.ratedVoltageV - motor.ratedCurrentA * constants.resistanceOhm);
  const lossW =
    motor.ratedCurrentA ** 2 * constants.resistanceOhm + emfV * constants.noLoadCurrentA;
  return lossW > 0 ? ratedRiseK / lossW : null;
}
