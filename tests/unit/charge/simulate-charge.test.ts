import { describe, expect, test } from 'vitest';
import { chargeOption } from '#core/charge/charge-option.ts';
import { compareChargeWays } from '#core/charge/charge-ways.ts';
import { chargerProgram } from '#core/charge/charger-program.ts';
import { chargeStages } from '#core/charge/charge-result.ts';
import { simulateCharge, usualWishes } from '#core/charge/simulate-charge.ts';
import { libraryBlock, libraryCharger } from '#core/library/index.ts';
import { newDifference, newOption, newPack } from '#core/plan/defaults.ts';
import { plainProgram, plainUnit } from '../../support/charge-unit.ts';

const pair = () => newOption([], newPack(libraryBlock('agm-12v-18ah'), 2));
const charger = () => libraryCharger('charger-lead-24v-3a');
const at = (startPercent: number, temperatureC = 20) => ({ temperatureC, startPercent });

describe('a charge', () => {
  test('that starts full takes next to nothing', () => {
    const result = chargeOption(pair(), charger(), at(100));
    expect(result.inAh).toBeLessThan(0.6);
    expect(result.endPercent).toBeGreaterThanOrEqual(99.9);
  });

  test('of lead runs through bulk, absorption and float, and stores less than it takes in', () => {
    const result = chargeOption(pair(), charger(), { ...at(20), wishes: { afterHours: 4 } });
    const stages = new Set([...result.series.stage].map((index) => chargeStages[index]));
    expect([...stages]).toEqual(['bulk', 'absorption', 'float']);
    expect(result.chargeEfficiencyPercent!).toBeLessThan(99);
    expect(result.chargeEfficiencyPercent!).toBeGreaterThan(85);
    expect(result.endedBy).toBe('tail-current');
  });

  test('of lithium has no float and ends by its tail current', () => {
    const option = newOption([], newPack(libraryBlock('lfp-24v-20ah'), 1));
    const result = chargeOption(option, libraryCharger('charger-lfp-24v-5a'), {
      ...at(10),
      wishes: { afterHours: 1 },
    });
    expect(result.endedBy).toBe('tail-current');
    expect([...new Set(result.series.stage)].map((index) => chargeStages[index])).toEqual([
      'bulk',
      'absorption',
      'ended',
    ]);
    expect(result.endPercent).toBeGreaterThan(97);
    expect(result.hours).toBeGreaterThan(3.5);
    expect(result.hours).toBeLessThan(5);
  });

  test('never reports a number that is not finite', () => {
    for (const start of [0, 1, 50, 99.9, 100]) {
      for (const temperatureC of [-30, 0, 25, 60]) {
        const { series, units, ...rest } = chargeOption(pair(), charger(), at(start, temperatureC));
        const numbers = [
          ...Object.values(rest),
          ...units.flatMap((unit) => Object.values(unit)),
          ...Object.values(series).flatMap((column) => [...column]),
        ];
        for (const value of numbers)
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      }
    }
  });

  test('lasts longer the emptier the pack', () => {
    const hours = [80, 60, 40, 20, 0].map(
      (start) => chargeOption(pair(), charger(), at(start)).hours,
    );
    for (let index = 1; index < hours.length; index += 1)
      expect(hours[index]!).toBeGreaterThan(hours[index - 1]!);
  });

  test('of two equal strings with twice the current is the charge of one string', () => {
    const single = chargeOption(pair(), charger(), at(30));
    const both = chargeOption(
      { ...pair(), pack: { ...pair().pack, parallelCount: 2 } },
      { ...charger(), currentA: 6, tailCurrentA: 2 * charger().tailCurrentA! },
      at(30),
    );
    expect(both.hours).toBeCloseTo(single.hours, 4);
    expect(both.inAh).toBeCloseTo(2 * single.inAh, 4);
  });

  test('of two strings simulated apart shares the current like two strings merged', () => {
    const string = { count: 1, linkOhm: 0.002, units: [plainUnit({ count: 2, startShare: 0.2 })] };
    const program = plainProgram({ currentA: 2.4, endVoltageV: 25.2, tailCurrentA: 0.24 });
    const merged = simulateCharge({ leadOhm: 0, strings: [{ ...string, count: 2 }] }, program);
    const apart = simulateCharge({ leadOhm: 0, strings: [string, string] }, program);
    expect(apart.hours).toBeCloseTo(merged.hours, 3);
    expect(apart.inAh).toBeCloseTo(merged.inAh, 3);
  });

  test('books the same charge in as the units stored, gassed and burnt', () => {
    const result = chargeOption(pair(), charger(), at(25));
    for (const unit of result.units) {
      const pack = pair().pack.block;
      expect(pack.capacityAh).toBeGreaterThan(0);
      const storedAh = (result.inAh * result.chargeEfficiencyPercent!) / 100;
      expect(storedAh + unit.gassedAh).toBeCloseTo(result.inAh, 2);
    }
  });
});

