import { describe, expect, test } from 'vitest';
import { libraryCharger } from '#core/library/index.ts';
import type { Charger } from '#core/plan/schema/charger.ts';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

function charged(
  optionId: string,
  chargerId: string,
  change: Partial<Charger> = {},
  ambientC = 25,
) {
  return planWith('orchard-cart', optionId, (option, plan) => {
    option.charger = { ...libraryCharger(chargerId), ...change };
    plan.outings[0]!.ambientC = ambientC;
  });
}

describe('CHG-1: chemistry and cell count', () => {
  test('29.4 V of seven lithium groups is no charger for 24 V lead, although the volts are equal', () => {
    const plan = charged('agm-series', 'charger-nmc-24v-2a');
    expect(plan.options[0]!.charger!.endVoltageV).toBe(29.4);
    expect(severitiesOf('CHG-1', plan)).toEqual(['stop', 'stop']);
  });

  test('the lead charger of the same 29.4 V fits', () => {
    expect(findingsOf('CHG-1', charged('agm-series', 'charger-lead-24v-3a'))).toEqual([]);
  });

  test('an LFP charger for another number of cells stops', () => {
    expect(severitiesOf('CHG-1', charged('lfp-pack', 'charger-lfp-36v-2a'))).toEqual(['stop']);
  });

  test('an option without a charger is a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (option) => {
      option.charger = null;
    });
    expect(findingsOf('CHG-1', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('CHG-2: voltages and pulses', () => {
  const ends = (endVoltageV: number | null, ambientC = 25, compensationMvPerCellK = 0) =>
    severitiesOf(
      'CHG-2',
      charged(
        'agm-series',
        'charger-lead-24v-3a',
        { endVoltageV, compensationMvPerCellK, floatVoltageV: null },
        ambientC,
      ),
    );

  // Two 12 V blocks: makers want 28.8 to 29.4 V; 1 % beyond is 28.512 and 29.694 V.
  test('an end voltage within 1 % of the band passes, beyond it warns', () => {
    expect(ends(28.8)).toEqual([]);
    expect(ends(29.4)).toEqual([]);
    expect(ends(28.52)).toEqual([]);
    expect(ends(28.5)).toEqual(['warn']);
    expect(ends(29.69)).toEqual([]);
    expect(ends(29.7)).toEqual(['warn']);
  });

  // At 5 °C twelve cells want 4 mV * 12 * 20 = 0.96 V more: 29.76 to 30.36 V.
  test('in the cold an uncompensated charger is too low, a compensated one fits', () => {
    expect(ends(29.1, 5)).toEqual(['warn']);
    expect(ends(29.1, 5, -4)).toEqual([]);
  });

  test('an end voltage the maker of the block states beats the band', () => {
    const plan = planWith('orchard-cart', 'agm-series', (option, { outings }) => {
      outings[0]!.ambientC = 25;
      option.pack.block.chargeEndVoltageV = 14.4;
      option.charger!.floatVoltageV = null;
      option.charger!.endVoltageV = 29.4;
    });
    expect(severitiesOf('CHG-2', plan)).toEqual(['warn']);
  });

  test('a missing end voltage is a question', () => {
    const plan = charged('agm-series', 'charger-lead-24v-3a', {
      endVoltageV: null,
      floatVoltageV: null,
    });
    expect(findingsOf('CHG-2', plan)).toMatchObject([{ status: 'not-checked' }]);
  });

  test('float on lithium warns, a charger that stops passes', () => {
    expect(
      severitiesOf('CHG-2', charged('lfp-pack', 'charger-lfp-24v-5a', { floatVoltageV: 27.2 })),
    ).toEqual(['warn']);
    expect(findingsOf('CHG-2', charged('lfp-pack', 'charger-lfp-24v-5a'))).toEqual([]);
  });

  test('equalising pulses on sealed lead warn', () => {
    expect(
      severitiesOf(
        'CHG-2',
        charged('agm-series', 'charger-lead-pulse-24v-4a', { floatVoltageV: null }),
      ),
    ).toEqual(['warn']);
  });
});

describe('CHG-3: current', () => {
  const amps = (currentA: number) =>
    severitiesOf('CHG-3', charged('agm-series', 'charger-lead-24v-3a', { currentA }));

  // 18 A·h: 0.1 C is 1.8 A, 0.3 C is 5.4 A; the port carries 5 A.
  test('between 0.1 and 0.3 of the capacity and within the port it passes', () => {
    expect(amps(1.8)).toEqual([]);
    expect(amps(5)).toEqual([]);
  });

  test('too little warns, above the port warns, above the block too warns twice', () => {
    expect(amps(1.7)).toEqual(['warn']);
    expect(amps(5.2)).toEqual(['warn']);
    expect(amps(5.5)).toEqual(['warn', 'warn']);
  });

  test('a port nobody has rated is a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (option) => {
      option.portLimitA = null;
    });
    expect(findingsOf('CHG-3', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('CHG-4: cold', () => {
  test('lithium below 0 °C stops, at 0 °C it passes', () => {
    expect(severitiesOf('CHG-4', charged('lfp-pack', 'charger-lfp-24v-5a', {}, -0.1))).toEqual([
      'stop',
    ]);
    expect(severitiesOf('CHG-4', charged('lfp-pack', 'charger-lfp-24v-5a', {}, 0))).toEqual([]);
  });

  test('flat lead at -11 °C stops; charged, or at -10 °C, it passes', () => {
    const at = (ambientC: number, remainingPercent: number) => {
      const plan = charged('agm-series', 'charger-lead-24v-3a', {}, ambientC);
      return severitiesOf('CHG-4', plan, studiesWith(plan, { remainingPercent }));
    };
    expect(at(-11, 20)).toEqual(['stop']);
    expect(at(-11, 60)).toEqual([]);
    expect(at(-10, 20)).toEqual([]);
  });
});

test('CHG-5: a 12 V charger on a 24 V string warns, a 24 V one passes', () => {
  expect(severitiesOf('CHG-5', charged('agm-series', 'charger-lead-12v-2a'))).toEqual(['warn']);
  expect(findingsOf('CHG-5', charged('agm-series', 'charger-lead-24v-3a'))).toEqual([]);
});

describe('CHG-6: port measured, no driving while plugged in', () => {
  const port = (portPolarity: 'yes' | 'no' | 'unknown', chargeInhibit: 'yes' | 'no' | 'unknown') =>
    findingsOf(
      'CHG-6',
      planWith('orchard-cart', 'agm-series', (_option, plan) => {
        Object.assign(plan.wiring!, { portPolarity, chargeInhibit });
      }),
    ).map(({ status, fields }) => `${status} ${fields[0]}`);

  test('an unread port and an unknown inhibit are questions that lead to their fields', () => {
    expect(port('unknown', 'unknown')).toEqual([
      'not-checked wiring.portPolarity',
      'not-checked wiring.chargeInhibit',
    ]);
  });

  test('a wrong port and a machine that drives on the cable warn; both right pass', () => {
    expect(port('no', 'yes')).toEqual(['finding wiring.portPolarity']);
    expect(port('yes', 'no')).toEqual(['finding wiring.chargeInhibit']);
    expect(port('yes', 'yes')).toEqual([]);
  });

  test('without wiring it asks for the wiring, without a charger it has nothing to ask', () => {
    const bare = planWith('orchard-cart', 'agm-series', (_option, plan) => {
      plan.wiring = null;
    });
    expect(findingsOf('CHG-6', bare)).toMatchObject([
      { status: 'not-checked', fields: ['wiring'] },
    ]);
    const none = planWith('orchard-cart', 'agm-series', (option) => {
      option.charger = null;
    });
    expect(findingsOf('CHG-6', none)).toEqual([]);
  });
});
