import { describe, expect, test } from 'vitest';
import { valueAt } from '#core/compare/inputs/value-at.ts';
import { latinColumn } from '#core/compare/spread/latin-sample.ts';
import { estimatedPercentile } from '#core/compare/spread/percentile-error.ts';
import { defaultSpreadWishes } from '#core/compare/spread/spread-wishes.ts';
import {
  sampleOptions,
  spreadPart,
  spreadPlan,
  spreadRows,
} from '#core/compare/spread/spread-plan.ts';
import { summariseSpread } from '#core/compare/spread/summarise-spread.ts';
import { planSensitivity } from '#core/compare/sensitivity/sensitivity.ts';
import { normalQuantile } from '#core/numerics/normal-quantile.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { runScipy, skipWithoutScipy } from '../../support/scipy.ts';

describe('sampling', () => {
  test.skipIf(skipWithoutScipy())('the normal quantile agrees with SciPy into both tails', () => {
    const shares = [1e-12, 1e-4, 0.05, 0.1, 0.4999, 0.5, 0.9, 0.999, 1 - 1e-9];
    // [R] scipy.stats.norm.ppf, an independent implementation.
    const reference = runScipy(
      'from scipy.stats import norm\nprint(json.dumps([float(norm.ppf(p)) for p in given]))',
      shares,
    ) as number[];
    shares.forEach((share, place) =>
      expect(normalQuantile(share)).toBeCloseTo(reference[place]!, 9),
    );
  });

  test('a Latin column has one draw in each stratum', () => {
    const sorted = latinColumn('a', 200, 7).toSorted();
    for (let row = 1; row < 200; row += 1) {
      const edge = normalQuantile(row / 200);
      expect(sorted[row - 1]!).toBeLessThanOrEqual(edge);
      expect(sorted[row]!).toBeGreaterThanOrEqual(edge);
    }
  });

  test('a log-normal capacity with a Peukert run time gives the percentiles of the closed form', () => {
    // t = H (C/(I H))^k with C log-normal is log-normal: the p-th percentile is t at the p-th percentile of C. [R]
    const input = {
      low: 180,
      likely: 200,
      high: (200 * 200) / 180,
      shape: 'ratio',
      least: 1,
      most: 1000,
    } as const;
    const hours = (capacityAh: number) => 20 * (capacityAh / (50 * 20)) ** 1.25;
    const times = latinColumn('capacity', 2000, 3).map((z) => hours(valueAt(input, z)));
    const sorted = times.toSorted();
    for (const [percent, exact] of [
      [10, hours(180)],
      [50, hours(200)],
      [90, hours(input.high)],
    ] as const) {
      const { value, error } = estimatedPercentile(sorted, percent);
      expect(Math.abs(value - exact)).toBeLessThan(2 * error);
      expect(error / exact).toBeLessThan(0.01);
    }
  });
});

describe('spread of a plan', () => {
  const plan = samplePlan('orchard-cart');
  const wishes = { ...defaultSpreadWishes, caseCount: 60 };
  const whole = spreadPlan(plan, wishes);

  test('the figures do not depend on how many workers share the cases', () => {
    const sampled = sampleOptions(plan, wishes);
    const parts = [
      spreadPart(sampled, 41, spreadRows(wishes)),
      spreadPart(sampled, 0, 13),
      spreadPart(sampled, 13, 41),
    ];
    expect(summariseSpread(plan, wishes, parts)).toEqual(whole);
  });

  test('low, planned and high stand in order, and the planned run is near the likely one', () => {
    for (const { low, likely, high, plannedMin } of whole.options) {
      expect(low.value).toBeLessThan(likely.value);
      expect(likely.value).toBeLessThan(high.value);
      expect(Math.abs(likely.value / plannedMin - 1)).toBeLessThan(0.1);
    }
  });

  test('two equal options tie in every case', () => {
    const twins = { ...plan, options: [plan.options[0]!, { ...plan.options[0]!, id: 'twin' }] };
    expect(spreadPlan(twins, wishes).comparisons[0]!.firstOutlastsPercent).toBe(50);
  });

  test('more capacity lengthens and more load shortens every run', () => {
    for (const { effects } of planSensitivity(plan)) {
      const of = (id: string) => effects.find((effect) => effect.id === id)!;
      expect(of('capacity').atHighMin).toBeGreaterThan(of('capacity').atLowMin);
      expect(of('motor-load').atHighMin).toBeLessThan(of('motor-load').atLowMin);
    }
  });
});
