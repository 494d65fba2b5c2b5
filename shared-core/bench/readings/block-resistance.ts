import { buildBlockModel } from '../../battery/index.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Reading } from '../../plan/schema/reading.ts';

type Loaded = Extract<Reading, { kind: 'loaded-voltage' }>;

/** A resistance found from two volts and two currents, with its error. */
export interface MeasuredResistance {
  readonly ohm: number;
  /** One-sided error from the meters' accuracy [Ω]. */
  readonly errorOhm: number;
}

/**
 * Resistance `(V0 - V)/(I - I0)` and its error. The error of one meter falls out of a difference of its own readings except
 * for its step, taken as a tenth of its accuracy; the clamp's accuracy counts in full. Derived.
 *
 * @returns null where the currents do not differ
 */
export function measuredResistance(reading: Loaded): MeasuredResistance | null {
  const stepA = reading.currentA - reading.beforeA;
  if (!(Math.abs(stepA) > 0)) return null;
  const ohm = (reading.beforeV - reading.loadedV) / stepA;
  const share = reading.accuracyPercent / 100;
  const volts = (0.1 * share * reading.beforeV * Math.SQRT2) / Math.abs(stepA);
  return { ohm, errorOhm: Math.hypot(volts, Math.abs(ohm) * share) };
}

/** What the plan's model shows as resistance of the same place after the same seconds on load [Ω]. */
export function plannedResistanceOhm(option: Option, reading: Loaded): number {
  const { pack } = option;
  const difference = pack.differences.find(
    (entry) => entry.string === reading.string && entry.position === reading.position,
  );
  const ohmOf = (resistancePercent: number, ageYears: number) => {
    const model = buildBlockModel(pack.block, {
      temperatureC: reading.blockTemperatureC ?? pack.block.fitted?.temperatureC ?? 25,
      ageYears,
      cyclesDone: pack.cyclesDone,
      capacityPercent: 100,
      resistancePercent,
    });
    return (
      model.resistanceOhm -
      model.polarisationOhm * Math.expm1(-reading.secondsOnLoad / model.polarisationS)
    );
  };
  if (reading.position > 0)
    return ohmOf(difference?.resistancePercent ?? 100, difference?.ageYears ?? pack.ageYears);
  return (
    (ohmOf(100, pack.ageYears) * pack.seriesCount + pack.linkResistanceOhm) / pack.parallelCount
  );
}
