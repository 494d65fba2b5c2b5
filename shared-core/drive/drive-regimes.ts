import type { MotionCommand } from './drive-motion.ts';
import type { MotionStep } from './motion-step.ts';
import type { DriveTrain } from './drive-train.ts';
import { brakeThrough, idle, regenerate } from './operating-point.ts';
import type { CircuitLimits } from './operating-point.ts';
import { roadForceN } from './road.ts';

/** A rider brakes no harder than this for an ordinary halt [m/s²]. Common practice, no source. */
export const easyStopMps2 = 1;

/** Resistance the motor sees while the pedal is released [Ω]; null where it turns freely or feeds the pack. */
export function releaseOhm(train: DriveTrain): number | null {
  const { brakes } = train;
  if (brakes.onRelease === 'short') return 0;
  if (brakes.onRelease === 'resistor') return brakes.resistor?.resistanceOhm ?? null;
  return null;
}

/** Pedal released: the electric brake of the plan, and the service brake for what it leaves of an easy stop. */
export function release(
  step: MotionStep,
  train: DriveTrain,
  command: MotionCommand,
  limits: CircuitLimits,
  speedMps: number,
): void {
  const { point } = step;
  const { brakes } = train;
  const ohm = releaseOhm(train);
  if (brakes.onRelease === 'regeneration')
    regenerate(point, command.gear, limits, brakes.regenerationLimitA ?? limits.motorA, speedMps);
  else if (ohm === null) idle(point, command.gear, speedMps);
  else brakeThrough(point, command.gear, limits, ohm, speedMps);
  if (brakes.serviceDecelerationMps2 === null || speedMps <= 0) return;
  if (!command.released && speedMps < command.targetMps * 1.1) return;
  const wantedN = command.road.inertiaKg * Math.min(brakes.serviceDecelerationMps2, easyStopMps2);
  step.mechanicalBrakeN = Math.max(0, wantedN + point.forceN - roadForceN(command.road, speedMps));
}

/**
 * Keeps the target speed: the current whose push equals the road's resistance, or downhill the brakes that take the push.
 *
 * @returns `weak` when voltage, limits or grip do not suffice, `pushed` when the brakes do not: the dynamics then decide
 */
export function hold(
  step: MotionStep,
  train: DriveTrain,
  command: MotionCommand,
  limits: CircuitLimits,
  busV: number,
  speedMps: number,
): 'held' | 'weak' | 'pushed' {
  const { road, gear } = command;
  const { point } = step;
  const k = gear.forcePerA;
  const resistN = roadForceN(road, speedMps);
  const neededA =
    resistN >= 0
      ? resistN / (gear.efficiency * k) + gear.frictionA
      : gear.frictionA + (resistN * gear.efficiency) / k;
  idle(point, gear, speedMps);
  if (neededA >= 0) {
    const motorV = neededA * limits.resistanceOhm + k * speedMps;
    if (motorV > command.duty * busV || neededA > limits.motorA || resistN > limits.gripN)
      return 'weak';
    if (neededA * motorV > train.controllerEfficiency * busV * limits.batteryA) return 'weak';
    point.regime = 'hold';
    point.motorA = neededA;
    point.forceN = resistN;
    return 'held';
  }
  const { brakes } = train;
  const ohm = releaseOhm(train);
  if (brakes.onRelease === 'regeneration') {
    regenerate(
      point,
      gear,
      limits,
      Math.min(-neededA, brakes.regenerationLimitA ?? limits.motorA),
      speedMps,
    );
  } else if (ohm !== null) {
    brakeThrough(point, gear, limits, ohm, speedMps);
    // Tapped rather than held when it brakes harder than needed.
    if (point.motorA < neededA) point.motorA = neededA;
  }
  point.motorSlope = 0;
  point.forceSlope = 0;
  point.forceN = (k * (point.motorA - gear.frictionA)) / gear.efficiency;
  const leftN = point.forceN - resistN;
  if (leftN > 1e-9 * road.inertiaKg && brakes.serviceDecelerationMps2 === null) return 'pushed';
  step.mechanicalBrakeN = Math.max(0, leftN);
  return 'held';
}
