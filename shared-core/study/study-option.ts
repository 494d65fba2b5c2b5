import { standbyCurrentA, standbyDays } from '../accessories/standby.ts';
import { buildBlockModel, newBlockConditions } from '../battery/build-block-model.ts';
import { ratingReport } from '../battery/rating/rating-report.ts';
import { chemistryTraits } from '../battery/chemistry.ts';
import { readUniform } from '../battery/uniform-table.ts';
import { isIdle, accessoryDemands } from '../accessories/demands.ts';
import { packMassKg, packPrice } from '../pack/pack-mass.ts';
import { expandPack } from '../pack/expand-pack.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import { runOuting } from '../run/run-outing.ts';
import { startAfterRun } from '../charge/charge-option.ts';
import { matchCharger } from '../charge/match-charger.ts';
import type { Language } from '../plan/language.ts';
import { peukertReasons } from './peukert-reasons.ts';
import { blockExponent, peukertMinutes, plainMinutes } from './rate-figures.ts';
import type { OptionStudy } from './study.ts';

/** Works out everything the screens, the sheet and the headless command show of one option on one outing. */
export function studyOption(
  plan: Pick<Plan, 'machine' | 'thresholds'>,
  option: Option,
  outing: Outing,
  language: Language,
): OptionStudy {
  const { machine } = plan;
  const { pack } = option;
  const { block } = pack;
  const demands = accessoryDemands(machine);
  const laidOut = expandPack(option, outing.ambientC, !isIdle(demands['mid-point']));
  const run = runOuting(option, machine, outing, { pack: laidOut });
  const anyAccessory = Object.values(demands).some((demand) => !isIdle(demand));
  const withoutAccessories = anyAccessory
    ? runOuting(option, machine, outing, { pack: laidOut, accessories: false, full: false })
    : run;
  const peukertMin = peukertMinutes(pack, run.averageCurrentA, option.startPercent);
  const costMin = withoutAccessories.runTimeMin - run.runTimeMin;
  const nominalV = nominalVoltageV(option);
  const capacityAh = pack.parallelCount * block.capacityAh;
  const restV =
    pack.seriesCount * readUniform(buildBlockModel(block, newBlockConditions).openCircuit, 1);
  const chargeEndV =
    pack.seriesCount *
    (block.chargeEndVoltageV ?? block.cellGroups * chemistryTraits[block.chemistry].chargeEndV);
  const drawA = standbyCurrentA(machine, nominalV);
  const daysTo = (share: number) =>
    standbyDays(drawA, capacityAh, block.chemistry, outing.ambientC, share);
  return {
    id: option.id,
    name: option.name,
    run,
    withoutAccessories,
    accessoryCostMin: costMin,
    accessoryCostPercent:
      withoutAccessories.runTimeMin > 0 ? (100 * costMin) / withoutAccessories.runTimeMin : 0,
    plainMin: plainMinutes(pack, run.averageCurrentA, option.startPercent),
    peukertMin,
    peukertExponent: blockExponent(pack.block),
    peukertReasons: peukertReasons(option, outing, run, peukertMin),
    rating: ratingReport(block),
    standbyDaysToHalf: daysTo(0.5),
    standbyDaysToFlat: daysTo(1),
    chargerMatch:
      option.charger === null
        ? null
        : matchCharger(option, option.charger, {
            ambientC: outing.ambientC,
            start: startAfterRun(run),
            remainingPercent: run.remainingPercent,
            thresholds: plan.thresholds,
            language,
          }),
    nominalVoltageV: nominalV,
    fullRestVoltageV: restV,
    highestChargeVoltageV: Math.max(chargeEndV, option.charger?.endVoltageV ?? 0),
    capacityAh,
    energyWh: capacityAh * nominalV,
    massKg: packMassKg(pack),
    price: sum(packPrice(pack), option.charger?.price ?? 0),
  };
}

function sum(one: number | null, other: number): number | null {
  return one === null ? null : one + other;
}
