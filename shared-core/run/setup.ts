import type { Demand } from '../accessories/converter-input.ts';
import type { PackModel } from '../pack/pack-model.ts';
import type { Converter } from '../plan/schema/accessory.ts';
import type { LoadSource } from './load-source.ts';

/** How the engine steps. */
export type Stepping =
  /** Steps between 1/1024 and 64 s, chosen so that the bus moves by less than the tolerance [V] in each. */
  | {
      readonly kind: 'adaptive';
      readonly toleranceV: number;
      /** True where the loads bring their own short steps: one cut short says nothing against the length tried before. */
      readonly loadsSetSteps?: boolean;
    }
  /** Equal steps [s], for checks of convergence and speed. */
  | { readonly kind: 'fixed'; readonly stepS: number };

/** Everything one run needs, free of the plan: what the tests and the study fill in. */
export interface RunSetup {
  readonly pack: PackModel;
  readonly source: LoadSource;
  readonly ambientC: number;
  readonly harnessOhm: number;
  readonly controllerIdleA: number;
  /** Loaded bus voltage at which the controller stops the motor [V]; null for none. */
  readonly cutoffV: number | null;
  readonly cutoffDelayS: number;
  /** Bus voltage above which the controller starts again [V]. */
  readonly restartV: number;
  readonly converter: Converter | null;
  /** Load on the converter's output, on the bus, and on the mid-point of the strings. */
  readonly converterDemand: Demand;
  readonly packDemand: Demand;
  readonly midPointDemand: Demand;
  readonly depthLimitPercent: number | null;
  readonly longestS: number;
  /** Rest after a cutoff before the drive is tried again [s]; 0 to leave that out. */
  readonly restAfterS: number;
  /** Ends the run with `supply-collapse` when the first available well is empty: for lifetimes without a voltage. */
  readonly endWhenEmpty: boolean;
  readonly stepping: Stepping;
  /** False leaves out series, ledger and per-block extremes, where only run time, cause and charge are wanted. */
  readonly full: boolean;
}
