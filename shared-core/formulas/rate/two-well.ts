/** Two-well kinetic model of a block (Manwell & McGowan, Solar Energy 50 (1993) 399). */
export interface Wells {
  /** Q: charge of both wells when full [A·h]. */
  readonly capacityAh: number;
  /** c: share of the well that feeds the terminals, above 0 to 1 [1]. */
  readonly availableShare: number;
  /** k': rate at which the wells level, above 0 [1/h]. */
  readonly levellingPerH: number;
}

export interface WellCharge {
  /** q1: charge at the terminals' disposal [A·h]. */
  readonly availableAh: number;
  /** q2: charge that has to flow over first [A·h]. */
  readonly boundAh: number;
}

/** Both wells full. */
export function fullWells({ capacityAh, availableShare }: Wells): WellCharge {
  return { availableAh: capacityAh * availableShare, boundAh: capacityAh * (1 - availableShare) };
}

/**
 * Charge of the wells after a constant current, exactly. With r = exp(-k' t):
 * `q1 = q10 r + (q0 k' c - I)(1 - r)/k' - I c (k' t - 1 + r)/k'`,
 * `q2 = q20 r + q0 (1 - c)(1 - r) - I (1 - c)(k' t - 1 + r)/k'`.
 *
 * Source: Manwell & McGowan 1993 (published).
 *
 * @param start charge at the beginning
 * @param currentA I [A], positive while discharging, 0 at rest
 * @param timeH duration [h], not negative
 * @returns charge at the end; the available one is negative where the block could not carry the current that long
 */
export function advanceWells(
  { availableShare: c, levellingPerH: k }: Wells,
  start: WellCharge,
  currentA: number,
  timeH: number,
): WellCharge {
  const x = k * timeH;
  const r = Math.exp(-x);
  const settled = -Math.expm1(-x);
  const lagged = (x - settled) / k;
  const q0 = start.availableAh + start.boundAh;
  return {
    availableAh:
      start.availableAh * r + ((q0 * k * c - currentA) * settled) / k - currentA * c * lagged,
    boundAh: start.boundAh * r + q0 * (1 - c) * settled - currentA * (1 - c) * lagged,
  };
}
