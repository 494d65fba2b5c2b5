import {
  libraryAccessory,
  libraryBlock,
  libraryCharger,
  libraryConverter,
} from '../../library/index.ts';
import { newMachine, newOption, newPack, newPlan } from '../defaults.ts';
import { newBrakeResistor, newDriveLoad, newMotorControl } from '../drive-defaults.ts';
import type { Controller } from '../schema/controller.ts';
import type { Drive } from '../schema/drive.ts';
import type { DriveLoad } from '../schema/leg-load.ts';
import type { Machine } from '../schema/machine.ts';
import type { Option } from '../schema/option.ts';
import type { Outing } from '../schema/outing.ts';
import type { Plan } from '../schema/plan.ts';
import { campsiteTugWiring } from './campsite-tug-wiring.ts';
import { campsiteWeek } from './sample-weeks.ts';

/** A small seated tug that pulls luggage trailers up sloping lanes. Invented; it describes no real machine. */
export function campsiteTug(): Plan {
  return {
    ...newPlan('Campsite tug'),
    note: 'A seated tug with two brushed motors pulls luggage trailers up sloping lanes: 24 V lead against 36 V lithium. Invented data.',
    invented: true,
    machine: machine(),
    wiring: campsiteTugWiring(),
    outings: [luggageRound()],
    headlineOuting: 'luggage-round',
    week: campsiteWeek(),
    options: [lead24(), lithium36()],
  };
}

function controller24(): Controller {
  return {
    name: 'Motor controller 24 V, 60 A',
    minimumVoltageV: 18,
    maximumVoltageV: 36,
    cutoffVoltageV: 20,
    restartVoltageV: 22.5,
    cutoffDelayS: 2,
    batteryCurrentLimitA: 60,
    motorCurrentLimitA: 90,
    idleCurrentA: 0.08,
    control: { ...newMotorControl(), rampUpS: 0.7, rampDownS: 0.3 },
  };
}

function machine(): Machine {
  return {
    ...newMachine('Campsite tug'),
    note: 'Two brushed motors: in series for slow, in parallel for fast. Rheostatic brake, mechanical parking brake.',
    controller: controller24(),
    harnessResistanceOhm: 0.008,
    converter: { ...libraryConverter('converter-36-48-to-12-10a'), minimumInputV: 18, price: 32 },
    accessories: [
      { ...libraryAccessory('tail-light-led'), id: 'tail-lights', name: 'Tail lights' },
      { ...libraryAccessory('beacon-led'), id: 'beacon', name: 'Beacon' },
      { ...libraryAccessory('work-light-led-27w'), id: 'headlight', name: 'Headlight', on: false },
      { ...libraryAccessory('horn-4a'), id: 'horn', name: 'Horn' },
      { ...libraryAccessory('tracker'), id: 'tracker', name: 'Position tracker' },
    ],
    drive: drive(),
    bay: { lengthMm: 520, widthMm: 280, heightMm: 230, massLimitKg: 45 },
  };
}

/** Two motors: in series they share the voltage for the climb, in parallel the machine goes twice as fast. */
function drive(): Drive {
  return {
    masses: { machineKg: 85, riderKg: 80, payloadKg: 110, rotatingPercent: 5 },
    wheel: { diameterMm: 300, drivenSharePercent: 55, grip: 'rubber', dragAreaM2: null },
    motor: {
      name: 'Brushed motor 24 V, 300 W',
      ratedVoltageV: 24,
      testVoltageV: null,
      noLoadRpm: 2850,
      noLoadCurrentA: 1.8,
      rpmPerVolt: null,
      windingOhm: 0.12,
      stallCurrentA: null,
      ratedCurrentA: 16.5,
      ratedRpm: 2600,
      ratedPowerW: 300,
      heatResistanceKPerW: null,
      heatTimeS: null,
      maximumTemperatureC: null,
      maximumCurrentA: 110,
      massKg: 2.9,
      partId: null,
    },
    motorCount: 2,
    gears: [
      {
        id: 'slow',
        name: 'Slow, motors in series',
        ratio: 18,
        efficiencyPercent: 82,
        motorsInSeries: 2,
        direction: 'forward',
        highestDutyPercent: 100,
      },
      {
        id: 'fast',
        name: 'Fast, motors in parallel',
        ratio: 18,
        efficiencyPercent: 82,
        motorsInSeries: 1,
        direction: 'forward',
        highestDutyPercent: 100,
      },
    ],
    brakes: {
      onRelease: 'resistor',
      resistor: { ...newBrakeResistor(), resistanceOhm: 0.47, ratedPowerW: 100 },
      regenerationLimitA: null,
      serviceDecelerationMps2: 1.8,
      parking: 'manual',
    },
    stopChain: {
      isolator: 'switch',
      isolatorReachable: 'yes',
      isolatorDcVoltageV: 48,
      isolatorBreakingA: 300,
      throttleFaultDetection: 'unknown',
      startInterlock: 'yes',
    },
    speedLimitKmh: 8,
    steepestGradePercent: 9,
    steepestSurface: 'packed-gravel',
    resistancePercent: 100,
    scaledTo: null,
  };
}

/** Up to the pitches with a trailer, unload, roll back down, wait at the gate. */
function luggageRound(): Outing {
  const ride = (changes: Partial<DriveLoad>): DriveLoad => ({
    ...newDriveLoad(),
    surface: 'packed-gravel',
    gearId: 'fast',
    haltS: 8,
    ...changes,
  });
  return {
    id: 'luggage-round',
    name: 'Luggage rounds',
    goalMin: 120,
    ambientC: 22,
    legs: [
      {
        id: 'lane',
        name: 'Lane with trailer, level',
        durationMin: 3,
        otherLoads: [],
        load: ride({ command: { kind: 'speed', targetSpeedKmh: 7 }, distanceM: 230, starts: 2 }),
      },
      {
        id: 'climb',
        name: 'Up the slope, 7 %',
        durationMin: 4,
        otherLoads: [],
        load: ride({
          gradePercent: 7,
          gearId: 'slow',
          command: { kind: 'speed', targetSpeedKmh: 4 },
          distanceM: 120,
        }),
      },
      { id: 'unload', name: 'Unload', durationMin: 4, otherLoads: [], load: null },
      {
        id: 'down',
        name: 'Back down, empty',
        durationMin: 3,
        otherLoads: [],
        load: ride({
          gradePercent: -7,
          gearId: 'slow',
          command: { kind: 'speed', targetSpeedKmh: 4 },
          distanceM: 120,
          haltS: 0,
          loadPercent: 0,
        }),
      },
      {
        id: 'return',
        name: 'Lane back, empty',
        durationMin: 3,
        otherLoads: [],
        load: ride({
          command: { kind: 'speed', targetSpeedKmh: 7 },
          distanceM: 230,
          starts: 2,
          loadPercent: 0,
        }),
      },
      { id: 'gate', name: 'Wait at the gate', durationMin: 3, otherLoads: [], load: null },
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
      ...controller24(),
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
