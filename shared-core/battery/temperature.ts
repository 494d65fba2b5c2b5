import type { Chemistry } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';
import { monotoneCurve } from './monotone-curve.ts';

/** NMC cell of 1.5 Ah at 10 A: share of capacity against temperature, published measurement. */
const lithiumShare = monotoneCurve([
  [-30, 0.45],
  [-20, 0.6],
  [-10, 0.75],
  [0, 0.8],
  [25, 1],
  [40, 1.02],
  [60, 1.02],
]);

/**
 * Share of the rated capacity that a block gives at a temperature.
 *
 * Lead: `1 + lambda (theta - 20)` with lambda 0.006 /K for discharges of 10 h and slower and 0.01 /K for 3 h and faster
 * (IEC 60896-21, clause on capacity), interpolated in the logarithm of time; kept above 0.3. Lithium: measured shares at
 * -20, -10, 0 and 25 °C; the ends are extrapolated (common practice, no source).
 *
 * @param temperatureC block temperature [°C], -30 to 60
 * @param hours discharge time the share is for [h]
 * @returns share [1], 1 at the rating temperature
 */
export function capacityShareAtTemperature(
  chemistry: Chemistry,
  temperatureC: number,
  hours: number,
): number {
  if (chemistryTraits[chemistry].family === 'lithium') return lithiumShare(temperatureC);
  const slow = Math.min(1, Math.max(0, Math.log(hours / 3) / Math.log(10 / 3)));
  const lambda = 0.01 + (0.006 - 0.01) * slow;
  return Math.max(0.3, 1 + lambda * (temperatureC - 20));
}

/**
 * Factor on the resistance at a temperature: `exp(rate (25 - temperature))`, 1 at 25 °C. Common practice, no source.
 *
 * @param temperatureC block temperature [°C], -30 to 60
 */
export function resistanceFactorAtTemperature(chemistry: Chemistry, temperatureC: number): number {
  return Math.exp(chemistryTraits[chemistry].resistanceColdRatePerK * (25 - temperatureC));
}

/** Capacity share at a temperature against the share at the chemistry's own rating temperature [1]. */
export function shareAgainstRating(
  chemistry: Chemistry,
  temperatureC: number,
  hours: number,
): number {
  const { ratedC } = chemistryTraits[chemistry];
  return (
    capacityShareAtTemperature(chemistry, temperatureC, hours) /
    capacityShareAtTemperature(chemistry, ratedC, hours)
  );
}
