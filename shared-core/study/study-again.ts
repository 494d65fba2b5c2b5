import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { shareEqual } from '../plan/share-equal.ts';
import type { OptionStudy, PlanStudy } from './study.ts';
import { studyPlan } from './study-plan.ts';
import { studyOption } from './study-option.ts';

interface Kept {
  /** What the study was made of, beside the option itself. */
  readonly read: readonly unknown[];
  readonly study: OptionStudy;
}

/**
 * Studies one plan after another as it is edited: the same figures as `studyPlan`, but an option is run again only when
 * something it depends on has changed. Studies of unchanged options are the same objects as before. The plans given
 * must not be written to afterwards.
 */
export function createRepeatedStudy(): (
  plan: Plan,
  outingId?: string,
  language?: Language,
) => PlanStudy {
  let before: Plan | null = null;
  let kept = new Map<Option, Kept>();
  return (given, outingId, language = 'en') => {
    const plan = shareEqual(before, given);
    before = plan;
    const next = new Map<Option, Kept>();
    const study = studyPlan(plan, outingId, language, (option, outing) => {
      const read = [plan.machine, plan.thresholds, outing, language];
      const old = kept.get(option);
      const isSame = old?.read.every((part, index) => part === read[index]) ?? false;
      const own =
        old !== undefined && isSame ? old.study : studyOption(plan, option, outing, language);
      next.set(option, { read, study: own });
      return own;
    });
    kept = next;
    return study;
  };
}
