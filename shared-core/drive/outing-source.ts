import type { Controller } from '../plan/schema/controller.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { CurrentLimit } from '../run/current-limit.ts';
import type { LoadSource, LoadTerms } from '../run/load-source.ts';
import { DriveMotion } from './drive-motion.ts';
import type { MotionCommand } from './drive-motion.ts';
import type { DriveProblem } from './drive-problem.ts';
import { driveSeries, newDriveRecorder, record } from './drive-recorder.ts';
import type { DriveRecorder } from './drive-recorder.ts';
import type { DriveResult } from './drive-result.ts';
import { driveResult, newDriveTotals } from './drive-totals.ts';
import type { DriveTotals } from './drive-totals.ts';
import { driveTrain } from './drive-train.ts';
import { legProgram } from './leg-program.ts';
import type { ProgramDrive, ProgramLeg } from './leg-program.ts';
import { logRemainingS, logTerms, logTime } from './log-replay.ts';

/** A load source that also tells what the wheels did. */
export interface OutingSource extends LoadSource {
  /** Null where no leg is driven with the motor model. */
  result(): DriveResult | null;
}

export type OutingSourceResult =
  | { readonly ok: true; readonly source: OutingSource }
  | ({ readonly ok: false } & DriveProblem);

/** True when the outing holds a leg that only the drive can play: driven, clamp-meter amps, or a log. */
export function needsOutingSource(outing: Outing): boolean {
  return outing.legs.some(
    ({ load }) =>
      load !== null &&
      (load.kind === 'drive' || load.kind === 'surface-amps' || load.kind === 'log'),
  );
}

/**
 * The motor circuit over the whole, repeating timeline of an outing. The controller's battery current limit holds driven
 * legs and legs of steady current, power or resistance; clamp-meter amps and logs were measured and stand as they are.
 *
 * @param controller the option's own or the machine's
 * @param packMassKg mass of the option's pack [kg]
 * @param busV a voltage to start from, about the pack's at rest [V]
 * @returns the source, or the plan field that is missing or impossible
 */
export function outingSource(
  machine: Machine,
  controller: Controller,
  outing: Outing,
  packMassKg: number,
  busV: number,
): OutingSourceResult {
  const limit = new CurrentLimit(controller.batteryCurrentLimitA ?? Infinity);
  const drivenLeg = outing.legs.findIndex((leg) => leg.load?.kind === 'drive');
  if (drivenLeg < 0)
    return {
      ok: true,
      source: new ProgrammedSource(legProgram(outing, null), null, limit, outing.ambientC),
    };
  if (machine.drive === null) {
    return {
      ok: false,
      path: 'machine.drive',
      problem: `leg "${outing.legs[drivenLeg]!.name}" is to be driven, but the machine has no drive`,
      remedy: 'Describe motors, gears and masses, or give the leg in amperes.',
    };
  }
  const built = driveTrain(machine.drive, controller, packMassKg);
  if (!built.ok) return built;
  const motion = new DriveMotion(built.train, outing.ambientC, busV);
  return {
    ok: true,
    source: new ProgrammedSource(legProgram(outing, built.train), motion, limit, outing.ambientC),
  };
}

/** Longest step while nothing changes [s]: keeps the winding's temperature and resistance in step. */
const longestEvenS = 10;

interface Cursor {
  leg: number;
  stretch: number;
  /** Into the stretch [s] and [m]. */
  stretchS: number;
  stretchM: number;
  /** Into the halt [s]; negative while driving. */
  haltS: number;
  stopped: boolean;
}

class ProgrammedSource implements OutingSource {
  private readonly legs: readonly ProgramLeg[];
  private readonly motion: DriveMotion | null;
  private readonly limit: CurrentLimit;
  private readonly at: Cursor = {
    leg: 0,
    stretch: 0,
    stretchS: 0,
    stretchM: 0,
    haltS: -1,
    stopped: false,
  };
  private readonly totals: DriveTotals;
  private readonly recorder: DriveRecorder = newDriveRecorder();
  private plannedS = -1;
  /** What the machine was last driven by: while it rolls it can only brake in that direction. */
  private rolling: ProgramDrive | null = null;

  constructor(
    legs: readonly ProgramLeg[],
    motion: DriveMotion | null,
    limit: CurrentLimit,
    ambientC: number,
  ) {
    this.legs = legs;
    this.motion = motion;
    this.limit = limit;
    this.totals = newDriveTotals(ambientC);
    if (motion !== null) {
      record(this.recorder, 0, 0, 0, ambientC);
    }
  }

  longestStepS(_timeS: number): number {
    if (this.plannedS < 0) this.plannedS = this.planStep();
    return Math.min(this.plannedS, this.limit.longestStepS());
  }

  limitedA(): number | null {
    return this.limit.heldToA();
  }

  terms(timeS: number, busVoltageV: number, into: LoadTerms): void {
    into.currentA = 0;
    into.powerW = 0;
    into.conductanceS = 0;
    this.limit.release();
    const leg = this.leg();
    if (leg.drive !== null && this.motion !== null) {
      if (!this.at.stopped)
        this.motion.terms(this.command(), busVoltageV, this.longestStepS(timeS), into);
      return;
    }
    if (this.at.stopped) return;
    this.electricTerms(leg, into);
    const measured = leg.load?.kind === 'log' || leg.load?.kind === 'surface-amps';
    if (!measured) this.limit.hold(into, busVoltageV);
  }

