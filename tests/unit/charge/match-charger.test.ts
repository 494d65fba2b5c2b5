import { describe, expect, test } from 'vitest';
import { highestChargeVoltageV, wantedVoltages } from '#core/charge/charge-wishes.ts';
import { matchCharger } from '#core/charge/match-charger.ts';
import { chargeCurrentWindow } from '#core/charge/match-current.ts';
import { offPercent } from '#core/charge/match-voltage.ts';
import { libraryBlock, libraryCharger } from '#core/library/index.ts';
import { defaultThresholds, newPack } from '#core/plan/defaults.ts';

const conditions = { ambientC: 25, remainingPercent: 20, thresholds: defaultThresholds };
const leadPair = { pack: newPack(libraryBlock('agm-12v-18ah'), 2), portLimitA: 10 };
const lfpPack = { pack: newPack(libraryBlock('lfp-24v-20ah'), 1), portLimitA: 10 };
const nmcPack = { pack: newPack(libraryBlock('nmc-24v-20ah'), 1), portLimitA: 10 };

/** Verdicts by aspect, fits left out. */
function troubles(...match: Parameters<typeof matchCharger>): Record<string, string> {
  return Object.fromEntries(
    matchCharger(...match)
      .aspects.filter(({ verdict }) => verdict !== 'fits')
      .map(({ aspect, verdict }) => [aspect, verdict]),
  );
}

describe('wanted voltages', () => {
  // Published in makers' sheets: 14.4 to 14.7 V cyclic and 13.5 to 13.8 V float per 12 V block at 25 °C.
  test('two AGM blocks want 28.8 to 29.4 V and float at 27.0 to 27.6 V', () => {
    const wanted = wantedVoltages(leadPair.pack, 25, defaultThresholds);
    expect(wanted.endLowV).toBeCloseTo(28.8, 9);
    expect(wanted.endHighV).toBeCloseTo(29.4, 9);
    expect(wanted.float!.lowV).toBeCloseTo(27, 9);
    expect(wanted.float!.highV).toBeCloseTo(27.6, 9);
  });

  // -3 mV/K per cell float (published), -4 mV/K cyclic (from memory): 12 cells, 15 K colder.
  test('at 10 °C float rises by 0.54 V and the end by 0.72 V', () => {
    const warm = wantedVoltages(leadPair.pack, 25, defaultThresholds);
    const cold = wantedVoltages(leadPair.pack, 10, defaultThresholds);
    expect(cold.float!.lowV - warm.float!.lowV).toBeCloseTo(0.54, 9);
    expect(cold.endV - warm.endV).toBeCloseTo(0.72, 9);
  });

  // Published: 3.65 V per LFP cell, 4.20 V per NMC cell, no float.
  test('lithium wants 3.65 V or 4.20 V a group whatever the temperature, and no float', () => {
    expect(wantedVoltages(lfpPack.pack, 5, defaultThresholds)).toMatchObject({
      endV: 29.2,
      float: null,
    });
    expect(wantedVoltages(nmcPack.pack, 5, defaultThresholds).endV).toBeCloseTo(29.4, 9);
  });

  test('gel wants 14.1 to 14.4 V a block', () => {
    const wanted = wantedVoltages(newPack(libraryBlock('gel-12v-18ah'), 1), 25, defaultThresholds);
    expect([wanted.endLowV, wanted.endHighV].map((volts) => volts.toFixed(3))).toEqual([
      '14.100',
      '14.400',
    ]);
  });

  test('the highest voltage is that of the charger, compensated, or of the chemistry without one', () => {
    const charger = { ...libraryCharger('charger-lead-24v-3a'), compensationMvPerCellK: -4 };
    expect(highestChargeVoltageV(leadPair.pack, charger, 0, defaultThresholds)).toBeCloseTo(
      29.4 + 1.2,
      9,
    );
    expect(highestChargeVoltageV(leadPair.pack, null, 25, defaultThresholds)).toBeCloseTo(29.4, 9);
  });
});

describe('a charger that fits', () => {
  test.each([
    ['charger-lead-24v-3a', leadPair],
    ['charger-lfp-24v-5a', lfpPack],
    ['charger-nmc-24v-4a', nmcPack],
  ])('%s fits its pack in every aspect and fills it', (id, option) => {
    const match = matchCharger(option, libraryCharger(id), conditions);
    expect(match.verdict).toBe('fits');
    expect(match.aspects.map(({ verdict }) => verdict)).toEqual(Array(8).fill('fits'));
    expect(match.hoursToFull).toBeGreaterThan(1);
    expect(match.hoursToFull).toBeLessThan(24);
  });
});

