import { converterLoss, converterPoint } from '../accessories/converter-input.ts';
import type { Demand } from '../accessories/converter-input.ts';
import { loadDemand } from '../accessories/demands.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { WiringDevice } from '../plan/schema/wiring-branch.ts';
import type { MotorDemand, WiringDemand } from './demand.ts';
import { solveNetwork } from './network.ts';
import type { NetworkLoad, NetworkSource } from './network.ts';
import type { Supply } from './supply.ts';
import type { Topology } from './topology.ts';

/** States of the machine for which every branch is worked out, in the order shown. */
export const wiringStates = [
  'rest',
  'cruising',
  'start',
  'stall',
  'charge',
  'short-circuit',
] as const;
export type WiringState = (typeof wiringStates)[number];
/** States that are one solution of the network; the short circuit is one solution for each branch. */
export type NetworkState = Exclude<WiringState, 'short-circuit'>;

export interface StateSolution {
  readonly state: NetworkState;
  /** Against the return rail, by node [V]. */
  readonly voltageV: Float64Array;
  /** By branch of the topology, from source to load [A]. */
  readonly currentA: Float64Array;
  /** The networks solved, so that another solver can check them: one for each zone. */
  readonly networks: readonly {
    readonly zone: number;
    readonly sources: readonly NetworkSource[];
    readonly loads: readonly NetworkLoad[];
  }[];
}

export interface StateInputs {
  readonly machine: Machine;
  readonly topology: Topology;
  /** Resistance of each branch of the topology, out and back [Ω]. */
  readonly branchOhm: readonly number[];
  readonly supply: Supply;
  readonly demand: WiringDemand;
}

/** The converter is held stiff at its output: its own resistance is in its dropout figure. */
const stiffOhm = 1e-4;

/**
 * Voltages and currents of the whole wiring in one state, the pack full and rested.
 *
 * Zones are solved from the loads back to the pack: what a converter gives out becomes the power it takes in; the motor
 * circuit takes its battery current in and gives its motor current out.
 *
 * @returns null where the state cannot be: no charger, stall current unknown, or the supply collapses
 */
