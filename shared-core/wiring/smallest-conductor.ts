import { withstandAreaMm2, withstandFactor } from '../formulas/wiring/fault-withstand.ts';
import type { Conductor } from '../plan/schema/conductor.ts';
import type { Fuse, WiringBranch } from '../plan/schema/wiring-branch.ts';
import {
  conductorAmpacityA,
  conductorAreaMm2,
  conductorOhmPerKm,
  shortCircuitLimitC,
  standardConductors,
} from './conductor-facts.ts';
import { fuseOpening } from './fuse-opening.ts';

/** Why a conductor may not be thinner. */
export type SizingReason = 'current' | 'fuse' | 'drop' | 'fault' | 'thinnest-made';

export interface SizingDemand {
  /** Current it must carry without end [A]. */
  readonly continuousA: number;
  /** Lasting current that really flows, for the drop [A]. */
  readonly dropA: number;
  /** Fuse that guards it; null where none does. */
  readonly guard: Fuse | null;
  /** Fault current at its far end [A]. */
  readonly faultA: number;
  /** Voltage of its zone [V]. */
  readonly zoneV: number;
  readonly dropPercent: number;
  readonly ambientC: number;
}

export interface SizingCheck {
  readonly reason: Exclude<SizingReason, 'thinnest-made'>;
  /** Smallest size that passes this check alone; null where none made does. */
  readonly conductor: Conductor | null;
}

export interface SmallestConductor {
  /** Smallest that passes every check; null where none made does. */
  readonly conductor: Conductor | null;
  readonly reason: SizingReason;
  readonly checks: readonly SizingCheck[];
}

/**
 * Smallest conductor of a system that carries the current, is guarded by its fuse, keeps the drop and survives a fault
 * until the fuse opens; with the check that decided.
 *
 * Checks: ampacity >= lasting current; ampacity >= fuse rating; drop out and back at the lasting current <= share of the
 * zone's voltage; area >= `I sqrt(t)/k` for the latest opening time up to 5 s (IEC 60364-5-54).
 */
export function smallestConductor(
  branch: WiringBranch,
  system: Conductor['system'],
  demand: SizingDemand,
): SmallestConductor {
  const sizes = standardConductors(system);
  const tests: Record<SizingCheck['reason'], (size: Conductor) => boolean> = {
    current: (size) => ampacity(size, branch, demand.ambientC) >= demand.continuousA,
    fuse: (size) =>
      demand.guard === null || ampacity(size, branch, demand.ambientC) >= demand.guard.ratedA,
    drop: (size) =>
      (2 * branch.lengthM * conductorOhmPerKm(size, branch.insulationC) * demand.dropA) / 1000 <=
      (demand.dropPercent / 100) * demand.zoneV,
    fault: (size) => conductorAreaMm2(size) * 1.01 >= faultAreaMm2(branch, demand),
  };
  const checks = (Object.keys(tests) as SizingCheck['reason'][]).map((reason) => ({
    reason,
    conductor: sizes.find(tests[reason]) ?? null,
  }));
  const conductor = sizes.find((size) => Object.values(tests).every((test) => test(size))) ?? null;
  const thickest = checks.toSorted(
    (one, other) => order(other.conductor) - order(one.conductor),
  )[0]!;
  const reason: SizingReason =
    conductor !== null && order(thickest.conductor) <= order(sizes[0]!)
      ? 'thinnest-made'
      : thickest.reason;
  return { conductor, reason, checks };
}

function ampacity(size: Conductor, branch: WiringBranch, ambientC: number): number {
  return conductorAmpacityA(size, branch.insulationC, branch.bundled, ambientC);
}

function order(conductor: Conductor | null): number {
  return conductor === null ? Infinity : conductorAreaMm2(conductor);
}

/** Copper that survives the fault until the guarding fuse opens, 5 s at most [mm²]; 0 without a fuse. */
export function faultAreaMm2(
  branch: Pick<WiringBranch, 'insulation' | 'insulationC'>,
  demand: Pick<SizingDemand, 'guard' | 'faultA'>,
): number {
  if (demand.guard === null || demand.faultA <= 0) return 0;
  const timeS = Math.min(5, fuseOpening(demand.guard, demand.faultA).latestS);
  const factor = withstandFactor(branch.insulationC, shortCircuitLimitC[branch.insulation]);
  return withstandAreaMm2(demand.faultA, timeS, factor);
}
