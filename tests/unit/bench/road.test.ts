import { describe, expect, test } from 'vitest';
import { applyRoad, fitRoad, samplesOfReadings, samplesOfRun } from '#core/bench/index.ts';
import type { LoggedRun } from '#core/bench/index.ts';
import type { RoadSample } from '#core/bench/road/road-sample.ts';
import { surfaceById } from '#core/drive/surfaces.ts';
import { packMassKg } from '#core/pack/pack-mass.ts';
import { newOption, newPlan } from '#core/plan/defaults.ts';
import { bareDrive, bareMachine } from '../../support/drive-plan.ts';

/*
 * Currents are reckoned by hand from the test drive's own figures (24 V, 0.1 Ω, 0.08 V s/rad, 1.5 A idle, 16:1, 85 %,
 * wheel 260 mm, controller 96 %), with textbook force and motor equations: nothing of the fit is used. [R]
 */
const machine = { ...bareMachine(), drive: bareDrive() };
const option = newOption();
const massKg = 60 + 70 + packMassKg(option.pack)!;
const rollingOfShortGrass = surfaceById('short-grass').rolling;

function ampsAt(speedKmh: number, truth: { share: number; areaM2: number; rolling: number }) {
  const speed = speedKmh / 3.6;
  const forceN =
    truth.share * truth.rolling * massKg * 9.80665 + 0.5 * 1.225 * truth.areaM2 * speed ** 2;
  const perA = (0.08 * 16) / 0.13;
  const motorA = forceN / (0.85 * perA) + 1.5;
  return (motorA * (motorA * 0.1 + perA * speed)) / (0.96 * 24);
}

function sample(speedKmh: number, packA: number): RoadSample {
  return {
    speedKmh,
    packA,
    busV: 24,
    accelerationMps2: 0,
    surface: 'short-grass',
    gradePercent: 0,
    error: 0.03,
  };
}

function fitOf(samples: readonly RoadSample[]) {
  const outcome = fitRoad(machine, option, samples);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.fit;
}

describe('the road fitted from speeds and currents', () => {
  const truth = { share: 1, areaM2: 1.1, rolling: rollingOfShortGrass * 1.4 };
  const speeds = [4, 8, 14, 20, 26, 30];
  test('finds rolling resistance and drag area from readings over a range of speeds', () => {
    const fit = fitOf(speeds.map((speed) => sample(speed, ampsAt(speed, truth))));
    expect(fit.resistancePercent.value / 140).toBeCloseTo(1, 2);
    expect(fit.dragAreaM2.value).toBeCloseTo(1.1, 1);
    expect(fit.dragTold).toBe(true);
  });
  test('at one low speed keeps the drag area assumed and says that it was not told', () => {
    const fit = fitOf([sample(5, ampsAt(5, truth)), sample(5.2, ampsAt(5.2, truth))]);
    expect(fit.dragTold).toBe(false);
    expect(fit.dragAreaM2.value).toBeCloseTo(0.5, 1);
  });
  test('a reading that is twice too high does not carry the others away', () => {
    const spoilt = speeds.map((speed, index) =>
      sample(speed, ampsAt(speed, truth) * (index === 2 ? 2 : 1)),
    );
    expect(fitOf(spoilt).resistancePercent.value / 140).toBeCloseTo(1, 1);
  });
  test('the limits hold the truth when readings scatter by their error', () => {
    const scattered = speeds.map((speed, index) =>
      sample(speed, ampsAt(speed, truth) * (1 + (index % 2 === 0 ? 0.02 : -0.02))),
    );
    const { low, high } = fitOf(scattered).resistancePercent;
    expect(low).toBeLessThan(140);
    expect(high).toBeGreaterThan(140);
  });
  test('a drive log tells the same as readings, speeding up included', () => {
    const seconds = Array.from({ length: 241 }, (_, second) => second);
    const speedOf = (second: number) => 6 + 20 * Math.sin((Math.PI * second) / 240);
    const gainOf = (second: number) =>
      ((20 / 3.6) * Math.PI * Math.cos((Math.PI * second) / 240)) / 240;
    const run: LoggedRun = {
      name: 'drive',
      timeS: Float64Array.from(seconds),
      currentA: Float64Array.from(seconds, (second) => {
        // The force that speeds the mass up, 5 % of rotating parts included, as a higher rolling share.
        const inertia = (1.05 * gainOf(second)) / 9.80665;
        return ampsAt(speedOf(second), { ...truth, rolling: truth.rolling + inertia });
      }),
      voltageV: new Float64Array(seconds.length).fill(24),
      unitVoltageV: [],
      temperatureC: null,
      speedKmh: Float64Array.from(seconds, speedOf),
      sortedRows: 0,
      repeatedRows: 0,
      gaps: { count: 0, longestS: 0 },
      turned: false,
    };
    const fit = fitOf(samplesOfRun(run, 'short-grass'));
    expect(fit.used).toBeGreaterThan(15);
    expect(fit.resistancePercent.value / 140).toBeCloseTo(1, 1);
    expect(fit.dragAreaM2.value).toBeCloseTo(1.1, 1);
  });
  test('without a drive, without samples and with too little current it says why not', () => {
    const reasonOf = (outcome: ReturnType<typeof fitRoad>) => (outcome.ok ? 'ok' : outcome.reason);
    expect(reasonOf(fitRoad(machine, option, []))).toBe('no-samples');
    expect(reasonOf(fitRoad({ ...machine, drive: null }, option, [sample(5, 9)]))).toBe(
      'not-computable',
    );
    expect(reasonOf(fitRoad(machine, option, [sample(5, 0.2)]))).toBe('too-little-current');
    expect(reasonOf(fitRoad(machine, option, [sample(5, 900)]))).toBe('out-of-range');
  });
  test('taken into the plan, resistance, drag area, their source and a record are there', () => {
    const plan = { ...newPlan(), machine, options: [option] };
    const fit = fitOf(speeds.map((speed) => sample(speed, ampsAt(speed, truth))));
    const next = applyRoad(plan, {
      optionId: option.id,
      fit,
      date: '2026-05-01',
      source: 'fitted from 6 readings on 2026-05-01',
      remarks: [],
    });
    expect(next.machine.drive!.resistancePercent).toBeCloseTo(fit.resistancePercent.value, 0);
    expect(next.machine.drive!.scaledTo!.source).toContain('6 readings');
    expect(next.machine.drive!.wheel.dragAreaM2).toBeCloseTo(1.1, 1);
    expect(next.bench!.fits.at(-1)!.values[0]!.identified).toBe(true);
  });
  test('only readings of speed with a current of the option count', () => {
    const common = {
      date: '2026-05-01',
      optionId: option.id,
      string: 1,
      position: 0,
      note: '',
      accuracyPercent: 3,
    };
    const speed = { ...common, kind: 'speed' as const, distanceM: 50, timeS: 36 };
    const ground = { surface: 'asphalt' as const, gradePercent: 0 };
    const plan = {
      ...newPlan(),
      options: [option],
      bench: {
        readings: [
          { ...speed, ...ground, id: 'a', packCurrentA: 8 },
          { ...speed, ...ground, id: 'b', packCurrentA: null },
          { ...speed, ...ground, id: 'c', packCurrentA: 8, optionId: 'other' },
        ],
        fits: [],
        health: [],
      },
    };
    const samples = samplesOfReadings(plan, option.id);
    expect(samples).toHaveLength(1);
    expect(samples[0]!.speedKmh).toBeCloseTo(5, 9);
  });
});
