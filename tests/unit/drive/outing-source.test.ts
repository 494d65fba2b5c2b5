import { describe, expect, test } from 'vitest';
import { outingSource } from '#core/drive/outing-source.ts';
import type { Controller } from '#core/plan/schema/controller.ts';
import type { Drive, Gear } from '#core/plan/schema/drive.ts';
import type { DriveLoad, LogLoad, SurfaceAmpsLoad } from '#core/plan/schema/leg-load.ts';
import type { Leg } from '#core/plan/schema/outing.ts';
import { runOnSupply } from '../../support/drive-bench.ts';
import type { BenchRow } from '../../support/drive-bench.ts';
import {
  bareController,
  bareDrive,
  bareMachine,
  driveLeg,
  driveLoad,
  driveOuting,
} from '../../support/drive-plan.ts';

interface Setup {
  readonly drive?: Partial<Drive>;
  readonly controller?: Partial<Controller>;
  readonly seconds?: number;
}

function play(legs: readonly Leg[], { drive = {}, controller = {}, seconds = 60 }: Setup = {}) {
  const machine = bareMachine({ drive: bareDrive(drive) });
  const built = outingSource(machine, bareController(controller), driveOuting(legs), 15, 25);
  if (!built.ok) throw new Error(built.problem);
  const rows = runOnSupply(built.source, 25.4, 0.03, seconds);
  return { rows, result: built.source.result() };
}

const drive = (changes: Partial<DriveLoad>, setup: Setup = {}) => {
  const { rows, result } = play([driveLeg(driveLoad(changes))], setup);
  return { rows, result: result! };
};

const brakes = bareDrive().brakes;
const resistor = {
  resistanceOhm: 0.3,
  ratedPowerW: 50,
  overloadFactor: 5,
  pulseEnergyJ: null,
  heatTimeS: null,
  riseAtRatedK: null,
};
const speed = (targetSpeedKmh: number) => ({ kind: 'speed', targetSpeedKmh }) as const;

describe('the ledger from pack to wheel', () => {
  test.each<[string, Partial<DriveLoad>, Setup]>([
    ['full throttle on the level', {}, {}],
    ['stop and go at a target speed', { command: speed(8), starts: 4, haltS: 5 }, {}],
    [
      'a step start and a resistor brake',
      { starts: 2, haltS: 8 },
      {
        drive: {
          brakes: { ...brakes, onRelease: 'resistor', serviceDecelerationMps2: null, resistor },
        },
        controller: { motorCurrentLimitA: null, batteryCurrentLimitA: null },
      },
    ],
    [
      'slipping wheels',
      { surface: 'long-grass' },
      {
        drive: { wheel: { ...bareDrive().wheel, drivenSharePercent: 35 } },
        controller: { motorCurrentLimitA: null, batteryCurrentLimitA: null },
      },
    ],
    [
      'a climb at the battery limit',
      { gradePercent: 15, command: speed(8) },
      { controller: { batteryCurrentLimitA: 30 } },
    ],
    ['headwind', { headwindKmh: 25 }, {}],
  ])('closes within 0.5 %% for %s', (_name, load, setup) => {
    const { ledger } = drive(load, setup).result;
    expect(Math.abs(ledger.closurePercent)).toBeLessThan(0.5);
    for (const [name, value] of Object.entries(ledger))
      if (name !== 'closurePercent') expect(value, name).toBeGreaterThanOrEqual(-1e-3);
  });

  test('books regeneration as charge returned and nothing into a mechanical brake it does not need', () => {
    const { result } = drive(
      { gradePercent: -8, command: speed(8) },
      { drive: { brakes: { ...brakes, onRelease: 'regeneration' } } },
    );
    expect(result.returnedAh).toBeGreaterThan(0.02);
    expect(result.ledger.fromPackWh).toBeLessThan(0);
    expect(result.ledger.mechanicalBrakeWh).toBeLessThan(0.01);
  });
});

