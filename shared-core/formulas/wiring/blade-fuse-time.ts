import { interpolateLogLog } from '../../numerics/interpolate-table.ts';
import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { bladeFuseGates, bladeFuseHolds } from './blade-fuse-gates.ts';

/** When a blade fuse opens. `between`: no gate says whether and when. */
export type BladeFuseOpening =
  | { readonly kind: 'holds'; readonly atLeastS: number }
  | { readonly kind: 'between' }
  | { readonly kind: 'opens'; readonly earliestS: number; readonly latestS: number };

const lastGate = bladeFuseGates[bladeFuseGates.length - 1]!;

/**
 * Time in which a blade fuse opens, between its gates by power laws. Above the last gate only the latest time is sure.
 *
 * From memory of ISO 8820-3; between the gates derived.
 *
 * @param timesRating current against rating [1], not negative
 */
export function bladeFuseOpening(timesRating: number): BladeFuseOpening {
  if (timesRating <= bladeFuseHolds.times)
    return { kind: 'holds', atLeastS: bladeFuseHolds.atLeastS };
  if (timesRating < bladeFuseGates[0].times) return { kind: 'between' };
  const read = (key: 'earliestS' | 'latestS') =>
    interpolateLogLog(
      bladeFuseGates.map((gate) => [gate.times, gate[key]]),
      timesRating,
    );
  const earliestS = timesRating > lastGate.times ? 0 : read('earliestS');
  return { kind: 'opens', earliestS, latestS: read('latestS') };
}

export const bladeFuseTimeFormula = defineFormula({
  id: 'blade-fuse-time',
  title: 'Time in which a blade fuse opens',
  equation: 'gates by multiple of the rating, power law between them',
  inputs: {
    ratingA: number('A', 0.5, 500, 'rating of the fuse'),
    currentA: number('A', 0, 100_000, 'current'),
  },
  outputs: {
    timesRating: ['1', 'current against rating'],
    opening: ['', 'holds, between, or opens'],
    earliestS: ['s', 'earliest time; for a fuse that holds, the time it holds at least'],
    latestS: ['s', 'latest time; none where it need not open'],
  },
  assumptions: '23 °C, fuse new, holder sound.',
  validity: 'Up to the breaking capacity; the sheet of the fuse comes first.',
  source: { class: 'from-memory', citation: 'ISO 8820-3, time gates' },
  compute: ({ ratingA, currentA }) => {
    const timesRating = currentA / ratingA;
    const opening = bladeFuseOpening(timesRating);
    const earliestS =
      opening.kind === 'opens'
        ? opening.earliestS
        : opening.kind === 'holds'
          ? opening.atLeastS
          : null;
    return {
      values: {
        timesRating,
        opening: opening.kind,
        earliestS,
        latestS: opening.kind === 'opens' ? opening.latestS : null,
      },
      steps: [step('Current against rating', timesRating, '1')],
    };
  },
});
