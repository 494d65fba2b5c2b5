import {
  libraryAccessory,
  libraryBlock,
  libraryCharger,
  libraryConverter,
} from '../../library/index.ts';
import { newMachine, newOption, newPack, newPlan } from '../defaults.ts';
import type { Machine } from '../schema/machine.ts';
import type { Option } from '../schema/option.ts';
import type { Outing } from '../schema/outing.ts';
import type { Plan } from '../schema/plan.ts';
import { orchardCartWiring } from './orchard-cart-wiring.ts';
import { orchardWeek } from './sample-weeks.ts';

/** A hand-guided cart that hauls crates between rows of trees. Invented; it describes no real machine. */
export function orchardCart(): Plan {
  return {
    ...newPlan('Orchard cart'),
    note: 'A 24 V hand-guided cart hauls crates between rows of trees, with work lights and a radio on a step-down converter. Which pack lasts a picking shift? Invented data.',
    invented: true,
    machine: machine(),
    wiring: orchardCartWiring(),
    outings: [pickingShift(), coldMorning()],
    headlineOuting: 'picking-shift',
    week: orchardWeek(),
    options: [twoInSeries(), oneLithium(), twoStrings()],
  };
}

function machine(): Machine {
  const light = libraryAccessory('work-light-led-18w');
  return {
    ...newMachine('Orchard cart'),
    note: 'One geared motor on the rear axle, thumb lever on the handlebar, walking speed.',
    controller: {
      name: 'Motor controller 24 V, 35 A',
      minimumVoltageV: 18,
      maximumVoltageV: 36,
      cutoffVoltageV: 20.5,
      restartVoltageV: 23,
      cutoffDelayS: 1,
      batteryCurrentLimitA: 35,
      motorCurrentLimitA: 60,
      idleCurrentA: 0.06,
      control: null,
    },
    harnessResistanceOhm: 0.009,
    converter: { ...libraryConverter('converter-24-to-12-5a'), price: 14 },
    accessories: [
      { ...light, id: 'work-light-front', name: 'Work light, front' },
      { ...light, id: 'work-light-rear', name: 'Work light, rear' },
      { ...libraryAccessory('radio-8w'), id: 'radio', name: 'Radio' },
    ],
    bay: { lengthMm: 400, widthMm: 200, heightMm: 180, massLimitKg: 18 },
  };
}

/** Row by row: start, haul on turf, stand and load, start, return. */
function pickingShift(): Outing {
  return {
    id: 'picking-shift',
    name: 'Picking shift',
    goalMin: 90,
    ambientC: 18,
    legs: [
      {
        id: 'start-loaded',
        name: 'Start, loaded',
        durationMin: 0.06,
        otherLoads: [],
        load: { kind: 'power', powerW: 620 },
      },
      {
        id: 'haul',
        name: 'Haul crates down the row',
        durationMin: 3.5,
        otherLoads: [],
        load: { kind: 'power', powerW: 310 },
      },
      { id: 'unload', name: 'Stand and unload', durationMin: 1.2, otherLoads: [], load: null },
      {
        id: 'start-empty',
        name: 'Start, empty',
        durationMin: 0.05,
        otherLoads: [],
        load: { kind: 'power', powerW: 420 },
      },
      {
        id: 'return',
        name: 'Return empty',
        durationMin: 2.5,
        otherLoads: [],
        load: { kind: 'power', powerW: 165 },
      },
      { id: 'load', name: 'Stand and load', durationMin: 1.3, otherLoads: [], load: null },
    ],
    longestMin: 1440,
    restAfterMin: 15,
  };
}

function coldMorning(): Outing {
  return { ...pickingShift(), id: 'cold-morning', name: 'Cold morning', goalMin: 60, ambientC: 2 };
}

function twoInSeries(): Option {
  const block = { ...libraryBlock('agm-12v-18ah'), price: 42 };
  return {
    ...newOption([], { ...newPack(block, 2), mainFuseA: 40 }, 'Two 12 V 18 A·h AGM in series'),
    id: 'agm-series',
    note: 'What the cart was built with.',
    charger: { ...libraryCharger('charger-lead-24v-3a'), price: 35 },
    portLimitA: 5,
  };
}

function oneLithium(): Option {
  const block = {
    ...libraryBlock('lfp-24v-20ah'),
    lengthMm: 180,
    widthMm: 165,
    heightMm: 175,
    price: 215,
  };
  return {
    ...newOption([], { ...newPack(block, 1), mainFuseA: 40 }, 'One 24 V 20 A·h LFP with BMS'),
    id: 'lfp-pack',
    note: 'A sealed pack in the place of the two blocks.',
    charger: { ...libraryCharger('charger-lfp-24v-5a'), price: 48 },
    portLimitA: 5,
  };
}

function twoStrings(): Option {
  const block = { ...libraryBlock('agm-12v-12ah'), price: 31 };
  return {
    ...newOption(
      [],
      { ...newPack(block, 2), parallelCount: 2, stringFuseA: 30, mainFuseA: 40 },
      'Two strings of two 12 V 12 A·h AGM',
    ),
    id: 'agm-two-strings',
    note: 'Four smaller blocks that fit beside each other.',
    charger: { ...libraryCharger('charger-lead-24v-3a'), price: 35 },
    portLimitA: 5,
  };
}
