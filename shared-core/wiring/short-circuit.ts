import type { Machine } from '../plan/schema/machine.ts';
import type { Supply } from './supply.ts';
import type { Topology } from './topology.ts';

/** Current of a bolted fault at both ends of a branch [A]. */
export interface FaultCurrents {
  /** At the end near the source: what the fuse there must break. */
  readonly nearA: number;
  /** At the far end: what is left to open the fuse. */
  readonly farA: number;
  /** What keeps it in bounds. */
  readonly limitedBy: 'resistance' | 'converter';
}

/** A converter without a stated peak gives this many times its rating into a short; common practice, no source. */
const converterOverload = 1.5;

/**
 * Prospective short-circuit currents of every branch: `I = E / (R_source + sum of R on the way)`, pack full. Behind a
 * controller the fault flows through it as if it had failed shorted; behind a converter its own limit rules.
 *
 * Source: Ohm's law (derived).
 *
 * @param branchOhm resistance of each branch, out and back [Ω]
 */
export function faultCurrents(
  topology: Topology,
  branchOhm: readonly number[],
  supply: Supply,
  machine: Machine,
): FaultCurrents[] {
  const wayOhm = (path: readonly number[]) =>
    path.reduce((sum, index) => sum + branchOhm[index]!, 0);
  const hasStrings = topology.devices.some((device) => device.kind === 'string');
  const packOhm = (supply.stringOhm + (hasStrings ? 0 : supply.linkOhm)) / supply.stringCount;
  const wayToController = (deviceId: string) => {
    const feeding = topology.branches.find((entry) => entry.branch.to === deviceId);
    return feeding === undefined ? 0 : wayOhm(feeding.path);
  };
  return topology.branches.map((entry, index) => {
    const zone = entry.zone === null ? undefined : topology.zones[entry.zone];
    if (zone === undefined) return { nearA: 0, farA: 0, limitedBy: 'resistance' };
    if (zone.kind === 'converter') {
      const { converter } = machine;
      const limitA =
        converter === null
          ? 0
          : (converter.peakCurrentA ?? converterOverload * converter.ratedCurrentA);
      return { nearA: limitA, farA: limitA, limitedBy: 'converter' };
    }
    const emfV = zone.kind === 'mid-point' ? supply.tapV : supply.fullV;
    const behind =
      zone.kind === 'mid-point'
        ? supply.tapOhm / supply.stringCount
        : packOhm + (zone.kind === 'controller' ? wayToController(zone.deviceId) : 0);
    const full = behind + wayOhm(entry.path);
    return {
      nearA: emfV / Math.max(1e-6, full - branchOhm[index]!),
      farA: emfV / Math.max(1e-6, full),
      limitedBy: 'resistance',
    };
  });
}
