import { describe, expect, test } from 'vitest';
import { valueAt } from '#core/compare/inputs/value-at.ts';
import type { Scenario } from '#core/compare/scenario.ts';
import { estimatedPercentile } from '#core/compare/spread/percentile-error.ts';
import { latinColumn } from '#core/compare/spread/latin-sample.ts';
import { type SpreadWishes } from '#core/compare/spread/spread-wishes.ts';
import { caseScenario, sampleOptions, spreadPlan } from '#core/compare/spread/spread-plan.ts';
import { libraryBlock } from '#core/library/index.ts';
import { expandPack } from '#core/pack/expand-pack.ts';
import { newOption, newPack, newPlan } from '#core/plan/defaults.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { checkAgainst } from '../support/check-against.ts';
import { runScipy, skipWithoutScipy } from '../support/scipy.ts';

const chapter = 'Spread';
const percents = [10, 50, 90] as const;

/** Two AGM blocks in series on a steady current: every input but those of driving and accessories is at work. */
function steadyPlan(): Plan {
  const plan = newPlan();
  const [outing] = plan.outings;
  const { controller } = plan.machine;
  return {
    ...plan,
    machine: {
      ...plan.machine,
      controller: { ...controller, cutoffVoltageV: 21, cutoffDelayS: 0, idleCurrentA: 0 },
    },
    options: [newOption([], newPack(libraryBlock('agm-12v-18ah'), 2))],
    outings: [
      {
        ...outing!,
        legs: [{ ...outing!.legs[0]!, load: { kind: 'current', currentA: 6 } }],
        restAfterMin: 0,
      },
    ],
  };
}

/** Everything SciPy needs to integrate a case from its differential equations. */
function dumpCase({ option, machine, outing }: Scenario) {
  const [string] = expandPack(option, outing.ambientC).strings;
  const [unit] = string!.units;
  const { openCircuit, ...model } = unit!.model;
  const load = outing.legs[0]!.load;
  return {
    ...model,
    restV: [...openCircuit.values],
    blocks: unit!.count,
    start: unit!.startCharge,
    leadOhm: string!.linkOhm + machine.harnessResistanceOhm,
    currentA: load?.kind === 'current' ? load.currentA : 0,
    cutoffV: machine.controller.cutoffVoltageV,
    ambientC: outing.ambientC,
  };
}

const model = `
import numpy as np
from scipy.integrate import solve_ivp
def run_min(p):
    rest = np.array(p["restV"]); heads = np.linspace(0, 1, rest.size)
    Q, c, k, I = p["capacityAh"] * 3600, p["availableShare"], p["levellingPerS"], p["currentA"]
    gain = 0.0 if c >= 1 else I * (1 - c) / (c * Q)
    def parts(y):
        s = y[0] - y[1]
        warm = np.exp(-p["resistanceColdRatePerK"] * (y[3] - p["temperatureC"]))
        ohm = (p["resistanceOhm"] + p["kneeOhm"] * (1 / min(1, max(0.02, s)) - 1)) * warm
        return s, warm, ohm
    def slope(t, y):
        s, warm, ohm = parts(y)
        heat = I * (I * ohm + y[2])
        return [-I / Q, gain - k * y[1], (I * p["polarisationOhm"] * warm - y[2]) / p["polarisationS"],
                (heat - (y[3] - p["ambientC"]) / p["heatResistanceKPerW"]) / p["heatCapacityJPerK"]]
    def bus(t, y):
        s, warm, ohm = parts(y)
        return p["blocks"] * (np.interp(s, heads, rest) - I * ohm - y[2]) - I * p["leadOhm"] - p["cutoffV"]
    bus.terminal, bus.direction = True, -1
    out = solve_ivp(slope, (0, 86400), [p["start"], 0, 0, p["temperatureC"]], events=bus, rtol=1e-8, atol=1e-10, max_step=60)
    return out.t_events[0][0] / 60
`;

const onCases = `${model}
times = [run_min(p) for p in given["cases"]]
print(json.dumps({"times": times, "percentiles": [float(np.percentile(times, q)) for q in (10, 50, 90)]}))
`;

// Draws of its own: SciPy's Latin hypercube and normal quantile, its own seed, the ranges of the plan.
const onOwnDraws = `${model}
from scipy.stats import norm, qmc
draws = norm.ppf(qmc.LatinHypercube(d=len(given["ranges"]), seed=20261).random(given["count"]))
times = []
for row in draws:
    p = dict(given["base"])
    for z, r in zip(np.clip(row, -3, 3), given["ranges"]):
        far = z / norm.ppf(0.9)
        if r["shape"] == "ratio": v = r["likely"] * (r["high"] / r["likely"] if far > 0 else r["likely"] / r["low"]) ** far
        else: v = r["likely"] + far * (r["high"] - r["likely"] if far > 0 else r["likely"] - r["low"])
        v = min(r["most"], max(r["least"], v))
        if r["id"] == "motor-load": p["currentA"] *= v / 100
        elif r["id"] == "wiring-resistance": p["leadOhm"] *= v / 100
        elif r["id"] == "cutoff-voltage": p["cutoffV"] = v
        elif r["id"] == "start-charge": p["start"] = v / 100
        else: raise ValueError(r["id"])
    times.append(run_min(p))
times.sort()
n = len(times)
def err(q):
    step = 100 * np.sqrt(q / 100 * (1 - q / 100) / n)
    return float(np.percentile(times, min(100, q + step)) - np.percentile(times, max(0, q - step))) / 2
print(json.dumps([[float(np.percentile(times, q)), err(q)] for q in (10, 50, 90)]))
`;

