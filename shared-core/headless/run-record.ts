import { ratingRemarkText } from '../battery/rating/rating-remark.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { RunResult } from '../run/result.ts';
import { peukertReasonText } from '../study/peukert-reasons.ts';
import type { OptionStudy, PlanStudy } from '../study/study.ts';

/** What `run --json` prints. An interface to keep: fields may be added, never renamed. */
export function runRecord(plan: Plan, outing: Outing, study: PlanStudy): Record<string, unknown> {
  const { id, name, goalMin, ambientC } = outing;
  return {
    plan: plan.name,
    invented: plan.invented,
    outing: { id, name, goalMin, ambientC },
    options: study.options.map(optionRecord),
  };
}

function optionRecord(study: OptionStudy): Record<string, unknown> {
  const { id, name, run, withoutAccessories, chargerMatch, rating, peukertReasons, ...figures } =
    study;
  return {
    id,
    name,
    ...resultRecord(run),
    ...figures,
    peukertReasons: peukertReasons.map((reason) => ({
      ...reason,
      text: peukertReasonText(reason, 'en'),
    })),
    rating: {
      ...rating,
      remarks: rating.remarks.map((remark) => ({
        ...remark,
        text: ratingRemarkText(remark, 'en'),
      })),
    },
    withoutAccessoriesMin: withoutAccessories.runTimeMin,
    withoutAccessoriesEndedBy: withoutAccessories.endedBy,
    chargerVerdict: chargerMatch?.verdict ?? null,
    hoursToFull: chargerMatch?.hoursToFull ?? null,
  };
}

/** A run without its time series. */
export function resultRecord(run: RunResult): Record<string, unknown> {
  const { series: _series, drive, ...rest } = run;
  if (drive === null) return { ...rest, drive };
  const { series: _driveSeries, ...driven } = drive;
  return { ...rest, drive: driven };
}
