import { packMassKg } from '../pack/pack-mass.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import { climbLimitPercent } from './climb-limit.ts';
import type { DriveProblem } from './drive-problem.ts';
import { driveTrain } from './drive-train.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import { roadOf } from './road.ts';
import { drivePoint, steadyPoint } from './steady-point.ts';
import type { DrivePoint } from './steady-point.ts';
import { packSupply } from './supply.ts';
import type { Supply } from './supply.ts';

/** What one option's voltage makes of one gear, full throttle, pack full. */
export interface GearView {
  readonly gearId: string;
  readonly gearName: string;
  /** On the level, on the surface stated for the steepest grade. */
  readonly topSpeedKmh: number;
  readonly levelBatteryA: number;
  /** Held shaft at the first moment of a start. */
  readonly startMotorA: number;
  readonly startEachMotorA: number;
  readonly startBatteryA: number;
  readonly startForceN: number;
  readonly startSetBy: DrivePoint['regime'];
  readonly climbLimitPercent: number;
  /** Speed up the steepest grade; null where no grade is stated, 0 where it does not climb. */
  readonly gradeSpeedKmh: number | null;
  readonly gradeEachMotorW: number | null;
  /** Shaft power against the motor's rating [%]; null without a grade or a rating. */
  readonly gradeRatedPercent: number | null;
  /** Voltage at each motor at full duty over its rated voltage [%]. */
  readonly voltagePercent: number;
}

/** A figure that is missing, and the plan field that would give it. */
export interface DriveQuestion {
  readonly path: string;
  readonly about:
    | 'pack-mass'
    | 'rated-power'
    | 'steepest-grade'
    | 'current-limit'
    | 'motor-heat'
    | 'speed-limit';
}

export type VoltageView =
  | {
      readonly ok: true;
      readonly optionId: string;
      readonly optionName: string;
      /** Of the full pack at rest. */
      readonly fullV: number;
      readonly gears: readonly GearView[];
      readonly questions: readonly DriveQuestion[];
    }
  | ({ readonly ok: false; readonly optionId: string; readonly optionName: string } & DriveProblem);

/**
 * What the option's voltage does to speed, current, thrust, climbing and the motors' load.
 *
 * Where a figure is missing the answer that needs it is null and a question stands instead.
 */
export function voltageView(machine: Machine, option: Option): VoltageView {
  const named = { optionId: option.id, optionName: option.name };
  if (machine.drive === null) {
    return {
      ok: false,
      ...named,
      path: 'machine.drive',
      problem: 'the machine has no drive',
      remedy: 'Describe motors, gears and masses.',
    };
  }
  const controller = option.controller ?? machine.controller;
  const massKg = packMassKg(option.pack);
  const built = driveTrain(machine.drive, controller, massKg ?? 0);
  if (!built.ok) return { ...built, ...named };
  const supply = packSupply(option, machine);
  const { drive } = machine;
  const questions: DriveQuestion[] = [];
  const ask = (missing: boolean, about: DriveQuestion['about'], path: string) => {
    if (missing) questions.push({ about, path });
  };
  ask(massKg === null, 'pack-mass', 'pack.block.massKg');
  ask(drive.motor.ratedPowerW === null, 'rated-power', 'machine.drive.motor.ratedPowerW');
  ask(drive.steepestGradePercent === null, 'steepest-grade', 'machine.drive.steepestGradePercent');
  ask(
    controller.motorCurrentLimitA === null && controller.batteryCurrentLimitA === null,
    'current-limit',
    'machine.controller.motorCurrentLimitA',
  );
  ask(built.train.heat === null, 'motor-heat', 'machine.drive.motor.ratedCurrentA');
  ask(drive.speedLimitKmh === null, 'speed-limit', 'machine.drive.speedLimitKmh');
  return {
    ok: true,
    ...named,
    fullV: supply.emfV,
    gears: built.train.gears.map((gear) => gearView(machine, built.train, gear, supply)),
    questions,
  };
}

function gearView(machine: Machine, train: DriveTrain, gear: GearTrain, supply: Supply): GearView {
  const drive = machine.drive!;
  const level = roadOf(train, drive.steepestSurface, 0, 0);
  const top = steadyPoint(train, gear, level, supply, gear.dutyShare);
  const start = drivePoint(train, gear, level, supply, gear.dutyShare, 0);
  const grade = drive.steepestGradePercent;
  const up =
    grade === null
      ? null
      : steadyPoint(
          train,
          gear,
          roadOf(train, drive.steepestSurface, grade, 0),
          supply,
          gear.dutyShare,
        );
  const rated = drive.motor.ratedPowerW;
  return {
    gearId: gear.id,
    gearName: gear.name,
    topSpeedKmh: (top?.speedMps ?? 0) * 3.6,
    levelBatteryA: top?.batteryA ?? 0,
    startMotorA: start?.motorA ?? 0,
    startEachMotorA: start?.eachMotorA ?? 0,
    startBatteryA: start?.batteryA ?? 0,
    startForceN: start?.forceN ?? 0,
    startSetBy: start?.regime ?? 'idle',
    climbLimitPercent: climbLimitPercent(train, gear, supply, drive.steepestSurface),
    gradeSpeedKmh: grade === null ? null : (up?.speedMps ?? 0) * 3.6,
    gradeEachMotorW: up?.shaftEachW ?? null,
    gradeRatedPercent: up === null || rated === null ? null : (100 * up.shaftEachW) / rated,
    voltagePercent:
      (100 * gear.dutyShare * supply.emfV) / gear.motorsInSeries / drive.motor.ratedVoltageV,
  };
}
