import type { WiringBranch, WiringDevice } from '../plan/schema/wiring-branch.ts';

/** What a wire ends in, by the kind of device; a proposal, common practice without a source. */
export type WireEnd = 'lug' | 'ferrule' | 'plug' | 'blade';

const ends: Readonly<Record<WiringDevice['kind'], WireEnd>> = {
  string: 'lug',
  pack: 'lug',
  'mid-point': 'lug',
  junction: 'lug',
  controller: 'lug',
  motor: 'lug',
  'brake-resistor': 'lug',
  converter: 'ferrule',
  accessory: 'blade',
  'charge-port': 'plug',
};

export function wireEnd(device: WiringDevice | undefined): WireEnd {
  return device === undefined ? 'lug' : ends[device.kind];
}

/** Kind of line a branch is, as far as its colours tell it: pack voltage, behind the converter, or to the motors. */
export function lineKind(
  branch: WiringBranch,
  devices: readonly WiringDevice[],
): 'pack' | 'low' | 'motor' {
  const kindOf = (id: string) => devices.find((device) => device.id === id)?.kind;
  const kinds = [kindOf(branch.from), kindOf(branch.to)];
  if (kinds.includes('motor') || kinds.includes('brake-resistor')) return 'motor';
  return kindOf(branch.from) === 'converter' ? 'low' : 'pack';
}

/**
 * Length to cut a wire at [mm]: 5 % and 60 mm for bends and crimps, rounded up to 10 mm. Common practice, no source.
 *
 * @param lengthM way of the wire, one way [m]
 */
export function cutLengthMm(lengthM: number): number {
  return Math.ceil((1000 * lengthM * 1.05 + 60) / 10 - 1e-9) * 10;
}

/** Strings share the plan of one: a branch inside a string is made once for each. */
export function branchCopies(
  branch: WiringBranch,
  devices: readonly WiringDevice[],
  parallelCount: number,
): number {
  const from = devices.find((device) => device.id === branch.from);
  return from?.kind === 'string' ? parallelCount : 1;
}
