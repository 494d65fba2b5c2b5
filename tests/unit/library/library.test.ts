import { describe, expect, test } from 'vitest';
import { newOption, newPack, newPlan } from '#core/plan/defaults.ts';
import {
  accessoryParts,
  blockParts,
  chargerParts,
  converterParts,
  libraryBlock,
  libraryCharger,
  motorParts,
} from '#core/library/index.ts';
import { fitMotor } from '#core/drive/motor-constants.ts';
import { newDrive } from '#core/plan/drive-defaults.ts';
import { checkPlan } from '#core/plan/read-plan.ts';

const everyPart = [
  ...blockParts,
  ...chargerParts,
  ...converterParts,
  ...accessoryParts,
  ...motorParts,
];

test('no two parts share an identifier, and each value names its part', () => {
  expect(new Set(everyPart.map((part) => part.id)).size).toBe(everyPart.length);
  for (const part of everyPart) expect(part.value.partId).toBe(part.id);
});

test('every part is accepted by the plan schema', () => {
  const plan = newPlan();
  plan.ownParts = {
    blocks: blockParts.map(({ id, value: part }) => ({ id, part })),
    chargers: chargerParts.map(({ id, value: part }) => ({ id, part })),
    converters: converterParts.map(({ id, value: part }) => ({ id, part })),
    accessories: accessoryParts.map(({ id, value: part }) => ({ id, part })),
  };
  expect(checkPlan(plan)).toMatchObject({ ok: true });
});

test('every figure with a range has its typical value inside it', () => {
  for (const part of everyPart) {
    for (const figure of part.figures) {
      expect(figure.low, `${part.id} ${figure.field}`).toBeLessThanOrEqual(figure.typical);
      expect(figure.high, `${part.id} ${figure.field}`).toBeGreaterThanOrEqual(figure.typical);
      expect(figure.source).not.toBe('');
    }
  }
});

test('every motor is accepted as the motor of a drive', () => {
  for (const { value } of motorParts) {
    const plan = newPlan();
    plan.machine.drive = { ...newDrive(), motor: value };
    expect(checkPlan(plan)).toMatchObject({ ok: true });
  }
});

// Common practice, no source: brushed motors turn 65 to 88 % of the power on their label into shaft power.
test('the power of a motor is a usual share of its volts and amps', () => {
  for (const { id, value } of motorParts) {
    const share = value.ratedPowerW! / (value.ratedVoltageV * value.ratedCurrentA!);
    expect(share, id).toBeGreaterThan(0.65);
    expect(share, id).toBeLessThan(0.88);
  }
});

test('no-load reading and rated point alone lead back to the winding of each motor within 5 %', () => {
  for (const { id, value } of motorParts) {
    const fit = fitMotor({ ...value, windingOhm: null });
    if (!fit.ok) throw new Error(`${id}: ${fit.problem}`);
    expect(Math.abs(fit.constants.resistanceOhm / value.windingOhm! - 1), id).toBeLessThan(0.05);
  }
});

// Common practice, no source: resistance of new 12 V blocks.
describe('the resistance of a lead block lies in the trade range of its size', () => {
  test.each([
    ['agm-12v-7ah', 0.022, 0.03],
    ['agm-12v-12ah', 0.014, 0.02],
    ['agm-12v-22ah', 0.0095, 0.014],
    ['agm-12v-40ah', 0.004, 0.008],
  ])('%s', (id, low, high) => {
    const ohm = libraryBlock(id).resistanceOhm;
    expect(ohm).toBeGreaterThanOrEqual(low);
    expect(ohm).toBeLessThanOrEqual(high);
  });
});

// Common practice, no source: an LFP pack of eight groups has 10 to 40 mΩ with its BMS.
test.each(['lfp-24v-20ah', 'lfp-24v-30ah', 'lfp-24v-50ah'])(
  'the resistance of %s lies between 10 and 40 mΩ',
  (id) => {
    const ohm = libraryBlock(id).resistanceOhm;
    expect(ohm).toBeGreaterThanOrEqual(0.01);
    expect(ohm).toBeLessThanOrEqual(0.04);
  },
);

// Published end voltages: lead 14.4 to 14.7 V per 12 V, LFP 3.65 V and NMC 4.20 V per cell.
test.each([
  ['charger-lead-24v-3a', 28.8, 29.4],
  ['charger-lfp-24v-5a', 29.2, 29.2],
  ['charger-nmc-24v-2a', 29.4, 29.4],
  ['charger-nmc-36v-4a', 42, 42],
])('the end voltage of %s is that of its cells', (id, low, high) => {
  const end = libraryCharger(id).endVoltageV;
  expect(end).toBeGreaterThanOrEqual(low);
  expect(end).toBeLessThanOrEqual(high);
});

test('lithium chargers do not float', () => {
  for (const { value } of chargerParts) {
    if (value.chemistries.some((name) => name === 'lfp' || name === 'nmc'))
      expect(value.floatVoltageV).toBeNull();
  }
});

test('the library spans blocks of 5 to 100 A·h and packs of the 12, 24, 36 and 48 V classes', () => {
  const sealed = blockParts
    .filter(({ value }) => value.chemistry === 'agm')
    .map(({ value }) => value.capacityAh);
  expect([Math.min(...sealed), Math.max(...sealed)]).toEqual([5, 100]);
  const groups = blockParts
    .filter(({ value }) => value.bms !== null)
    .map(({ value }) => `${value.chemistry}${value.cellGroups}`);
  expect([...new Set(groups)].toSorted()).toEqual([
    'lfp12',
    'lfp16',
    'lfp4',
    'lfp8',
    'nmc10',
    'nmc13',
    'nmc7',
  ]);
});

test('a copy from the library does not reach back into it', () => {
  const block = libraryBlock('lfp-24v-20ah');
  block.bms!.groupLowV = 1;
  expect(libraryBlock('lfp-24v-20ah').bms!.groupLowV).toBe(2.5);
  expect(newOption([], newPack(libraryBlock('lfp-24v-20ah'), 1)).pack.seriesCount).toBe(1);
});
