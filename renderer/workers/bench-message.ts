import type { BlockFit, LogDoubt, LogMapping, LogProblem, Prediction } from '#core/bench/index.ts';
import type { RoadSample } from '#core/bench/road/road-sample.ts';
import type { UnitLayout } from '#core/bench/fit/fit-run.ts';
import type { LogLoad } from '#core/plan/schema/leg-load.ts';
import type { Plan } from '#core/plan/schema/plan.ts';

export interface RunSummary {
  readonly name: string;
  readonly rows: number;
  readonly minutes: number;
  readonly dischargedAh: number;
  readonly currentA: number;
  readonly lowestV: number;
  /** Stretches of a drive, where speed was logged; few enough to hand over. Their surface is not known here. */
  readonly drive: readonly RoadSample[];
  readonly notes: {
    readonly sortedRows: number;
    readonly gaps: number;
    readonly longestGapS: number;
    readonly turned: boolean;
  };
}

export interface LogSummary {
  readonly runs: readonly RunSummary[];
  readonly rowsRead: number;
  readonly rowsKept: number;
  readonly dropped: readonly (readonly [reason: string, count: number])[];
}

export type BenchRequest =
  | {
      readonly kind: 'open';
      readonly id: string;
      readonly file: File;
      readonly nominalVoltageV: number;
    }
  | {
      readonly kind: 'read';
      readonly id: string;
      readonly file: File;
      readonly mapping: LogMapping;
    }
  | { readonly kind: 'stop'; readonly id: string }
  | { readonly kind: 'drop'; readonly id: string }
  | { readonly kind: 'leg'; readonly id: string; readonly run: string; readonly name: string }
  | {
      readonly kind: 'fit';
      readonly plan: Plan;
      readonly optionId: string;
      readonly temperatureC: number | null;
      readonly startPercent: number | null;
      readonly source: string;
      /** Runs taken from each log, by name. */
      readonly chosen: Readonly<Record<string, readonly string[]>>;
    };

export interface FitAnswer {
  readonly optionId: string;
  readonly layout: UnitLayout;
  readonly fit: BlockFit;
  readonly leftOut: readonly Prediction[];
}

export type BenchAnswer =
  | {
      readonly kind: 'opened';
      readonly id: string;
      readonly mapping: LogMapping | null;
      readonly problem: LogProblem | null;
      readonly doubts: readonly LogDoubt[];
      /** First rows of the file as cut into columns. */
      readonly preview: readonly (readonly string[])[];
    }
  | { readonly kind: 'progress'; readonly id: string; readonly share: number }
  | { readonly kind: 'read'; readonly id: string; readonly summary: LogSummary }
  | { readonly kind: 'stopped'; readonly id: string }
  /** A run as the load of a leg; null where it has no length. */
  | { readonly kind: 'leg-load'; readonly load: LogLoad | null }
  | { readonly kind: 'fit-progress'; readonly share: number }
  | { readonly kind: 'fitted'; readonly answer: FitAnswer }
  | { readonly kind: 'refused'; readonly problem: LogProblem }
  | { readonly kind: 'failed'; readonly id: string | null; readonly message: string };
