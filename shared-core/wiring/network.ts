import { solveLinear } from '../numerics/solve-linear.ts';

/** A resistive path between two nodes; supply and return wire together. */
export interface NetworkPath {
  readonly from: number;
  readonly to: number;
  readonly resistanceOhm: number;
}

export interface NetworkSource {
  readonly node: number;
  readonly emfV: number;
  readonly resistanceOhm: number;
}

/** What is drawn at a node: `I(V) = currentA + powerW / V + conductanceS V`. Negative currents feed in. */
export interface NetworkLoad {
  readonly node: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly conductanceS: number;
}

export interface Network {
  readonly nodeCount: number;
  readonly paths: readonly NetworkPath[];
  readonly sources: readonly NetworkSource[];
  readonly loads: readonly NetworkLoad[];
}

export type NetworkSolution =
  | {
      readonly ok: true;
      readonly voltageV: Float64Array;
      /** From `from` to `to` [A]. */
      readonly pathCurrentA: Float64Array;
      /** Out of each source [A]. */
      readonly sourceCurrentA: Float64Array;
    }
  /** No voltage meets the loads of constant power: the supply collapses. */
  | { readonly ok: false; readonly reason: 'collapse' };

/** Below a micro-ohm a path is a solid joint; the floor keeps the equations well conditioned. */
const leastOhm = 1e-6;
/** Leak to the return rail that gives a node without any path to a source the voltage zero. */
const leakS = 1e-9;
const rounds = 80;

/**
 * Node voltages of a direct-current network with loads of constant current, power and resistance (nodal analysis, powers
 * linearised by Newton's method from the unloaded voltage, so that the upper of two solutions is found).
 *
 * @returns voltages against the return rail [V] and currents [A]; collapse where the powers cannot be met
 * Source: derived (Kirchhoff's laws).
 */
export function solveNetwork(network: Network): NetworkSolution {
  const { nodeCount, paths, sources, loads } = network;
  const base = Array.from({ length: nodeCount }, (_, node) => {
    const row = new Float64Array(nodeCount);
    row[node] = leakS;
    return row;
  });
  const injected = new Float64Array(nodeCount);
  const add = (row: number, column: number, value: number) => {
    base[row]![column] = base[row]![column]! + value;
  };
  for (const { from, to, resistanceOhm } of paths) {
    const siemens = 1 / Math.max(leastOhm, resistanceOhm);
    add(from, from, siemens);
    add(to, to, siemens);
    add(from, to, -siemens);
    add(to, from, -siemens);
  }
  for (const { node, emfV, resistanceOhm } of sources) {
    const siemens = 1 / Math.max(leastOhm, resistanceOhm);
    add(node, node, siemens);
    injected[node] = injected[node]! + emfV * siemens;
  }
  for (const { node, currentA, conductanceS } of loads) {
    add(node, node, conductanceS);
    injected[node] = injected[node]! - currentA;
  }
  const powers = loads.filter((load) => load.powerW !== 0);
  let voltageV = solveLinear(
    base.map((row) => row.slice()),
    injected.slice(),
  );
  if (voltageV === null) return { ok: false, reason: 'collapse' };
  for (let round = 0; powers.length > 0; round += 1) {
    if (round === rounds) return { ok: false, reason: 'collapse' };
    const matrix = base.map((row) => row.slice());
    const right = injected.slice();
    for (const { node, powerW } of powers) {
      const at = voltageV[node]!;
      if (!(at > 0)) return { ok: false, reason: 'collapse' };
      matrix[node]![node] = matrix[node]![node]! - powerW / at ** 2;
      right[node] = right[node]! - (2 * powerW) / at;
    }
    const next = solveLinear(matrix, right);
    if (next === null) return { ok: false, reason: 'collapse' };
    const change = next.reduce(
      (largest, value, node) => Math.max(largest, Math.abs(value - voltageV![node]!)),
      0,
    );
    voltageV = next;
    if (change < 1e-10) break;
  }
  const solved = voltageV;
  return {
    ok: true,
    voltageV: solved,
    pathCurrentA: Float64Array.from(
      paths,
      ({ from, to, resistanceOhm }) =>
        (solved[from]! - solved[to]!) / Math.max(leastOhm, resistanceOhm),
    ),
    sourceCurrentA: Float64Array.from(
      sources,
      ({ node, emfV, resistanceOhm }) => (emfV - solved[node]!) / Math.max(leastOhm, resistanceOhm),
    ),
  };
}
