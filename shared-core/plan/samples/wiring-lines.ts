import { newBranch, newConnector, newFuse, newSwitchgear } from '../../wiring/new-parts.ts';
import type {
  Connector,
  Fuse,
  FuseClass,
  Switchgear,
  WiringBranch,
} from '../schema/wiring-branch.ts';

/** A branch of metric wire; what is not said is as in a new branch. */
export function line(
  [id, name, from, to]: readonly [id: string, name: string, from: string, to: string],
  lengthM: number,
  areaMm2: number,
  rest: Partial<WiringBranch> = {},
): WiringBranch {
  return {
    ...newBranch(id, name, from, to, lengthM),
    conductor: { system: 'metric', areaMm2 },
    ...rest,
  };
}

export function fuse(
  fuseClass: FuseClass,
  ratedA: number,
  ratedVoltageV: number,
  breakingA: number,
  fromSourceMm: number,
): Fuse {
  return { ...newFuse(fuseClass, ratedA), ratedVoltageV, breakingA, fromSourceMm };
}

export function switchgear(kind: Switchgear['kind'], rest: Partial<Switchgear>): Switchgear {
  return { ...newSwitchgear(kind), ...rest };
}

export function connector(name: string, rest: Partial<Connector>): Connector {
  return { ...newConnector(name), ...rest };
}
