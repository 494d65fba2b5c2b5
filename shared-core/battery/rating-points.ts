import type { Block } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';
import { ratingEndVoltagePerCell } from './end-voltage.ts';

/** A statement that the block delivers `capacityAh` at constant current over `hours` until `endVoltageV`. */
export interface RatedPoint {
  readonly hours: number;
  readonly capacityAh: number;
  readonly endVoltageV: number;
  /** Weight in the fit: the rated point itself counts most. */
  readonly weight: number;
}

/** Capacity at another rate by Peukert's law with the rating time: `C_H (I_H/I)^(k-1)`, written for a time. */
function peukertCapacityAh(
  capacityAh: number,
  ratedHours: number,
  exponent: number,
  hours: number,
): number {
  return capacityAh * (hours / ratedHours) ** (1 - 1 / exponent);
}

/**
 * The block's ratings as points, whatever the user gave: his own points, the ends of his curves, or points made with
 * Peukert's exponent at the rated time and at 20, 10, 5 and 1 h.
 */
export function ratedPoints(block: Block): RatedPoint[] {
  const endV = (hours: number) =>
    block.cellGroups * ratingEndVoltagePerCell(block.chemistry, hours);
  const { rating } = block;
  switch (rating.kind) {
    case 'exponent': {
      const exponent = rating.exponent ?? chemistryTraits[block.chemistry].exponent.likely;
      const others = [20, 10, 5, 1].filter(
        (hours) => Math.abs(hours / block.ratedHours - 1) > 0.01,
      );
      return [block.ratedHours, ...others].map((hours) => ({
        hours,
        capacityAh: peukertCapacityAh(block.capacityAh, block.ratedHours, exponent, hours),
        endVoltageV: endV(hours),
        weight: hours === block.ratedHours ? 10 : 1,
      }));
    }
    case 'points':
      return rating.points.map((point) => ({
        hours: point.hours,
        capacityAh: point.capacityAh,
        endVoltageV: point.endVoltageV ?? endV(point.hours),
        weight: Math.abs(point.hours / block.ratedHours - 1) < 0.01 ? 10 : 1,
      }));
    case 'curves':
      return rating.curves.map((curve) => {
        const last = curve.points[curve.points.length - 1]!;
        const hours = last.timeMin / 60;
        return { hours, capacityAh: curve.currentA * hours, endVoltageV: last.voltageV, weight: 1 };
      });
  }
}
