import { refresh, solveBus } from '../pack/circuit-step.ts';
import { createCircuit } from '../pack/circuit.ts';
import type { PackModel } from '../pack/pack-model.ts';

/** Surges below this are the noise of equal strings [A]. */
const noticeableA = 0.05;

/**
 * Largest current through one string at the moment the strings are joined, without any load [A]:
 * `(E1 - E2)/(R1 + R2)` for two strings (derived). Null for a single string or strings that stand at the same voltage.
 */
export function joiningSurgeA(pack: PackModel, ambientC: number): number | null {
  if (pack.strings.length < 2) return null;
  const circuit = createCircuit(pack, ambientC);
  refresh(circuit);
  solveBus(circuit, { currentA: 0, powerW: 0, conductanceS: 0 }, 0);
  const surgeA = Math.max(...circuit.stringCurrentA.map(Math.abs));
  return surgeA > noticeableA ? surgeA : null;
}
