import { chemistryTraits } from '../battery/chemistry.ts';
import { ratedPoints } from '../battery/rating-points.ts';
import { fitPeukert } from '../formulas/rate/peukert-fit.ts';
import { peukertTimeH } from '../formulas/rate/peukert-time.ts';
import type { Block } from '../plan/schema/block.ts';
import type { Pack } from '../plan/schema/option.ts';

/** Peukert exponent of a block: as given, fitted to its rating points, or the default of its chemistry. */
export function blockExponent(block: Block): number {
  if (block.rating.kind === 'exponent')
    return block.rating.exponent ?? chemistryTraits[block.chemistry].exponent.likely;
  const points = ratedPoints(block);
  const fit = fitPeukert(
    points.map((point) => point.hours),
    points.map((point) => point.capacityAh),
  );
  return fit === null ? 1 : Math.max(1, fit.exponent);
}

/**
 * Minutes by dividing the label's ampere-hours by the average current: what most people reckon. Null where nothing is
 * drawn or nothing is in the pack.
 */
export function plainMinutes(
  pack: Pack,
  averageCurrentA: number,
  startPercent: number,
): number | null {
  if (averageCurrentA <= 0 || startPercent <= 0) return null;
  return (60 * pack.parallelCount * pack.block.capacityAh * (startPercent / 100)) / averageCurrentA;
}

/** Peukert's quick figure at the average current [min], each string carrying its share; null as above. */
export function peukertMinutes(
  pack: Pack,
  averageCurrentA: number,
  startPercent: number,
): number | null {
  if (averageCurrentA <= 0 || startPercent <= 0) return null;
  const { block, parallelCount } = pack;
  const hours = peukertTimeH(
    block.capacityAh,
    block.ratedHours,
    averageCurrentA / parallelCount,
    blockExponent(block),
  );
  return 60 * hours * (startPercent / 100);
}
