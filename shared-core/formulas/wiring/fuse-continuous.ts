import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { bladeFuseContinuousShare } from './blade-fuse-gates.ts';

/** Largest continuous load of a blade fuse at 25 °C [A]: 75 % of its rating (published in makers' guides). */
export function fuseContinuousA(ratingA: number): number {
  return bladeFuseContinuousShare * ratingA;
}

export const fuseContinuousFormula = defineFormula({
  id: 'fuse-continuous',
  title: 'Continuous load of a blade fuse',
  equation: 'I <= 0.75 I_rated; I_rated >= I_load/0.75',
  inputs: {
    ratingA: number('A', 0.5, 500, 'rating of the fuse'),
    loadA: number('A', 0, 500, 'continuous load', 0),
  },
  outputs: {
    continuousA: ['A', 'largest continuous load'],
    leastRatingA: ['A', 'least rating for the load'],
  },
  assumptions: '25 °C around the fuse.',
  validity: 'Blade fuses; hotter places allow less.',
  source: { class: 'published', citation: 'makers’ guides: 75 % of the rating at 25 °C' },
  compute: ({ ratingA, loadA }) => ({
    values: {
      continuousA: fuseContinuousA(ratingA),
      leastRatingA: loadA / bladeFuseContinuousShare,
    },
  }),
});
