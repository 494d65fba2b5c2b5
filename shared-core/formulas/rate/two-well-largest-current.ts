import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import type { Wells } from './two-well.ts';
import { wellInputs, wellSource } from './two-well-inputs.ts';

/**
 * Largest constant current a full block carries over a time:
 * `I = Q k' c / (1 - e^{-k' T} + c (k' T - 1 + e^{-k' T}))`.
 *
 * Source: Manwell & McGowan 1993 (published).
 *
 * @param timeH T [h], above 0
 * @returns current [A]
 */
export function largestWellCurrentA(
  { capacityAh, availableShare, levellingPerH }: Wells,
  timeH: number,
): number {
  const x = levellingPerH * timeH;
  const settled = -Math.expm1(-x);
  return (capacityAh * levellingPerH * availableShare) / (settled + availableShare * (x - settled));
}

export const twoWellLargestCurrentFormula = defineFormula({
  id: 'two-well-largest-current',
  title: 'Largest constant current over a time (two wells)',
  equation: 'I = Q k′ c/(1 - e^(-k′ T) + c (k′ T - 1 + e^(-k′ T)))',
  inputs: { ...wellInputs, timeH: number('h', 1e-4, 10_000, 'time the current must last') },
  outputs: {
    currentA: ['A', 'largest constant current'],
    deliveredAh: ['A·h', 'charge delivered in that time'],
  },
  assumptions: 'Full block, constant parameters.',
  validity: 'Times like those the parameters were fitted to.',
  source: wellSource,
  compute: ({ timeH, ...wells }) => {
    const currentA = largestWellCurrentA(wells, timeH);
    return {
      values: { currentA, deliveredAh: currentA * timeH },
      steps: [step('k′ T', wells.levellingPerH * timeH, '1')],
    };
  },
});
