import type { Language } from '../plan/language.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Thresholds } from '../plan/schema/thresholds.ts';
import type { StartPercent } from './charge-pack.ts';
import { wantedVoltages } from './charge-wishes.ts';
import { estimateChargeHours } from './estimate-charge-hours.ts';
import { matchCurrent, matchPort } from './match-current.ts';
import { matchCellCount, matchChemistry, matchPulses, matchTemperature } from './match-kind.ts';
import type { ChargerMatch, MatchAspect } from './match-result.ts';
import { givenVoltages, matchEndVoltage, matchFloatVoltage } from './match-voltage.ts';

/** In what state and at what temperature the charger meets the pack. */
export interface MatchConditions {
  /** Temperature of blocks and charger [°C]. */
  readonly ambientC: number;
  /** Charge left when the charger is plugged in [%]. */
  readonly remainingPercent: number;
  /** Charge of each block where a run left them unequal; beats `remainingPercent` for the hours. */
  readonly start?: StartPercent;
  readonly thresholds: Thresholds;
  readonly language?: Language;
}

/** Order in which one aspect decides over another. */
const weight = { misfits: 3, unknown: 2, limits: 1, fits: 0 } as const;

/** A match without the hours, which take a simulated charge. */
export type ChargerJudgement = Omit<ChargerMatch, 'hoursToFull'>;

/**
 * Whether a charger fits a pack: chemistry, cell count, end and float voltage at the temperature of the day, current,
 * port, cold, pulses; each with its reason. Equal volts is not a match: 29.4 V is the end of twelve lead cells and of
 * seven NMC groups.
 */
export function judgeCharger(
  option: Pick<Option, 'pack' | 'portLimitA'>,
  charger: Charger,
  conditions: Omit<MatchConditions, 'start'>,
): ChargerJudgement {
  const { pack } = option;
  const { ambientC, remainingPercent, thresholds, language = 'en' } = conditions;
  const wanted = wantedVoltages(pack, ambientC, thresholds);
  const given = givenVoltages(charger, ambientC);
  const aspects: MatchAspect[] = [
    matchChemistry(pack, charger, language),
    matchCellCount(pack, charger, language),
    matchEndVoltage(pack, charger, wanted, ambientC, thresholds, language),
    matchFloatVoltage(charger, wanted, ambientC, thresholds, language),
    matchCurrent(pack, charger, thresholds.charge, language),
    matchPort(option.portLimitA, charger, language),
    matchTemperature(pack, ambientC, remainingPercent, thresholds.charge, language),
    matchPulses(pack, charger, language),
  ];
  const verdict = aspects
    // A port nobody has looked at is a question of its own, not a doubt about the charger.
    .filter((entry) => entry.aspect !== 'port' || entry.verdict !== 'unknown')
    .reduce<MatchAspect['verdict']>(
      (worst, { verdict: next }) => (weight[next] > weight[worst] ? next : worst),
      'fits',
    );
  return { verdict, aspects, wantedEndVoltageV: wanted.endV, givenEndVoltageV: given.endV };
}

/** How a charger fits, and how long it takes: `hoursToFull` is null where it misfits or its voltage is not known. */
export function matchCharger(
  option: Pick<Option, 'pack' | 'portLimitA'>,
  charger: Charger,
  conditions: MatchConditions,
): ChargerMatch {
  const judgement = judgeCharger(option, charger, conditions);
  const { ambientC, remainingPercent, start = remainingPercent } = conditions;
  const usable = judgement.verdict !== 'misfits' && judgement.givenEndVoltageV !== null;
  return {
    ...judgement,
    hoursToFull: usable ? estimateChargeHours(option, charger, ambientC, start) : null,
  };
}
