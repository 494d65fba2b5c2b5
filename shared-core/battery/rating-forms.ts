import type { Block, Rating } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';
import { ratingEndVoltagePerCell } from './end-voltage.ts';
import { ratedPoints } from './rating-points.ts';

const threeDigits = (value: number): number => Number(value.toPrecision(3));

/**
 * The block's rate behaviour said in another form, as a beginning that the user replaces by the maker's figures: an
 * exponent becomes the points it implies, points become a first curve at the rated current. What an exponent cannot say
 * is given up: it becomes not known.
 *
 * @param block its present rating, capacity [A·h], rated time [h] and chemistry count
 * @param kind form wanted
 * @returns a rating of that kind; the present one where it is of that kind already
 * Source: derived from the block's own figures; a first curve falls straight from the open-circuit voltage at full to
 * the usual end voltage (common practice, no source).
 */
export function ratingOfKind(block: Block, kind: Rating['kind']): Rating {
  if (block.rating.kind === kind) return block.rating;
  if (kind === 'exponent') return { kind, exponent: null };
  if (kind === 'points') {
    const points = ratedPoints(block)
      .toSorted((one, other) => other.hours - one.hours)
      .map(({ hours, capacityAh }) => ({
        hours: threeDigits(hours),
        capacityAh: threeDigits(capacityAh),
        endVoltageV: null,
      }));
    const rated = { hours: block.ratedHours, capacityAh: block.capacityAh, endVoltageV: null };
    return { kind, points: points.length > 1 ? points : [rated, halfTime(rated)] };
  }
  const hours = block.ratedHours;
  const fullV = block.cellGroups * chemistryTraits[block.chemistry].nominalV;
  const endV = block.cellGroups * ratingEndVoltagePerCell(block.chemistry, hours);
  return {
    kind,
    curves: [
      {
        currentA: threeDigits(block.capacityAh / hours),
        points: [0, 0.5, 1].map((share) => ({
          timeMin: threeDigits(60 * hours * share),
          voltageV: threeDigits(fullV + share * (Math.min(fullV, endV) - fullV)),
        })),
      },
    ],
  };
}

/** A second point at half the time with a little less charge, for a rating of one curve only. */
const halfTime = (point: { hours: number; capacityAh: number; endVoltageV: null }) => ({
  ...point,
  hours: threeDigits(point.hours / 2),
  capacityAh: threeDigits(0.95 * point.capacityAh),
});
