import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { studyWeek, type WeekStudy } from './study-week.ts';

/** Studies of the plans at hand: rules and screens ask for the same ones. */
const known = new WeakMap<Plan, Map<string, WeekStudy>>();

/** `studyWeek`, made once for each plan object and option. Plans are never changed in place. */
export function weekStudyOf(plan: Plan, option: Option): WeekStudy {
  const studies = known.get(plan) ?? new Map<string, WeekStudy>();
  known.set(plan, studies);
  const study = studies.get(option.id) ?? studyWeek(plan, option);
  studies.set(option.id, study);
  return study;
}
