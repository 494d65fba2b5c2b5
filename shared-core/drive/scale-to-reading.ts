import { packMassKg } from '../pack/pack-mass.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { SurfaceId } from '../plan/schema/surface.ts';
import { driveTrain, gearById } from './drive-train.ts';
import { roadForceN, roadOf } from './road.ts';
import { packSupply } from './supply.ts';

/** A clamp-meter reading at an even speed. */
export interface CruiseReading {
  readonly surface: SurfaceId;
  readonly gradePercent: number;
  readonly gearId: string | null;
  readonly speedKmh: number;
  /** Pack current for the motors, accessories off [A]. */
  readonly packA: number;
  /** Bus voltage read with it [V]; null: the pack at half charge under that current. */
  readonly busV: number | null;
}

export type ReadingScale =
  | {
      readonly ok: true;
      /** New road resistance against the table [%]. */
      readonly resistancePercent: number;
      /** What the model says for the reading as it stands [A]. */
      readonly modelA: number;
    }
  | {
      readonly ok: false;
      readonly reason: 'not-computable' | 'too-little-current' | 'out-of-range';
    };

/**
 * Road resistance that makes the model draw the current read: pack power through controller and winding to the push at the
 * wheels, less slope and air, over the table's rolling resistance. It takes up whatever the table, the gear efficiency and
 * the masses leave open.
 *
 * `eta V I = Im (Im R + k v)`, `F = eta_g k (Im - I0)`. Source: derived.
 */
export function scaleToReading(
  machine: Machine,
  option: Option,
  reading: CruiseReading,
): ReadingScale {
  const failed = (
    reason: 'not-computable' | 'too-little-current' | 'out-of-range',
  ): ReadingScale => ({ ok: false, reason });
  const { drive } = machine;
  if (drive === null) return failed('not-computable');
  const built = driveTrain(
    { ...drive, resistancePercent: 100 },
    option.controller ?? machine.controller,
    packMassKg(option.pack) ?? 0,
  );
  if (!built.ok) return failed('not-computable');
  const { train } = built;
  const gear = gearById(train, reading.gearId);
  const road = roadOf(train, reading.surface, reading.gradePercent, 0);
  const supply = packSupply(option, machine, 0.5);
  const busV = reading.busV ?? supply.emfV - supply.resistanceOhm * reading.packA;
  const speedMps = reading.speedKmh / 3.6;
  const emfV = gear.forcePerA * speedMps;
  const motorCurrent = (powerW: number) =>
    (Math.sqrt(emfV ** 2 + 4 * gear.resistanceOhm * powerW) - emfV) / (2 * gear.resistanceOhm);
  const currentA = motorCurrent(train.controllerEfficiency * busV * reading.packA);
  const pushN = gear.efficiency * gear.forcePerA * (currentA - gear.frictionA);
  if (pushN <= 0) return failed('too-little-current');
  const besidesN = roadForceN(road, speedMps) - road.rollingN;
  const resistancePercent = (100 * (pushN - besidesN)) / road.rollingN;
  if (!(resistancePercent >= 10 && resistancePercent <= 1000)) return failed('out-of-range');
  const nowN = besidesN + (road.rollingN * drive.resistancePercent) / 100;
  const nowA = Math.max(0, nowN / (gear.efficiency * gear.forcePerA) + gear.frictionA);
  const modelA = (nowA * (nowA * gear.resistanceOhm + emfV)) / (train.controllerEfficiency * busV);
  return { ok: true, resistancePercent, modelA };
}
