import type { Conductor } from '../plan/schema/conductor.ts';
import type { Joint, WiringBranch } from '../plan/schema/wiring-branch.ts';
import { conductorOhmPerKm } from './conductor-facts.ts';

/** Where the resistance of a branch sits [Ω]. */
export interface BranchResistance {
  readonly wireOhm: number;
  readonly fuseOhm: number;
  readonly switchOhm: number;
  readonly connectorOhm: number;
  readonly jointsOhm: number;
  readonly totalOhm: number;
}

/** A fuse drops about 0.1 V at its rating; common practice, no source. */
const fuseDropV = 0.1;
/** A closed power contact, and a mated pair of contacts on both wires; common practice, no source. */
const contactOhm = 0.0004;
const connectorOhm = 0.0006;

/** Resistance of a joint from a reading across it [Ω]: `R = U/I`; null where it was not read. */
export function jointOhm(joint: Joint): number | null {
  return joint.dropMv === null || joint.atCurrentA === null
    ? null
    : joint.dropMv / 1000 / joint.atCurrentA;
}

/**
 * Resistance of a branch out and back: wire at its temperature, fuse, switch, connector, joints that were read.
 *
 * @param conductor the branch's own, or what stands in for it
 * @param wireC conductor temperature [°C]
 * Source: Ohm's law (derived); defaults of the parts: common practice, no source.
 */
export function branchResistance(
  branch: WiringBranch,
  conductor: Conductor,
  wireC: number,
): BranchResistance {
  const wireOhm = (2 * branch.lengthM * conductorOhmPerKm(conductor, wireC)) / 1000;
  const fuseOhm =
    branch.fuse === null ? 0 : (branch.fuse.resistanceOhm ?? fuseDropV / branch.fuse.ratedA);
  const switchOhm =
    branch.switchgear === null ? 0 : (branch.switchgear.resistanceOhm ?? contactOhm);
  const mated = branch.connector === null ? 0 : connectorOhm;
  const jointsOhm = branch.joints.reduce((sum, joint) => sum + (jointOhm(joint) ?? 0), 0);
  return {
    wireOhm,
    fuseOhm,
    switchOhm,
    connectorOhm: mated,
    jointsOhm,
    totalOhm: wireOhm + fuseOhm + switchOhm + mated + jointsOhm,
  };
}
