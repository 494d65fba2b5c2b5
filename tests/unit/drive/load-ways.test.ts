import { describe, expect, test } from 'vitest';
import { finishRun } from '#core/bench/log/logged-run.ts';
import { compareWays, oneRound } from '#core/drive/compare-ways.ts';
import { outingInWay, withLoad } from '#core/drive/load-ways.ts';
import { logFigures, logLoadOf } from '#core/drive/log-load.ts';
import { scaleToAverage } from '#core/drive/scale-to-average.ts';
import { libraryBlock } from '#core/library/index.ts';
import { newOption, newPack } from '#core/plan/defaults.ts';
import type { Machine } from '#core/plan/schema/machine.ts';
import { logLoadSchema } from '#core/plan/schema/leg-load.ts';
import type { SurfaceAmpsLoad } from '#core/plan/schema/leg-load.ts';
import {
  bareDrive,
  bareMachine,
  driveLeg,
  driveLoad,
  driveOuting,
} from '../../support/drive-plan.ts';

const run = (rows: readonly (readonly [timeS: number, amps: number, volts: number])[]) => ({
  timeS: Float64Array.from(rows, ([time]) => time),
  currentA: Float64Array.from(rows, ([, amps]) => amps),
  voltageV: Float64Array.from(rows, ([, , volts]) => volts),
  unitVoltageV: [],
});

describe('a log as the load of a leg', () => {
  test('is cut to what was drawn, and its charge and energy are those of the rows by hand', () => {
    const load = logLoadOf(
      run([
        [0, 0, 25],
        [60, 0, 25],
        [120, 10, 24],
        [180, 10, 24],
        [240, 40, 22],
        [250, 4, 24],
        [310, 0, 25],
        [400, 0, 25],
      ]),
      'Garden',
    )!;
    expect(load.timeS).toEqual([0, 120, 130]);
    expect(load.currentA).toEqual([10, 40, 4]);
    // By hand: 10 A 120 s, 40 A 10 s, 4 A 60 s.
    const figures = logFigures(load);
    expect(figures.lastsS).toBe(190);
    expect(figures.chargeAh).toBeCloseTo((1200 + 400 + 240) / 3600, 9);
    expect(figures.energyWh).toBeCloseTo((1200 * 24 + 400 * 22 + 240 * 24) / 3600, 9);
    expect(figures.peakA).toBe(40);
    expect(figures.meanA).toBeCloseTo(1840 / 190, 9);
  });

  test('of 40,000 uneven rows keeps charge and energy within 0.1 %, its peaks, and at most 2000 rows', () => {
    const rows = Array.from({ length: 40_000 }, (_, row): [number, number, number] => {
      const starts = row % 300 < 3;
      const amps = starts ? 55 : 9 + 3 * Math.sin(row / 7) + 2 * Math.sin(row * 1.7);
      return [row, amps, 25 - 0.03 * amps - row / 20_000];
    });
    const load = logLoadOf(run(rows), 'Long')!;
    expect(load.timeS.length).toBeLessThanOrEqual(2000);
    expect(logLoadSchema.safeParse(load).success).toBe(true);
    const chargeAh = rows.reduce((sum, [, amps]) => sum + amps, 0) / 3600;
    const energyWh = rows.reduce((sum, [, amps, volts]) => sum + amps * volts, 0) / 3600;
    const figures = logFigures(load);
    expect(Math.abs(figures.chargeAh / chargeAh - 1)).toBeLessThan(1e-3);
    expect(Math.abs(figures.energyWh! / energyWh - 1)).toBeLessThan(1e-3);
    expect(figures.peakA).toBeCloseTo(55, 6);
  });

  test('adds the volts of units where the log has none of the pack', () => {
    const { timeS, currentA } = run([
      [0, 5, 0],
      [10, 5, 0],
    ]);
    const unit = Float64Array.from([12, 12]);
    const load = logLoadOf({ timeS, currentA, voltageV: null, unitVoltageV: [unit, unit] }, 'x')!;
    expect(load.voltageV).toEqual([24]);
  });

  test('is nothing where the run has a single row', () => {
    expect(logLoadOf(run([[0, 5, 24]]), 'x')).toBeNull();
  });
});

const amps: SurfaceAmpsLoad = {
  kind: 'surface-amps',
  surface: 'worn-paving',
  averageA: 8,
  peakA: null,
  peakS: 2,
  starts: 0,
};

test('a log of driving that begins under a start is not taken for a charge', () => {
  // 25.4 V behind 20 milliohm, falling slowly; current counted downwards. By its ends alone the voltage would rise.
  const rows = Array.from({ length: 120 }, (_, row) => {
    const drawnA = row % 40 < 3 ? 48 : 8 + Math.sin(row);
    return { timeS: row, drawnA, volts: 25.4 - 0.02 * drawnA - row / 2000 };
  });
  const read = (sign: number) =>
    finishRun(
      {
        name: 'lane',
        timeS: Float64Array.from(rows, ({ timeS }) => timeS),
        currentA: Float64Array.from(rows, ({ drawnA }) => sign * drawnA),
        voltageV: Float64Array.from(rows, ({ volts }) => volts),
        unitVoltageV: [],
        temperatureC: null,
        speedKmh: null,
      },
      'auto',
    );
  expect(read(-1).turned).toBe(true);
  expect(read(1).turned).toBe(false);
  expect(logFigures(logLoadOf(read(-1), 'lane')!).meanA).toBeGreaterThan(8);
});

