import { convertShown } from '../text/shown-unit.ts';
import { spinStep, type QuantityRange } from './quantity-range.ts';

/** Stretch of a slider, in the unit the field is shown in. */
export interface TrialRange {
  readonly low: number;
  readonly high: number;
  readonly step: number;
}

/** Degrees a trial of a temperature goes down and up. */
const degrees = 30;
/** Share of the value a trial goes down to, and multiple it goes up to. */
const lowest = 0.25;
const highest = 2.5;

/**
 * The values worth trying around `start`: shares of a hundred whole, temperatures some way down and up, everything else
 * from a quarter to two and a half times the value; never outside of what the field may hold.
 *
 * @param start value before the trial, in the shown unit
 * @param range in the stored unit
 */
export function trialRange(
  start: number,
  range: QuantityRange,
  stored: string,
  shown: string,
  integer: boolean,
): TrialRange {
  const step = integer ? 1 : spinStep(start, false) / 2;
  const bound = (value: number | null, open: number): number =>
    value === null ? open : convertShown(value, stored, shown);
  const ends = [bound(range.min, -Infinity), bound(range.max, Infinity)].toSorted((a, b) => a - b);
  const min = (ends[0] ?? -Infinity) + (range.aboveMin ? step : 0);
  const max = ends[1] ?? Infinity;
  const isShare = shown === '%' && max <= 200;
  const isTemperature = shown === '°C' || shown === '°F';
  const wanted = isShare
    ? { low: min, high: max }
    : isTemperature
      ? { low: start - degrees, high: start + degrees }
      : start > 0
        ? { low: lowest * start, high: Math.max(highest * start, start + 2 * step) }
        : { low: highest * start, high: start + 20 * step };
  const onStep = (value: number): number => start + Math.round((value - start) / step) * step;
  const inside = (value: number): number => Math.min(max, Math.max(min, value));
  const dustless = (value: number): number => Number(value.toPrecision(10));
  return {
    low: dustless(inside(onStep(wanted.low))),
    high: dustless(inside(onStep(wanted.high))),
    step: dustless(step),
  };
}
