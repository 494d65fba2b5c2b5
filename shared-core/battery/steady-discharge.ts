import type { BlockModel } from './block-model.ts';
import { loadedVoltageV } from './end-head.ts';

/**
 * Charge a full block gives at constant current until its loaded voltage meets an end voltage [A·h]: closed form of the
 * two wells, `s(t) = 1 - (I t + a I (1 - e^{-k't})/k')/Q` with `a = (1 - c)/c`, inside a search for the time. Warming is
 * left out.
 *
 * @param currentA above 0 [A] @param endVoltageV of the whole block [V]
 */
export function steadyCapacityAh(model: BlockModel, currentA: number, endVoltageV: number): number {
  const rate = model.levellingPerS;
  const bound = model.availableShare >= 1 ? 0 : (1 - model.availableShare) / model.availableShare;
  const voltageAt = (seconds: number) => {
    const lagS = bound === 0 ? 0 : (-bound * Math.expm1(-rate * seconds)) / rate;
    const head = 1 - (currentA * (seconds + lagS)) / (3600 * model.capacityAh);
    return head <= 0 ? Number.NEGATIVE_INFINITY : loadedVoltageV(model, head, currentA, seconds);
  };
  let low = 0;
  let high = (3600 * model.capacityAh) / currentA;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (voltageAt(middle) > endVoltageV) low = middle;
    else high = middle;
  }
  return (low * currentA) / 3600;
}
