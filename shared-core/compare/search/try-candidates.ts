import { estimateChargeHours } from '../../charge/estimate-charge-hours.ts';
import { packMassKg } from '../../pack/pack-mass.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { outingOf, quickRun, scenarioOf } from '../scenario.ts';
import { candidateAt } from './candidate.ts';
import type { FoundPack, Passed, SearchWishes, TrialPart } from './candidate.ts';
import { guardPack } from './guard-pack.ts';
import { blocksPrice, priceWithCharger } from './pack-price.ts';
import { candidateOption, chargerFor } from './screen-candidates.ts';

/** Simulates the packs `from` to `to` (without `to`) of those chosen: the piece of work of one worker. */
export function tryCandidates(
  plan: Plan,
  wishes: SearchWishes,
  chosen: readonly Passed[],
  from: number,
  to: number,
): TrialPart {
  return { from, found: chosen.slice(from, to).map((passed) => tryOne(plan, wishes, passed)) };
}

function tryOne(plan: Plan, wishes: SearchWishes, { index, bay }: Passed): FoundPack | null {
  const outing = outingOf(plan, wishes.outingId);
  const candidate = candidateAt(wishes, index);
  const bare = candidateOption(candidate);
  const charger = chargerFor(plan, wishes, bare, outing.ambientC) ?? null;
  const run = quickRun(scenarioOf(plan, bare, outing));
  if (run.endedBy === 'not-computable' || run.runTimeMin < wishes.goalMin) return null;
  const { price, isTypical } = priceWithCharger(
    blocksPrice(candidate, plan.currency),
    charger,
    plan.currency,
  );
  const limitA = plan.machine.controller.batteryCurrentLimitA;
  const pack = guardPack(bare.pack, run, limitA, plan.thresholds.wiring.fuseMargin);
  return {
    index,
    option: { ...bare, pack, charger },
    runTimeMin: run.runTimeMin,
    massKg: packMassKg(pack),
    price,
    isPriceTypical: isTypical,
    chargeHours:
      charger === null
        ? null
        : estimateChargeHours(bare, charger, outing.ambientC, run.remainingPercent),
    bay,
    isBest: false,
  };
}
