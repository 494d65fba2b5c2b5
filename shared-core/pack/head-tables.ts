import { chemistryTraits } from '../battery/chemistry.ts';
import type { BlockModel } from '../battery/block-model.ts';
import { kneeFactor } from '../battery/knee.ts';
import { readUniform } from '../battery/uniform-table.ts';
import type { UniformTable } from '../battery/uniform-table.ts';

/** Grid of the tables over the head: from a reversed unit to a full one. */
export const headLow = -0.08;
export const headsPerOne = 2000;
const headCount = Math.round((1 - headLow) * headsPerOne) + 1;

/** Largest place on the grid that still has a neighbour above it. */
export const lastPlace = headCount - 1.000001;

/** Place of a head on the grid, held inside it. */
export function placeOfHead(head: number): number {
  return Math.min(lastPlace, Math.max(0, (head - headLow) * headsPerOne));
}

/** Growth of the knee resistance over the head: the same for every block, only its size differs. */
export const kneeTable = Float64Array.from({ length: headCount }, (_, index) =>
  kneeFactor(headLow + index / headsPerOne),
);

/** Fall of a cell's voltage per unit of charge taken from an empty cell, until it is reversed [V]. Common practice, no source. */
const emptyFallV = 60;

interface RestTable {
  readonly chemistry: BlockModel['chemistry'];
  readonly cellGroups: number;
  readonly values: Float64Array;
}

// Blocks of a chemistry share their rest curve, so its table is laid out once and not for every block.
const tableOf = new WeakMap<UniformTable, RestTable>();

/** Open-circuit voltage of a unit over the grid of heads [V], continued below empty down to the reversed cell. */
export function restTable(model: BlockModel): Float64Array {
  const { openCircuit, chemistry, cellGroups } = model;
  const known = tableOf.get(openCircuit);
  if (known !== undefined && known.chemistry === chemistry && known.cellGroups === cellGroups)
    return known.values;
  const { reversedV } = chemistryTraits[chemistry];
  const emptyV = openCircuit.values[0]! / cellGroups;
  const values = new Float64Array(headCount);
  for (let index = 0; index < headCount; index += 1) {
    const head = headLow + index / headsPerOne;
    values[index] =
      head >= 0
        ? readUniform(openCircuit, head)
        : cellGroups * Math.max(reversedV, emptyV + emptyFallV * head);
  }
  tableOf.set(openCircuit, { chemistry, cellGroups, values });
  return values;
}
