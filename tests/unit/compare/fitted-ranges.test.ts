import { expect, test } from 'vitest';
import { uncertainInputs } from '#core/compare/inputs/uncertain-inputs.ts';
import { scenarioOf } from '#core/compare/scenario.ts';
import { spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { FitRecord } from '#core/plan/schema/bench.ts';
import type { Plan } from '#core/plan/schema/plan.ts';

const whole = samplePlan('orchard-cart');
const labelled: Plan = { ...whole, options: whole.options.slice(0, 1) };
const [option] = labelled.options;

/** The same option after the bench has fitted its blocks. Own figures. */
const fitted: Plan = {
  ...labelled,
  options: [
    {
      ...option!,
      pack: {
        ...option!.pack,
        block: {
          ...option!.pack.block,
          fitted: {
            source: 'a log',
            temperatureC: 20,
            ageYears: 0,
            cyclesDone: 0,
            capacityAh: 19,
            availableShare: 0.7,
            levellingPerMin: 0.02,
            resistanceOhm: 0.013,
            polarisationOhm: 0.006,
            polarisationS: 300,
            kneeOhm: 0.002,
            resistanceColdRatePerK: 0.01,
            heatCapacityJPerK: 5000,
            heatResistanceKPerW: 3,
            openCircuit: [
              { chargePercent: 0, voltageV: 11.6 },
              { chargePercent: 50, voltageV: 12.3 },
              { chargePercent: 100, voltageV: 12.85 },
            ],
          },
        },
      },
    },
  ],
};

const record = (name: string, value: number, low: number, high: number): FitRecord => ({
  id: 'fit',
  date: '2026-05-01',
  optionId: option!.id,
  logs: ['a log'],
  values: [{ name, unit: '', value, low, high, identified: true }],
  rmsMv: null,
  remarks: [],
  before: null,
});

const inputOf = (plan: Plan, id: string) =>
  uncertainInputs(plan, scenarioOf(plan, plan.options[0]!, plan.outings[0]!)).find(
    (input) => input.id === id,
  );

test('a fit narrows capacity and resistance against the label, takes the exponent out, and is named as measured', () => {
  for (const id of ['capacity', 'resistance']) {
    const before = inputOf(labelled, id)!;
    const after = inputOf(fitted, id)!;
    expect(after.rangeClass).toBe('measured');
    expect(Math.log(after.high / after.low), id).toBeLessThan(Math.log(before.high / before.low));
  }
  expect(inputOf(labelled, 'exponent')).toBeDefined();
  expect(inputOf(fitted, 'exponent')).toBeUndefined();
});

test('95 % limits of a fit become the 10th and 90th percentile of the range', () => {
  const plan = {
    ...fitted,
    bench: {
      readings: [],
      health: [],
      ...labelled.bench,
      fits: [record('charge when full', 19, 18, 20)],
    },
  };
  const input = inputOf(plan, 'capacity')!;
  // [R] z of 90 % over z of 97.5 %, from the standard normal table: 1.28155 / 1.95996 = 0.65387.
  expect(Math.log(input.low / input.likely)).toBeCloseTo(0.65387 * Math.log(18 / 19), 5);
  expect(Math.log(input.high / input.likely)).toBeCloseTo(0.65387 * Math.log(20 / 19), 5);
});

test('the spread of a fitted option is narrower against its likely run than that of the label', () => {
  const width = (plan: Plan): number => {
    const [spread] = spreadPlan(plan, { caseCount: 120, seed: 1 }).options;
    return (spread!.high.value - spread!.low.value) / spread!.likely.value;
  };
  expect(width(fitted)).toBeLessThan(0.85 * width(labelled));
});
