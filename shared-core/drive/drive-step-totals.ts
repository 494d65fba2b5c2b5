import type { DriveMotion, MotionCommand } from './drive-motion.ts';
import type { MotionStep } from './motion-step.ts';
import { releaseOhm } from './drive-regimes.ts';
import type { DriveTotals } from './drive-totals.ts';
import type { CircuitLimits } from './operating-point.ts';

/**
 * Adds one step to the totals. Current runs along a straight line over speed, so the means of its square and of its product
 * with speed follow from the mean and the variance of the speed.
 */
export function addStep(
  totals: DriveTotals,
  motion: DriveMotion,
  command: MotionCommand,
  step: MotionStep,
  limits: CircuitLimits,
  stepS: number,
  busV: number,
  currentA: number,
): void {
  const { train } = motion;
  const { gear, road } = command;
  const { point } = step;
  const { before, mean, after } = step;
  const distance = mean * stepS;
  const middle = 1.5 * mean - 0.25 * (before + after);
  const variance = step.holding
    ? 0
    : Math.max(0, (before * before + 4 * middle * middle + after * after) / 6 - mean * mean);
  const slope = point.motorSlope;
  const current = point.motorA + slope * (mean - before);
  const square = current * current + slope * slope * variance;
  const k = gear.forcePerA;
  // While slipping the tread runs ahead of the machine at its own even speed.
  const slipping = point.regime === 'slip';
  const tread = slipping ? point.treadMps : mean;
  const currentSpeed = slipping ? current * tread : current * mean + slope * variance;

  const windingJ = square * limits.resistanceOhm * stepS;
  const frictionJ = mean > 0 || slipping ? k * gear.frictionA * tread * stepS : 0;
  const shaftJ = k * currentSpeed * stepS - frictionJ;
  // The push is a straight line too: its work by the mean and the covariance with the speed.
  const pushJ =
    (point.forceN + point.forceSlope * (mean - before)) * distance +
    point.forceSlope * variance * stepS;
  const slipJ = slipping ? point.forceN * (tread - mean) * stepS : 0;
  totals.windingJ += windingJ;
  totals.motorFrictionJ += frictionJ;
  totals.lossJ = windingJ + frictionJ;
  totals.gearJ += shaftJ - pushJ - slipJ;
  totals.slipJ += slipJ;
  totals.rollingJ += road.rollingN * distance;
  totals.climbingJ += road.climbN * distance;
  const airMps = mean + road.windMps;
  totals.airJ += road.airNs2PerM2 * airMps * Math.abs(airMps) * distance;
  totals.mechanicalBrakeJ += step.mechanicalBrakeN * distance;

  if (point.regime === 'short-or-resistor') {
    const brakeJ = square * (releaseOhm(train) ?? 0) * stepS;
    totals.electricBrakeJ += brakeJ;
    if (command.released) totals.stopJ += brakeJ;
    // What a tapped or shorted circuit turns over beyond winding and resistor heats the winding as well.
    if (step.holding)
      totals.electricBrakeJ += Math.max(0, -k * currentSpeed * stepS - windingJ - brakeJ);
  } else {
    const motorJ = windingJ + k * currentSpeed * stepS;
    totals.controllerJ +=
      motorJ >= 0
        ? motorJ * (1 / train.controllerEfficiency - 1)
        : motorJ * (train.controllerEfficiency - 1);
  }
  totals.fromPackJ += busV * currentA * stepS;

  totals.timeS += stepS;
  totals.distanceM += distance;
  if (mean > 0.01) totals.rollingS += stepS;
  if (slipping) totals.slipS += stepS;
  if (step.rollsBack) totals.rollsBackS += stepS;
  if (step.pulling && step.rampDone && before === 0 && after === 0) totals.stalledS += stepS;
  if (step.pulling && !step.holding && command.targetMps < Infinity && step.accelerationMps2 < 0.02)
    totals.belowTargetS += stepS;
  if (shaftJ > 0) {
    totals.pullingS += stepS;
    totals.shaftJ += shaftJ;
  }
  totals.topMps = Math.max(totals.topMps, after);
  totals.motorSquareA2s += square * stepS;
  totals.eachMotorSquareA2s += (square * stepS) / (gear.branches * gear.branches);
  totals.batterySquareA2s += currentA * currentA * stepS;
  totals.batteryPeakA = Math.max(totals.batteryPeakA, currentA);
  if (currentA < 0) totals.returnedAs -= currentA * stepS;
  // The mean, since the voltage is the step's mean as well: with the first speed it would give a current that never flowed.
  if (point.motorA >= 0) totals.motorPeakA = Math.max(totals.motorPeakA, current);
  else totals.brakePeakA = Math.max(totals.brakePeakA, -point.motorA);
}
