import type { Words } from '../../plan/language.ts';
import type { Scenario } from '../scenario.ts';

/** The assumptions that are varied. Stable: used by the command line, in files and tests. */
export const inputIds = [
  'capacity',
  'exponent',
  'resistance',
  'wear',
  'start-charge',
  'temperature',
  'motor-load',
  'standing-time',
  'rolling-resistance',
  'payload',
  'throttle-use',
  'accessory-load',
  'converter-loss',
  'wiring-resistance',
  'cutoff-voltage',
] as const;
export type InputId = (typeof inputIds)[number];

/** Where a range comes from, from worst known to best known. */
export type RangeClass = 'usual-for-kind' | 'library' | 'entered' | 'rated-points' | 'measured';

/**
 * What may be said of a figure: one case in ten lies below `low`, half below `likely`, one in ten above `high`.
 * `likely` is the value the plan runs with.
 */
export interface InputRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** One uncertain assumption of a scenario. */
export interface UncertainInput extends InputRange {
  readonly id: InputId;
  /** Inputs with the same key are the same thing in the world and are drawn together, whatever option they stand in. */
  readonly key: string;
  readonly label: Words;
  readonly unit: string;
  /** `ratio` where errors multiply (capacity, resistance), `difference` where they add (temperature, volts). */
  readonly shape: 'ratio' | 'difference';
  /** The value never leaves these limits. */
  readonly least: number;
  readonly most: number;
  readonly rangeClass: RangeClass;
  readonly source: string;
  /** How it can be measured; null where it cannot be known before the day. */
  readonly measure: Words | null;
  /** The scenario with this value in place of the plan's. */
  readonly apply: (scenario: Scenario, value: number) => Scenario;
}
