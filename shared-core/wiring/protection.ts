import type { Fuse } from '../plan/schema/wiring-branch.ts';
import type { Topology } from './topology.ts';

/** The fuse that guards a branch, and the branch in which it sits. */
export interface Guard {
  readonly fuse: Fuse;
  readonly branchIndex: number;
}

/**
 * The smallest fuse on the way from the supply to a branch, its own included. Behind a controller the way goes on through
 * it to the pack, because a controller that has failed shorted is a piece of wire.
 *
 * The fuses of several strings do not guard what lies behind the point where the strings meet: each carries only its part.
 *
 * @param stringCount strings in parallel
 * @returns null where nothing guards it
 */
export function guardOf(topology: Topology, index: number, stringCount: number): Guard | null {
  let best: Guard | null = null;
  for (const place of wayBack(topology, index)) {
    const { fuse, from } = topology.branches[place]!.branch;
    if (stringCount > 1 && place !== index && isString(topology, from)) continue;
    if (fuse !== null && (best === null || fuse.ratedA < best.fuse.ratedA))
      best = { fuse, branchIndex: place };
  }
  return best;
}

/**
 * What guards a branch against faults behind it: its guard, or for the links inside the pack, which nothing guards from
 * the front, the largest fuse right behind them.
 */
export function sizingFuse(topology: Topology, index: number, stringCount: number): Fuse | null {
  const guard = guardOf(topology, index, stringCount);
  if (guard !== null) return guard.fuse;
  const { to } = topology.branches[index]!.branch;
  const behind = topology.branches.flatMap(({ branch }) =>
    branch.from === to && branch.fuse !== null ? [branch.fuse] : [],
  );
  return behind.toSorted((one, other) => other.ratedA - one.ratedA)[0] ?? null;
}

function isString(topology: Topology, deviceId: string): boolean {
  return topology.devices.some((device) => device.id === deviceId && device.kind === 'string');
}

/** Branches from the pack to a branch and with it, through a controller but not through a converter. */
export function wayBack(topology: Topology, index: number): number[] {
  const entry = topology.branches[index]!;
  const zone = entry.zone === null ? undefined : topology.zones[entry.zone];
  if (zone?.kind !== 'controller') return [...entry.path];
  const feeding = topology.branches.find((candidate) => candidate.branch.to === zone.deviceId);
  return [...(feeding === undefined ? [] : feeding.path), ...entry.path];
}
