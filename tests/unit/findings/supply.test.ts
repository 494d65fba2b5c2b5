import { describe, expect, test } from 'vitest';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

describe('SUP-1: charge voltage above what a device stands', () => {
  test('a controller that stands less than the 29.4 V of the charger stops the plan', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.controller.maximumVoltageV = 29.3;
    });
    expect(severitiesOf('SUP-1', plan)).toEqual(['stop']);
    expect(findingsOf('SUP-1', plan)[0]).toMatchObject({
      optionId: 'agm-series',
      facts: [
        { value: 29.4, unit: 'V' },
        { value: 29.3, unit: 'V' },
      ],
    });
    expect(findingsOf('SUP-1', plan)[0]!.fields).toContain('machine.controller.maximumVoltageV');
  });

  test('a controller that stands just the charge voltage passes', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.controller.maximumVoltageV = 29.4;
    });
    expect(findingsOf('SUP-1', plan)).toEqual([]);
  });

  test('a converter and an accessory straight on the pack are held to it as well', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.converter!.maximumInputV = 28;
      machine.accessories[2]!.supply = 'pack';
    });
    expect(severitiesOf('SUP-1', plan)).toEqual(['stop', 'stop']);
  });

  test('a device whose limit nobody knows is a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.controller.maximumVoltageV = null;
    });
    expect(findingsOf('SUP-1', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('SUP-2: converter input range and dropout', () => {
  test('a converter that needs more than the cutoff voltage warns', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.converter!.minimumInputV = 20.6;
    });
    expect(severitiesOf('SUP-2', plan)).toEqual(['warn']);
  });

  test('a converter that works down to the cutoff voltage passes', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.converter!.minimumInputV = 20.5;
    });
    expect(findingsOf('SUP-2', plan)).toEqual([]);
  });

  test('dropout counts: 19 V out of 20.5 V at 95 % duty and 44 W does not go', () => {
    // (19 V + 44/19 A * 0.05 Ω) / 0.95 = 20.12 V; at 92 % it is 20.78 V, above the cutoff.
    const at = (maximumDutyPercent: number) =>
      planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
        Object.assign(machine.converter!, { outputVoltageV: 19, maximumDutyPercent });
      });
    expect(severitiesOf('SUP-2', at(95))).toEqual([]);
    expect(severitiesOf('SUP-2', at(92))).toEqual(['warn']);
  });

  test('a drop-out in the run warns, none passes', () => {
    const plan = planWith('orchard-cart', 'agm-series');
    expect(severitiesOf('SUP-2', plan, studiesWith(plan, { brownOutAtMin: 12 }))).toEqual(['warn']);
    expect(severitiesOf('SUP-2', plan, studiesWith(plan, { brownOutAtMin: null }))).toEqual([]);
  });

  test('without any cutoff the lowest input is a question', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.controller.cutoffVoltageV = null;
      machine.controller.restartVoltageV = null;
    });
    expect(findingsOf('SUP-2', plan)).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('SUP-3: load on the converter', () => {
  // Two lights of 18 W and a radio of 8 W: 44 W at 12 V are 3.667 A; 75 % of 4.8 A are 3.6 A, of 5 A 3.75 A.
  const rated = (ratedCurrentA: number) =>
    planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      Object.assign(machine.converter!, { ratedCurrentA, peakCurrentA: 10 });
    });

  test('more than three quarters of the rating warns', () => {
    expect(severitiesOf('SUP-3', rated(4.8))).toEqual(['warn']);
  });

  test('less than three quarters passes', () => {
    expect(findingsOf('SUP-3', rated(5))).toEqual([]);
  });

  test('a start-up above the peak warns, at the peak it passes, without a peak it is a question', () => {
    const starting = (peakCurrentA: number | null) =>
      planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
        machine.converter!.ratedCurrentA = 5;
        machine.converter!.peakCurrentA = peakCurrentA;
        // 2 A-and-a-bit run on, one light starts with 4 A: 44/12 - 18/12 + 4 = 6.167 A.
        machine.accessories[0]!.startupCurrentA = 4;
      });
    expect(severitiesOf('SUP-3', starting(6.1))).toEqual(['warn']);
    expect(findingsOf('SUP-3', starting(6.2))).toEqual([]);
    expect(findingsOf('SUP-3', starting(null))).toMatchObject([{ status: 'not-checked' }]);
  });
});

describe('SUP-4: tapped between blocks', () => {
  test('a tap on a series string warns', () => {
    const plan = planWith('orchard-cart', 'agm-series', (_option, { machine }) => {
      machine.accessories[2]!.supply = 'mid-point';
    });
    expect(severitiesOf('SUP-4', plan)).toEqual(['warn']);
  });

  test('the same tap on one sealed pack has nothing to unbalance', () => {
    const plan = planWith('orchard-cart', 'lfp-pack', (_option, { machine }) => {
      machine.accessories[2]!.supply = 'mid-point';
    });
    expect(findingsOf('SUP-4', plan)).toEqual([]);
  });
});

describe('SUP-5: standby', () => {
  const plan = planWith('orchard-cart', 'agm-series');
  test('half the pack gone a day before the limit is noted', () => {
    expect(severitiesOf('SUP-5', plan, studiesWith(plan, {}, { standbyDaysToHalf: 59 }))).toEqual([
      'note',
    ]);
  });

  test('half the pack gone at the limit passes', () => {
    expect(findingsOf('SUP-5', plan, studiesWith(plan, {}, { standbyDaysToHalf: 60 }))).toEqual([]);
  });
});
