import type { WeekStretch } from './season-result.ts';

/** A pack on its way through the season. */
export interface PackState {
  percent: number;
  /** Charge at the end of the last charge. */
  peakPercent: number;
  /** Lowest charge since then. */
  troughPercent: number;
  wear: number;
  equivalentCycles: number;
  lastFullMin: number;
  usedSinceFull: boolean;
}

export function startPackState(percent: number): PackState {
  return {
    percent,
    peakPercent: percent,
    troughPercent: percent,
    wear: 0,
    equivalentCycles: 0,
    lastFullMin: 0,
    usedSinceFull: false,
  };
}

/** Sums of a season. */
export interface SeasonTally {
  fullCharges: number;
  longestWithoutFullMin: number;
  mainsWh: number;
  cost: number;
  chargingHours: number;
  unattendedHours: number;
  coldHours: number;
  lowestPercent: number;
  belowMinimum: number;
  failed: number;
  depthSum: number;
  deepest: number;
}

export function startTally(): SeasonTally {
  return {
    fullCharges: 0,
    longestWithoutFullMin: 0,
    mainsWh: 0,
    cost: 0,
    chargingHours: 0,
    unattendedHours: 0,
    coldHours: 0,
    lowestPercent: 100,
    belowMinimum: 0,
    failed: 0,
    depthSum: 0,
    deepest: 0,
  };
}

/** Collects the stretches of one week where a trace is wanted. */
export interface Trace {
  readonly fromMin: number;
  readonly untilMin: number;
  readonly stretches: WeekStretch[];
}