describe('the ways of giving a load', () => {
  test('the load a leg had is kept beside the new one, one of each kind, and comes back', () => {
    const driven = driveLeg(driveLoad());
    const byAmps = withLoad(driven, amps);
    expect(byAmps.load).toBe(amps);
    expect(byAmps.otherLoads).toEqual([driven.load]);
    const again = withLoad(byAmps, driven.load);
    expect(again.load).toEqual(driven.load);
    expect(again.otherLoads).toEqual([amps]);
    expect(withLoad(again, { ...amps, averageA: 9 }).otherLoads).toEqual([driven.load]);
  });

  test('an outing in a way takes what is known so and says how much that is', () => {
    const outing = driveOuting([
      withLoad(driveLeg(driveLoad(), 1, 'one'), amps),
      driveLeg(driveLoad(), 1, 'two'),
      driveLeg(null, 1, 'stand'),
    ]);
    const model = outingInWay(outing, 'model');
    expect([model.known, model.of]).toEqual([2, 2]);
    expect(model.outing.legs.map((leg) => leg.load?.kind)).toEqual(['drive', 'drive', undefined]);
    const known = outingInWay(outing, 'amps');
    expect([known.known, known.of]).toEqual([1, 2]);
    expect(outingInWay(outing, 'log').known).toBe(0);
  });
});

const option = newOption([], newPack(libraryBlock('agm-12v-40ah'), 2), 'pair');
const command = { kind: 'speed', targetSpeedKmh: 6 } as const;
const outing = driveOuting([driveLeg(driveLoad({ command, starts: 2, haltS: 5 }), 4)], {
  longestMin: 1440,
});

describe('ways set beside each other', () => {
  test('clamp-meter amps read at full charge promise more minutes than the model, within 15 %: its current grows as the pack sags', () => {
    const machine = bareMachine();
    const { averageA } = oneRound(machine, option, outing)!;
    // The clamp meter sees the motors only; the controller's own 0.05 A go on beside it.
    const read = { ...amps, averageA: averageA - 0.05 };
    const both = driveOuting(
      outing.legs.map((leg) => ({ ...leg, otherLoads: [read] })),
      { longestMin: 1440 },
    );
    const rows = compareWays(machine, [option], both);
    expect(rows.map(({ way }) => way)).toEqual(['amps', 'model']);
    const [byAmps, byModel] = rows.map(({ runs }) => runs[0]!);
    expect(byAmps!.averageA! / byModel!.averageA!).toBeCloseTo(1, 2);
    const promised = byAmps!.runTimeMin! / byModel!.runTimeMin!;
    expect(promised).toBeGreaterThan(1);
    expect(promised).toBeLessThan(1.15);
    expect(byModel!.peakA!).toBeGreaterThan(2 * byAmps!.peakA!);
  });

  test('a way that cannot be computed has no minutes', () => {
    const rows = compareWays(bareMachine({ drive: null }), [option], outing);
    expect(rows[0]!.runs[0]!.runTimeMin).toBeNull();
  });

  /** The leg of the outing, read by clamp meter as well; a second leg known in one way only must not matter. */
  const readAt = (averageA: number) =>
    driveOuting([
      ...outing.legs.map((leg) => ({ ...leg, otherLoads: [{ ...amps, averageA }] })),
      driveLeg(driveLoad({ command, gradePercent: 6 }), 3, 'hill'),
      driveLeg(null, 5, 'stand'),
    ]);

  test('scaling to an average finds the road resistance that average was drawn with', () => {
    const heavy = bareMachine({ drive: bareDrive({ resistancePercent: 160 }) });
    const read = oneRound(heavy, option, outing)!.averageA;
    // The controller's own 0.05 A go on beside what the clamp meter read of the motors.
    const scaled = scaleToAverage(bareMachine(), option, readAt(read - 0.05), 'amps');
    if (!scaled.ok) throw new Error(scaled.reason);
    expect(scaled.resistancePercent).toBeCloseTo(160, 0);
    expect(scaled.readA).toBeCloseTo(read, 3);
    expect(scaled.modelA).toBeLessThan(read);
  });

  test('an average no road explains is refused, as is a way no leg shares with the model', () => {
    const scale = (machine: Machine, averageA: number, way: 'amps' | 'log') =>
      scaleToAverage(machine, option, readAt(averageA), way);
    expect(scale(bareMachine(), 500, 'amps')).toEqual({ ok: false, reason: 'out-of-range' });
    expect(scale(bareMachine(), 5, 'log')).toEqual({ ok: false, reason: 'nothing-shared' });
    const bare = bareMachine({ drive: null });
    expect(scale(bare, 5, 'amps')).toEqual({ ok: false, reason: 'not-computable' });
  });
});