  advance(timeS: number, stepS: number, busVoltageV: number, currentA: number): void {
    if (this.motion !== null) {
      const { motion, totals } = this;
      const before = totals.distanceM;
      const wasStanding = motion.state.speedMps === 0;
      motion.advance(this.command(), stepS, busVoltageV, currentA, totals);
      this.at.stretchM += totals.distanceM - before;
      if (motion.state.speedMps === 0) this.rolling = null;
      else this.rolling ??= this.leg().drive ?? this.nearestDrive();
      if (wasStanding && motion.state.speedMps > 0) {
        totals.largestStopJ = Math.max(totals.largestStopJ, totals.stopJ);
        totals.stopJ = 0;
        totals.starts += 1;
      }
      record(
        this.recorder,
        timeS + stepS,
        motion.state.speedMps,
        motion.motorA(),
        motion.state.windingC,
      );
    }
    this.moveOn(stepS);
    this.plannedS = -1;
  }

  stop(stopped: boolean): void {
    if (this.at.stopped === stopped) return;
    this.at.stopped = stopped;
    this.plannedS = -1;
  }

  result(): DriveResult | null {
    if (this.motion === null) return null;
    const { train, state } = this.motion;
    const temperatureC = train.heat === null ? null : state.windingC;
    return driveResult(
      this.totals,
      this.motion.motionJ(),
      temperatureC,
      train.motorCount,
      driveSeries(this.recorder),
    );
  }

  private leg(): ProgramLeg {
    return this.legs[this.at.leg]!;
  }

  /** What the rider asks now; legs given in amperes and legs at a stand leave the wheels to come to rest. */
  private command(): MotionCommand {
    const { at } = this;
    const { drive } = this.leg();
    if (drive === null) return this.nearestDrive().released;
    const { rolling } = this;
    if (rolling !== null && rolling.pressed.gear.direction !== drive.pressed.gear.direction)
      return rolling.released;
    return at.haltS >= 0 || at.stopped ? drive.released : drive.pressed;
  }

  private nearestDrive(): ProgramDrive {
    const { legs, at } = this;
    for (let back = 1; back <= legs.length; back += 1) {
      const { drive } = legs[(at.leg - back + legs.length) % legs.length]!;
      if (drive !== null) return drive;
    }
    throw new Error('a moving outing has at least one driven leg');
  }

  private electricTerms(leg: ProgramLeg, into: LoadTerms): void {
    const { load } = leg;
    if (load === null) return;
    if (load.kind === 'current') into.currentA = load.currentA;
    else if (load.kind === 'power') into.powerW = load.powerW;
    else if (load.kind === 'resistance') into.conductanceS = 1 / load.resistanceOhm;
    else if (load.kind === 'log') logTerms(load, logTime(load, this.at.stretchS), into);
    else if (load.kind === 'surface-amps')
      into.currentA =
        leg.fromStand && load.peakA !== null && this.at.stretchS < load.peakS
          ? load.peakA
          : leg.baseA;
  }

  /** Seconds to the end of the present phase: stretch, halt, peak or log row. */
  private phaseRemainingS(leg: ProgramLeg): number {
    const { at } = this;
    if (at.haltS >= 0) return leg.haltS - at.haltS;
    const remaining = leg.stretchS - leg.haltS - at.stretchS;
    const { load } = leg;
    if (load?.kind === 'log')
      return Math.min(remaining, logRemainingS(load, logTime(load, at.stretchS)));
    if (
      load?.kind === 'surface-amps' &&
      leg.fromStand &&
      load.peakA !== null &&
      at.stretchS < load.peakS
    )
      return Math.min(remaining, load.peakS - at.stretchS);
    return remaining;
  }

  private planStep(): number {
    const leg = this.leg();
    let longest = Math.min(longestEvenS, this.phaseRemainingS(leg));
    if (this.motion !== null) {
      longest = Math.min(longest, this.motion.longestStepS(this.command()));
      const speed = this.motion.state.speedMps;
      if (leg.stretchM < Infinity && this.at.haltS < 0 && speed > 0)
        longest = Math.min(longest, Math.max(0.01, (leg.stretchM - this.at.stretchM) / speed));
    }
    return Math.max(1e-6, longest);
  }

  private moveOn(stepS: number): void {
    const { at } = this;
    const leg = this.leg();
    if (at.haltS >= 0) {
      at.haltS += stepS;
      if (at.haltS >= leg.haltS - 1e-9) this.nextStretch(leg, at.haltS - leg.haltS);
      return;
    }
    at.stretchS += stepS;
    const over = at.stretchS - (leg.stretchS - leg.haltS);
    if (over < -1e-9 && at.stretchM < leg.stretchM - 1e-6) return;
    if (leg.haltS > 0) at.haltS = Math.max(0, over);
    else this.nextStretch(leg, Math.max(0, over));
  }

  private nextStretch(leg: ProgramLeg, carriedS: number): void {
    const { at } = this;
    at.stretch += 1;
    if (at.stretch >= leg.stretches) {
      at.stretch = 0;
      at.leg = (at.leg + 1) % this.legs.length;
    }
    at.stretchS = carriedS;
    at.stretchM = 0;
    at.haltS = -1;
  }
}
