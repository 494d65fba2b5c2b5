import type { ThrottleCurve } from '../plan/schema/motor-control.ts';

/**
 * Duty asked by a pedal position: travel to signal volts, signal to duty between the dead bands, then the curve.
 *
 * @param curve pedal and controller window [V]
 * @param travelPercent pedal travel, 0 to 100 [%]
 * @returns duty, 0 to 1
 * A falling pedal (full below rest) and a falling controller window are read the same way. Source: derived.
 */
export function throttleDuty(curve: ThrottleCurve, travelPercent: number): number {
  const travel = clamp01(travelPercent / 100);
  const signalV = curve.pedalRestV + (curve.pedalFullV - curve.pedalRestV) * travel;
  const windowV = curve.fullV - curve.startV;
  if (windowV === 0) return signalV >= curve.fullV ? 1 : 0;
  return clamp01((signalV - curve.startV) / windowV) ** curve.exponent;
}

function clamp01(value: number): number {
  return value < 0 ? 0 : value > 1 ? 1 : value;
}
