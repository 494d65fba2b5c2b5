import type { LoadTerms } from '../run/load-source.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';

/** What sets the motor current at this moment. */
export type Regime =
  | 'idle'
  | 'duty'
  | 'motor-limit'
  | 'battery-limit'
  | 'slip'
  | 'hold'
  | 'short-or-resistor'
  | 'regeneration';

/**
 * Motor circuit at one speed, with its slopes over speed so that a step can be integrated exactly while they hold.
 * A mutable record: the simulation fills the same one again and again.
 */
export interface OperatingPoint {
  regime: Regime;
  /** Current of the motor group [A], negative when it brakes, at `speedMps`. */
  motorA: number;
  /** Its change with speed [A s/m]. */
  motorSlope: number;
  /** Push of the motors at the tread after gear loss [N]; negative when they brake. */
  forceN: number;
  forceSlope: number;
  /** Speed of the tread [m/s]; above the machine's when the wheels slip. */
  treadMps: number;
  duty: number;
  speedMps: number;
}

export function newOperatingPoint(): OperatingPoint {
  return {
    regime: 'idle',
    motorA: 0,
    motorSlope: 0,
    forceN: 0,
    forceSlope: 0,
    treadMps: 0,
    duty: 0,
    speedMps: 0,
  };
}

/** What bounds the motor circuit now: limits may be reduced while the controller limps. */
export interface CircuitLimits {
  motorA: number;
  batteryA: number;
  gripN: number;
  /** Winding resistance of the group at its present temperature [Ω]. */
  resistanceOhm: number;
}

/**
 * Current and force under a duty: the least of what voltage, motor limit, battery limit and grip allow.
 *
 * Voltage: `I = (d V - k v)/R`. Battery limit: `I (I R + k v) = eta V Ib`. Grip: `eta_g k (I - I0) = F_grip`; the tread then
 * runs ahead until the back EMF has taken the rest of the voltage. A chopper passes no current back: below zero it is idle.
 */
export function pull(
  point: OperatingPoint,
  train: DriveTrain,
  gear: GearTrain,
  limits: CircuitLimits,
  busV: number,
  duty: number,
  speedMps: number,
): void {
  const k = gear.forcePerA;
  const ohm = limits.resistanceOhm;
  point.duty = duty;
  point.speedMps = speedMps;
  point.treadMps = speedMps;
  let current = (duty * busV - k * speedMps) / ohm;
  let slope = -k / ohm;
  point.regime = 'duty';
  if (current <= 0) {
    idle(point, gear, speedMps);
    point.duty = duty;
    return;
  }
  if (current > limits.motorA) {
    current = limits.motorA;
    slope = 0;
    point.regime = 'motor-limit';
  }
  const emfV = k * speedMps;
  const powerW = train.controllerEfficiency * busV * limits.batteryA;
  if (current * (current * ohm + emfV) > powerW) {
    const root = Math.sqrt(emfV * emfV + 4 * ohm * powerW);
    current = (root - emfV) / (2 * ohm);
    slope = (k * (emfV / root - 1)) / (2 * ohm);
    point.regime = 'battery-limit';
  }
  const gripA = limits.gripN / (gear.efficiency * k) + gear.frictionA;
  if (current > gripA) {
    current = gripA;
    slope = 0;
    const motorV = Math.min(duty * busV, powerW / current);
    point.treadMps = Math.max(speedMps, (motorV - current * ohm) / k);
    point.regime = 'slip';
  }
  point.motorA = current;
  point.motorSlope = slope;
  force(point, gear);
}

/** Motor switched off and turning freely: only its own friction brakes. */
export function idle(point: OperatingPoint, gear: GearTrain, speedMps: number): void {
  point.regime = 'idle';
  point.duty = 0;
  point.motorA = 0;
  point.motorSlope = 0;
  point.speedMps = speedMps;
  point.treadMps = speedMps;
  force(point, gear);
}

/** Terminals joined through `brakeOhm` (0: shorted): `I = -k v/(R + Rb)`. */
export function brakeThrough(
  point: OperatingPoint,
  gear: GearTrain,
  limits: CircuitLimits,
  brakeOhm: number,
  speedMps: number,
): void {
  point.regime = 'short-or-resistor';
  point.duty = 0;
  point.motorSlope = -gear.forcePerA / (limits.resistanceOhm + brakeOhm);
  point.motorA = point.motorSlope * speedMps;
  point.speedMps = speedMps;
  point.treadMps = speedMps;
  force(point, gear);
}

/** Current pushed back into the pack: the limit, or less where the back EMF no longer drives it: `|I| <= k v/(2 R)` keeps the most power. */
export function regenerate(
  point: OperatingPoint,
  gear: GearTrain,
  limits: CircuitLimits,
  limitA: number,
  speedMps: number,
): void {
  const largestA = (gear.forcePerA * speedMps) / (2 * limits.resistanceOhm);
  point.regime = 'regeneration';
  point.duty = 0;
  point.motorSlope = largestA < limitA ? -gear.forcePerA / (2 * limits.resistanceOhm) : 0;
  point.motorA = -Math.min(limitA, largestA);
  point.speedMps = speedMps;
  point.treadMps = speedMps;
  force(point, gear);
}

/** Push at the tread from the shaft torque `k (I - I0)`: gears take their share driving and add it braking. */
function force(point: OperatingPoint, gear: GearTrain): void {
  const shaftN = gear.forcePerA * (point.motorA - gear.frictionA);
  if (shaftN >= 0) {
    point.forceN = shaftN * gear.efficiency;
    point.forceSlope = gear.forcePerA * point.motorSlope * gear.efficiency;
  } else if (point.speedMps > 0) {
    point.forceN = shaftN / gear.efficiency;
    point.forceSlope = (gear.forcePerA * point.motorSlope) / gear.efficiency;
  } else {
    point.forceN = 0;
    point.forceSlope = 0;
  }
}

/**
 * Writes what the circuit takes from the bus while the speed averages `meanMps`. Under a duty it is a conductance less a
 * constant current, at the motor limit a constant power, at the battery limit a constant current.
 */
export function busTerms(
  into: LoadTerms,
  point: OperatingPoint,
  train: DriveTrain,
  gear: GearTrain,
  limits: CircuitLimits,
  meanMps: number,
): void {
  into.currentA = 0;
  into.powerW = 0;
  into.conductanceS = 0;
  const k = gear.forcePerA;
  const ohm = limits.resistanceOhm;
  const share = 1 / train.controllerEfficiency;
  switch (point.regime) {
    case 'duty':
      into.conductanceS = (point.duty * point.duty * share) / ohm;
      into.currentA = (-point.duty * k * meanMps * share) / ohm;
      break;
    case 'motor-limit':
    case 'hold':
      into.powerW = point.motorA * (point.motorA * ohm + k * meanMps) * share;
      break;
    case 'battery-limit':
      into.currentA = limits.batteryA;
      break;
    case 'slip':
      into.powerW = point.motorA * (point.motorA * ohm + k * point.treadMps) * share;
      break;
    case 'regeneration':
      into.powerW =
        (point.motorA + point.motorSlope * (meanMps - point.speedMps)) *
        ((point.motorA + point.motorSlope * (meanMps - point.speedMps)) * ohm + k * meanMps) *
        train.controllerEfficiency;
      break;
    case 'idle':
    case 'short-or-resistor':
      break;
  }
}
