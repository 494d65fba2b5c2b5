import { chargeOption } from '#core/charge/charge-option.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { weekStudyOf } from '#core/week/week-study-of.ts';
import { timeRow, type BenchRow } from './row.ts';
import { timed } from './timed.ts';

/** A charge and a season of weeks of the sample plan. */
export function benchCharge(): BenchRow[] {
  const plan = samplePlan('orchard-cart');
  const at = Math.max(
    0,
    plan.options.findIndex(({ charger }) => charger !== null),
  );
  const option = plan.options[at]!;
  const { charger } = option;
  const season = timeRow(
    'season of weeks: usage, charging, ageing',
    timed(() => {
      // A copy each time: the study of a plan is kept.
      const copy = structuredClone(plan);
      weekStudyOf(copy, copy.options[at] ?? copy.options[0]!);
    }, 10),
  );
  if (charger === null) return [season];
  const charge = timed(
    () =>
      chargeOption(option, charger, {
        temperatureC: 20,
        startPercent: 20,
        wishes: { afterHours: 2 },
      }),
    30,
  );
  return [timeRow('charge from 20 % until the charger ends, and two hours on', charge), season];
}
