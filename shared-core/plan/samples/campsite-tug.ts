import {
  libraryAccessory,
  libraryBlock,
  libraryCharger,
  libraryConverter,
} from '../../library/index.ts';
import { newMachine, newOption, newPack, newPlan } from '../defaults.ts';
import type { Controller } from '../schema/controller.ts';
import type { Machine } from '../schema/machine.ts';
import type { Option } from '../schema/option.ts';
import type { Outing } from '../schema/outing.ts';
import type { Plan } from '../schema/plan.ts';

/** A small seated tug that pulls luggage trailers up sloping lanes. Invented; it describes no real machine. */
export function campsiteTug(): Plan {
  return {
    ...newPlan('Campsite tug'),
    note: 'A seated tug with two brushed motors pulls luggage trailers up sloping lanes: 24 V lead against 36 V lithium. Invented data.',
    invented: true,
    machine: machine(),
    outings: [luggageRound()],
    headlineOuting: 'luggage-round',
    options: [lead24(), lithium36()],
  };
}

const controller24: Controller = {
  name: 'Motor controller 24 V, 60 A',
  minimumVoltageV: 18,
  maximumVoltageV: 36,
  cutoffVoltageV: 20,
  restartVoltageV: 22.5,
  cutoffDelayS: 2,
  batteryCurrentLimitA: 60,
  motorCurrentLimitA: 90,
  idleCurrentA: 0.08,
  control: null,
};

function machine(): Machine {
  return {
    ...newMachine('Campsite tug'),
    note: 'Two brushed motors: in series for slow, in parallel for fast. Rheostatic brake, mechanical parking brake.',
    controller: controller24,
    harnessResistanceOhm: 0.008,
    converter: { ...libraryConverter('converter-36-48-to-12-10a'), minimumInputV: 18, price: 32 },
    accessories: [
      { ...libraryAccessory('tail-light-led'), id: 'tail-lights', name: 'Tail lights' },
      { ...libraryAccessory('beacon-led'), id: 'beacon', name: 'Beacon' },
      { ...libraryAccessory('work-light-led-27w'), id: 'headlight', name: 'Headlight', on: false },
      { ...libraryAccessory('horn-4a'), id: 'horn', name: 'Horn' },
      { ...libraryAccessory('tracker'), id: 'tracker', name: 'Position tracker' },
    ],
    bay: { lengthMm: 520, widthMm: 280, heightMm: 230, massLimitKg: 45 },
  };
}

/** Up to the pitches with a trailer, unload, roll back down, wait at the gate. */
function luggageRound(): Outing {
  return {
    id: 'luggage-round',
    name: 'Luggage rounds',
    goalMin: 120,
    ambientC: 22,
    legs: [
      {
        id: 'start',
        name: 'Start with trailer',
        durationMin: 0.08,
        load: { kind: 'power', powerW: 1150 },
      },
      {
        id: 'lane',
        name: 'Gravel lane, level',
        durationMin: 2,
        load: { kind: 'power', powerW: 420 },
      },
      {
        id: 'climb',
        name: 'Up the lane, 7 %',
        durationMin: 1.5,
        load: { kind: 'power', powerW: 980 },
      },
      { id: 'unload', name: 'Unload', durationMin: 4, load: null },
      {
        id: 'down',
        name: 'Back down, empty',
        durationMin: 2.5,
        load: { kind: 'power', powerW: 140 },
      },
      { id: 'gate', name: 'Wait at the gate', durationMin: 3, load: null },
    ],
    longestMin: 1440,
    restAfterMin: 20,
  };
}

function lead24(): Option {
  const block = { ...libraryBlock('agm-12v-40ah'), price: 118 };
  return {
    ...newOption([], { ...newPack(block, 2), mainFuseA: 80 }, '24 V lead: two 12 V 40 A·h AGM'),
    id: 'lead-24',
    note: 'Heavy, cheap, matches the controller that is there.',
    charger: { ...libraryCharger('charger-lead-24v-5a'), price: 59 },
    portLimitA: 10,
  };
}

function lithium36(): Option {
  const block = {
    ...libraryBlock('nmc-36v-30ah'),
    lengthMm: 330,
    widthMm: 130,
    heightMm: 140,
    price: 420,
  };
  return {
    ...newOption([], { ...newPack(block, 1), mainFuseA: 60 }, '36 V lithium: NMC 30 A·h with BMS'),
    id: 'lithium-36',
    note: 'Needs a controller for 36 V; the motors see half as much voltage again.',
    charger: { ...libraryCharger('charger-nmc-36v-4a'), price: 55 },
    portLimitA: 10,
    controller: {
      ...controller24,
      name: 'Motor controller 36 V, 40 A',
      minimumVoltageV: 27,
      maximumVoltageV: 55,
      cutoffVoltageV: 31,
      restartVoltageV: 34,
      batteryCurrentLimitA: 35,
      motorCurrentLimitA: 70,
    },
  };
}
