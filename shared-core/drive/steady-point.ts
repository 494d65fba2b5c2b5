import type { LoadTerms } from '../run/load-source.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import { busTerms, newOperatingPoint, pull } from './operating-point.ts';
import type { Regime } from './operating-point.ts';
import type { Road } from './road.ts';
import { roadForceN } from './road.ts';
import type { Supply } from './supply.ts';
import { suppliedV } from './supply.ts';

/** The drive at one speed with the pedal held. */
export interface DrivePoint {
  readonly speedMps: number;
  readonly busV: number;
  readonly motorA: number;
  readonly eachMotorA: number;
  readonly batteryA: number;
  /** Push at the wheels [N]. */
  readonly forceN: number;
  /** What sets the current. */
  readonly regime: Regime;
  /** Power at the shaft of each motor [W]. */
  readonly shaftEachW: number;
  /** Heat in winding and friction of each motor [W]. */
  readonly heatEachW: number;
  /** Voltage at each motor [V]. */
  readonly motorEachV: number;
}

/**
 * Current, push and voltage at a speed, the supply's sag included.
 *
 * @param duty 0 to 1
 * @returns null where the supply collapses under the load
 */
export function drivePoint(
  train: DriveTrain,
  gear: GearTrain,
  road: Road,
  supply: Supply,
  duty: number,
  speedMps: number,
): DrivePoint | null {
  const point = newOperatingPoint();
  const limits = {
    motorA: train.motorLimitA,
    batteryA: train.batteryLimitA,
    gripN: road.gripN,
    resistanceOhm: gear.resistanceOhm,
  };
  const terms: LoadTerms = { currentA: 0, powerW: 0, conductanceS: 0 };
  let busV = supply.emfV;
  // What sets the current may change with the voltage it leaves; a few rounds settle it.
  for (let round = 0; round < 24; round += 1) {
    pull(point, train, gear, limits, busV, duty, speedMps);
    busTerms(terms, point, train, gear, limits, speedMps);
    const next = suppliedV(supply, terms);
    if (next === null) return null;
    if (Math.abs(next - busV) < 1e-9) break;
    busV = round < 8 ? next : 0.5 * (busV + next);
  }
  const omegaV = gear.forcePerA * point.treadMps;
  const eachA = point.motorA / gear.branches;
  const friction = omegaV * gear.frictionA;
  return {
    speedMps,
    busV,
    motorA: point.motorA,
    eachMotorA: eachA,
    batteryA: terms.currentA + terms.powerW / busV + terms.conductanceS * busV,
    forceN: point.forceN,
    regime: point.regime,
    shaftEachW: Math.max(0, omegaV * (point.motorA - gear.frictionA)) / train.motorCount,
    heatEachW: (point.motorA ** 2 * gear.resistanceOhm + friction) / train.motorCount,
    motorEachV: (point.motorA * gear.resistanceOhm + omegaV) / gear.motorsInSeries,
  };
}

/**
 * Speed at which push and resistance balance with the pedal held, by bisection.
 *
 * @returns the point at a stand (speed 0) where the machine does not move off; null where the supply collapses
 */
export function steadyPoint(
  train: DriveTrain,
  gear: GearTrain,
  road: Road,
  supply: Supply,
  duty: number,
): DrivePoint | null {
  const standing = drivePoint(train, gear, road, supply, duty, 0);
  if (standing === null || standing.forceN <= roadForceN(road, 0)) return standing;
  let low = 0;
  let high = (duty * supply.emfV) / gear.forcePerA + 0.01;
  for (let round = 0; round < 50; round += 1) {
    const middle = 0.5 * (low + high);
    const point = drivePoint(train, gear, road, supply, duty, middle);
    if (point !== null && point.forceN > roadForceN(road, middle)) low = middle;
    else high = middle;
  }
  return drivePoint(train, gear, road, supply, duty, 0.5 * (low + high));
}
