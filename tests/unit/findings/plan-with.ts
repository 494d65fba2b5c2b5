import type { Finding, FindingId } from '#core/findings/finding.ts';
import { planFindings } from '#core/findings/plan-findings.ts';
import { checkPlan } from '#core/plan/read-plan.ts';
import { samplePlan, type SampleName } from '#core/plan/samples/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import type { OptionStudy } from '#core/study/study.ts';
import type { RunResult } from '#core/run/result.ts';

/** A sample cut down to one option, changed, and checked to be a plan a user could have. */
export function planWith(
  sample: SampleName,
  optionId: string,
  change: (option: Option, plan: Plan) => void = () => {},
): Plan {
  const plan = samplePlan(sample);
  plan.options = plan.options.filter((option) => option.id === optionId);
  change(plan.options[0]!, plan);
  const checked = checkPlan(plan);
  if (!checked.ok) throw new Error(checked.problem.problem);
  return plan;
}

/** Findings of one rule, without the run. */
export function findingsOf(
  id: FindingId,
  plan: Plan,
  studies: readonly OptionStudy[] = [],
): Finding[] {
  return planFindings(plan, studies).filter((finding) => finding.id === id);
}

/** Severities of the standing findings of one rule. */
export function severitiesOf(
  id: FindingId,
  plan: Plan,
  studies: readonly OptionStudy[] = [],
): string[] {
  return findingsOf(id, plan, studies)
    .filter((finding) => finding.status === 'finding')
    .map((finding) => finding.severity);
}

/** The plan's own study with figures of the run or the study replaced, so that a rule meets exact numbers. */
export function studiesWith(
  plan: Plan,
  run: Partial<RunResult>,
  figures: Partial<OptionStudy> = {},
): OptionStudy[] {
  return studyPlan(plan).options.map((study) => ({
    ...study,
    ...figures,
    run: { ...study.run, ...run },
  }));
}
