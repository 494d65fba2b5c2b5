import { libraryAccessory, libraryBlock, libraryCharger } from '../../library/index.ts';
import { newDifference, newMachine, newOption, newPack, newPlan } from '../defaults.ts';
import type { Machine } from '../schema/machine.ts';
import type { Option, Pack } from '../schema/option.ts';
import type { Outing } from '../schema/outing.ts';
import type { Plan } from '../schema/plan.ts';
import { marketScooterWiring } from './market-scooter-wiring.ts';
import { marketWeek } from './sample-weeks.ts';

/** A seated scooter with a tired pair of blocks, one of them weak. Invented; it describes no real machine. */
export function marketScooter(): Plan {
  return {
    ...newPlan('Market scooter'),
    note: 'A seated scooter in daily use, charged overnight. Its three-year-old pair of blocks holds less than it did, and one block is 27 % weaker than the other. Invented data.',
    invented: true,
    machine: machine(),
    wiring: marketScooterWiring(),
    outings: [marketDay()],
    headlineOuting: 'market-day',
    week: marketWeek(),
    options: [tiredPair(), newPair(), lithiumPack()],
  };
}

function machine(): Machine {
  return {
    ...newMachine('Market scooter'),
    note: 'One motor with gearbox, electromagnetic parking brake, basket in front.',
    controller: {
      name: 'Scooter controller 24 V, 45 A',
      minimumVoltageV: 17,
      maximumVoltageV: 38,
      cutoffVoltageV: 20,
      restartVoltageV: 23,
      cutoffDelayS: 1.5,
      batteryCurrentLimitA: 45,
      motorCurrentLimitA: 70,
      idleCurrentA: 0.12,
      control: null,
    },
    harnessResistanceOhm: 0.011,
    accessories: [
      {
        ...libraryAccessory('tail-light-led'),
        id: 'lights',
        name: 'Front and tail lights',
        supply: 'pack',
      },
      { ...libraryAccessory('voltmeter'), id: 'gauge', name: 'Battery gauge', supply: 'pack' },
    ],
    bay: { lengthMm: 420, widthMm: 210, heightMm: 190, massLimitKg: 30 },
  };
}

/** To the market and back with stops at stalls and crossings. */
function marketDay(): Outing {
  return {
    id: 'market-day',
    name: 'Market day',
    goalMin: 100,
    ambientC: 16,
    legs: [
      {
        id: 'start',
        name: 'Start',
        durationMin: 0.06,
        otherLoads: [],
        load: { kind: 'power', powerW: 700 },
      },
      {
        id: 'pavement',
        name: 'Pavement',
        durationMin: 3,
        otherLoads: [],
        load: { kind: 'power', powerW: 190 },
      },
      {
        id: 'crossing',
        name: 'Wait at the crossing',
        durationMin: 0.7,
        otherLoads: [],
        load: null,
      },
      {
        id: 'rise',
        name: 'Slight rise, 4 %',
        durationMin: 0.8,
        otherLoads: [],
        load: { kind: 'power', powerW: 430 },
      },
      { id: 'stall', name: 'Stand at a stall', durationMin: 2.5, otherLoads: [], load: null },
    ],
    longestMin: 1440,
    restAfterMin: 15,
  };
}

/** The pair as it stands: both worn, the block at the positive end worn more and lower at rest. */
function tiredPair(): Option {
  const block = { ...libraryBlock('agm-12v-22ah'), price: 55 };
  const pack: Pack = {
    ...newPack(block, 2),
    mainFuseA: 50,
    ageYears: 3,
    cyclesDone: 60,
    differences: [
      {
        ...newDifference(1, 2),
        capacityPercent: 73,
        resistancePercent: 180,
        restVoltageV: 12.58,
        ageYears: 3,
      },
      { ...newDifference(1, 1), restVoltageV: 12.83, ageYears: 3 },
    ],
  };
  return {
    ...newOption([], pack, 'The pair as it is, one block weak'),
    id: 'tired-pair',
    note: 'Meter readings after a night of rest: 12.83 V and 12.58 V.',
    charger: { ...libraryCharger('charger-lead-24v-3a'), price: null },
    portLimitA: 5,
  };
}

function newPair(): Option {
  const block = { ...libraryBlock('agm-12v-22ah'), price: 55 };
  return {
    ...newOption([], { ...newPack(block, 2), mainFuseA: 50 }, 'A new pair of the same'),
    id: 'new-pair',
    charger: { ...libraryCharger('charger-lead-24v-3a'), price: null },
    portLimitA: 5,
  };
}

/** Lithium with the charger that is there: the match shows why that will not do. */
function lithiumPack(): Option {
  const block = {
    ...libraryBlock('lfp-24v-20ah'),
    lengthMm: 180,
    widthMm: 165,
    heightMm: 175,
    price: 215,
  };
  return {
    ...newOption([], { ...newPack(block, 1), mainFuseA: 50 }, '24 V LFP with the old charger'),
    id: 'lfp-old-charger',
    note: 'Can the lead charger stay?',
    charger: { ...libraryCharger('charger-lead-24v-3a'), price: null },
    portLimitA: 5,
  };
}
