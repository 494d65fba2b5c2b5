import type { Accessory } from '../plan/schema/accessory.ts';
import type { Load } from '../plan/schema/load.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Demand } from './converter-input.ts';
import { noDemand } from './converter-input.ts';

/** A load as terms of a demand, scaled by the share of the time it draws. */
export function loadDemand(load: Load, share = 1): Demand {
  switch (load.kind) {
    case 'current':
      return { ...noDemand, currentA: load.currentA * share };
    case 'power':
      return { ...noDemand, powerW: load.powerW * share };
    case 'resistance':
      return { ...noDemand, conductanceS: share / load.resistanceOhm };
  }
}

export function addDemands(one: Demand, other: Demand): Demand {
  return {
    currentA: one.currentA + other.currentA,
    powerW: one.powerW + other.powerW,
    conductanceS: one.conductanceS + other.conductanceS,
  };
}

/** Mean demand of the accessories that are switched on, by where they are fed from. */
export function accessoryDemands(machine: Machine): Readonly<Record<Accessory['supply'], Demand>> {
  const sum = (supply: Accessory['supply']) =>
    machine.accessories
      .filter((accessory) => accessory.on && accessory.supply === supply)
      .map((accessory) => loadDemand(accessory.load, accessory.dutyPercent / 100))
      .reduce(addDemands, noDemand);
  return { converter: sum('converter'), pack: sum('pack'), 'mid-point': sum('mid-point') };
}

/** True when a demand draws nothing at any voltage. */
export function isIdle(demand: Demand): boolean {
  return demand.currentA === 0 && demand.powerW === 0 && demand.conductanceS === 0;
}
