/**
 * Exact motion of `m v' = F(v)` while F is a straight line over v: `v' = a - lambda (v - v0)`.
 * Source: derived.
 */

/** Below this the exponential is its series: the motion is one of constant acceleration. */
const flat = 1e-9;

/** Time the acceleration acts, `(1 - e^(-lambda h))/lambda` [s]: gain of speed over initial acceleration. */
export function effectiveTimeS(dampingPerS: number, stepS: number): number {
  const x = dampingPerS * stepS;
  return x < flat ? stepS * (1 - x / 2) : (1 - Math.exp(-x)) / dampingPerS;
}

/** Speed after a step [m/s]. */
export function speedAfter(
  speedMps: number,
  accelerationMps2: number,
  dampingPerS: number,
  stepS: number,
): number {
  return speedMps + accelerationMps2 * effectiveTimeS(dampingPerS, stepS);
}

/** Mean speed over a step [m/s]: `v0 + a (h - phi)/(lambda h)`. */
export function meanSpeed(
  speedMps: number,
  accelerationMps2: number,
  dampingPerS: number,
  stepS: number,
): number {
  if (stepS <= 0) return speedMps;
  const x = dampingPerS * stepS;
  // The difference h - phi cancels for small x; its series is exact enough below 1e-3.
  const share =
    x < 1e-3
      ? stepS * (0.5 - x / 6 + (x * x) / 24)
      : (stepS - effectiveTimeS(dampingPerS, stepS)) / x;
  return speedMps + accelerationMps2 * share;
}

/** Seconds until the speed reaches `targetMps`; infinite when it never does. */
export function timeToReach(
  speedMps: number,
  accelerationMps2: number,
  dampingPerS: number,
  targetMps: number,
): number {
  const gap = targetMps - speedMps;
  if (gap === 0) return 0;
  if (accelerationMps2 === 0 || !Number.isFinite(gap) || gap / accelerationMps2 < 0)
    return Infinity;
  const ratio = (dampingPerS * gap) / accelerationMps2;
  if (ratio >= 1) return Infinity;
  if (ratio < flat) return gap / accelerationMps2;
  return -Math.log1p(-ratio) / dampingPerS;
}
