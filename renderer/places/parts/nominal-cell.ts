import { chemistryTraits } from '#core/battery/chemistry.ts';
import type { Chemistry } from '#core/plan/schema/block.ts';

/** Nominal voltage of a cell group [V]. */
export const nominalCellV = (chemistry: Chemistry): number => chemistryTraits[chemistry].nominalV;
