import type { DriveTrain, GearTrain } from './drive-train.ts';
import type { Road } from './road.ts';

/** True where a mechanical brake can hold the machine at a stand. */
export function canHold({ brakes }: Pick<DriveTrain, 'brakes'>): boolean {
  return brakes.parking !== 'none' || brakes.serviceDecelerationMps2 !== null;
}

/**
 * True where the slope turns the gears and motors backwards against their current and friction,
 * `m g sin a - F_roll > k (I + I0)/eta`.
 *
 * @param motorA current of the motor group at a stand, 0 or more [A]
 * Assumes the gear's loss works against the slope. Source: derived.
 */
export function slopeBeatsMotor(gear: GearTrain, road: Road, motorA: number): boolean {
  const heldN = (gear.forcePerA * (motorA + gear.frictionA)) / gear.efficiency;
  return road.climbN - road.rollingN > heldN;
}
