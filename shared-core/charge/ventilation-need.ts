import { chemistryTraits } from '../battery/chemistry.ts';
import {
  gasCurrents,
  ventilationM3PerH,
  ventilationOpeningCm2,
} from '../formulas/charge/ventilation.ts';
import type { Pack } from '../plan/schema/option.ts';

/** Fresh air a lead pack needs while it is charged. */
export interface VentilationNeed {
  readonly flowM3PerH: number;
  /** Free area of the inlet, and of the outlet again [cm²]. */
  readonly openingCm2: number;
}

/**
 * Fresh air of the whole pack at boost charge by IEC 62485-2 (written for stationary and traction batteries, used here as
 * a guide): cells in series, the strings' capacities added. Null for lithium, which sets free no gas in normal charging.
 */
export function ventilationNeed(pack: Pack): VentilationNeed | null {
  const { block, seriesCount, parallelCount } = pack;
  if (chemistryTraits[block.chemistry].family === 'lithium') return null;
  const gas = gasCurrents[block.chemistry === 'flooded' ? 'vented' : 'vrla'].boost;
  const flowM3PerH = ventilationM3PerH(
    block.cellGroups * seriesCount,
    gas,
    block.capacityAh * parallelCount,
  );
  return { flowM3PerH, openingCm2: ventilationOpeningCm2(flowM3PerH) };
}
