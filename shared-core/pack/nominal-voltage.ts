import { chemistryTraits } from '../battery/chemistry.ts';
import type { Option } from '../plan/schema/option.ts';

/** Nominal voltage of an option's pack [V]. */
export function nominalVoltageV({ pack }: Pick<Option, 'pack'>): number {
  return pack.seriesCount * pack.block.cellGroups * chemistryTraits[pack.block.chemistry].nominalV;
}
