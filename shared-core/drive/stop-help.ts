import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import { packMassKg } from '../pack/pack-mass.ts';
import { sizeBrakeResistor } from './brake-sizing.ts';
import type { BrakeSizing } from './brake-sizing.ts';
import { driveTrain, gearById } from './drive-train.ts';
import { descent, hardestGear } from './resistor-heat.ts';
import { roadOf } from './road.ts';
import { steadyPoint } from './steady-point.ts';
import { packSupply } from './supply.ts';

/** What the stopping helper shows for a gear and a speed. */
export interface StopHelp {
  readonly gearId: string;
  readonly speedKmh: number;
  readonly sizing: BrakeSizing;
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
  const sizing = sizeBrakeResistor(
    train,
    gear,
    level,
    fromKmh / 3.6,
    decelerationMps2,
    stopsPerHour,
  );
  const grade = drive.steepestGradePercent ?? 0;
  const down = roadOf(train, drive.steepestSurface, -grade, 0);
  return {
    gearId: gear.id,
    speedKmh: fromKmh,
    sizing,
    creepKmh: sizing.ok && grade > 0 ? descent(gear, down, sizing.standardOhm).creepMps * 3.6 : 0,
  };
}
