import type { FindingId } from './finding.ts';

/** A limit of the plan: where it stands under `thresholds`, and the rules that ask it. */
export interface Limit {
  readonly path: string;
  readonly rules: readonly FindingId[];
}

export interface LimitGroup {
  readonly id: 'pack' | 'charge' | 'supply' | 'drive' | 'wiring' | 'care';
  readonly limits: readonly Limit[];
}

const limit = (path: string, ...rules: FindingId[]): Limit => ({ path, rules });

/** Every limit that a user may shift where sources disagree, in the groups in which they are shown. */
export const limitGroups: readonly LimitGroup[] = [
  {
    id: 'pack',
    limits: [
      limit('restDifferenceNoteV', 'PCK-1'),
      limit('restDifferenceWarnV', 'PCK-1'),
      limit('restDifferenceStopV', 'PCK-1'),
      limit('pack.capacityNotePercent', 'PCK-1'),
      limit('pack.capacityWarnPercent', 'PCK-1'),
      limit('pack.ageApartYears', 'PCK-1'),
      limit('pack.joiningPerAh', 'PCK-2'),
      limit('sagLeftPercent', 'CUT-2'),
      limit('promisePercent', 'RUN-2'),
    ],
  },
  {
    id: 'charge',
    limits: [
      limit('leadCyclicVoltPerBlock', 'CHG-2', 'SUP-1'),
      limit('endVoltageTolerancePercent', 'CHG-2'),
      limit('charge.leadLowPerAh', 'CHG-3'),
      limit('charge.leadHighPerAh', 'CHG-3'),
      limit('charge.lithiumHighPerAh', 'CHG-3'),
      limit('charge.lithiumColdC', 'CHG-4'),
      limit('charge.leadFreezesC', 'CHG-4'),
      limit('charge.leadFlatPercent', 'CHG-4'),
      limit('charge.leadFullDays', 'CHG-8'),
    ],
  },
  {
    id: 'supply',
    limits: [limit('converterLoadPercent', 'SUP-3'), limit('standbyDays', 'SUP-5')],
  },
  {
    id: 'drive',
    limits: [
      limit('drive.overvoltageWarn', 'DRV-1', 'DRV-2'),
      limit('drive.overvoltageStop', 'DRV-1'),
      limit('drive.gentleRampS', 'DRV-2'),
      limit('drive.brakeMps2', 'BRK-1'),
      limit('drive.nearlyFullPercent', 'BRK-4'),
    ],
  },
  {
    id: 'wiring',
    limits: [
      limit('wiring.fuseMargin', 'FUS-1'),
      limit('wiring.fuseDistanceMm', 'FUS-2'),
      limit('wiring.motorOverloadFactor', 'FUS-3'),
      limit('wiring.ampacityStopFactor', 'WIR-1'),
      limit('wiring.dropNotePercent', 'WIR-2'),
      limit('wiring.dropWarnPercent', 'WIR-2'),
      limit('wiring.jointWarnMohm', 'WIR-4'),
    ],
  },
  {
    id: 'care',
    limits: [
      limit('care.leadTopUpDays', 'KEP-1'),
      limit('care.leadStoragePercent', 'KEP-1'),
      limit('care.lithiumStorageLowPercent', 'KEP-1'),
      limit('care.lithiumStorageHighPercent', 'KEP-1'),
      limit('care.seasons', 'KEP-2'),
    ],
  },
];
