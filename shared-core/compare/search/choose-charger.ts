import { matchCharger } from '../../charge/match-charger.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';

const rank = { fits: 0, limits: 1 } as const;

/**
 * The charger that suits a pack best: of those that fit the one with the most current, and only where none fits one that
 * fits with limits.
 *
 * @returns null where none of them fits
 */
export function chooseCharger(
  plan: Plan,
  chargers: readonly Charger[],
  option: Option,
  ambientC: number,
): Charger | null {
  const { block, seriesCount } = option.pack;
  const conditions = { ambientC, remainingPercent: 100, thresholds: plan.thresholds };
  let best: { charger: Charger; rank: number } | null = null;
  for (const charger of chargers) {
    if (!charger.chemistries.includes(block.chemistry)) continue;
    if (charger.cellGroups !== block.cellGroups * seriesCount) continue;
    const { verdict } = matchCharger(option, charger, conditions);
    if (verdict !== 'fits' && verdict !== 'limits') continue;
    const better =
      best === null ||
      rank[verdict] < best.rank ||
      (rank[verdict] === best.rank && charger.currentA > best.charger.currentA);
    if (better) best = { charger, rank: rank[verdict] };
  }
  return best?.charger ?? null;
}