describe('a charger that does not', () => {
  test('one above what the BMS lets in does not fit, and no hours are promised', () => {
    const charger = { ...libraryCharger('charger-lfp-24v-5a'), currentA: 40 };
    const match = matchCharger(lfpPack, charger, conditions);
    expect(match).toMatchObject({ verdict: 'misfits', hoursToFull: null });
    expect(match.aspects.find(({ aspect }) => aspect === 'current')?.reason).toContain('BMS opens');
    const atLimit = lfpPack.pack.block.bms!.continuousChargeA!;
    const just = matchCharger(lfpPack, { ...charger, currentA: atLimit }, conditions);
    expect(just.verdict).not.toBe('misfits');
    expect(just.hoursToFull).toBeGreaterThan(1);
  });

  test('equal volts are no match: 29.4 V of seven NMC groups on lead', () => {
    const match = matchCharger(leadPair, libraryCharger('charger-nmc-24v-4a'), conditions);
    expect(match).toMatchObject({ verdict: 'misfits', hoursToFull: null, givenEndVoltageV: 29.4 });
    expect(troubles(leadPair, libraryCharger('charger-nmc-24v-4a'), conditions)).toEqual({
      chemistry: 'misfits',
      'cell-count': 'misfits',
    });
  });

  test('the old lead charger may not stay with LFP', () => {
    expect(troubles(lfpPack, libraryCharger('charger-lead-24v-3a'), conditions)).toEqual({
      chemistry: 'misfits',
      'cell-count': 'misfits',
      'float-voltage': 'limits',
    });
  });

  test('a gel pack on an AGM charger is limited: chemistry label and voltage', () => {
    const gelPair = { pack: newPack(libraryBlock('gel-12v-18ah'), 2), portLimitA: 10 };
    expect(troubles(gelPair, libraryCharger('charger-lead-24v-3a'), conditions)).toEqual({
      chemistry: 'limits',
      'end-voltage': 'limits',
    });
  });

  test('an unregulated wall supply drifts far above the end voltage', () => {
    const supply = libraryCharger('wall-supply-24v');
    expect(troubles(leadPair, supply, conditions)['end-voltage']).toBe('misfits');
  });

  test('an unknown end voltage leaves the match open and the hours unsaid', () => {
    const charger = {
      ...libraryCharger('charger-lead-24v-3a'),
      endVoltageV: null,
      floatVoltageV: null,
    };
    const match = matchCharger(leadPair, charger, conditions);
    expect(match).toMatchObject({ verdict: 'unknown', hoursToFull: null, givenEndVoltageV: null });
  });

  test('an unrated port is a question of its own and no doubt about the charger', () => {
    const match = matchCharger(
      { ...leadPair, portLimitA: null },
      libraryCharger('charger-lead-24v-3a'),
      conditions,
    );
    expect(match.verdict).toBe('fits');
    expect(match.aspects.find(({ aspect }) => aspect === 'port')!.verdict).toBe('unknown');
  });

  test('reasons come in German when asked', () => {
    const match = matchCharger(lfpPack, libraryCharger('charger-lead-24v-3a'), {
      ...conditions,
      language: 'de',
    });
    expect(match.aspects[1]!.reason).toBe('Gebaut für 12 Zellen in Reihe; der Akku hat 8.');
  });
});

test('the current window of two strings is twice that of one, and the BMS may set its upper end', () => {
  const one = chargeCurrentWindow(leadPair.pack, defaultThresholds.charge);
  expect(
    chargeCurrentWindow({ ...leadPair.pack, parallelCount: 2 }, defaultThresholds.charge),
  ).toEqual({
    lowA: 2 * one.lowA,
    highA: 2 * one.highA,
  });
  const block = libraryBlock('lfp-24v-20ah');
  block.bms!.continuousChargeA = 6;
  expect(chargeCurrentWindow(newPack(block, 1), defaultThresholds.charge).highA).toBe(6);
});

test('a value off a band is measured from its nearer edge', () => {
  expect(offPercent(29, 28.8, 29.4)).toBe(0);
  expect(offPercent(30.282, 28.8, 29.4)).toBeCloseTo(3, 9);
  expect(offPercent(28.512, 28.8, 29.4)).toBeCloseTo(-1, 9);
});
