import type { Block } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';

/** Resistance of a BMS with its leads and switches [Ω]. Common practice, no source. */
const bmsOhm = 0.004;

/**
 * Resistance of a new, full block at 25 °C where the user gives none [Ω]: typical of its chemistry, scaled by capacity
 * and number of cell groups. Common practice, no source; makers' figures and readings beat it.
 */
export function defaultResistanceOhm(
  block: Pick<Block, 'chemistry' | 'cellGroups' | 'capacityAh' | 'bms'>,
): number {
  const { typicalOhm, typicalAh, scaling } = chemistryTraits[block.chemistry].resistance;
  const cellOhm = typicalOhm * (typicalAh / block.capacityAh) ** scaling;
  return block.cellGroups * cellOhm + (block.bms === null ? 0 : bmsOhm);
}
