import { describe, expect, test } from 'vitest';
import {
  checkSwitches,
  commissioningSteps,
  expectedPackVoltage,
  packVoltageStep,
} from '#core/wiring/index.ts';
import { wiredSample } from './wired.ts';

const steps = (change?: Parameters<typeof wiredSample>[2]) => {
  const { plan, wiring, option, study } = wiredSample('orchard-cart', 'agm-series', change);
  return commissioningSteps(plan, wiring, option, study, 'en');
};

describe('switches', () => {
  test('an isolator is held against pack voltage, lasting current and the current of a failed controller', () => {
    const { study, wiring } = wiredSample('orchard-cart', 'agm-series');
    const [check] = checkSwitches(study, wiring.branches);
    expect(check!.worstA).toBe(study.demand.runawayA);
    expect(check!.aspects.map(({ aspect, verdict }) => `${aspect} ${verdict}`)).toEqual([
      'voltage fits',
      'continuous fits',
      'breaking fits',
      'independence fits',
      'reach fits',
    ]);
  });

  test('a contactor that the controller holds is not independent of it', () => {
    const { study, wiring } = wiredSample('orchard-cart', 'agm-series', (_plan, all) => {
      Object.assign(all.branches[1]!.switchgear!, {
        kind: 'contactor',
        openedBy: 'controller',
        coilSupply: 'pack',
        coilVoltageV: 12,
      });
    });
    const [check] = checkSwitches(study, wiring.branches);
    expect(check!.aspects.find(({ aspect }) => aspect === 'independence')!.verdict).toBe('misfits');
    // A 12 V coil on 24 V burns.
    expect(check!.aspects.find(({ aspect }) => aspect === 'coil')!.verdict).toBe('misfits');
  });

  test('precharge limits the inrush to the aim: R = V/I, t = 5 R C', () => {
    const { study, wiring } = wiredSample('orchard-cart', 'agm-series');
    const { precharge } = checkSwitches(study, wiring.branches)[0]!;
    expect(precharge!.aimA).toBe(1);
    expect(precharge!.advised.resistanceOhm).toBeCloseTo(study.supply.fullV, 9);
    expect(precharge!.advised.timeS).toBeCloseTo(5 * study.supply.fullV * 2200e-6, 9);
    expect(precharge!.fitted).toBeNull();
  });
});

describe('the commissioning list', () => {
  test('measures everything without power before the last connector, and drives last', () => {
    const phases = steps().map((step) => step.phase);
    const order = [
      'before-power',
      'last-connector',
      'power-on',
      'wheels-up',
      'first-drive',
      'charging',
    ];
    const places = phases.map((phase) => order.indexOf(phase));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(new Set(phases).size).toBe(order.length);
  });

  test('expects two lead blocks in series between a fifth charged and freshly charged', () => {
    const step = steps().find((entry) => entry.id === packVoltageStep)!;
    // AGM at rest: 12.0 V at a quarter, 12.8 V full (open-circuit table); 3 % for surface charge.
    expect(step.expected).toMatchObject({ kind: 'range', unit: 'V' });
    if (step.expected.kind !== 'range') throw new Error('a range is expected');
    expect(step.expected.min).toBeGreaterThan(23);
    expect(step.expected.min).toBeLessThan(24);
    expect(step.expected.max).toBeCloseTo(2 * 12.8 * 1.03, 6);
  });

  test('judges readings: in range passes, outside fails, none stays open', () => {
    const read = (value: number | null) =>
      steps((_plan, wiring) => {
        if (value !== null)
          wiring.readings = [{ step: packVoltageStep, value, passed: null, note: '' }];
      }).find((entry) => entry.id === packVoltageStep)!.verdict;
    expect(read(25.4)).toBe('passed');
    expect(read(12.7)).toBe('failed');
    expect(read(-25.4)).toBe('failed');
    expect(read(null)).toBe('open');
  });

  test('asks for every block, every fuse and every throttle wire', () => {
    const ids = steps().map((step) => step.id);
    expect(ids).toEqual(
      expect.arrayContaining([
        'block-1-1',
        'block-1-2',
        'fuse-main',
        'fuse-port-line',
        'throttle-supply',
        'throttle-signal',
        'throttle-return',
        'stop',
      ]),
    );
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('strings are compared before they are joined', () => {
    const { plan, wiring, option, study } = wiredSample('orchard-cart', 'agm-two-strings');
    const found = commissioningSteps(plan, wiring, option, study, 'de').find(
      (step) => step.id === 'string-difference',
    )!;
    expect(found.what).toBe('Stränge vor dem Verbinden');
    expect(found.expected).toMatchObject({ min: 0, max: 0.2 });
  });

  test('the expected voltage of a pack grows with its blocks in series', () => {
    const { option } = wiredSample('orchard-cart', 'agm-series');
    const one = expectedPackVoltage({ ...option, pack: { ...option.pack, seriesCount: 1 } });
    const two = expectedPackVoltage(option);
    expect(two.max).toBeCloseTo(2 * one.max, 9);
  });
});
