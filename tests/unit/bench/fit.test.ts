import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, test } from 'vitest';
import {
  fitBlock,
  leaveOneOut,
  type BlockFit,
  type FitRequest,
  type LoggedRun,
} from '#core/bench/index.ts';
import { newBlock } from '#core/plan/defaults.ts';
import type { Block } from '#core/plan/schema/block.ts';

/**
 * A block integrated here by plain Euler steps of one second, in its own few lines and away from the code under test:
 * charge, bound charge, polarisation, resistance, and a curve of its own.
 */
interface Truth {
  readonly capacityAh: number;
  readonly ratio: number;
  readonly levellingPerS: number;
  readonly ohm: number;
  readonly polarisationOhm: number;
  readonly tauS: number;
  readonly curve: (charge: number) => number;
}

/** Straight with bent ends, six lead cells: 10.5 V empty, 12.75 V full. */
const leadCurve = (charge: number) => 11.6 + 1.15 * charge - 1.1 * Math.exp(-charge / 0.04);

function gauss(seed: number): () => number {
  const source = xoroshiro128plus(seed);
  return () =>
    Math.sqrt(-2 * Math.log(1 - uniformFloat64(source))) *
    Math.cos(2 * Math.PI * uniformFloat64(source));
}

function logOf(
  truth: Truth,
  name: string,
  currentAt: (second: number) => number,
  endV: number,
  noiseV: number,
  seed: number,
  startCharge = 1,
): LoggedRun {
  const noise = gauss(seed);
  const [time, current, volts]: [number[], number[], number[]] = [[], [], []];
  let [charge, bound, polarisation] = [startCharge, 0, 0];
  for (let second = 0; second < 200_000; second += 1) {
    const amps = second < 30 ? 0 : currentAt(second);
    const voltage = truth.curve(charge - bound) - amps * truth.ohm - polarisation;
    if (second % 10 === 0 || Math.abs(second - 30) < 3) {
      time.push(second);
      current.push(amps);
      volts.push(voltage + noiseV * noise());
    }
    if (voltage < endV) break;
    charge -= amps / (3600 * truth.capacityAh);
    bound += -truth.levellingPerS * bound + (amps * truth.ratio) / (3600 * truth.capacityAh);
    polarisation += (amps * truth.polarisationOhm - polarisation) / truth.tauS;
  }
  return {
    name,
    timeS: Float64Array.from(time),
    currentA: Float64Array.from(current),
    voltageV: Float64Array.from(volts),
    unitVoltageV: [],
    temperatureC: new Float64Array(time.length).fill(20),
    speedKmh: null,
    sortedRows: 0,
    repeatedRows: 0,
    gaps: { count: 0, longestS: 0 },
    turned: false,
  };
}

const lead: Truth = {
  capacityAh: 21,
  ratio: 0.5,
  levellingPerS: 1 / 3600,
  ohm: 0.02,
  polarisationOhm: 0.016,
  tauS: 100,
  curve: leadCurve,
};
const block: Block = { ...newBlock(), capacityAh: 18 };

function request(runs: readonly LoggedRun[], changes: Partial<FitRequest> = {}): FitRequest {
  return {
    block,
    layout: { kind: 'pack', count: 1, cells: 6, strings: 1, linkOhm: 0 },
    runs,
    temperatureC: 20,
    ageYears: 0,
    cyclesDone: 0,
    source: 'invented',
    ...changes,
  };
}

function fitOf(given: FitRequest): BlockFit {
  const outcome = fitBlock(given);
  if (!outcome.ok) throw new Error(`${outcome.field}: ${outcome.problem}`);
  return outcome.fit;
}

/** Loads that tell the values apart: two steady ones far apart, and one with stops. */
const loads = [
  ['slow', () => 1.2],
  ['fast', () => 9],
  ['stop and go', (second: number) => (second % 900 < 600 ? 6 : 0)],
] as const;
const runsOf = (truth: Truth, noiseV: number, seed: number) =>
  loads.map(([name, load], index) => logOf(truth, name, load, 10.5, noiseV, seed * 10 + index));

