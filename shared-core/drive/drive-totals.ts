import type { DriveResult, DriveSeries } from './drive-result.ts';

/** Running sums of a run. Energies in joules. */
export interface DriveTotals {
  timeS: number;
  rollingS: number;
  slipS: number;
  stalledS: number;
  rollsBackS: number;
  belowTargetS: number;
  pullingS: number;
  distanceM: number;
  topMps: number;
  starts: number;
  motorSquareA2s: number;
  eachMotorSquareA2s: number;
  motorPeakA: number;
  batterySquareA2s: number;
  batteryPeakA: number;
  returnedAs: number;
  peakTemperatureC: number;
  shaftJ: number;
  brakePeakA: number;
  stopJ: number;
  largestStopJ: number;
  fromPackJ: number;
  controllerJ: number;
  windingJ: number;
  motorFrictionJ: number;
  gearJ: number;
  slipJ: number;
  rollingJ: number;
  climbingJ: number;
  airJ: number;
  electricBrakeJ: number;
  mechanicalBrakeJ: number;
  /** Heat of all motors in the last step. */
  lossJ: number;
}

export function newDriveTotals(ambientC: number): DriveTotals {
  return {
    timeS: 0,
    rollingS: 0,
    slipS: 0,
    stalledS: 0,
    rollsBackS: 0,
    belowTargetS: 0,
    pullingS: 0,
    distanceM: 0,
    topMps: 0,
    starts: 0,
    motorSquareA2s: 0,
    eachMotorSquareA2s: 0,
    motorPeakA: 0,
    batterySquareA2s: 0,
    batteryPeakA: 0,
    returnedAs: 0,
    peakTemperatureC: ambientC,
    shaftJ: 0,
    brakePeakA: 0,
    stopJ: 0,
    largestStopJ: 0,
    fromPackJ: 0,
    controllerJ: 0,
    windingJ: 0,
    motorFrictionJ: 0,
    gearJ: 0,
    slipJ: 0,
    rollingJ: 0,
    climbingJ: 0,
    airJ: 0,
    electricBrakeJ: 0,
    mechanicalBrakeJ: 0,
    lossJ: 0,
  };
}

const wh = (joules: number) => joules / 3600;

/** Turns the sums into the result of a run. `motionJ`: energy still in motion; `temperatureC` null without thermal data. */
export function driveResult(
  totals: DriveTotals,
  motionJ: number,
  temperatureC: number | null,
  motorCount: number,
  series: DriveSeries,
): DriveResult {
  const km = totals.distanceM / 1000;
  const rms = (squareA2s: number) => (totals.timeS > 0 ? Math.sqrt(squareA2s / totals.timeS) : 0);
  const sinksJ =
    totals.controllerJ +
    totals.windingJ +
    totals.motorFrictionJ +
    totals.gearJ +
    totals.slipJ +
    totals.rollingJ +
    totals.climbingJ +
    totals.airJ +
    totals.electricBrakeJ +
    totals.mechanicalBrakeJ +
    motionJ;
  return {
    distanceKm: km,
    averageSpeedKmh: totals.timeS > 0 ? (totals.distanceM / totals.timeS) * 3.6 : 0,
    rollingSpeedKmh: totals.rollingS > 0 ? (totals.distanceM / totals.rollingS) * 3.6 : 0,
    topSpeedKmh: totals.topMps * 3.6,
    startsDone: totals.starts,
    energyPerKmWh: km > 0.001 ? wh(totals.fromPackJ) / km : null,
    motorRmsA: rms(totals.motorSquareA2s),
    eachMotorRmsA: rms(totals.eachMotorSquareA2s),
    motorPeakA: totals.motorPeakA,
    batteryRmsA: rms(totals.batterySquareA2s),
    batteryPeakA: totals.batteryPeakA,
    motorPeakTemperatureC: temperatureC === null ? null : totals.peakTemperatureC,
    motorEndTemperatureC: temperatureC,
    motorShaftPowerW: totals.pullingS > 0 ? totals.shaftJ / totals.pullingS / motorCount : 0,
    slipS: totals.slipS,
    stalledS: totals.stalledS,
    rollsBackS: totals.rollsBackS,
    belowTargetS: totals.belowTargetS,
    returnedAh: totals.returnedAs / 3600,
    brakePeakA: totals.brakePeakA,
    largestStopJ: Math.max(totals.largestStopJ, totals.stopJ),
    ledger: {
      fromPackWh: wh(totals.fromPackJ),
      controllerLossWh: wh(totals.controllerJ),
      windingLossWh: wh(totals.windingJ),
      motorFrictionWh: wh(totals.motorFrictionJ),
      gearLossWh: wh(totals.gearJ),
      slipWh: wh(totals.slipJ),
      rollingWh: wh(totals.rollingJ),
      climbingWh: wh(totals.climbingJ),
      airWh: wh(totals.airJ),
      electricBrakeWh: wh(totals.electricBrakeJ),
      mechanicalBrakeWh: wh(totals.mechanicalBrakeJ),
      motionWh: wh(motionJ),
      closurePercent:
        totals.fromPackJ > 0 ? ((sinksJ - totals.fromPackJ) / totals.fromPackJ) * 100 : 0,
    },
    series,
  };
}
