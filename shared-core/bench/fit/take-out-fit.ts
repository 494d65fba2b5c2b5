import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';

/**
 * The plan with an option's block back at its label. Parts that a fit found to differ return to what was entered before
 * the first fit; lists no fit has written stay as they are.
 */
export function takeOutFit(plan: Plan, optionId: string): Plan {
  const before = plan.bench?.fits.findLast(
    (record) => record.optionId === optionId && record.before !== null,
  )?.before;
  const back = (option: Option): Option => ({
    ...option,
    pack: {
      ...option.pack,
      block: { ...option.pack.block, fitted: null },
      differences: before?.differences ?? option.pack.differences,
      groupDifferences: before?.groupDifferences ?? option.pack.groupDifferences,
    },
  });
  return {
    ...plan,
    options: plan.options.map((option) => (option.id === optionId ? back(option) : option)),
  };
}