describe('recovering an invented block from its logs', () => {
  test.each([1, 2, 3])(
    'with 3 mV of noise (seed %i), resistance, charge and rate loss come back',
    (seed) => {
      const fit = fitOf(request(runsOf(lead, 0.003, seed)));
      expect(fit.fitted.resistanceOhm / 0.02, `seed ${seed}`).toBeGreaterThan(0.85);
      expect(fit.fitted.resistanceOhm / 0.02, `seed ${seed}`).toBeLessThan(1.15);
      expect(Math.abs(fit.fitted.capacityAh / 21 - 1), `seed ${seed}`).toBeLessThan(0.03);
      expect(Math.abs(1 / fit.fitted.availableShare - 1 - 0.5), `seed ${seed}`).toBeLessThan(0.15);
      expect(fit.rmsMv, `seed ${seed}`).toBeLessThan(15);
    },
  );
  test('the truth lies within the stated limits of resistance, charge and wells', () => {
    const fit = fitOf(request(runsOf(lead, 0.003, 4)));
    const truth: Record<string, number> = {
      'ohmic resistance': 20,
      'charge when full': 21,
      'share of the available well': 1 / 1.5,
    };
    for (const [name, real] of Object.entries(truth)) {
      const value = fit.values.find((entry) => entry.name === name)!;
      expect(value.identified, name).toBe(true);
      expect(value.low!, name).toBeLessThan(real);
      expect(value.high!, name).toBeGreaterThan(real);
    }
  });
  test('a block without rate loss ends with one well', () => {
    const fit = fitOf(request(runsOf({ ...lead, ratio: 0 }, 0.003, 5)));
    expect(fit.fitted.availableShare).toBeGreaterThan(0.93);
  });
  test('one row in forty thrown off by volts changes nothing that matters', () => {
    const spoilt = runsOf(lead, 0.003, 6).map((run) => ({
      ...run,
      voltageV: run.voltageV!.map((volts, row) =>
        row % 40 === 17 ? volts + (row % 80 === 17 ? 2 : -3) : volts,
      ),
    }));
    const clean = fitOf(request(runsOf(lead, 0.003, 6)));
    const fit = fitOf(request(spoilt));
    expect(Math.abs(fit.fitted.capacityAh / clean.fitted.capacityAh - 1)).toBeLessThan(0.01);
    expect(Math.abs(fit.fitted.resistanceOhm / clean.fitted.resistanceOhm - 1)).toBeLessThan(0.15);
    expect(fit.remarks.some((remark) => remark.kind === 'outliers')).toBe(true);
  });
  test('a run left out is predicted within 3 % in time', () => {
    for (const prediction of leaveOneOut(request(runsOf(lead, 0.003, 7)))) {
      expect(Math.abs(prediction.timePercent), prediction.run).toBeLessThan(3);
    }
  });
  test('a single steady run says that rate loss was not measured and leaves it untold', () => {
    const fit = fitOf(request([logOf(lead, 'one', () => 3, 10.5, 0.003, 8)]));
    expect(fit.remarks.some((remark) => remark.kind === 'one-rate')).toBe(true);
    expect(
      fit.values.find((value) => value.name === 'levelling rate of the wells')!.identified,
    ).toBe(false);
  });
  test('strings in parallel share the logged current', () => {
    const doubled = runsOf(lead, 0.003, 9).map((run) => ({
      ...run,
      currentA: run.currentA.map((current) => current * 2),
    }));
    const fit = fitOf(
      request(doubled, { layout: { kind: 'pack', count: 1, cells: 6, strings: 2, linkOhm: 0 } }),
    );
    expect(Math.abs(fit.fitted.capacityAh / 21 - 1)).toBeLessThan(0.03);
  });
  test('a weaker block of a string is found with its share', () => {
    const [strong, weak] = [
      runsOf(lead, 0.002, 10),
      runsOf({ ...lead, capacityAh: 18.9 }, 0.002, 11),
    ];
    const runs = weak.map((run, index) => {
      const rows = run.timeS.length;
      return {
        ...run,
        voltageV: null,
        unitVoltageV: [strong[index]!.voltageV!.slice(0, rows), run.voltageV!],
      };
    });
    const fit = fitOf(
      request(runs, { layout: { kind: 'block', count: 2, cells: 6, strings: 1, linkOhm: 0 } }),
    );
    expect(fit.units[1]!.capacityPercent / fit.units[0]!.capacityPercent).toBeCloseTo(0.9, 1);
  });
});

