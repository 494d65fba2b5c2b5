import type { WiringBranch, WiringDevice } from '../plan/schema/wiring-branch.ts';
import type { Wiring } from '../plan/schema/wiring.ts';

/** A stretch of wiring with one supply of its own: the pack, a tap between blocks, or the output of a converter or controller. */
export interface Zone {
  readonly kind: 'pack' | 'mid-point' | 'converter' | 'controller';
  /** Device that feeds it. */
  readonly deviceId: string;
  /** Node at which it is fed. */
  readonly node: number;
}

export interface TopologyBranch {
  readonly branch: WiringBranch;
  readonly index: number;
  readonly from: number;
  readonly to: number;
  /** Index into `zones`; null where no supply reaches it. */
  readonly zone: number | null;
  /** Indices of the branches from the zone's supply up to and with this one. */
  readonly path: readonly number[];
}

export interface Topology {
  readonly devices: readonly WiringDevice[];
  /** Node on the source side of each device, by identifier. */
  readonly inputNode: ReadonlyMap<string, number>;
  /** Node from which the device feeds others: its own for plain ones, a second for converter and controller. */
  readonly outputNode: ReadonlyMap<string, number>;
  readonly nodeCount: number;
  readonly zones: readonly Zone[];
  readonly branches: readonly TopologyBranch[];
  /** Zone in which each node lies, or null. */
  readonly nodeZone: readonly (number | null)[];
}

/** Converter and controller have an input and an output that are not one node. */
export function isTwoSided(device: WiringDevice): boolean {
  return device.kind === 'converter' || device.kind === 'controller';
}

/** Reads the wiring as a graph: nodes, zones, and the way from each zone's supply to each branch. */
export function readTopology(wiring: Pick<Wiring, 'devices' | 'branches'>): Topology {
  const { devices, branches } = wiring;
  const inputNode = new Map<string, number>();
  const outputNode = new Map<string, number>();
  let nodeCount = 0;
  for (const device of devices) {
    inputNode.set(device.id, nodeCount);
    nodeCount += 1;
    outputNode.set(device.id, isTwoSided(device) ? nodeCount : nodeCount - 1);
    if (isTwoSided(device)) nodeCount += 1;
  }
  const known = branches
    .map((branch, index) => ({
      branch,
      index,
      from: outputNode.get(branch.from),
      to: inputNode.get(branch.to),
    }))
    .filter(
      (entry): entry is typeof entry & { from: number; to: number } =>
        entry.from !== undefined && entry.to !== undefined,
    );
  const zones = supplyZones(devices, inputNode, outputNode);
  const nodeZone = Array.from<number | null>({ length: nodeCount }).fill(null);
  const pathTo = new Map<number, readonly number[]>();
  zones.forEach((zone, zoneIndex) => {
    if (nodeZone[zone.node] !== null) return;
    nodeZone[zone.node] = zoneIndex;
    pathTo.set(zone.node, []);
    const queue = [zone.node];
    for (let place = 0; place < queue.length; place += 1) {
      const node = queue[place]!;
      known.forEach((entry, position) => {
        const next = entry.from === node ? entry.to : entry.to === node ? entry.from : null;
        if (next === null || nodeZone[next] !== null) return;
        nodeZone[next] = zoneIndex;
        pathTo.set(next, [...pathTo.get(node)!, position]);
        queue.push(next);
      });
    }
  });
  return {
    devices,
    inputNode,
    outputNode,
    nodeCount,
    zones,
    nodeZone,
    branches: known.map((entry, position) => {
      const zone = nodeZone[entry.from]!;
      const toFrom = pathTo.get(entry.from) ?? [];
      const toTo = pathTo.get(entry.to) ?? [];
      return {
        ...entry,
        zone: zone ?? null,
        path: toFrom.includes(position)
          ? toFrom
          : toTo.includes(position)
            ? toTo
            : [...toFrom, position],
      };
    }),
  };
}

function supplyZones(
  devices: readonly WiringDevice[],
  inputNode: ReadonlyMap<string, number>,
  outputNode: ReadonlyMap<string, number>,
): Zone[] {
  const zones: Zone[] = [];
  const main =
    devices.find((device) => device.kind === 'string') ??
    devices.find((device) => device.kind === 'pack');
  if (main !== undefined)
    zones.push({ kind: 'pack', deviceId: main.id, node: inputNode.get(main.id)! });
  for (const device of devices) {
    if (device.kind === 'mid-point')
      zones.push({ kind: 'mid-point', deviceId: device.id, node: inputNode.get(device.id)! });
    if (device.kind === 'converter' || device.kind === 'controller') {
      zones.push({ kind: device.kind, deviceId: device.id, node: outputNode.get(device.id)! });
    }
  }
  return zones;
}
