import { chargeOption } from '#core/charge/charge-option.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { weekStudyOf } from '#core/week/week-study-of.ts';
import { timeRow, type BenchRow } from './row.ts';
import { timed } from './timed.ts';

/** A charge and a season of weeks of the sample plan. */
export function benchCharge(): BenchRow[] {
  const plan = samplePlan('orchard-cart');
  const option = plan.options.find(({ charger }) => charger !== null) ?? plan.options[0]!;
  const { charger } = option;
  const season = timeRow(
    'season of weeks: usage, charging, ageing',
    timed(() => weekStudyOf(plan, option), 10),
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
