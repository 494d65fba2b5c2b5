import type { RunSeries } from '../run/result.ts';

/**
 * Root mean square of the motor circuit's battery current while it drives, and its peak, from the columns of a run.
 *
 * `I_rms = sqrt(∫ I^2 dt / ∫ dt)` over the time with more than 2 % of the peak, by the trapezoid rule. Standing time is
 * left out because a wire must stand the longest stretch without a pause. Source: derived.
 */
export function motorCurrents(series: Pick<RunSeries, 'timeS' | 'motorCurrentA'>): {
  rmsA: number;
  peakA: number;
} {
  const { timeS, motorCurrentA } = series;
  let peakA = 0;
  for (const current of motorCurrentA) peakA = Math.max(peakA, current);
  let squareA2S = 0;
  let driveS = 0;
  for (let index = 1; index < timeS.length; index += 1) {
    const stepS = timeS[index]! - timeS[index - 1]!;
    const before = motorCurrentA[index - 1]!;
    const after = motorCurrentA[index]!;
    if (stepS <= 0 || Math.max(before, after) <= 0.02 * peakA) continue;
    squareA2S += ((before ** 2 + before * after + after ** 2) / 3) * stepS;
    driveS += stepS;
  }
  return { rmsA: driveS > 0 ? Math.sqrt(squareA2S / driveS) : 0, peakA };
}
