import { chargerThatFits } from '../../charge/charger-that-fits.ts';
import { chargeCurrentWindow } from '../../charge/match-current.ts';
import type { FindingContext, OptionContext } from '../context.ts';
import type { CureStatement } from '../cure.ts';

/** A charger of the library that fits this option, in place of its own; none where the cold is what does not fit. */
export function chargerCure(
  { option, path, study }: OptionContext,
  { outing, plan, language }: FindingContext,
): CureStatement[] {
  const { lowA, highA } = chargeCurrentWindow(option.pack, plan.thresholds.charge);
  const mostA = Math.min(highA, option.portLimitA ?? Number.POSITIVE_INFINITY);
  const ownA = option.charger?.currentA ?? (lowA > 0 ? 2 * lowA : mostA / 2);
  const charger = chargerThatFits(option, Math.min(mostA, Math.max(lowA, ownA)), {
    ambientC: outing.ambientC,
    remainingPercent: study?.run.remainingPercent ?? 0,
    thresholds: plan.thresholds,
    language,
  });
  if (charger === null || JSON.stringify(charger) === JSON.stringify(option.charger)) return [];
  const before = option.charger?.name ?? null;
  return [
    {
      does: {
        en: `Plan a ${charger.name} (now ${before ?? 'none'})`,
        de: `${charger.name} einplanen (jetzt ${before ?? 'keines'})`,
      },
      changes: [{ path: `${path}.charger`, value: charger }],
    },
  ];
}