describe('how legs are driven', () => {
  test('a target speed is reached and held, not passed', () => {
    const { result } = drive({ command: speed(6) });
    expect(result.topSpeedKmh).toBeCloseTo(6, 6);
    expect(result.belowTargetS).toBeLessThan(1);
  });

  test('starts are counted as the machine leaves its stand', () => {
    const { result } = drive({ command: speed(6), starts: 4, haltS: 5 });
    expect(result.startsDone).toBe(4);
  });

  test('a leg with a distance ends there, and the next begins', () => {
    const { result } = play(
      [
        driveLeg(driveLoad({ command: speed(6), distanceM: 20 }), 5, 'out'),
        driveLeg(null, 5, 'stand'),
      ],
      { seconds: 240 },
    );
    // 20 m, 0.3 s in which the duty falls, then the way to a stand from 6 km/h at 1 m/s² of braking.
    expect(result!.distanceKm * 1000).toBeGreaterThan(20);
    expect(result!.distanceKm * 1000).toBeLessThan(
      20 + (0.3 * 6) / 3.6 + (6 / 3.6) ** 2 / 2 + 0.05,
    );
  });

  test('a leg without starts rolls on from the leg before', () => {
    const { result } = play(
      [
        driveLeg(driveLoad({ command: speed(6) }), 0.25, 'one'),
        driveLeg(driveLoad({ command: speed(7), starts: 0 }), 0.25, 'two'),
      ],
      { seconds: 30 },
    );
    expect(result!.startsDone).toBe(1);
  });

  test('the slow gear with motors in series goes half as fast as both in parallel', () => {
    const gears: Gear[] = [
      {
        id: 'slow',
        name: 'Slow',
        ratio: 16,
        efficiencyPercent: 85,
        motorsInSeries: 2,
        direction: 'forward',
        highestDutyPercent: 100,
      },
      {
        id: 'fast',
        name: 'Fast',
        ratio: 16,
        efficiencyPercent: 85,
        motorsInSeries: 1,
        direction: 'forward',
        highestDutyPercent: 100,
      },
    ];
    const top = (gearId: string) =>
      drive({ gearId }, { drive: { motorCount: 2, gears } }).result.topSpeedKmh;
    expect(top('slow') / top('fast')).toBeGreaterThan(0.46);
    expect(top('slow') / top('fast')).toBeLessThan(0.52);
  });

  test('the limits of the controller are never passed', () => {
    const { result, rows } = drive(
      { gradePercent: 12, starts: 3, haltS: 5 },
      { controller: { motorCurrentLimitA: 50, batteryCurrentLimitA: 30 } },
    );
    expect(result.motorPeakA).toBeLessThanOrEqual(50 + 1e-9);
    expect(Math.max(...rows.map((row) => row.currentA))).toBeLessThanOrEqual(30 + 1e-6);
  });

  test('a controller that limps takes its limits down below the voltage stated', () => {
    const control = {
      ...bareController().control!,
      reducesBelowV: 24.9,
      reducedCurrentPercent: 50,
    };
    const { rows } = drive(
      { gradePercent: 15 },
      { controller: { control, batteryCurrentLimitA: 40 } },
    );
    const late = rows.filter((row) => row.timeS > 30).map((row) => row.currentA);
    expect(Math.max(...late)).toBeLessThanOrEqual(20 + 1e-6);
  });

  test('a machine that cannot climb stands with current in its motors, and says for how long', () => {
    const { result } = drive({ gradePercent: 60 }, { controller: { motorCurrentLimitA: 20 } });
    expect(result.distanceKm).toBe(0);
    expect(result.stalledS).toBeGreaterThan(55);
  });

  test('pushed downhill without a brake it runs faster than the target', () => {
    const { result } = drive(
      { gradePercent: -8, command: speed(8) },
      { drive: { brakes: { ...brakes, serviceDecelerationMps2: null } } },
    );
    expect(result.topSpeedKmh).toBeGreaterThan(15);
  });

  test('without a brake it rolls back where slope less rolling exceeds the friction of the motor', () => {
    // By hand: 145 kg, 0.02 rolling, k 9.8462 N/A, 1.5 A without load, gear 85 %: 17.376 N hold, 3.22 %.
    const free = { ...brakes, parking: 'none', serviceDecelerationMps2: null } as const;
    const rolledBackS = (gradePercent: number, change: Drive['brakes'] = free) =>
      drive(
        { gradePercent, command: { kind: 'throttle', throttlePercent: 0 } },
        { drive: { brakes: change } },
      ).result.rollsBackS;
    expect(rolledBackS(3.1)).toBe(0);
    expect(rolledBackS(3.4)).toBeCloseTo(60, 6);
    expect(rolledBackS(3.4, { ...free, parking: 'manual' })).toBe(0);
  });

  test('half the duty in a position gives half the speed without load', () => {
    const gear = { ...bareDrive().gears[0]!, highestDutyPercent: 50 };
    const top = (gears: Gear[]) => drive({}, { drive: { gears } }).result.topSpeedKmh;
    const share = top([gear]) / top(bareDrive().gears);
    // Rolling resistance and sag take the same volts from both, so a little less than half is left.
    expect(share).toBeGreaterThan(0.44);
    expect(share).toBeLessThan(0.5);
  });

  test('a leg in reverse begins once the machine stands, and its way counts', () => {
    const gears: Gear[] = [
      { ...bareDrive().gears[0]!, id: 'ahead' },
      { ...bareDrive().gears[0]!, id: 'back', direction: 'reverse', highestDutyPercent: 40 },
    ];
    const rolling = (gearId: string) => driveLoad({ gearId, starts: 0, command: speed(4) });
    const legs = (second: string) => [
      driveLeg(rolling('ahead'), 0.5, 'one'),
      driveLeg(rolling(second), 0.5, 'two'),
    ];
    expect(play(legs('ahead'), { drive: { gears } }).result!.startsDone).toBe(1);
    const turned = play(legs('back'), { drive: { gears } }).result!;
    expect(turned.startsDone).toBe(2);
    expect(turned.distanceKm).toBeGreaterThan(0.05);
  });

  test('a lighter load draws less for each kilometre', () => {
    const masses = { ...bareDrive().masses, payloadKg: 100 };
    const perKm = (loadPercent: number) =>
      drive({ command: speed(6), loadPercent }, { drive: { masses } }).result.energyPerKmWh!;
    expect(perKm(0)).toBeLessThan(0.75 * perKm(100));
  });
});

