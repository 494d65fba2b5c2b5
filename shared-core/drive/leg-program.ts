import type { DriveLoad, LogLoad, SurfaceAmpsLoad } from '../plan/schema/leg-load.ts';
import type { Load } from '../plan/schema/load.ts';
import type { Leg, Outing } from '../plan/schema/outing.ts';
import type { MotionCommand } from './drive-motion.ts';
import type { DriveTrain } from './drive-train.ts';
import { gearById } from './drive-train.ts';
import { roadOf } from './road.ts';

/** A leg made ready: equal stretches, each driven and then halted. */
export interface ProgramLeg {
  readonly load: Load | DriveLoad | SurfaceAmpsLoad | LogLoad | null;
  readonly stretches: number;
  /** Each stretch with its halt [s]; with a distance, the longest it may take. */
  readonly stretchS: number;
  readonly haltS: number;
  /** Length of each stretch [m]; infinite where time decides. */
  readonly stretchM: number;
  readonly fromStand: boolean;
  readonly drive: ProgramDrive | null;
  /** Current outside the peaks of a leg given in amperes [A]. */
  readonly baseA: number;
}

/** What the rider asks on the leg, pressing the pedal and having let it go. */
export interface ProgramDrive {
  readonly pressed: MotionCommand;
  readonly released: MotionCommand;
}

/** Lays the outing's legs out for the drive. `train` may be null when no leg is driven with the motor model. */
export function legProgram(outing: Outing, train: DriveTrain | null): readonly ProgramLeg[] {
  return outing.legs.map((leg) => programLeg(leg, train));
}

function programLeg(leg: Leg, train: DriveTrain | null): ProgramLeg {
  const seconds = leg.durationMin * 60;
  const { load } = leg;
  const plain: ProgramLeg = {
    load,
    stretches: 1,
    stretchS: seconds,
    haltS: 0,
    stretchM: Infinity,
    fromStand: false,
    drive: null,
    baseA: 0,
  };
  if (load === null) return plain;
  if (load.kind === 'surface-amps') {
    const stretches = Math.max(1, load.starts);
    return {
      ...plain,
      stretches,
      stretchS: seconds / stretches,
      fromStand: load.starts > 0,
      baseA: baseCurrentA(load, seconds),
    };
  }
  if (load.kind !== 'drive' || train === null) return plain;
  const stretches = Math.max(1, load.starts);
  const stretchS = seconds / stretches;
  const gear = gearById(train, load.gearId);
  const pressed: MotionCommand = {
    road: roadOf(train, load.surface, load.gradePercent, load.headwindKmh, load.loadPercent),
    gear,
    duty:
      gear.dutyShare *
      (load.command.kind === 'throttle' ? train.dutyAt(load.command.throttlePercent) : 1),
    targetMps: load.command.kind === 'speed' ? load.command.targetSpeedKmh / 3.6 : Infinity,
    released: false,
  };
  return {
    ...plain,
    stretches,
    stretchS,
    // A halt longer than the stretch still leaves a tenth of it to drive.
    haltS: load.starts > 0 ? Math.min(load.haltS, stretchS * 0.9) : 0,
    stretchM: load.distanceM === null ? Infinity : load.distanceM / stretches,
    fromStand: load.starts > 0,
    drive: { pressed, released: { ...pressed, released: true } },
  };
}

/** Current between the peaks, such that the leg's average is the one read; 0 where the peaks alone exceed it. */
function baseCurrentA(load: SurfaceAmpsLoad, seconds: number): number {
  if (load.peakA === null || load.starts === 0) return load.averageA;
  const peakS = Math.min(load.peakS, seconds / load.starts) * load.starts;
  if (peakS >= seconds) return load.averageA;
  return Math.max(0, (load.averageA * seconds - load.peakA * peakS) / (seconds - peakS));
}
