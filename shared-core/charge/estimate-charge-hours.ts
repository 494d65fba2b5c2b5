import { chemistryTraits } from '../battery/chemistry.ts';
import type { Chemistry } from '../plan/schema/block.ts';

/** What the staged estimate needs to know. */
export interface ChargeEstimateInput {
  readonly chemistry: Chemistry;
  /** Capacity of the whole pack [A·h]. */
  readonly capacityAh: number;
  /** Charge in the pack at the start [%]. */
  readonly remainingPercent: number;
  /** Current of the first phase [A]. */
  readonly currentA: number;
  /** Current at which the charger calls it full [A]; null: 0.1 of the charge current. */
  readonly tailCurrentA: number | null;
  readonly maximumHours: number | null;
}

/**
 * Time constant of the falling current [h] and the charge put in per charge taken out.
 * Lead: about an hour, factor 1.10 (published charge factor); lithium: minutes, 1.0. The time constants are common
 * practice, no source.
 */
const acceptance = {
  lead: { tauH: 1.1, factor: 1.1 },
  lithium: { tauH: 0.12, factor: 1 },
} as const;

/**
 * Hours to full in two stages: constant current until what is missing equals `I * tau`, then a current that falls as
 * `exp(-t/tau)` until the tail current. This is the linear open-circuit form of a CC-CV charge (derived), with `tau`
 * typical of the chemistry.
 *
 * @returns hours [h], 0 for a full pack, never above `maximumHours`
 */
export function estimateChargeHours(input: ChargeEstimateInput): number {
  const { tauH, factor } = acceptance[chemistryTraits[input.chemistry].family];
  const missingAh = Math.max(0, (1 - input.remainingPercent / 100) * input.capacityAh) * factor;
  if (missingAh === 0) return 0;
  const tailA = input.tailCurrentA ?? 0.1 * input.currentA;
  const atTurnAh = Math.min(missingAh, input.currentA * tauH);
  const constantH = (missingAh - atTurnAh) / input.currentA;
  const turnA = atTurnAh / tauH;
  const fallingH = turnA > tailA ? tauH * Math.log(turnA / tailA) : 0;
  return Math.min(constantH + fallingH, input.maximumHours ?? Number.POSITIVE_INFINITY);
}
