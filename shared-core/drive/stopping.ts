import { DriveMotion } from './drive-motion.ts';
import type { MotionCommand } from './drive-motion.ts';
import { releaseOhm } from './drive-regimes.ts';
import { newDriveTotals } from './drive-totals.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import { brakeThrough, newOperatingPoint, regenerate } from './operating-point.ts';
import type { Road } from './road.ts';
import { roadForceN } from './road.ts';

/** What happens when the pedal is let go at a speed, the service brake left alone. */
export interface Stopping {
  readonly decelerationMps2: number;
  readonly peakMotorA: number;
  readonly eachMotorPeakA: number;
  /** Null where it does not come to rest. */
  readonly timeS: number | null;
  readonly distanceM: number | null;
  readonly motionJ: number;
  readonly windingJ: number;
  readonly resistorJ: number;
  readonly resistorPeakW: number;
  /** Speed it keeps [m/s]; 0 where it comes to rest. */
  readonly creepMps: number;
}

const longestS = 600;
/** Below this the machine counts as standing [m/s]: a twentieth of walking pace. */
const standingMps = 0.05;

/**
 * Coasting or braking electrically from a speed to a stand, with rolling resistance, friction and slope, integrated with
 * the same motion as an outing.
 *
 * @param speedMps above 0
 * @param busV a voltage for the regeneration into the pack [V]
 */
export function stopping(
  train: DriveTrain,
  gear: GearTrain,
  road: Road,
  speedMps: number,
  busV: number,
): Stopping {
  const electric: DriveTrain = {
    ...train,
    brakes: { ...train.brakes, serviceDecelerationMps2: null, parking: 'none' },
  };
  const motion = new DriveMotion(electric, 20, busV);
  motion.state.speedMps = speedMps;
  motion.state.windingC = 20;
  const command: MotionCommand = { road, gear, duty: 0, targetMps: Infinity, released: true };
  const totals = newDriveTotals(20);
  const motionJ = 0.5 * road.inertiaKg * speedMps ** 2;
  let timeS = 0;
  let firstA = 0;
  let deceleration = 0;
  let before = Infinity;
  while (timeS < longestS && motion.state.speedMps > standingMps) {
    if (timeS > 5 && Math.abs(before - motion.state.speedMps) < 1e-7) break;
    before = motion.state.speedMps;
    const stepS = Math.min(1, motion.longestStepS(command));
    if (timeS === 0) {
      firstA = motion.motorA();
      deceleration = initialDeceleration(electric, gear, road, speedMps);
    }
    motion.advance(command, stepS, busV, 0, totals);
    timeS += stepS;
    const after = motion.state.speedMps;
    // The last step runs past the moment of standing; what is too long is taken back along a straight line.
    if (after < standingMps) timeS -= (stepS * (standingMps - after)) / (before - after);
  }
  const rests = motion.state.speedMps <= standingMps;
  const ohm = releaseOhm(train) ?? 0;
  return {
    decelerationMps2: deceleration,
    peakMotorA: Math.abs(firstA),
    eachMotorPeakA: Math.abs(firstA) / gear.branches,
    timeS: rests ? timeS : null,
    distanceM: rests ? totals.distanceM : null,
    motionJ,
    windingJ: totals.windingJ,
    resistorJ: totals.electricBrakeJ,
    resistorPeakW: firstA ** 2 * ohm,
    creepMps: rests ? 0 : motion.state.speedMps,
  };
}

/** First deceleration when the pedal is let go [m/s²], negative where the slope pushes harder than the brake. */
function initialDeceleration(
  train: DriveTrain,
  gear: GearTrain,
  road: Road,
  speedMps: number,
): number {
  const point = newOperatingPoint();
  const limits = {
    motorA: train.motorLimitA,
    batteryA: Infinity,
    gripN: road.gripN,
    resistanceOhm: gear.resistanceOhm,
  };
  const ohm = releaseOhm(train);
  if (train.brakes.onRelease === 'regeneration')
    regenerate(point, gear, limits, train.brakes.regenerationLimitA ?? train.motorLimitA, speedMps);
  else brakeThrough(point, gear, limits, ohm ?? Infinity, speedMps);
  return (roadForceN(road, speedMps) - point.forceN) / road.inertiaKg;
}
