import { expandPack } from '../pack/expand-pack.ts';
import type { PackUnit } from '../pack/pack-model.ts';
import type { ChargeableOption } from './charge-option.ts';
import type { BlockModel } from '../battery/block-model.ts';
import {
  acceptanceColdRatePerK,
  chargeBehaviours,
  gassingDoublesPerK,
  usualBalanceA,
} from './charge-behaviour.ts';
import type { ChargePack, ChargeUnit, Gassing } from './charge-unit.ts';

/** Charge of a unit at the start [%]; null leaves the plan's own figure. */
export type StartPercent = (
  string: number,
  position: number,
  group: number | null,
) => number | null;

/**
 * The option's pack as a charger sees it.
 *
 * @param temperatureC temperature of the blocks [°C]
 * @param startPercent charge of each block at the start, e.g. as a run left it
 */
export function chargePack(
  option: ChargeableOption,
  temperatureC: number,
  startPercent: StartPercent = () => null,
): ChargePack {
  const pack = expandPack(option, temperatureC);
  return {
    leadOhm: 0,
    strings: pack.strings.map((string) => ({
      count: string.strings.length,
      linkOhm: string.linkOhm,
      units: string.units.map((unit) =>
        chargeUnit(unit, startPercent(string.strings[0] ?? 1, unit.positions[0] ?? 1, unit.group)),
      ),
    })),
  };
}

/** One unit of the pack with what its chemistry adds on charge. */
function chargeUnit(unit: PackUnit, startPercent: number | null): ChargeUnit {
  const { model, bms } = unit;
  const behaviour = chargeBehaviours[model.chemistry];
  return {
    ...electricalUnit(model),
    label: unit.name,
    count: unit.count,
    position: unit.positions[0] ?? 1,
    group: unit.group,
    balancing:
      bms === null || behaviour.balanceFromV === null
        ? null
        : { startV: behaviour.balanceFromV * model.cellGroups, currentA: usualBalanceA },
    opensAboveV: bms === null ? null : bms.groupHighV * model.cellGroups,
    opensAboveA: bms === null ? null : bms.continuousChargeA,
    startShare: startPercent === null ? unit.startCharge : startPercent / 100,
  };
}

/** The electrical part of a unit, from its block model. */
export function electricalUnit(
  model: BlockModel,
): Omit<
  ChargeUnit,
  | 'label'
  | 'count'
  | 'position'
  | 'group'
  | 'balancing'
  | 'opensAboveV'
  | 'opensAboveA'
  | 'startShare'
> {
  const behaviour = chargeBehaviours[model.chemistry];
  const cold = Math.exp(acceptanceColdRatePerK * (25 - model.temperatureC));
  return {
    chemistry: model.chemistry,
    cellGroups: model.cellGroups,
    capacityAh: model.capacityAh,
    openCircuit: model.openCircuit,
    hysteresisV: model.hysteresisV,
    resistanceOhm: model.resistanceOhm,
    acceptanceOhm: (behaviour.acceptanceVh * model.cellGroups * cold) / model.capacityAh,
    acceptanceRoom: behaviour.acceptanceRoom,
    polarisationOhm: model.polarisationOhm,
    polarisationS: model.polarisationS,
    gassing: gassingOf(model),
  };
}

/** Side current through its two known points, exponential in the voltage (Tafel's law), at the model's temperature. */
function gassingOf(model: BlockModel): Gassing | null {
  const { gassing } = chargeBehaviours[model.chemistry];
  if (gassing === null) return null;
  const [[lowV, lowA], [highV, highA]] = gassing;
  const warm = 2 ** ((model.temperatureC - 25) / gassingDoublesPerK);
  return {
    currentA: lowA * model.capacityAh * warm,
    referenceV: lowV * model.cellGroups,
    perVolt: Math.log(highA / lowA) / ((highV - lowV) * model.cellGroups),
  };
}