export function solveState(state: NetworkState, inputs: StateInputs): StateSolution | null {
  const { machine, topology, branchOhm, supply, demand } = inputs;
  const motor = motorDemand(state, demand);
  if (motor === null || (state === 'charge' && demand.chargeA === null)) return null;
  const driving = state === 'cruising' || state === 'start' || state === 'stall';
  const voltageV = new Float64Array(topology.nodeCount);
  const currentA = new Float64Array(topology.branches.length);
  const networks: StateSolution['networks'][number][] = [];
  const converterOutA = new Map<string, number>();

  const solveZone = (
    zone: number,
    source: Omit<NetworkSource, 'node'>,
    loads: NetworkLoad[],
  ): number | null => {
    const members = topology.branches
      .map((entry, index) => ({ entry, index }))
      .filter(({ entry }) => entry.zone === zone);
    const sources = [{ node: topology.zones[zone]!.node, ...source }];
    const solution = solveNetwork({
      nodeCount: topology.nodeCount,
      paths: members.map(({ entry, index }) => ({
        from: entry.from,
        to: entry.to,
        resistanceOhm: branchOhm[index]!,
      })),
      sources,
      loads,
    });
    if (!solution.ok) return null;
    networks.push({ zone, sources, loads });
    topology.nodeZone.forEach((at, node) => {
      if (at === zone) voltageV[node] = solution.voltageV[node]!;
    });
    members.forEach(({ index }, place) => {
      currentA[index] = solution.pathCurrentA[place]!;
    });
    return solution.sourceCurrentA[0]!;
  };
  const accessoryLoads = (zone: number): NetworkLoad[] =>
    topology.devices.flatMap((device) => {
      const node = topology.inputNode.get(device.id)!;
      if (device.kind !== 'accessory' || topology.nodeZone[node] !== zone) return [];
      const drawn = accessoryDemand(device, machine, driving);
      return drawn === null ? [] : [{ node, ...drawn }];
    });

  for (const [index, zone] of topology.zones.entries()) {
    if (zone.kind === 'converter' && machine.converter !== null) {
      const outA = solveZone(
        index,
        { emfV: machine.converter.outputVoltageV, resistanceOhm: stiffOhm },
        driving || machine.converter.alwaysOn ? accessoryLoads(index) : [],
      );
      if (outA === null) return null;
      converterOutA.set(zone.deviceId, outA);
    }
  }

  const packZone = topology.zones.findIndex((zone) => zone.kind === 'pack');
  if (packZone < 0) return null;
  const loads = accessoryLoads(packZone);
  for (const device of topology.devices) {
    const node = topology.inputNode.get(device.id)!;
    if (topology.nodeZone[node] !== packZone) continue;
    if (device.kind === 'controller' && driving) {
      const share = 1 / count(topology, 'controller');
      loads.push({
        node,
        currentA: share * (motor.batteryA + demand.controllerIdleA),
        powerW: 0,
        conductanceS: 0,
      });
    } else if (
      device.kind === 'converter' &&
      machine.converter !== null &&
      (driving || machine.converter.alwaysOn)
    ) {
      const drawn: Demand = {
        currentA: converterOutA.get(device.id) ?? 0,
        powerW: 0,
        conductanceS: 0,
      };
      const point = converterPoint(
        machine.converter,
        converterLoss(machine.converter),
        drawn,
        supply.fullV,
      );
      loads.push({ node, currentA: 0, powerW: point.inputPowerW, conductanceS: 0 });
    } else if (device.kind === 'charge-port' && state === 'charge') {
      loads.push({
        node,
        currentA: -demand.chargeA! / count(topology, 'charge-port'),
        powerW: 0,
        conductanceS: 0,
      });
    }
  }
  const hasStrings = topology.devices.some((device) => device.kind === 'string');
  const sourceOhm = (supply.stringOhm + (hasStrings ? 0 : supply.linkOhm)) / supply.stringCount;
  // The blocks below a tap carry the pack's current and the tap's: each lowers the other's voltage by `R_low I`.
  const lowOhm = supply.tapOhm / supply.stringCount;
  const taps = [...topology.zones.entries()].filter(([, zone]) => zone.kind === 'mid-point');
  const tapped = supply.tapV > 0 ? taps : [];
  const before = networks.length;
  let tapA = 0;
  for (let round = 0; round < (tapped.length === 0 ? 1 : tapRounds); round += 1) {
    networks.length = before;
    const emfV = supply.fullV - lowOhm * tapA;
    const packA = solveZone(packZone, { emfV, resistanceOhm: sourceOhm }, loads);
    if (packA === null) return null;
    tapA = 0;
    for (const [index] of tapped) {
      const source = { emfV: supply.tapV - lowOhm * packA, resistanceOhm: lowOhm };
      const drawnA = solveZone(index, source, accessoryLoads(index));
      if (drawnA === null) return null;
      tapA += drawnA;
    }
  }

  for (const [index, zone] of topology.zones.entries()) {
    if (zone.kind !== 'controller' || !driving) continue;
    const duty = motor.motorA > 0 ? Math.min(1, motor.batteryA / motor.motorA) : 0;
    const busV = voltageV[topology.inputNode.get(zone.deviceId)!]!;
    const motors = topology.devices.filter(
      (device) =>
        device.kind === 'motor' && topology.nodeZone[topology.inputNode.get(device.id)!] === index,
    );
    const drawn = motors.map((device) => ({
      node: topology.inputNode.get(device.id)!,
      currentA: motor.motorA / motors.length,
      powerW: 0,
      conductanceS: 0,
    }));
    solveZone(index, { emfV: duty * busV, resistanceOhm: stiffOhm }, drawn);
  }
  return { state, voltageV, currentA, networks };
}

/** Pack and tap settle on each other: each round is a thousandth of the one before. */
const tapRounds = 4;

const still: MotorDemand = { batteryA: 0, motorA: 0 };

function motorDemand(state: NetworkState, demand: WiringDemand): MotorDemand | null {
  switch (state) {
    case 'rest':
    case 'charge':
      return still;
    case 'cruising':
      return demand.cruising;
    case 'start':
      return demand.start;
    case 'stall':
      return demand.stall;
  }
}

function count(topology: Topology, kind: WiringDevice['kind']): number {
  return topology.devices.filter((device) => device.kind === kind).length;
}

/** What an accessory draws: its full load while the machine is on, its standby current while it is off. */
function accessoryDemand(device: WiringDevice, machine: Machine, driving: boolean): Demand | null {
  const accessory = machine.accessories.find((candidate) => candidate.id === device.accessoryId);
  if (accessory === undefined || !accessory.on) return null;
  return driving
    ? loadDemand(accessory.load)
    : { currentA: accessory.standbyA, powerW: 0, conductanceS: 0 };
}
