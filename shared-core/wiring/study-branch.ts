import type { Conductor } from '../plan/schema/conductor.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { BranchResistance } from './branch-resistance.ts';
import { conductorAreaMm2 } from './conductor-facts.ts';
import { fuseOpening } from './fuse-opening.ts';
import { sizingFuse } from './protection.ts';
import type { Guard } from './protection.ts';
import type { FaultCurrents } from './short-circuit.ts';
import { faultAreaMm2, smallestConductor } from './smallest-conductor.ts';
import type { NetworkState, StateSolution } from './states.ts';
import type { Topology } from './topology.ts';
import type { WireHeat } from './wire-heating.ts';
import type { BranchState, BranchStudy } from './wiring-study.ts';

export interface BranchInputs {
  readonly plan: Pick<Plan, 'thresholds'>;
  readonly topology: Topology;
  readonly index: number;
  readonly conductor: Conductor;
  readonly heat: WireHeat;
  readonly wireC: number;
  readonly resistance: BranchResistance;
  /** Share of the network's current that flows in one of equal strings. */
  readonly share: number;
  readonly zoneV: number;
  readonly guard: Guard | null;
  readonly fault: FaultCurrents;
  readonly brakeA: number;
  readonly stringCount: number;
  readonly states: Readonly<Record<NetworkState, StateSolution | null>>;
}

/** Density of copper [kg/(m·mm²)]. */
const copperKgPerMMm2 = 8.96e-3;

/** Draws the solutions of the network together for one branch, and adds what its wire and its fuse say. */
export function studyBranch(inputs: BranchInputs): BranchStudy {
  const { topology, index, conductor, heat, resistance, zoneV, guard, fault, states, plan } =
    inputs;
  const entry = topology.branches[index]!;
  const { branch } = entry;
  const zone = entry.zone === null ? undefined : topology.zones[entry.zone];
  const found: Partial<Record<NetworkState | 'short-circuit', BranchState>> = {};
  for (const solution of Object.values(states)) {
    if (solution !== null) found[solution.state] = branchState(solution, inputs);
  }
  found['short-circuit'] = {
    currentA: fault.farA,
    towardsPack: false,
    fromV: fault.farA * resistance.totalOhm,
    toV: 0,
    dropV: fault.farA * resistance.totalOhm,
    dropPercent: 100,
    heatW: fault.farA ** 2 * resistance.totalOhm,
  };
  const braking = topology.devices.some(
    (device) => device.id === branch.to && device.kind === 'brake-resistor',
  );
  const drawn = (state: NetworkState) => found[state]?.currentA ?? 0;
  const continuousA = Math.max(drawn('cruising'), drawn('charge'));
  const peakA = Math.max(continuousA, drawn('start'), drawn('stall'), braking ? inputs.brakeA : 0);
  // An outing says too little about the hardest pull of the motors: their lines are sized for the controller's limit.
  // Behind a converter without fuses its own limit is the only guard; elsewhere, without a fuse, a climb at the start's
  // current may last.
  const sizingA = braking
    ? peakA
    : zone?.kind === 'controller'
      ? Math.max(continuousA, drawn('start'))
      : guard !== null
        ? continuousA
        : fault.limitedBy === 'converter'
          ? Math.max(continuousA, fault.nearA)
          : Math.max(continuousA, drawn('start'));
  const sizedFor = sizingFuse(topology, index, inputs.stringCount);
  const opening = guard === null ? null : fuseOpening(guard.fuse, fault.farA).latestS;
  const cruising = states.cruising;
  const wayDropV =
    cruising === null || zone === undefined
      ? 0
      : Math.max(0, cruising.voltageV[zone.node]! - cruising.voltageV[entry.to]!);
  const areaMm2 = conductorAreaMm2(conductor);
  const copperKg = 2 * branch.lengthM * areaMm2 * copperKgPerMMm2;
  return {
    id: branch.id,
    name: branch.name,
    planIndex: entry.index,
    zone: zone?.kind ?? null,
    zoneV,
    conductor,
    conductorAssumed: branch.conductor === null,
    areaMm2,
    ambientC: heat.ambientC,
    ampacityA: heat.ampacityA,
    resistanceOhm: resistance.totalOhm,
    wireOhm: resistance.wireOhm,
    wireC: inputs.wireC,
    states: found,
    continuousA,
    peakA,
    sizingA,
    wayDropV,
    wayDropPercent: percentOfZone(wayDropV, zoneV),
    guard,
    faultNearA: fault.nearA,
    faultFarA: fault.farA,
    clearingS: opening === null || !Number.isFinite(opening) ? null : opening,
    faultAreaMm2: faultAreaMm2(branch, { guard: sizedFor, faultA: fault.farA }),
    smallest: smallestConductor(branch, conductor.system, {
      continuousA: sizingA,
      dropA: continuousA,
      guard: sizedFor,
      faultA: fault.farA,
      zoneV,
      dropPercent: plan.thresholds.wiring.dropNotePercent,
      ambientC: heat.ambientC,
    }),
    copperKg,
    // Copper decides the price of a cable; the steps are common practice, no source.
    priceClass: copperKg < 0.05 ? 'low' : copperKg < 0.3 ? 'middle' : 'high',
  };
}

/** A loss against the voltage of its zone [%]; where the zone is dead, any loss is the whole of it. */
function percentOfZone(lossV: number, zoneV: number): number {
  if (lossV === 0) return 0;
  return zoneV > 0 ? (100 * lossV) / zoneV : 100;
}

function branchState(solution: StateSolution, inputs: BranchInputs): BranchState {
  const { topology, index, resistance, share, zoneV } = inputs;
  const entry = topology.branches[index]!;
  const raw = solution.currentA[index]! * share;
  // What leaks through the solver's own floor is no current.
  const signed = Math.abs(raw) < 1e-5 ? 0 : raw;
  const dropV = Math.abs(signed) * resistance.totalOhm;
  return {
    currentA: Math.abs(signed),
    towardsPack: signed < 0,
    fromV: solution.voltageV[entry.from]!,
    toV: solution.voltageV[entry.to]!,
    dropV,
    dropPercent: percentOfZone(dropV, zoneV),
    heatW: dropV * Math.abs(signed),
  };
}
