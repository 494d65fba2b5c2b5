import type { Plan } from '../../plan/schema/plan.ts';
import type { Scenario } from '../scenario.ts';
import { blockInputs } from './block-inputs.ts';
import type { InputId, InputRange, UncertainInput } from './input.ts';
import { machineInputs } from './machine-inputs.ts';
import { outingInputs } from './outing-inputs.ts';

/** Ranges the user sets himself, in the unit of each input. */
export type OwnRanges = Partial<Record<InputId, Pick<InputRange, 'low' | 'high'>>>;

/**
 * Everything that is uncertain about a scenario, each with a range by the class of its source: fitted values narrower
 * than rating tables, those narrower than labels, those narrower than what is usual for the kind.
 *
 * @param ranges low and high in the unit of the input, in place of the usual ones; the likely value stays the plan's
 */
export function uncertainInputs(
  plan: Pick<Plan, 'bench'>,
  scenario: Scenario,
  ranges: OwnRanges = {},
): UncertainInput[] {
  const fit = plan.bench?.fits.findLast(({ optionId }) => optionId === scenario.option.id);
  return [
    ...blockInputs(scenario.option, fit),
    ...outingInputs(scenario),
    ...machineInputs(scenario),
  ].map((input) => {
    const own = ranges[input.id];
    return own === undefined
      ? input
      : {
          ...input,
          low: Math.min(own.low, input.likely),
          high: Math.max(own.high, input.likely),
          rangeClass: 'entered' as const,
          source: 'Range entered by the user',
        };
  });
}
