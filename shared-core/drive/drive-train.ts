import type { Brakes } from '../plan/schema/braking.ts';
import type { Controller } from '../plan/schema/controller.ts';
import type { Drive, Gear } from '../plan/schema/drive.ts';
import type { DriveProblem } from './drive-problem.ts';
import { fitMotor } from './motor-constants.ts';
import type { MotorConstants } from './motor-constants.ts';
import { motorHeat } from './motor-heat.ts';
import type { MotorHeat } from './motor-heat.ts';
import { throttleDuty } from './throttle-duty.ts';

/** One gear as seen from the controller's output: the motors joined, the wheel's speed instead of the shaft's. */
export interface GearTrain {
  readonly id: string;
  readonly name: string;
  /** k: volts per m/s and newtons per ampere at the wheel before gear loss. */
  readonly forcePerA: number;
  /** Winding resistance of the whole group at 20 °C [Ω]. */
  readonly resistanceOhm: number;
  /** No-load current of the whole group [A]. */
  readonly frictionA: number;
  readonly efficiency: number;
  /** Motors side by side: the group's current divided by it flows in each. */
  readonly branches: number;
  readonly motorsInSeries: number;
  readonly direction: Gear['direction'];
  /** Largest duty the controller gives in this position, up to 1. */
  readonly dutyShare: number;
}

/** The drive ready for computing: plain numbers, unknown limits infinite. */
export interface DriveTrain {
  /** With the whole load aboard [kg]. */
  readonly massKg: number;
  readonly payloadKg: number;
  /** What rotating parts add to the inertia: 1.05 for 5 %. */
  readonly inertiaFactor: number;
  readonly motorCount: number;
  readonly motor: MotorConstants;
  readonly heat: MotorHeat | null;
  readonly gears: readonly GearTrain[];
  readonly motorLimitA: number;
  readonly batteryLimitA: number;
  /** Motor power over battery power. */
  readonly controllerEfficiency: number;
  /** Duty gained per second; infinite for a step. */
  readonly rampUpPerS: number;
  readonly rampDownPerS: number;
  readonly reducesBelowV: number;
  readonly reducedShare: number;
  readonly dutyAt: (travelPercent: number) => number;
  readonly drivenShare: number;
  readonly tread: 'rubber' | 'plastic';
  readonly dragAreaM2: number;
  readonly resistanceShare: number;
  readonly brakes: Brakes;
}

export type DriveTrainResult =
  | { readonly ok: true; readonly train: DriveTrain }
  | ({ readonly ok: false } & DriveProblem);

/** Assumed where the plan does not know: half a second from zero to full duty, 96 % efficiency. Common practice, no source. */
export const assumedRampS = 0.5;
export const assumedControllerEfficiency = 0.96;
export const assumedDragAreaM2 = 0.5;

/**
 * Puts motors, gears, masses and controller together.
 *
 * @param drive the plan's drive section
 * @param controller of the option, with its motor control (null: a PWM controller with assumed ramp and efficiency)
 * @param packMassKg mass of the option's pack, 0 or more [kg]
 * @returns the train, or the field that is missing or impossible
 */
export function driveTrain(
  drive: Drive,
  controller: Controller,
  packMassKg: number,
): DriveTrainResult {
  const fit = fitMotor(drive.motor);
  if (!fit.ok)
    return {
      ok: false,
      path: `machine.drive.motor.${fit.field}`,
      problem: fit.problem,
      remedy: fit.remedy,
    };
  const uneven = drive.gears.findIndex((gear) => drive.motorCount % gear.motorsInSeries !== 0);
  if (uneven >= 0) {
    return {
      ok: false,
      path: `machine.drive.gears.${uneven}.motorsInSeries`,
      problem: `${drive.motorCount} motors cannot be joined ${drive.gears[uneven]!.motorsInSeries} in series`,
      remedy: 'Give a number that divides the number of motors.',
    };
  }
  const { masses, wheel } = drive;
  const massKg = masses.machineKg + masses.riderKg + masses.payloadKg + packMassKg;
  const { control } = controller;
  const isSwitch = control?.kind === 'switch';
  return {
    ok: true,
    train: {
      massKg,
      payloadKg: masses.payloadKg,
      inertiaFactor: 1 + masses.rotatingPercent / 100,
      motorCount: drive.motorCount,
      motor: fit.constants,
      heat: motorHeat(drive.motor, fit.constants),
      gears: drive.gears.map((gear) => gearTrain(gear, drive, fit.constants)),
      motorLimitA: controller.motorCurrentLimitA ?? Infinity,
      batteryLimitA: controller.batteryCurrentLimitA ?? Infinity,
      controllerEfficiency:
        control?.efficiencyPercent != null
          ? control.efficiencyPercent / 100
          : isSwitch
            ? 1
            : assumedControllerEfficiency,
      rampUpPerS: rampRate(isSwitch ? 0 : (control?.rampUpS ?? assumedRampS)),
      rampDownPerS: rampRate(isSwitch ? 0 : (control?.rampDownS ?? assumedRampS / 2)),
      reducesBelowV: control?.reducesBelowV ?? 0,
      reducedShare: (control?.reducedCurrentPercent ?? 100) / 100,
      dutyAt: dutyFunction(controller),
      drivenShare: wheel.drivenSharePercent / 100,
      tread: wheel.grip,
      dragAreaM2: wheel.dragAreaM2 ?? assumedDragAreaM2,
      resistanceShare: drive.resistancePercent / 100,
      brakes: drive.brakes,
    },
  };
}

function gearTrain(gear: Gear, drive: Drive, motor: MotorConstants): GearTrain {
  const branches = drive.motorCount / gear.motorsInSeries;
  const turnsPerMetre = gear.ratio / (drive.wheel.diameterMm / 2000);
  return {
    id: gear.id,
    name: gear.name,
    forcePerA: gear.motorsInSeries * motor.backEmfVs * turnsPerMetre,
    resistanceOhm: (gear.motorsInSeries * motor.resistanceOhm) / branches,
    frictionA: branches * motor.noLoadCurrentA,
    efficiency: gear.efficiencyPercent / 100,
    branches,
    motorsInSeries: gear.motorsInSeries,
    direction: gear.direction,
    dutyShare: gear.highestDutyPercent / 100,
  };
}

function dutyFunction(controller: Controller): (travelPercent: number) => number {
  const { control } = controller;
  if (control === null) return (travelPercent) => Math.min(1, Math.max(0, travelPercent / 100));
  if (control.kind === 'switch') return (travelPercent) => (travelPercent > 0 ? 1 : 0);
  return (travelPercent) => throttleDuty(control.throttle, travelPercent);
}

function rampRate(seconds: number): number {
  return seconds > 0 ? 1 / seconds : Infinity;
}

/** The gear with this id, or the first one. */
export function gearById(train: DriveTrain, id: string | null): GearTrain {
  return train.gears.find((gear) => gear.id === id) ?? train.gears[0]!;
}