describe('an ending', () => {
  test('by timer comes at the stated hour', () => {
    const result = chargeOption(pair(), { ...charger(), maximumHours: 2 }, at(10));
    expect(result.endedBy).toBe('timer');
    expect(result.hours).toBeCloseTo(2, 6);
  });

  test('by the charge wanted comes at that charge', () => {
    const result = chargeOption(pair(), charger(), { ...at(10), wishes: { targetPercent: 60 } });
    expect(result.endedBy).toBe('target');
    expect(result.endPercent).toBeGreaterThanOrEqual(60);
    expect(result.endPercent).toBeLessThan(61);
  });

  test('of a charger for a smaller pack is that no current flows', () => {
    const result = chargeOption(pair(), libraryCharger('charger-lead-12v-5a'), at(50));
    expect(result.endedBy).toBe('no-current');
    expect(result.inAh).toBe(0);
  });

  test('of a group that reaches its limit first is that the BMS opens', () => {
    const option = newOption([], {
      ...newPack(libraryBlock('lfp-24v-20ah'), 1),
      groupDifferences: [
        {
          string: 1,
          position: 1,
          group: 3,
          capacityPercent: 100,
          resistancePercent: 100,
          startPercent: 40,
        },
      ],
    });
    const result = chargeOption(option, libraryCharger('charger-lfp-24v-5a'), at(20));
    expect(result.endedBy).toBe('bms-group-high');
    const high = result.units.find((unit) => unit.group === 3)!;
    const others = result.units.find((unit) => unit.group !== 3)!;
    expect(high.endPercent - others.endPercent).toBeGreaterThan(15);
  });

  test('of too much current is that the BMS opens at once', () => {
    const option = newOption([], newPack(libraryBlock('lfp-24v-20ah'), 1));
    const limitA = option.pack.block.bms!.continuousChargeA!;
    const result = chargeOption(
      option,
      { ...libraryCharger('charger-lfp-24v-5a'), currentA: 2 * limitA },
      at(20),
    );
    expect(result.endedBy).toBe('bms-over-current');
    expect(result.hours).toBeLessThan(0.05);
  });
});

describe('a wall supply', () => {
  test('gives less current as the pack fills and never calls it full', () => {
    const supply = libraryCharger('wall-supply-24v');
    const result = chargeOption(pair(), supply, { ...at(30), wishes: { longestHours: 40 } });
    expect(result.endedBy).toBe('unplugged');
    const { currentA } = result.series;
    expect(currentA[currentA.length - 1]!).toBeLessThan(currentA[5]! / 2);
  });

  test('without stated resistance loses a quarter of its voltage at rated current, and says it was assumed', () => {
    const program = chargerProgram(
      { ...libraryCharger('wall-supply-24v'), sourceResistanceOhm: null },
      25,
      18,
    );
    expect(program.assumed).toContain('source-resistance');
    expect(program.sourceResistanceOhm * program.currentA).toBeCloseTo(
      0.26 * program.endVoltageV,
      9,
    );
  });
});

describe('temperature', () => {
  test('compensation of -4 mV per cell and kelvin raises the end voltage of 12 cells by 0.72 V from 25 to 10 °C', () => {
    const compensated = libraryCharger('charger-lead-compensated-24v-5a');
    const warm = chargerProgram(compensated, 25, 18);
    const cold = chargerProgram(compensated, 10, 18);
    expect(cold.endVoltageV - warm.endVoltageV).toBeCloseTo(0.72, 9);
  });

  test('makes a cold lead block take its charge more slowly', () => {
    const cold = chargeOption(pair(), charger(), at(20, 0));
    const warm = chargeOption(pair(), charger(), at(20, 25));
    expect(cold.bulkHours).toBeLessThan(warm.bulkHours);
  });
});

const uneven = () => ({
  ...pair(),
  pack: {
    ...pair().pack,
    differences: [{ ...newDifference(1, 2), capacityPercent: 73, resistancePercent: 180 }],
  },
});

describe('unequal blocks', () => {
  test('drift apart on one charger: the weaker one stands higher and gasses more', () => {
    const { units } = chargeOption(uneven(), charger(), at(30));
    const weak = units.find((unit) => unit.position === 2)!;
    const sound = units.find((unit) => unit.position === 1)!;
    expect(weak.highestV).toBeGreaterThan(sound.highestV + 0.05);
    expect(weak.gassedAh).toBeGreaterThan(sound.gassedAh);
  });

  test('end fuller when each has its own isolated charger, in less time than one after another', () => {
    const option = {
      ...uneven(),
      pack: { ...uneven().pack, differences: [{ ...newDifference(1, 2), startPercent: 10 }] },
    };
    const [whole, turns, each] = compareChargeWays(option, charger(), at(50));
    expect(each!.weakestPercent).toBeGreaterThan(whole!.weakestPercent);
    expect(each!.hours).toBeLessThan(turns!.hours);
    expect(each!.highestBlockV).toBeLessThan(whole!.highestBlockV);
    expect(each!.chargersNeeded).toBe(2);
  });

  test('cannot be charged singly where there is one block', () => {
    const option = newOption([], newPack(libraryBlock('lfp-24v-20ah'), 1));
    expect(compareChargeWays(option, libraryCharger('charger-lfp-24v-5a'), at(50))).toHaveLength(1);
  });
});

const emptyPair = () => chargeOption(pair(), charger(), { ...at(10), wishes: usualWishes });

test('a charge of ten hours is simulated in well under two milliseconds', () => {
  for (let index = 0; index < 50; index += 1) emptyPair();
  const from = performance.now();
  for (let index = 0; index < 50; index += 1) emptyPair();
  expect((performance.now() - from) / 50).toBeLessThan(8);
});
