import { describe, expect, test } from 'vitest';
import { stopHelp } from '#core/drive/stop-help.ts';
import { sizeBrakeResistor } from '#core/drive/brake-sizing.ts';
import { cruisePowerW } from '#core/drive/cruise-power.ts';
import { driveTrain } from '#core/drive/drive-train.ts';
import { outingTemplates, templateOuting } from '#core/drive/outing-templates.ts';
import { resistorHeat } from '#core/drive/resistor-heat.ts';
import { roadOf } from '#core/drive/road.ts';
import { scaleToReading } from '#core/drive/scale-to-reading.ts';
import { voltageView } from '#core/drive/voltage-view.ts';
import { newBrakeResistor } from '#core/plan/drive-defaults.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { outingSchema } from '#core/plan/schema/outing.ts';
import { runOuting } from '#core/run/run-outing.ts';
import {
  bareController,
  bareDrive,
  bareMachine,
  driveLeg,
  driveLoad,
  driveOuting,
} from '../../support/drive-plan.ts';

const tug = samplePlan('campsite-tug');
const [lead, lithium] = tug.options as [(typeof tug.options)[0], (typeof tug.options)[0]];

describe('the voltage view', () => {
  test('gives the higher voltage its higher speed in proportion, and asks nothing where all is known', () => {
    const low = voltageView(tug.machine, lead);
    const high = voltageView(tug.machine, lithium);
    if (!low.ok || !high.ok) throw new Error('the tug can be computed');
    const ratio = high.gears[1]!.topSpeedKmh / low.gears[1]!.topSpeedKmh;
    expect(ratio).toBeGreaterThan((high.fullV / low.fullV) * 0.97);
    expect(ratio).toBeLessThan((high.fullV / low.fullV) * 1.06);
    expect(low.questions).toEqual([]);
  });

  test('makes no claim on load or grade where data are missing, and asks instead', () => {
    const machine = structuredClone(tug.machine);
    machine.drive!.motor.ratedPowerW = null;
    machine.drive!.steepestGradePercent = null;
    const view = voltageView(machine, lead);
    if (!view.ok) throw new Error(view.problem);
    expect(view.gears[0]).toMatchObject({
      gradeSpeedKmh: null,
      gradeEachMotorW: null,
      gradeRatedPercent: null,
    });
    expect(view.questions.map(({ about }) => about)).toEqual(['rated-power', 'steepest-grade']);
  });

  test('agrees with the simulated top speed of a run at full throttle within 2 %', () => {
    const machine = bareMachine({ drive: bareDrive({ steepestSurface: 'worn-paving' }) });
    const view = voltageView(machine, lead);
    if (!view.ok) throw new Error(view.problem);
    const run = runOuting(
      lead,
      machine,
      driveOuting([driveLeg(driveLoad(), 2)], { longestMin: 2 }),
    );
    expect(Math.abs(run.drive!.topSpeedKmh / view.gears[0]!.topSpeedKmh - 1)).toBeLessThan(0.02);
  });
});

describe('sizing a brake resistor', () => {
  const built = driveTrain(bareDrive(), bareController(), 15);
  if (!built.ok) throw new Error(built.problem);
  const { train } = built;
  const road = roadOf(train, 'worn-paving', 0, 0);
  const size = (decelerationMps2: number, stopsPerHour = 30) =>
    sizeBrakeResistor(train, train.gears[0]!, road, 2, decelerationMps2, stopsPerHour);

  test('the exact value gives the wished deceleration by the force balance', () => {
    const sizing = size(2.5);
    if (!sizing.ok) throw new Error(sizing.reason);
    const k = (0.08 * 16) / 0.13;
    const currentA = (k * 2) / (0.1 + sizing.wishedOhm);
    const air = 0.5 * 1.225 * 0.5 * 4;
    const forceN = (k * (currentA + 1.5)) / 0.85 + 145 * 9.80665 * 0.02 + air;
    expect(forceN / (145 * 1.05)).toBeCloseTo(2.5, 6);
  });

  test('the standard value is one of the series and close to the wish', () => {
    const sizing = size(2.5);
    if (!sizing.ok) throw new Error(sizing.reason);
    expect(Math.abs(Math.log(sizing.standardOhm / sizing.wishedOhm))).toBeLessThan(
      Math.log(1.2) / 2 + 0.02,
    );
    expect(Math.abs(sizing.stop.decelerationMps2 - 2.5)).toBeLessThan(0.4);
  });

  test('the rating stands the pulse five times over, and many stops double on average', () => {
    const sizing = size(2.5);
    const often = size(2.5, 3000);
    if (!sizing.ok || !often.ok) throw new Error('sizing failed');
    expect(sizing.ratedW * 5).toBeGreaterThanOrEqual(sizing.stop.resistorPeakW);
    expect(often.ratedBy).toBe('average');
    expect(often.ratedW).toBeGreaterThanOrEqual(2 * often.averageW);
  });

  test('a wish that rolling alone fulfils, or a short cannot, says so with what is reachable', () => {
    expect(size(0.2)).toMatchObject({ ok: false, reason: 'rolls-out' });
    const wild = size(40);
    expect(wild).toMatchObject({ ok: false, reason: 'short-is-too-weak' });
    if (!wild.ok) expect(wild.reachableMps2).toBeLessThan(40);
  });
});

