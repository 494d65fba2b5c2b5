import { chargeOption, startAfterRun } from '../charge/charge-option.ts';
import type { ChargeResult } from '../charge/charge-result.ts';
import { chargerTable, type ChargerCandidate } from '../charge/charger-table.ts';
import { compareChargeWays, type ChargeWayResult } from '../charge/charge-ways.ts';
import type { Finding } from '../findings/finding.ts';
import { weekFindings } from '../findings/week-findings.ts';
import type { Language } from '../plan/language.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { RunResult } from '../run/result.ts';
import type { WeekStudy } from '../week/study-week.ts';
import { weekStudyOf } from '../week/week-study-of.ts';

/** What the run of an option left behind, as far as charging asks. */
export type AfterRun = Pick<RunResult, 'blocks' | 'remainingPercent'>;

export interface OptionCharging {
  readonly optionId: string;
  /** The charge after the outing; null without a charger. */
  readonly charge: ChargeResult | null;
  readonly ways: readonly ChargeWayResult[];
  readonly chargers: readonly ChargerCandidate[];
  readonly week: WeekStudy | null;
  /** Cost of that charge at the plan's day price; null without a price. */
  readonly cost: number | null;
}

export interface ChargingStudy {
  readonly options: readonly OptionCharging[];
  readonly findings: readonly Finding[];
}

/**
 * Everything the place Charging shows, from the state the outing left each option in. The week is simulated where the
 * plan has one.
 *
 * @param after one entry for each option of the plan, in its order
 */
export function studyCharging(
  plan: Plan,
  outingId: string,
  after: readonly AfterRun[],
  language: Language = 'en',
): ChargingStudy {
  const outing = plan.outings.find(({ id }) => id === outingId) ?? plan.outings[0]!;
  const temperatureC = outing.ambientC;
  const price = plan.week?.tariff.pricePerKWh ?? null;
  const options = plan.options.map((option, index): OptionCharging => {
    const run = after[index];
    const start = run === undefined ? null : startAfterRun(run);
    const conditions = { temperatureC, startPercent: start, wishes: { afterHours: 2 } };
    const { charger } = option;
    const charge = charger === null ? null : chargeOption(option, charger, conditions);
    return {
      optionId: option.id,
      charge,
      ways: charger === null ? [] : compareChargeWays(option, charger, conditions),
      chargers: chargerTable(
        plan,
        option,
        {
          ambientC: temperatureC,
          remainingPercent: run?.remainingPercent ?? option.startPercent,
          ...(start === null ? {} : { start }),
        },
        language,
      ),
      week: plan.week === null ? null : weekStudyOf(plan, option),
      cost: charge === null || price === null ? null : (price * charge.mainsWh) / 1000,
    };
  });
  return { options, findings: weekFindings(plan, language, outingId) };
}
