import { describe, expect, test } from 'vitest';
import { libraryBlock } from '#core/library/index.ts';
import { newDifference } from '#core/plan/defaults.ts';
import type { Difference } from '#core/plan/schema/option.ts';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

/** Two blocks in series, the second of which differs. */
function pairWith(difference: Partial<Difference>, first: Partial<Difference> = {}) {
  return planWith('orchard-cart', 'agm-series', (option) => {
    option.pack.differences = [
      { ...newDifference(1, 1), ...first },
      { ...newDifference(1, 2), ...difference },
    ];
  });
}

describe('PCK-1: unlike blocks in series', () => {
  test.each([
    [12.8, 12.7, []],
    [12.8, 12.69, ['note']],
    [12.8, 12.6, ['note']],
    [12.8, 12.59, ['warn']],
    [12.8, 12.3, ['warn']],
    [12.8, 12.29, ['stop']],
  ])('rest voltages of %s and %s V give %j', (one, other, expected) => {
    expect(severitiesOf('PCK-1', pairWith({ restVoltageV: other }, { restVoltageV: one }))).toEqual(
      expected,
    );
  });

  test.each([
    [95, []],
    [94, ['note']],
    [90, ['note']],
    [89, ['warn']],
  ])('a block of %s percent of the other gives %j', (capacityPercent, expected) => {
    expect(severitiesOf('PCK-1', pairWith({ capacityPercent }))).toEqual(expected);
  });

  test('a year apart passes, more warns', () => {
    expect(severitiesOf('PCK-1', pairWith({ ageYears: 1 }))).toEqual([]);
    expect(severitiesOf('PCK-1', pairWith({ ageYears: 1.1 }))).toEqual(['warn']);
  });

  test('another chemistry in the string stops, a block of the same type passes', () => {
    expect(severitiesOf('PCK-1', pairWith({ replacement: libraryBlock('gel-12v-18ah') }))).toEqual([
      'stop',
    ]);
    expect(findingsOf('PCK-1', pairWith({ replacement: libraryBlock('agm-12v-18ah') }))).toEqual(
      [],
    );
  });

  test('used blocks without readings are a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (option) => {
      option.pack.ageYears = 2;
    });
    expect(findingsOf('PCK-1', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('PCK-2: unequal strings in parallel', () => {
  /** Two strings; the blocks of the second read lower by `apartV` in all. */
  const apart = (apartV: number) =>
    planWith('orchard-cart', 'agm-two-strings', (option) => {
      option.pack.block.resistanceOhm = 0.017;
      option.pack.linkResistanceOhm = 0.002;
      option.pack.differences = [1, 2].flatMap((string) =>
        [1, 2].map((position) => ({
          ...newDifference(string, position),
          restVoltageV: 12.8 - (string === 2 ? apartV / 2 : 0),
        })),
      );
    });

  // Each string 2 * 17 + 2 = 36 mΩ; dV / 72 mΩ. 12 A·h allow 3.6 A of charge: 0.2592 V. The string fuse is 30 A: 2.16 V.
  test('a surge within the charge limit passes, above it warns, above the fuse it stops', () => {
    expect(severitiesOf('PCK-2', apart(0.25))).toEqual([]);
    expect(severitiesOf('PCK-2', apart(0.27))).toEqual(['warn']);
    expect(severitiesOf('PCK-2', apart(2.1))).toEqual(['warn']);
    expect(severitiesOf('PCK-2', apart(2.2))).toEqual(['stop']);
  });

  test('the surge is dV over the sum of both strings', () => {
    expect(findingsOf('PCK-2', apart(0.5))[0]!.facts[0]!.value).toBeCloseTo(0.5 / 0.072, 9);
  });

  test('a string of another chemistry stops', () => {
    const plan = planWith('orchard-cart', 'agm-two-strings', (option) => {
      option.pack.differences = [1, 2].map((position) => ({
        ...newDifference(2, position),
        replacement: libraryBlock('gel-12v-12ah'),
      }));
    });
    expect(severitiesOf('PCK-2', plan)).toEqual(['stop']);
  });

  test('used strings without readings are a question', () => {
    const plan = planWith('orchard-cart', 'agm-two-strings', (option) => {
      option.pack.ageYears = 1;
    });
    expect(findingsOf('PCK-2', plan, studiesWith(plan, { joiningSurgeA: null }))).toMatchObject([
      { status: 'not-checked' },
    ]);
  });
});

test('PCK-3: parallel strings want a fuse each; one string does not', () => {
  const unfused = planWith('orchard-cart', 'agm-two-strings', (option) => {
    option.pack.stringFuseA = null;
  });
  expect(severitiesOf('PCK-3', unfused)).toEqual(['warn']);
  expect(findingsOf('PCK-3', planWith('orchard-cart', 'agm-two-strings'))).toEqual([]);
  expect(findingsOf('PCK-3', planWith('orchard-cart', 'agm-series'))).toEqual([]);
});

describe('PCK-5: current limits', () => {
  const limited = (batteryCurrentLimitA: number | null) =>
    planWith('orchard-cart', 'lfp-pack', (option, { machine }) => {
      option.pack.block.bms!.continuousDischargeA = 30;
      option.pack.block.bms!.peakDischargeA = 60;
      machine.controller.batteryCurrentLimitA = batteryCurrentLimitA;
    });

  test('a controller limit at the BMS rating passes, above it warns, above its peak warns twice', () => {
    expect(severitiesOf('PCK-5', limited(30))).toEqual([]);
    expect(severitiesOf('PCK-5', limited(31))).toEqual(['warn']);
    expect(severitiesOf('PCK-5', limited(61))).toEqual(['warn', 'warn']);
  });

  test('an unknown controller limit is a question', () => {
    expect(findingsOf('PCK-5', limited(null))).toMatchObject([{ status: 'not-checked' }]);
  });

  test('an outing above the limits of lead blocks warns, at the limits it passes', () => {
    const plan = planWith('orchard-cart', 'agm-two-strings', (option) => {
      option.pack.block.continuousDischargeA = 10;
      option.pack.block.peakDischargeA = 50;
    });
    const of = (averageCurrentA: number, peakCurrentA: number) =>
      severitiesOf('PCK-5', plan, studiesWith(plan, { averageCurrentA, peakCurrentA }));
    expect(of(20, 100)).toEqual([]);
    expect(of(20.1, 100)).toEqual(['warn']);
    expect(of(20, 100.1)).toEqual(['warn']);
  });
});

describe('PCK-6: bay and mass', () => {
  /** Two blocks of 181 x 77 x 167 mm and 5.5 kg. */
  const bay = (lengthMm: number, widthMm: number, heightMm: number, massLimitKg: number) =>
    planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.bay = { lengthMm, widthMm, heightMm, massLimitKg };
    });

  test('a bay that just takes both blocks side by side passes', () => {
    expect(findingsOf('PCK-6', bay(181, 154, 167, 11))).toEqual([]);
  });

  test('sealed blocks may lie on their side', () => {
    expect(findingsOf('PCK-6', bay(334, 181, 77, 11))).toEqual([]);
  });

  test('a bay a millimetre too narrow warns', () => {
    expect(severitiesOf('PCK-6', bay(181, 153, 167, 11))).toEqual(['warn']);
  });

  test('a pack above the mass allowed warns', () => {
    expect(severitiesOf('PCK-6', bay(181, 154, 167, 10.9))).toEqual(['warn']);
  });

  test('a block without sizes is a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (option) => {
      option.pack.block.lengthMm = null;
    });
    expect(findingsOf('PCK-6', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});