test('percentiles of a log-normal capacity under the closed form of Peukert are those of the log-normal law', () => {
  // t = H (C/(I H))^k with C log-normal is log-normal; its percentiles follow from those of C. [R]
  const input = {
    low: 180,
    likely: 200,
    high: 200 ** 2 / 180,
    shape: 'ratio',
    least: 1,
    most: 1e4,
  };
  const hours = (capacityAh: number) => 20 * (capacityAh / (50 * 20)) ** 1.25;
  const sorted = latinColumn('capacity', 4000, 5)
    .map((z) => hours(valueAt(input as never, z)))
    .toSorted();
  const exact = [hours(180), hours(200), hours(input.high)];
  percents.forEach((percent, place) => {
    const { value, error } = estimatedPercentile(sorted, percent);
    checkAgainst({
      chapter,
      quantity: `Percentile ${percent} of a log-normal 200 A·h on 50 A, exponent 1.25, 4,000 cases`,
      unit: 'h',
      source: 'Log-normal law through Peukert in closed form (derived)',
      class: 'recomputed',
      reference: exact[place]!,
      ours: value,
      within: { absolute: 2 * error },
    });
    expect(error / value).toBeLessThan(0.01);
  });
});

describe.skipIf(skipWithoutScipy())('against SciPy on the same full model', () => {
  const plan = steadyPlan();

  test('each case lasts as long as its differential equations say, and the percentiles are those of NumPy', () => {
    const wishes: SpreadWishes = { caseCount: 60, seed: 7 };
    const [sampled] = sampleOptions(plan, wishes);
    const cases = Array.from({ length: 60 }, (_, row) => dumpCase(caseScenario(sampled!, row)));
    const scipy = runScipy(onCases, { cases }) as { times: number[]; percentiles: number[] };
    const [spread] = spreadPlan(plan, wishes).options;
    const reference = scipy.times.toSorted((one, other) => one - other);
    reference.forEach((minutes, place) =>
      expect(Math.abs(spread!.sortedMin[place]! / minutes - 1)).toBeLessThan(0.002),
    );
    percents.forEach((percent, place) =>
      checkAgainst({
        chapter,
        quantity: `Run time, percentile ${percent} of 60 cases with eight inputs drawn, 2 × AGM 12 V 18 A·h on 6 A`,
        unit: 'min',
        source: 'SciPy solve_ivp on the differential equations of each case, NumPy percentile',
        class: 'tool',
        reference: scipy.percentiles[place]!,
        ours: [spread!.low, spread!.likely, spread!.high][place]!.value,
        within: { share: 0.001 },
      }),
    );
  });

  test('a sample drawn by SciPy itself has the same percentiles within the errors of both samples', () => {
    const fixed = { capacity: 18, resistance: 1, exponent: 1.18, temperature: 20 };
    const [sampled] = sampleOptions(plan, { caseCount: 10, seed: 1 });
    const still = Object.fromEntries(
      sampled!.inputs
        .filter(({ id }) => id in fixed)
        .map(({ id, likely }) => [id, { low: likely, high: likely }]),
    );
    const wishes: SpreadWishes = { caseCount: 500, seed: 11, ranges: still };
    const [kept] = sampleOptions(plan, wishes);
    const ranges = kept!.inputs
      .filter(({ low, high }) => high > low)
      .map(({ apply: _apply, label: _label, measure: _measure, ...range }) => range);
    expect(ranges.map(({ id }) => id).toSorted()).toEqual([
      'cutoff-voltage',
      'motor-load',
      'start-charge',
      'wiring-resistance',
    ]);
    const base = dumpCase(kept!.scenario);
    const scipy = runScipy(onOwnDraws, { base, ranges, count: 300 }) as [number, number][];
    const [spread] = spreadPlan(plan, wishes).options;
    percents.forEach((percent, place) => {
      const { value, error } = [spread!.low, spread!.likely, spread!.high][place]!;
      const [reference, theirError] = scipy[place]!;
      checkAgainst({
        chapter,
        quantity: `Run time, percentile ${percent}, load, start, wiring and cutoff drawn; 500 cases against 300`,
        unit: 'min',
        source: 'SciPy Latin hypercube with its own seed, solve_ivp, NumPy percentile',
        class: 'tool',
        reference,
        ours: value,
        within: { absolute: 3 * Math.hypot(error, theirError) },
      });
    });
  });
});
