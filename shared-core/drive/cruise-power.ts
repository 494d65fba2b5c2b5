import { packMassKg } from '../pack/pack-mass.ts';
import type { DriveLoad } from '../plan/schema/leg-load.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import { driveTrain, gearById } from './drive-train.ts';
import { roadForceN, roadOf } from './road.ts';
import { steadyPoint } from './steady-point.ts';

/**
 * Power from the pack while a driven leg rolls evenly [W], starts and halts left out: for the drawing of an outing.
 *
 * @param busV voltage at the controller [V]
 * @returns 0 where the slope pushes; null where the drive cannot be computed
 */
export function cruisePowerW(
  machine: Machine,
  option: Option,
  load: DriveLoad,
  busV: number,
): number | null {
  if (machine.drive === null) return null;
  const built = driveTrain(
    machine.drive,
    option.controller ?? machine.controller,
    packMassKg(option.pack) ?? 0,
  );
  if (!built.ok) return null;
  const { train } = built;
  const gear = gearById(train, load.gearId);
  const road = roadOf(train, load.surface, load.gradePercent, load.headwindKmh, load.loadPercent);
  const supply = { emfV: busV, resistanceOhm: 0 };
  const duty =
    gear.dutyShare *
    (load.command.kind === 'throttle' ? train.dutyAt(load.command.throttlePercent) : 1);
  const free = steadyPoint(train, gear, road, supply, duty);
  const freeW = free === null ? 0 : busV * free.batteryA;
  if (load.command.kind === 'throttle' || free === null) return freeW;
  const speedMps = load.command.targetSpeedKmh / 3.6;
  if (speedMps >= free.speedMps) return freeW;
  const resistN = roadForceN(road, speedMps);
  if (resistN <= 0) return 0;
  const currentA = resistN / (gear.efficiency * gear.forcePerA) + gear.frictionA;
  return (
    (currentA * (currentA * gear.resistanceOhm + gear.forcePerA * speedMps)) /
    train.controllerEfficiency
  );
}
