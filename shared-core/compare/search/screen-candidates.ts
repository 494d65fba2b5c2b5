import { chemistryTraits } from '../../battery/chemistry.ts';
import { newOption, newPack } from '../../plan/defaults.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { outingOf } from '../scenario.ts';
import { candidateAt, noneRejected } from './candidate.ts';
import type { Candidate, Passed, RejectRule, ScreenPart, SearchWishes } from './candidate.ts';
import { chooseCharger } from './choose-charger.ts';
import { fitInBay } from './fit-in-bay.ts';
import { lightestDrawA } from './lightest-draw.ts';
import { blocksPrice, priceWithCharger } from './pack-price.ts';

/** A full, warm block gives at most this much of its label at the slowest rate, with the load's own scatter. */
const generousShare = 1.3;

/** Screens candidates of one search; what it has worked out for one serves the next. */
export interface Screener {
  screen(from: number, to: number): ScreenPart;
}

/** Rules candidates out by closed forms, in the order of `rejectRules`; the first that applies counts. */
export function openScreener(plan: Plan, wishes: SearchWishes): Screener {
  const outing = outingOf(plan, wishes.outingId);
  const draws = new Map<string, number>();
  const verdicts = new Map<string, Passed['bay'] | null>();

  const drawA = (chemistry: Block['chemistry'], cells: number): number => {
    const key = `${chemistry} ${cells}`;
    const known = draws.get(key) ?? lightestDrawA(plan, outing, chemistry, cells);
    draws.set(key, known);
    return known;
  };
  const bayVerdict = ({ block, seriesCount, parallelCount }: Candidate): Passed['bay'] | null => {
    const { lengthMm, widthMm, heightMm, chemistry } = block;
    if (wishes.bay === null || lengthMm === null || widthMm === null || heightMm === null)
      return 'unknown';
    const count = seriesCount * parallelCount;
    const upright = chemistry === 'flooded';
    const key = [lengthMm, widthMm, heightMm, upright, count].join(' ');
    const known = verdicts.get(key);
    if (known !== undefined) return known;
    const found = fitInBay([lengthMm, widthMm, heightMm], count, wishes.bay, upright);
    const verdict = found === 'does-not-fit' ? null : found;
    verdicts.set(key, verdict);
    return verdict;
  };

  const judge = (candidate: Candidate, index: number): Passed | RejectRule => {
    const { block, seriesCount, parallelCount } = candidate;
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
    const blocks = blocksPrice(candidate, plan.currency);
    const priceLimit = wishes.priceLimit ?? Infinity;
    if ((blocks.price ?? 0) > priceLimit) return 'price';
    const bay = bayVerdict(candidate);
    if (bay === null) return 'bay';
    const charger = chargerFor(plan, wishes, candidateOption(candidate), outing.ambientC);
    if (charger === undefined) return 'charger';
    const { price } = priceWithCharger(blocks, charger, plan.currency);
    if ((price ?? 0) > priceLimit) return 'price';
    const heldAh = parallelCount * (block.fitted?.capacityAh ?? block.capacityAh);
    const longestMin =
      (60 * generousShare * heldAh) / Math.max(1e-6, drawA(block.chemistry, cells));
    if (longestMin < wishes.goalMin) return 'too-short';
    return { index, bay, merit: (heldAh * nominalV) / (count * (block.massKg ?? 1)) };
  };

  return {
    screen(from, to) {
      const rejected = noneRejected();
      const passed: Passed[] = [];
      for (let index = from; index < to; index += 1) {
        const verdict = judge(candidateAt(wishes, index), index);
        if (typeof verdict === 'string') rejected[verdict] += 1;
        else passed.push(verdict);
      }
      return { rejected, passed };
    },
  };
}

/** The candidate as an option, without charger and fuses. */
export function candidateOption({ block, seriesCount, parallelCount }: Candidate): Option {
  const count = seriesCount * parallelCount;
  const name = count === 1 ? block.name : `${seriesCount}S${parallelCount}P ${block.name}`;
  return newOption([], { ...newPack(block, seriesCount), parallelCount }, name.slice(0, 120));
}

/** The charger of a candidate: null where none is asked for, undefined where none of those given fits. */
export function chargerFor(
  plan: Plan,
  { chargers }: SearchWishes,
  option: Option,
  ambientC: number,
): Charger | null | undefined {
  if (chargers.length === 0) return null;
  return chooseCharger(plan, chargers, option, ambientC) ?? undefined;
}
