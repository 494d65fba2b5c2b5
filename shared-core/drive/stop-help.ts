import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import { packMassKg } from '../pack/pack-mass.ts';
import { sizeBrakeResistor } from './brake-sizing.ts';
import type { BrakeSizing } from './brake-sizing.ts';
import { releaseOhm } from './drive-regimes.ts';
import { driveTrain, gearById } from './drive-train.ts';
import { newBrakeResistor } from '../plan/drive-defaults.ts';
import { descent, hardestGear, resistorHeat, settledRiseK } from './resistor-heat.ts';
import type { ResistorHeat } from './resistor-heat.ts';
import { roadForceN, roadOf } from './road.ts';
import { stopping } from './stopping.ts';
import type { Stopping } from './stopping.ts';
import { steadyPoint } from './steady-point.ts';
import { packSupply } from './supply.ts';

const usualResistor = newBrakeResistor();

/** A stop and a descent as the plan's brakes make them. */
export interface PlannedStop {
  readonly stop: Stopping;
  /** Heat of the plan's resistor; null without one, or without its rating. */
  readonly heat: ResistorHeat | null;
  /** Creeping speed down the steepest grade; 0 where it holds or no grade is stated, infinite where nothing brakes. */
  readonly creepKmh: number;
  /** Settled rise of the plan's resistor on that descent [K]; null as `heat`. */
  readonly descentK: number | null;
}

/** What the sizing rests on, for its working. */
export interface StopBasis {
  readonly massKg: number;
  readonly rollingN: number;
  /** k: volts per m/s, newtons per ampere before gear loss. */
  readonly forcePerA: number;
  readonly windingOhm: number;
  readonly frictionA: number;
  readonly efficiency: number;
}

/** What the stopping helper shows for a gear and a speed. */
export interface StopHelp {
  readonly gearId: string;
  readonly speedKmh: number;
  readonly basis: StopBasis;
  readonly planned: PlannedStop;
  readonly sizing: BrakeSizing;
  /** Heat of a resistor of the standard value and the rating found; null where none was found. */
  readonly sizedHeat: ResistorHeat | null;
  /** Creeping speed down the steepest grade with the standard value; 0 where it holds or no grade is stated. */
  readonly creepKmh: number;
}

/**
 * Sizes a brake resistor for a machine as planned.
 *
 * @param gearId null: the gear in which the electric brake is hardest
 * @param speedKmh null: the top speed of that gear on the level
 * @param decelerationMps2 wished, above 0
 * @param stopsPerHour 0 or more
 * @returns null where the drive cannot be computed
 */
export function stopHelp(
  machine: Machine,
  option: Option,
  gearId: string | null,
  speedKmh: number | null,
  decelerationMps2: number,
  stopsPerHour: number,
): StopHelp | null {
  const { drive } = machine;
  if (drive === null) return null;
  const built = driveTrain(
    drive,
    option.controller ?? machine.controller,
    packMassKg(option.pack) ?? 0,
  );
  if (!built.ok) return null;
  const { train } = built;
  const gear = gearId === null ? hardestGear(train) : gearById(train, gearId);
  const level = roadOf(train, drive.steepestSurface, 0, 0);
  const topKmh =
    (steadyPoint(train, gear, level, packSupply(option, machine), gear.dutyShare)?.speedMps ?? 0) *
    3.6;
  const fromKmh = speedKmh ?? Math.max(0.5, Math.round(topKmh * 10) / 10);
  const grade = drive.steepestGradePercent ?? 0;
  const down = roadOf(train, drive.steepestSurface, -grade, 0);
  const sizing = sizeBrakeResistor(
    train,
    gear,
    level,
    fromKmh / 3.6,
    decelerationMps2,
    stopsPerHour,
    grade > 0 ? down : null,
  );
  const supply = packSupply(option, machine);
  const stop = stopping(train, gear, level, fromKmh / 3.6, supply.emfV);
  const resistor = drive.brakes.onRelease === 'resistor' ? drive.brakes.resistor : null;
  const roll = descent(gear, down, releaseOhm(train) ?? Infinity);
  const sized = sizing.ok
    ? { ...usualResistor, resistanceOhm: sizing.standardOhm, ratedPowerW: sizing.ratedW }
    : null;
  return {
    basis: {
      massKg: level.inertiaKg,
      rollingN: roadForceN(level, fromKmh / 3.6),
      forcePerA: gear.forcePerA,
      windingOhm: gear.resistanceOhm,
      frictionA: gear.frictionA,
      efficiency: gear.efficiency,
    },
    planned: {
      stop,
      heat: resistor === null ? null : resistorHeat(resistor, stop.resistorJ, stopsPerHour),
      creepKmh: grade > 0 ? roll.creepMps * 3.6 : 0,
      descentK: resistor === null || grade <= 0 ? null : settledRiseK(resistor, roll.resistorW),
    },
    sizedHeat:
      sized === null || !sizing.ok
        ? null
        : resistorHeat(sized, sizing.stop.resistorJ, stopsPerHour),
    gearId: gear.id,
    speedKmh: fromKmh,
    sizing,
    creepKmh: sizing.ok && grade > 0 ? descent(gear, down, sizing.standardOhm).creepMps * 3.6 : 0,
  };
}
