import { e12Near } from '../drive/e12.ts';
import type { Precharge } from '../formulas/wiring/precharge.ts';

const powersW = [1, 2, 3, 5, 10, 17, 25, 50, 100, 250, 1000] as const;

/**
 * A resistor as shops keep it for a precharge: the next E12 value upward, and a power that stands the pulse. Up to 5 s a
 * metal-element power resistor stands five times its rating (MIL-PRF-49465, from memory); longer pulses get the full rating.
 */
export function prechargePart(advised: Precharge): { prechargeOhm: number; prechargeW: number } {
  const askedW = advised.timeS <= 5 ? advised.peakW / 5 : advised.peakW;
  return {
    prechargeOhm: e12Near(advised.resistanceOhm).above,
    prechargeW: powersW.find((powerW) => powerW >= askedW) ?? 1000,
  };
}
