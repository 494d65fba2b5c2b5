import type { Routine, Weekday } from '../plan/schema/week.ts';

/** An outing of the week that could not be driven as wanted. */
export interface FailedOuting {
  readonly usageId: string;
  readonly outingId: string;
  readonly day: Weekday;
  readonly startMin: number;
  /** How often it was wanted and how often it fell short. */
  readonly wanted: number;
  readonly failed: number;
  readonly wantedMin: number;
  /** Minutes the shortest of them lasted. */
  readonly shortestMin: number;
  /** Temperature then [°C]. */
  readonly temperatureC: number;
}

/** A stretch of a typical week, for the strip and the trace. */
export interface WeekStretch {
  readonly kind: 'outing' | 'charge' | 'plugged' | 'parked';
  /** Minutes after Monday 0:00. */
  readonly startMin: number;
  readonly endMin: number;
  /** 1 or 2. */
  readonly pack: number;
  readonly fromPercent: number;
  readonly toPercent: number;
  readonly usageId: string | null;
  readonly failed: boolean;
}

/** What a routine makes of a season. */
export interface SeasonResult {
  readonly trigger: Routine['trigger'];
  readonly weeks: number;
  readonly outings: number;
  readonly failedOutings: number;
  readonly failures: readonly FailedOuting[];
  /** Outings that ended below the lowest charge wanted. */
  readonly belowMinimum: number;
  readonly lowestPercent: number;
  readonly meanDepthPercent: number;
  readonly deepestPercent: number;
  /** Full-depth equivalents of the season, of the pack that did most. */
  readonly equivalentCycles: number;
  /** Years until a fifth of the capacity is gone at this use. */
  readonly expectedSeasons: number;
  readonly fullCharges: number;
  /** Longest time between two full charges while in use [days]. */
  readonly longestWithoutFullDays: number;
  readonly mainsKWh: number;
  /** In the plan's currency; null without a price. */
  readonly cost: number | null;
  readonly chargingHours: number;
  readonly unattendedHours: number;
  /** Hours in which a window stood open but lithium was too cold to charge. */
  readonly coldHours: number;
  /** Per week: charge on Monday 0:00, lowest charge, outings that failed, mean temperature. */
  readonly weekStartPercent: Float64Array;
  readonly weekLowestPercent: Float64Array;
  readonly weekFailed: Float64Array;
  readonly weekTemperatureC: Float64Array;
}
