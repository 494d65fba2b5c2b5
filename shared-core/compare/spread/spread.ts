import type { EndCause } from '../../run/result.ts';
import type { EstimatedPercentile } from './percentile-error.ts';

/** Figures of some rows of the sample, one value for each option and row; what a worker hands back. */
export interface SpreadPart {
  readonly from: number;
  readonly to: number;
  /** By option, in the order of the plan. */
  readonly runTimeMin: readonly Float64Array[];
  readonly endedBy: readonly (readonly EndCause[])[];
}

/** Low, likely, high and what hangs on them, of one option. */
export interface OptionSpread {
  readonly id: string;
  readonly name: string;
  /** The run with every assumption at its likely value, as on screen. */
  readonly plannedMin: number;
  readonly low: EstimatedPercentile;
  readonly likely: EstimatedPercentile;
  readonly high: EstimatedPercentile;
  /** Share of the cases that reach the goal [%]; null without a goal. */
  readonly goalPercent: number | null;
  /** Causes of the end, by share of the cases [%], most frequent first. */
  readonly endings: readonly { readonly cause: EndCause; readonly percent: number }[];
  /** Run times of the cases, rising. */
  readonly sortedMin: Float64Array;
  readonly histogram: Histogram;
}

export interface Histogram {
  /** Edges of the classes [min], one more than the counts. */
  readonly edgesMin: Float64Array;
  readonly counts: Float64Array;
}

/** How often the first of two options outlasts the second, on the same cases. */
export interface PairedComparison {
  readonly firstId: string;
  readonly secondId: string;
  /** Share of the cases in which the first runs longer [%]; ties count half. */
  readonly firstOutlastsPercent: number;
  /** Run time of the first less that of the second [min]. */
  readonly low: EstimatedPercentile;
  readonly likely: EstimatedPercentile;
  readonly high: EstimatedPercentile;
}

export interface PlanSpread {
  readonly outingId: string;
  readonly goalMin: number;
  readonly caseCount: number;
  readonly seed: number;
  readonly options: readonly OptionSpread[];
  readonly comparisons: readonly PairedComparison[];
}