describe('a run that did not begin full', () => {
  const begunAt = (startCharge: number) => [
    logOf(lead, 'slow', () => 1.2, 10.5, 0.003, 21, startCharge),
    logOf(lead, 'fast', () => 9, 10.5, 0.003, 22),
  ];
  const startsOf = (fit: BlockFit) =>
    fit.remarks.filter((remark) => remark.kind === 'began-at').map(({ percent }) => percent);
  test('is found by its volts before the load, and the full charge comes back', () => {
    const fit = fitOf(request(begunAt(0.6)));
    const [slow, fast] = startsOf(fit);
    expect(slow).toBeGreaterThan(52);
    expect(slow).toBeLessThan(68);
    expect(fast).toBe(100);
    expect(Math.abs(fit.fitted.capacityAh / 21 - 1)).toBeLessThan(0.06);
  });
  test('is taken as entered where the user says so', () => {
    const run = logOf(lead, 'slow', () => 1.2, 10.5, 0.003, 23, 0.6);
    const fit = fitOf(request([run], { startPercent: 60 }));
    expect(startsOf(fit)).toEqual([60]);
    expect(Math.abs(fit.fitted.capacityAh / 21 - 1)).toBeLessThan(0.08);
  });
  test('is not suspected where the first volts are those of a full block', () => {
    const fit = fitOf(request(runsOf(lead, 0.003, 24)));
    expect(fit.remarks.some((remark) => remark.kind === 'taken-as-full')).toBe(true);
  });
});

describe('a log that ends early', () => {
  test('leans on the label for the charge it did not see, within its tolerance', () => {
    const whole = logOf(lead, 'fast', () => 6, 10.5, 0.003, 25);
    const rows = Math.floor(whole.timeS.length * 0.5);
    const cut = (column: Float64Array) => column.slice(0, rows);
    const half = {
      ...whole,
      timeS: cut(whole.timeS),
      currentA: cut(whole.currentA),
      voltageV: cut(whole.voltageV!),
      temperatureC: cut(whole.temperatureC!),
    };
    const fit = fitOf(request([half]));
    // Label 18 A·h, truth 21: anything between is a sound answer, what was taken out (about 9 A·h) is not.
    expect(fit.fitted.capacityAh).toBeGreaterThan(16);
    expect(fit.fitted.capacityAh).toBeLessThan(23);
    expect(fit.remarks.some((remark) => remark.kind === 'ends-early')).toBe(true);
  });
});

describe('what cannot be fitted is refused by name', () => {
  const runs = runsOf(lead, 0, 12);
  test.each([
    ['a block of another size', { block: { ...block, capacityAh: 300 } }, 'takes out only'],
    [
      'current in milliamperes',
      { block: { ...block, capacityAh: 1 } },
      'check the unit of the current',
    ],
    [
      'a wrong number of cells',
      { layout: { kind: 'pack', count: 1, cells: 12, strings: 1, linkOhm: 0 } as const },
      'does not fit 12 agm cell groups',
    ],
    ['no run', { runs: [] }, 'no run was chosen'],
    [
      'a charge',
      { runs: runs.map((run) => ({ ...run, currentA: run.currentA.map((current) => -current) })) },
      'holds no discharge',
    ],
  ])('%s', (_, changes, part) => {
    const outcome = fitBlock(request(runs, changes));
    expect(outcome.ok ? '' : `${outcome.field} ${outcome.problem} ${outcome.remedy}`).toContain(
      part,
    );
  });
});