test('a brake resistor heats by energy over heat capacity, and by the geometric series when stops repeat', () => {
  // 50 W, 250 K, 150 s: 30 J/K. 600 J: 20 K. Every 150 s: 20/(1 - 1/e) K.
  const heat = resistorHeat(newBrakeResistor(), 600, 24)!;
  expect(heat.oneStopK).toBeCloseTo(20, 9);
  expect(heat.repeatedK).toBeCloseTo(20 / (1 - Math.exp(-1)), 9);
  expect(heat.averageW).toBe(4);
  expect(heat.pulseLimitJ).toBe(1250);
});

describe('scaling the road to a reading', () => {
  const machine = bareMachine();
  const reading = {
    surface: 'short-grass',
    gradePercent: 0,
    gearId: null,
    speedKmh: 5,
    busV: 24,
  } as const;
  const current = (resistancePercent: number) => {
    const drive = bareDrive({ resistancePercent });
    return (
      cruisePowerW(
        { ...machine, drive },
        lead,
        driveLoad({ surface: 'short-grass', command: { kind: 'speed', targetSpeedKmh: 5 } }),
        24,
      )! / 24
    );
  };

  test('finds the resistance behind a current the model itself drew', () => {
    const scale = scaleToReading(machine, lead, { ...reading, packA: current(140) });
    expect(scale).toMatchObject({ ok: true });
    if (scale.ok) {
      expect(scale.resistancePercent).toBeCloseTo(140, 6);
      expect(scale.modelA).toBeCloseTo(current(100), 9);
    }
  });

  test('refuses readings that no road explains', () => {
    expect(scaleToReading(machine, lead, { ...reading, packA: 0.5 })).toMatchObject({ ok: false });
    expect(scaleToReading(machine, lead, { ...reading, packA: 900 })).toEqual({
      ok: false,
      reason: 'out-of-range',
    });
  });
});

test('every outing template is a valid outing that runs with the tug', () => {
  const words = {
    name: 'Name',
    ride: 'Ride',
    climb: 'Climb',
    descend: 'Descend',
    lawn: 'Lawn',
    pause: 'Pause',
  };
  for (const template of outingTemplates) {
    const outing = outingSchema.parse(templateOuting(template, template, words));
    const run = runOuting(lead, tug.machine, { ...outing, longestMin: 15 });
    expect(run.problem).toBeNull();
    expect(run.drive!.distanceKm, template).toBeGreaterThan(0.3);
  }
});

describe('the stopping helper', () => {
  const part = { ...newBrakeResistor(), resistanceOhm: 0.5, ratedPowerW: 50 };
  const machineWith = (onRelease: 'coast' | 'resistor', grade: number | null) =>
    bareMachine({
      drive: bareDrive({
        steepestGradePercent: grade,
        brakes: { ...bareDrive().brakes, onRelease, resistor: part },
      }),
    });
  const help = (onRelease: 'coast' | 'resistor', grade: number | null) =>
    stopHelp(machineWith(onRelease, grade), lead, null, 7.2, 1.5, 30)!;

  test('shows what the planned resistor does: first deceleration and creep by the balance of forces', () => {
    const { planned, basis } = help('resistor', 8);
    const k = (0.08 * 16) / 0.13;
    const brakeN = (k * ((k * 2) / 0.6 + 1.5)) / 0.85;
    expect(planned.stop.decelerationMps2).toBeCloseTo((brakeN + basis.rollingN) / basis.massKg, 6);
    // Mass without rotating parts; rolling resistance on the slope taken off, no air.
    const weightN = (basis.massKg / 1.05) * 9.80665;
    const slope = Math.hypot(1, 0.08);
    const pushN = (weightN * (0.08 - 0.02)) / slope;
    const creepMps = (((pushN * 0.85) / k - 1.5) * 0.6) / k;
    expect(planned.creepKmh).toBeCloseTo(creepMps * 3.6, 6);
    const currentA = (pushN * 0.85) / k - 1.5;
    expect(planned.descentK).toBeCloseTo((250 * currentA ** 2 * 0.5) / 50, 6);
  });

  test('says nothing of heat or creep where there is no resistor, no grade or no rating', () => {
    expect(help('coast', 8).planned).toMatchObject({ heat: null, descentK: null });
    expect(help('coast', 8).planned.creepKmh).toBe(Infinity);
    expect(help('resistor', null).planned).toMatchObject({ creepKmh: 0, descentK: null });
  });

  test('a long descent can set the rating', () => {
    const steep = help('resistor', 25).sizing;
    if (!steep.ok) throw new Error(steep.reason);
    expect(steep.ratedBy).toBe('descent');
    expect(steep.ratedW).toBeGreaterThanOrEqual(steep.descentW);
  });
});
