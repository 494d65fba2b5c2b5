import type { DriveProblem } from '../drive/drive-problem.ts';
import type { DriveResult } from '../drive/drive-result.ts';

/** Why a run ended. Stable identifiers: used in files, tests, screens and by the headless command. */
export type EndCause =
  | 'controller-cutoff'
  | 'bms-group-low'
  | 'bms-over-current'
  | 'string-fuse'
  | 'main-fuse'
  | 'depth-limit'
  | 'supply-collapse'
  | 'time-limit'
  /** The outing needs something the plan does not say; `problem` names it. */
  | 'not-computable';

/** What happened during a run, in order of time. */
export type RunEventKind =
  | EndCause
  | 'converter-brown-out'
  | 'converter-off'
  | 'converter-recovered'
  | 'block-reversed'
  | 'string-joined-surge'
  | 'block-empty'
  | 'controller-restart'
  /** The controller's battery current limit holds the load back. */
  | 'controller-limit';

export interface RunEvent {
  readonly kind: RunEventKind;
  readonly timeMin: number;
  /** String counted from 1; absent where the event concerns the whole pack. */
  readonly string?: number;
  /** Block position in its string counted from 1. */
  readonly position?: number;
  /** Cell group in its block counted from 1. */
  readonly group?: number;
  readonly busVoltageV: number;
  /** The quantity that decided: volts of the cutoff, amperes of the fuse, depth in percent. */
  readonly value: number;
}

/** Time series as columns of equal length. Times rise; a switched load gives two rows at the same time. */
export interface RunSeries {
  readonly timeS: Float64Array;
  /** Voltage at the pack terminals. */
  readonly packVoltageV: Float64Array;
  /** Voltage behind the harness, where controller and converter are connected. */
  readonly busVoltageV: Float64Array;
  readonly packCurrentA: Float64Array;
  readonly motorCurrentA: Float64Array;
  readonly converterInputA: Float64Array;
  /** Charge left of the whole pack, in percent of its capacity in the run's conditions. */
  readonly chargePercent: Float64Array;
  /** One column per distinct block: blocks that cannot differ share one. */
  readonly blocks: readonly BlockSeries[];
  /** One entry per distinct string: strings that cannot differ share one. */
  readonly strings: readonly StringSeries[];
}

/** Which blocks (and which of their cell groups) a column or an outcome stands for. All counted from 1. */
export interface UnitPlace {
  readonly strings: readonly number[];
  readonly positions: readonly number[];
  /** Cell group inside the block; null when the block is simulated as one. */
  readonly group: number | null;
  readonly name: string;
}

export interface BlockSeries extends UnitPlace {
  readonly voltageV: Float64Array;
  readonly chargePercent: Float64Array;
}

export interface StringSeries {
  readonly strings: readonly number[];
  /** Current of each one of these strings, discharge positive. */
  readonly currentA: Float64Array;
}

/** State of a block when the run ended. */
export interface BlockOutcome extends UnitPlace {
  /** Charge left, in percent of this block's capacity in the run's conditions. */
  readonly remainingPercent: number;
  readonly endVoltageV: number;
  readonly minimumVoltageV: number;
  /** Minute at which the block was driven below zero volts; null when it never was. */
  readonly reversedAtMin: number | null;
  readonly deliveredAh: number;
  readonly temperatureC: number;
}

/** Where every watt-hour went. Entries are positive; they sum to `givenUpWh` within `closurePercent`. */
export interface EnergyLedger {
  /** Chemical energy the blocks gave up (open-circuit energy between first and last state). */
  readonly givenUpWh: number;
  readonly motorWh: number;
  readonly controllerIdleWh: number;
  readonly accessoriesWh: number;
  readonly converterLossWh: number;
  readonly harnessLossWh: number;
  readonly linkLossWh: number;
  /** Ohmic and knee loss inside the blocks. */
  readonly resistanceLossWh: number;
  readonly polarisationLossWh: number;
  /** Lost because charge could not flow fast enough to the plates (the two wells). */
  readonly rateLossWh: number;
  /** (sum of sinks - givenUp) / givenUp. */
  readonly closurePercent: number;
}

export interface RunResult {
  readonly runTimeMin: number;
  readonly endedBy: EndCause;
  readonly deliveredAh: number;
  readonly deliveredWh: number;
  readonly averageCurrentA: number;
  readonly peakCurrentA: number;
  readonly minimumBusVoltageV: number;
  /** Charge left in the pack at the end, percent of its capacity in the run's conditions. */
  readonly remainingPercent: number;
  readonly events: readonly RunEvent[];
  readonly blocks: readonly BlockOutcome[];
  readonly ledger: EnergyLedger;
  /** Converter output over input energy; null without a working converter. */
  readonly converterEfficiencyPercent: number | null;
  /** First minute at which the converter could not hold its output; null when it always did. */
  readonly brownOutAtMin: number | null;
  /** Minutes the machine runs on after the rest stated in the outing; null when the run did not end by a cutoff. */
  readonly afterRestMin: number | null;
  /** Surge when unequal strings are joined at the start; null with one string or equal ones. */
  readonly joiningSurgeA: number | null;
  readonly series: RunSeries;
  /** What the wheels did; null where the outing has no leg driven with the motor model. */
  readonly drive: DriveResult | null;
  /** Why the outing could not be run; null when it was. */
  readonly problem: DriveProblem | null;
}
