import { freshId } from './fresh-id.ts';
import type { Accessory, Converter } from './schema/accessory.ts';
import type { Block } from './schema/block.ts';
import type { Charger } from './schema/charger.ts';
import type { Controller } from './schema/controller.ts';
import type { Machine } from './schema/machine.ts';
import type { Difference, GroupDifference, Option, Pack } from './schema/option.ts';
import type { Leg, Outing } from './schema/outing.ts';
import { planFormat, planVersion, type Plan } from './schema/plan.ts';
import type { Thresholds } from './schema/thresholds.ts';
import { defaultChargeThresholds } from './schema/charge-thresholds.ts';
import { defaultDriveThresholds } from './schema/drive-thresholds.ts';
import { defaultPackThresholds } from './schema/pack-thresholds.ts';
import { defaultCareThresholds } from './schema/week.ts';
import { defaultWiringThresholds } from './schema/wiring.ts';

/** Limits of the findings as they stand in a new plan. Sources stand with the rules that use them. */
export const defaultThresholds: Thresholds = {
  leadCyclicVoltPerBlock: 14.55,
  endVoltageTolerancePercent: 1,
  restDifferenceNoteV: 0.1,
  restDifferenceWarnV: 0.2,
  restDifferenceStopV: 0.5,
  converterLoadPercent: 75,
  standbyDays: 60,
  sagLeftPercent: 20,
  promisePercent: 10,
  pack: defaultPackThresholds,
  charge: defaultChargeThresholds,
  drive: defaultDriveThresholds,
  wiring: defaultWiringThresholds,
  care: defaultCareThresholds,
};

/** A controller of which nothing is known but what every controller has. */
export function newController(): Controller {
  return {
    name: 'Controller',
    minimumVoltageV: null,
    maximumVoltageV: null,
    cutoffVoltageV: null,
    restartVoltageV: null,
    cutoffDelayS: 1,
    batteryCurrentLimitA: null,
    motorCurrentLimitA: null,
    idleCurrentA: 0.05,
    control: null,
  };
}

export function newMachine(name = 'New machine'): Machine {
  return {
    name,
    note: '',
    controller: newController(),
    harnessResistanceOhm: 0.008,
    converter: null,
    accessories: [],
    bay: { lengthMm: null, widthMm: null, heightMm: null, massLimitKg: null },
    drive: null,
  };
}

/** A 12 V AGM block of 18 A·h rated over 20 h; everything else not known. */
export function newBlock(): Block {
  return {
    name: 'AGM 12 V 18 A·h',
    chemistry: 'agm',
    cellGroups: 6,
    capacityAh: 18,
    ratedHours: 20,
    rating: { kind: 'exponent', exponent: null },
    resistanceOhm: null,
    continuousDischargeA: null,
    peakDischargeA: null,
    maximumChargeA: null,
    chargeEndVoltageV: null,
    bms: null,
    massKg: null,
    lengthMm: null,
    widthMm: null,
    heightMm: null,
    price: null,
    partId: null,
    fitted: null,
  };
}

/** `seriesCount` blocks in series, one string, new, all alike. */
export function newPack(block: Block = newBlock(), seriesCount = 2): Pack {
  return {
    block,
    seriesCount,
    parallelCount: 1,
    linkResistanceOhm: 0.002,
    stringFuseA: null,
    mainFuseA: null,
    ageYears: 0,
    cyclesDone: 0,
    differences: [],
    groupDifferences: [],
  };
}

/** A block that differs from the rest in nothing yet. */
export function newDifference(string: number, position: number): Difference {
  return {
    string,
    position,
    capacityPercent: 100,
    resistancePercent: 100,
    startPercent: null,
    restVoltageV: null,
    ageYears: null,
    replacement: null,
  };
}

export function newGroupDifference(
  string: number,
  position: number,
  group: number,
): GroupDifference {
  return {
    string,
    position,
    group,
    capacityPercent: 100,
    resistancePercent: 100,
    startPercent: null,
  };
}

/** A full pack without charger, with an identifier none of `taken` has. */
export function newOption(
  taken: Iterable<string> = [],
  pack: Pack = newPack(),
  name = 'New option',
): Option {
  return {
    id: freshId('option', taken),
    name,
    note: '',
    pack,
    startPercent: 100,
    depthLimitPercent: null,
    charger: null,
    portLimitA: null,
    controller: null,
  };
}

/** A staged charger for two 12 V lead blocks in series. */
export function newCharger(): Charger {
  return {
    name: 'Charger',
    kind: 'staged',
    chemistries: ['agm'],
    cellGroups: 12,
    currentA: 3,
    endVoltageV: null,
    floatVoltageV: null,
    tailCurrentA: null,
    sourceResistanceOhm: null,
    compensationMvPerCellK: null,
    equalises: false,
    maximumHours: null,
    efficiencyPercent: null,
    price: null,
    partId: null,
  };
}

/** A 12 V step-down converter of 10 A. */
export function newConverter(): Converter {
  return {
    name: 'Step-down to 12 V',
    outputVoltageV: 12,
    ratedCurrentA: 10,
    peakCurrentA: null,
    minimumInputV: null,
    maximumInputV: null,
    maximumDutyPercent: 95,
    dropoutResistanceOhm: 0.05,
    loss: { kind: 'sheet', efficiencyPercent: 90, idleCurrentA: 0.015 },
    alwaysOn: false,
    price: null,
    partId: null,
  };
}

export function newAccessory(taken: Iterable<string> = []): Accessory {
  return {
    id: freshId('accessory', taken),
    name: 'New accessory',
    on: true,
    supply: 'pack',
    load: { kind: 'power', powerW: 10 },
    dutyPercent: 100,
    startupCurrentA: null,
    maximumInputV: null,
    standbyA: 0,
    partId: null,
  };
}

export function newLeg(taken: Iterable<string> = []): Leg {
  return {
    id: freshId('leg', taken),
    name: 'Drive',
    durationMin: 5,
    load: { kind: 'power', powerW: 150 },
    otherLoads: [],
  };
}

export function newOuting(taken: Iterable<string> = []): Outing {
  return {
    id: freshId('outing', taken),
    name: 'New outing',
    goalMin: 60,
    ambientC: 20,
    legs: [newLeg()],
    longestMin: 1440,
    restAfterMin: 10,
  };
}

/** A plan that can be run at once: one machine, one option, one outing. */
export function newPlan(name = 'New plan'): Plan {
  const outing = newOuting();
  return {
    format: planFormat,
    version: planVersion,
    name,
    note: '',
    invented: false,
    currency: 'EUR',
    machine: newMachine(),
    outings: [outing],
    headlineOuting: outing.id,
    options: [newOption()],
    ownParts: { blocks: [], chargers: [], converters: [], accessories: [] },
    thresholds: { ...defaultThresholds },
    bench: null,
    week: null,
    wiring: null,
  };
}
