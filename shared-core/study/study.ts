import type { RatingReport } from '../battery/rating/rating-report.ts';
import type { ChargerMatch } from '../charge/match-result.ts';
import type { Finding } from '../findings/finding.ts';
import type { PeukertReason } from './peukert-reasons.ts';
import type { RunResult } from '../run/result.ts';

/** Everything the screens, the sheet and the headless command show of one option on one outing. */
export interface OptionStudy {
  readonly id: string;
  readonly name: string;
  readonly run: RunResult;
  /** The same outing with every accessory off. */
  readonly withoutAccessories: RunResult;
  /** Minutes the accessories cost. */
  readonly accessoryCostMin: number;
  readonly accessoryCostPercent: number;
  /** Rated capacity divided by average current: the naive promise [min]; null where nothing is drawn. */
  readonly plainMin: number | null;
  /** Peukert's quick figure at the average current [min]; null where nothing is drawn. */
  readonly peukertMin: number | null;
  /** The exponent it uses: as given, fitted to the rating points, or the chemistry's. */
  readonly peukertExponent: number;
  /** What Peukert's figure leaves out of this run. */
  readonly peukertReasons: readonly PeukertReason[];
  /** How well the block's model meets its rating, and what had to be assumed. */
  readonly rating: RatingReport;
  /** Days until standby drain and self-discharge have taken half the pack; null when nothing drains. */
  readonly standbyDaysToHalf: number | null;
  readonly standbyDaysToFlat: number | null;
  readonly chargerMatch: ChargerMatch | null;
  readonly nominalVoltageV: number;
  readonly fullRestVoltageV: number;
  readonly highestChargeVoltageV: number;
  readonly capacityAh: number;
  readonly energyWh: number;
  readonly massKg: number | null;
  readonly price: number | null;
}

export interface PlanStudy {
  readonly outingId: string;
  readonly options: readonly OptionStudy[];
  readonly findings: readonly Finding[];
}