describe('legs given by readings', () => {
  const average = (rows: readonly BenchRow[], seconds: number): number => {
    let chargeAs = 0;
    let startS = 0;
    for (const row of rows) {
      const stepS = 2 * (row.timeS - startS);
      chargeAs += row.currentA * stepS;
      startS += stepS;
    }
    return chargeAs / seconds;
  };

  test('clamp-meter amps keep the average read while the starts take their peak', () => {
    const load: SurfaceAmpsLoad = {
      kind: 'surface-amps',
      surface: 'short-grass',
      averageA: 12,
      peakA: 60,
      peakS: 2,
      starts: 4,
    };
    const { rows, result } = play([driveLeg(load)]);
    expect(result).toBeNull();
    expect(Math.max(...rows.map((row) => row.currentA))).toBe(60);
    expect(average(rows, 60)).toBeCloseTo(12, 9);
    // 720 A s less four peaks of 120 A s over the other 52 s.
    expect(Math.min(...rows.map((row) => row.currentA))).toBeCloseTo(240 / 52, 9);
  });

  test('a log is replayed row by row and begins again', () => {
    const load: LogLoad = {
      kind: 'log',
      name: 'log',
      replay: 'current',
      lastsS: 10,
      timeS: [0, 4],
      currentA: [5, 20],
      voltageV: [],
    };
    const { rows } = play([driveLeg(load)], { seconds: 30 });
    expect(rows.map((row) => row.currentA)).toEqual([5, 20, 5, 20, 5, 20]);
    expect(average(rows, 30)).toBeCloseTo(14, 9);
  });
});

describe('the battery current limit in an outing that is also driven', () => {
  // The driven leg starts after 30 s: rows before it belong to the plain or measured leg alone.
  const before = (load: Leg['load'], batteryCurrentLimitA: number | null) =>
    play([driveLeg(load, 0.5, 'first'), driveLeg(driveLoad(), 0.5, 'second')], {
      controller: { batteryCurrentLimitA },
    }).rows.filter((row) => row.timeS < 29);

  test.each<[string, Leg['load']]>([
    ['current', { kind: 'current', currentA: 80 }],
    ['power', { kind: 'power', powerW: 1600 }],
    ['resistance', { kind: 'resistance', resistanceOhm: 0.3 }],
  ])('holds a plain leg of steady %s, which would draw more without it', (_name, load) => {
    const held = before(load, 40);
    expect(held.length).toBeGreaterThan(0);
    for (const row of held) expect(row.currentA).toBeCloseTo(40, 9);
    for (const row of before(load, null)) expect(row.currentA).toBeGreaterThan(60);
  });

  test('leaves a plain leg below it as it is', () => {
    for (const row of before({ kind: 'current', currentA: 25 }, 40))
      expect(row.currentA).toBeCloseTo(25, 9);
  });

  test('leaves clamp-meter amps as they were measured', () => {
    const load: SurfaceAmpsLoad = {
      kind: 'surface-amps',
      surface: 'short-grass',
      averageA: 12,
      peakA: 60,
      peakS: 2,
      starts: 1,
    };
    expect(Math.max(...before(load, 40).map((row) => row.currentA))).toBe(60);
  });
});

test('a driven leg without a drive names what is missing', () => {
  const built = outingSource(
    bareMachine({ drive: null }),
    bareController(),
    driveOuting([driveLeg(driveLoad())]),
    15,
    25,
  );
  expect(built).toMatchObject({ ok: false, path: 'machine.drive' });
});

test('motors that cannot be joined as stated name the gear', () => {
  const built = outingSource(
    bareMachine({
      drive: bareDrive({
        motorCount: 3,
        gears: [
          {
            id: 'only',
            name: 'Only',
            ratio: 10,
            efficiencyPercent: 80,
            motorsInSeries: 2,
            direction: 'forward',
            highestDutyPercent: 100,
          },
        ],
      }),
    }),
    bareController(),
    driveOuting([driveLeg(driveLoad())]),
    15,
    25,
  );
  expect(built).toMatchObject({ ok: false, path: 'machine.drive.gears.0.motorsInSeries' });
});

test('stopped by a cutoff it asks for nothing', () => {
  const built = outingSource(
    bareMachine(),
    bareController(),
    driveOuting([driveLeg(driveLoad())]),
    15,
    25,
  );
  if (!built.ok) throw new Error(built.problem);
  const terms = { currentA: 1, powerW: 1, conductanceS: 1 };
  runOnSupply(built.source, 25.4, 0.03, 5);
  built.source.stop(true);
  built.source.terms(5, 25, terms);
  expect(terms).toEqual({ currentA: 0, powerW: 0, conductanceS: 0 });
});
