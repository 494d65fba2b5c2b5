import type { BlockModel } from './block-model.ts';
import { kneeFactor } from './knee.ts';
import { readUniform } from './uniform-table.ts';

type Electrical = Pick<
  BlockModel,
  'openCircuit' | 'hysteresisV' | 'resistanceOhm' | 'kneeOhm' | 'polarisationOhm' | 'polarisationS'
>;

/**
 * Loaded voltage of a block at head `head` after `seconds` of constant current:
 * `OCV(s) - h - I (R0 + K f(s) + R1 (1 - e^{-t/tau}))` with h the discharging half of the hysteresis [V].
 */
export function loadedVoltageV(
  block: Electrical,
  head: number,
  currentA: number,
  seconds: number,
): number {
  const ohm =
    block.resistanceOhm +
    block.kneeOhm * kneeFactor(head) -
    block.polarisationOhm * Math.expm1(-seconds / block.polarisationS);
  return readUniform(block.openCircuit, head) - block.hysteresisV - currentA * ohm;
}

/**
 * Head of the available well at which a constant current meets an end voltage, in [0, 0.95]. 0 when even an empty block
 * stands above it; 0.95 when the current pulls a full block below it (the rating then contradicts the resistance).
 */
export function endHead(
  block: Electrical,
  currentA: number,
  seconds: number,
  endVoltageV: number,
): number {
  let low = 0;
  let high = 0.95;
  if (loadedVoltageV(block, low, currentA, seconds) >= endVoltageV) return low;
  if (loadedVoltageV(block, high, currentA, seconds) <= endVoltageV) return high;
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (loadedVoltageV(block, middle, currentA, seconds) < endVoltageV) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
