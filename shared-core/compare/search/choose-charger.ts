import { judgeCharger } from '../../charge/match-charger.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';

const rank = { fits: 0, limits: 2 } as const;

/**
 * What the machine's charge port carries for long [A]: the lowest limit stated in an option, and what the fuse of the
 * charge line carries with the plan's margin; Infinity where neither is known.
 */
export function chargePortLimitA({ options, wiring, thresholds }: Plan): number {
  const stated = options.flatMap(({ portLimitA }) => (portLimitA === null ? [] : [portLimitA]));
  const ports = (wiring?.devices ?? []).filter(({ kind }) => kind === 'charge-port');
  const fused = (wiring?.branches ?? []).flatMap(({ from, to, fuse }) =>
    fuse !== null && ports.some(({ id }) => id === from || id === to)
      ? [fuse.ratedA / thresholds.wiring.fuseMargin]
      : [],
  );
  return Math.min(Infinity, ...stated, ...fused);
}

/**
 * The charger that suits a pack best: of those that fit and that the charge port carries the one with the most current;
 * where there is none, one beyond the port, or one that fits with limits.
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
  const portA = chargePortLimitA(plan);
  let best: { charger: Charger; rank: number } | null = null;
  for (const charger of chargers) {
    if (!charger.chemistries.includes(block.chemistry)) continue;
    if (charger.cellGroups !== block.cellGroups * seriesCount) continue;
    const { verdict } = judgeCharger(option, charger, conditions);
    if (verdict !== 'fits' && verdict !== 'limits') continue;
    const own = rank[verdict] + (charger.currentA > portA ? 1 : 0);
    const better =
      best === null ||
      own < best.rank ||
      (own === best.rank && charger.currentA > best.charger.currentA);
    if (better) best = { charger, rank: own };
  }
  return best?.charger ?? null;
}
