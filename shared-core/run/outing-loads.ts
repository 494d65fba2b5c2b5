import type { DriveProblem } from '../drive/drive-problem.ts';
import { needsOutingSource, outingSource } from '../drive/outing-source.ts';
import type { DriveResult } from '../drive/drive-result.ts';
import type { Controller } from '../plan/schema/controller.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { packMassKg } from '../pack/pack-mass.ts';
import { legSource } from './leg-source.ts';
import { limitedSource } from './limited-source.ts';
import type { LoadSource } from './load-source.ts';

/** The motor load of an outing over time, and what it says of the drive afterwards. */
export interface OutingLoads {
  readonly source: LoadSource;
  /** What the wheels did so far; null for outings without driven legs. */
  readonly driveResult: () => DriveResult | null;
  /** Why the load cannot be computed; the source is then to be left alone. */
  readonly problem: DriveProblem | null;
}

/**
 * Chooses the source of the motor load: plain legs are played as they are, driven legs and logs through the drive model.
 *
 * @param busV about the voltage the pack stands at [V]
 */
export function outingLoads(
  machine: Machine,
  controller: Controller,
  outing: Outing,
  option: Option,
  busV: number,
): OutingLoads {
  const none = { driveResult: () => null, problem: null };
  if (!needsOutingSource(outing)) {
    const source = legSource(outing.legs);
    const limitA = controller.batteryCurrentLimitA;
    return { ...none, source: limitA === null ? source : limitedSource(source, limitA) };
  }
  const built = outingSource(machine, controller, outing, packMassKg(option.pack) ?? 0, busV);
  if (!built.ok) {
    const { path, problem, remedy } = built;
    return { ...none, source: legSource(outing.legs), problem: { path, problem, remedy } };
  }
  return { ...none, source: built.source, driveResult: () => built.source.result() };
}
