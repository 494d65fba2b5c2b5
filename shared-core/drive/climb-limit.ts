import type { SurfaceId } from '../plan/schema/surface.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import { roadForceN, roadOf } from './road.ts';
import { drivePoint } from './steady-point.ts';
import type { Supply } from './supply.ts';

/** Steepest grade looked for [%]: 100 % is 45 degrees. */
const steepestPercent = 100;

/**
 * Steepest grade the machine moves off on at full throttle, by current limits, voltage and grip.
 *
 * @returns grade [%]; 0 where it does not even start on the level
 */
export function climbLimitPercent(
  train: DriveTrain,
  gear: GearTrain,
  supply: Supply,
  surface: SurfaceId,
): number {
  const climbs = (gradePercent: number): boolean => {
    const road = roadOf(train, surface, gradePercent, 0);
    const point = drivePoint(train, gear, road, supply, gear.dutyShare, 0);
    return point !== null && point.forceN > roadForceN(road, 0);
  };
  if (!climbs(0)) return 0;
  if (climbs(steepestPercent)) return steepestPercent;
  let low = 0;
  let high = steepestPercent;
  for (let round = 0; round < 30; round += 1) {
    const middle = 0.5 * (low + high);
    if (climbs(middle)) low = middle;
    else high = middle;
  }
  return low;
}
