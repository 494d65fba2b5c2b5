import type { Chemistry } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';

/**
 * Usual end voltage of a cell when the maker rates it over `hours` [V]: lead 1.75 V at 10 h and slower, 1.70 V at
 * 3 to 10 h, 1.60 V at 1 h and faster, falling with the logarithm of time between; LFP 2.5 V, NMC 2.5 V.
 *
 * Common practice, no source (makers' tables use these values).
 */
export function ratingEndVoltagePerCell(chemistry: Chemistry, hours: number): number {
  if (chemistryTraits[chemistry].family === 'lithium') return 2.5;
  if (hours >= 10) return 1.75;
  if (hours >= 5) return 1.7 + (0.05 * Math.log(hours / 5)) / Math.log(2);
  if (hours >= 1) return 1.6 + (0.1 * Math.log(hours)) / Math.log(5);
  return 1.6;
}
