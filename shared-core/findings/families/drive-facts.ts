import { driveTrain } from '../../drive/drive-train.ts';
import type { DriveTrain } from '../../drive/drive-train.ts';
import { packSupply } from '../../drive/supply.ts';
import type { Supply } from '../../drive/supply.ts';
import { voltageView } from '../../drive/voltage-view.ts';
import type { GearView } from '../../drive/voltage-view.ts';
import { packMassKg } from '../../pack/pack-mass.ts';
import type { Drive } from '../../plan/schema/drive.ts';
import type { FindingContext, OptionContext } from '../context.ts';

/** What the rules of the drive look at for one option. */
export interface DriveFacts {
  readonly drive: Drive;
  readonly train: DriveTrain;
  readonly supply: Supply;
  readonly gears: readonly GearView[];
}

/** Null where the drive is not described or cannot be computed; DRV-1 asks for what is missing. */
export function driveFacts(entry: OptionContext, { plan }: FindingContext): DriveFacts | null {
  const { machine } = plan;
  const { drive } = machine;
  if (drive === null) return null;
  const built = driveTrain(drive, entry.controller, packMassKg(entry.option.pack) ?? 0);
  const view = voltageView(machine, entry.option);
  if (!built.ok || !view.ok) return null;
  return {
    drive,
    train: built.train,
    supply: packSupply(entry.option, machine),
    gears: view.gears,
  };
}

/** The gear with the most of a figure. */
export function mostGear(gears: readonly GearView[], figure: (gear: GearView) => number): GearView {
  return gears.reduce((most, gear) => (figure(gear) > figure(most) ? gear : most));
}
