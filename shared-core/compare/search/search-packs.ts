import { chemistryTraits } from '../../battery/chemistry.ts';
import { estimateChargeHours } from '../../charge/estimate-charge-hours.ts';
import { matchCharger } from '../../charge/match-charger.ts';
import { packMassKg, packPrice } from '../../pack/pack-mass.ts';
import { newOption, newPack } from '../../plan/defaults.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { outingOf, quickRun, scenarioOf } from '../scenario.ts';
import type { FoundPack, RejectRule, SearchResult, SearchWishes } from './candidate.ts';
import { fitInBay } from './fit-in-bay.ts';

/**
 * All packs from the blocks given that meet the wishes: every number in series and in parallel is screened by closed
 * forms, what passes is simulated, those with the most energy for their mass first where there are more than `mostRuns`.
 */
export function searchPacks(plan: Plan, wishes: SearchWishes): SearchResult {
  const outing = outingOf(plan, wishes.outingId);
  const rejected: Record<RejectRule, number> = {
    chemistry: 0,
    'no-bms': 0,
    voltage: 0,
    'controller-voltage': 0,
    mass: 0,
    price: 0,
    bay: 0,
    charger: 0,
    'too-short': 0,
    goal: 0,
  };
  const passed: Passed[] = [];
  const drawA = new Map<string, number>();
  let candidateCount = 0;
  for (const block of wishes.blocks) {
    for (let series = 1; series <= wishes.mostSeries; series += 1) {
      for (let parallel = 1; parallel <= wishes.mostParallel; parallel += 1) {
        candidateCount += 1;
        const verdict = screen(plan, wishes, block, series, parallel, (option) => {
          const key = `${block.chemistry} ${block.cellGroups * series}`;
          const known = drawA.get(key) ?? lightestDrawA(plan, option, outing.id);
          drawA.set(key, known);
          return known;
        });
        if (typeof verdict === 'string') rejected[verdict] += 1;
        else passed.push(verdict);
      }
    }
  }
  const chosen = passed.toSorted((one, other) => other.merit - one.merit).slice(0, wishes.mostRuns);
  const found: FoundPack[] = [];
  for (const { option, bay } of chosen) {
    const run = quickRun(scenarioOf(plan, option, outing));
    if (run.endedBy === 'not-computable' || run.runTimeMin < wishes.goalMin) {
      rejected.goal += 1;
      continue;
    }
    found.push({
      option,
      runTimeMin: run.runTimeMin,
      massKg: packMassKg(option.pack),
      price: packPrice(option.pack),
      chargeHours:
        option.charger === null
          ? null
          : estimateChargeHours(option, option.charger, outing.ambientC, run.remainingPercent),
      bay,
      isBest: false,
    });
  }
  return {
    candidateCount,
    rejected,
    notRunCount: passed.length - chosen.length,
    found: found
      .map((pack) => ({ ...pack, isBest: !found.some((other) => beats(other, pack)) }))
      .toSorted((one, other) => other.runTimeMin - one.runTimeMin),
  };
}

interface Passed {
  readonly option: Option;
  readonly bay: FoundPack['bay'];
  readonly merit: number;
}

/** A full, warm block gives at most this much of its label at the slowest rate, with the load's own scatter. */
const generousShare = 1.3;

function screen(
  plan: Plan,
  wishes: SearchWishes,
  block: Block,
  seriesCount: number,
  parallelCount: number,
  drawOf: (option: Option) => number,
): Passed | RejectRule {
  const traits = chemistryTraits[block.chemistry];
  const cells = block.cellGroups * seriesCount;
  const count = seriesCount * parallelCount;
  const nominalV = cells * traits.nominalV;
  if (!wishes.chemistries.includes(block.chemistry)) return 'chemistry';
  if (traits.family === 'lithium' && block.bms === null) return 'no-bms';
  if (nominalV < wishes.leastVoltageV || nominalV > wishes.mostVoltageV) return 'voltage';
  const endV = seriesCount * (block.chargeEndVoltageV ?? block.cellGroups * traits.chargeEndV);
  if (endV > (plan.machine.controller.maximumVoltageV ?? Infinity)) return 'controller-voltage';
  if (count * (block.massKg ?? 0) > (wishes.massLimitKg ?? Infinity)) return 'mass';
  if (count * (block.price ?? 0) > (wishes.priceLimit ?? Infinity)) return 'price';
  const bay = bayVerdict(wishes, block, count);
  if (bay === null) return 'bay';
  const pack = { ...newPack(block, seriesCount), parallelCount };
  const bare = newOption([], pack, `${parallelCount} × ${seriesCount} ${block.name}`);
  const charger = fittingCharger(plan, wishes, bare);
  if (charger === undefined) return 'charger';
  const option = { ...bare, charger };
  const heldAh = parallelCount * (block.fitted?.capacityAh ?? block.capacityAh);
  const longestMin = (60 * generousShare * heldAh) / Math.max(1e-6, drawOf(option));
  if (longestMin < wishes.goalMin) return 'too-short';
  return { option, bay, merit: (heldAh * nominalV) / (count * (block.massKg ?? 1)) };
}

function bayVerdict(
  { bay }: SearchWishes,
  { lengthMm, widthMm, heightMm, chemistry }: Block,
  count: number,
): FoundPack['bay'] | null {
  if (bay === null || lengthMm === null || widthMm === null || heightMm === null) return 'unknown';
  const verdict = fitInBay([lengthMm, widthMm, heightMm], count, bay, chemistry === 'flooded');
  return verdict === 'does-not-fit' ? null : verdict;
}

/** The first charger that fits, null where none is asked for, undefined where none of those given fits. */
function fittingCharger(
  plan: Plan,
  { chargers, outingId }: SearchWishes,
  option: Option,
): Charger | null | undefined {
  if (chargers.length === 0) return null;
  const { ambientC } = outingOf(plan, outingId);
  const { chemistry, cellGroups } = option.pack.block;
  return chargers
    .filter(
      (charger) =>
        charger.chemistries.includes(chemistry) &&
        charger.cellGroups === cellGroups * option.pack.seriesCount,
    )
    .find((charger) => {
      const conditions = { ambientC, remainingPercent: 100, thresholds: plan.thresholds };
      const { verdict } = matchCharger(option, charger, conditions);
      return verdict === 'fits' || verdict === 'limits';
    });
}

/** Average current at this voltage of a pack that hardly sags: of ten strings over the outing, without mass [A]. */
function lightestDrawA(plan: Plan, option: Option, outingId: string): number {
  const block: Block = { ...option.pack.block, massKg: 0, bms: null };
  const large: Option = {
    ...option,
    pack: { ...option.pack, block, parallelCount: 10 },
  };
  return quickRun(scenarioOf(plan, large, outingOf(plan, outingId))).averageCurrentA;
}

const figures = ['massKg', 'price', 'chargeHours'] as const;

/** True when one pack is at least as good as another in every known figure and better in one. */
function beats(one: FoundPack, other: FoundPack): boolean {
  let better = one.runTimeMin > other.runTimeMin;
  if (one.runTimeMin < other.runTimeMin) return false;
  for (const figure of figures) {
    const mine = one[figure];
    const theirs = other[figure];
    if (mine === null || theirs === null) {
      if (mine !== theirs) return false;
      continue;
    }
    if (mine > theirs) return false;
    if (mine < theirs) better = true;
  }
  return better;
}
