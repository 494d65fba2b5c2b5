import { describe, expect, test } from 'vitest';
import { motorPoints } from '#core/drive/motor-points.ts';
import { fitMotor } from '#core/drive/motor-constants.ts';
import type { MotorConstants } from '#core/drive/motor-constants.ts';
import { bareMotor } from '../../support/drive-plan.ts';

/** A motor with R 0.1 Ω, K 0.08 V s/rad, I0 2 A, and the readings the motor equations give for it at 24 V. */
const truth = { ohm: 0.1, constant: 0.08, idleA: 2 };
const rpm = (radPerS: number) => (radPerS * 30) / Math.PI;
const noLoadRpm = rpm((24 - truth.idleA * truth.ohm) / truth.constant);
const ratedRpm = rpm((24 - 15 * truth.ohm) / truth.constant);
const blank = bareMotor({ windingOhm: null, rpmPerVolt: null, noLoadCurrentA: truth.idleA });

function constants(changes: Parameters<typeof bareMotor>[0]): MotorConstants {
  const fit = fitMotor({ ...blank, ...changes });
  if (!fit.ok) throw new Error(fit.problem);
  return fit.constants;
}

describe('fitting a motor', () => {
  // Class: derived by hand from V = I R + K w; every set of readings describes the same motor.
  test.each([
    ['winding and no-load speed', { windingOhm: 0.1, noLoadRpm }],
    ['stall current and no-load speed', { stallCurrentA: 240, noLoadRpm }],
    ['winding and rated point', { windingOhm: 0.1, ratedCurrentA: 15, ratedRpm }],
    ['speed per volt and rated point', { rpmPerVolt: rpm(1 / 0.08), ratedCurrentA: 15, ratedRpm }],
    ['no-load and rated point', { noLoadRpm, ratedCurrentA: 15, ratedRpm }],
  ])('finds the same constants from %s', (_name, readings) => {
    const found = constants(readings);
    expect(found.resistanceOhm).toBeCloseTo(truth.ohm, 9);
    expect(found.backEmfVs).toBeCloseTo(truth.constant, 9);
    expect(found.noLoadCurrentA).toBe(truth.idleA);
  });

  test('takes readings at a test voltage other than the rated one', () => {
    const found = constants({
      testVoltageV: 12,
      stallCurrentA: 120,
      noLoadRpm: rpm((12 - 0.2) / 0.08),
    });
    expect(found.resistanceOhm).toBeCloseTo(0.1, 9);
    expect(found.backEmfVs).toBeCloseTo(0.08, 9);
  });

  test('derives the no-load current from the rated power', () => {
    // P = K (I - I0) w: with I0 = 2 A at 15 A.
    const ratedPowerW = 0.08 * 13 * ((24 - 1.5) / 0.08);
    const found = constants({
      noLoadCurrentA: null,
      windingOhm: 0.1,
      rpmPerVolt: rpm(1 / 0.08),
      ratedCurrentA: 15,
      ratedRpm,
      ratedPowerW,
    });
    expect(found.noLoadCurrentA).toBeCloseTo(2, 9);
    expect(found.noLoadOrigin).toBe('derived');
  });

  test('says that it assumed the no-load current where nothing tells it', () => {
    const found = constants({
      noLoadCurrentA: null,
      windingOhm: 0.1,
      noLoadRpm,
      ratedCurrentA: 15,
    });
    expect(found.noLoadOrigin).toBe('assumed');
    expect(found.noLoadCurrentA).toBeCloseTo(1.5, 9);
  });

  test.each([
    ['nothing', {}, 'windingOhm'],
    ['only a winding', { windingOhm: 0.1 }, 'noLoadRpm'],
    [
      'a rated speed above the no-load speed',
      { noLoadRpm: 2500, ratedCurrentA: 15, ratedRpm: 2600 },
      'ratedRpm',
    ],
    [
      'a winding that drops everything',
      { windingOhm: 10, ratedCurrentA: 15, ratedRpm },
      'windingOhm',
    ],
    [
      'a no-load current above the stall current',
      { windingOhm: 20, rpmPerVolt: 100 },
      'noLoadCurrentA',
    ],
  ])('names the field to mend for %s', (_name, readings, field) => {
    const fit = fitMotor({ ...blank, ...readings });
    expect(fit).toMatchObject({ ok: false, field });
  });
});

test('stall, best and rated point follow from the motor equations by hand, and a label that disagrees shows', () => {
  const motor = bareMotor({ ratedCurrentA: 20, ratedRpm: 2800 });
  const fit = fitMotor(motor);
  if (!fit.ok) throw new Error(fit.problem);
  const points = motorPoints(motor, fit.constants);
  // 24 V, 0.1 ohm, 0.08 V s/rad, 1.5 A: stall 240 A, eta (1 - sqrt(1.5/240))^2, rated (24 - 2)/0.08 = 275 rad/s.
  expect(points.stallA).toBeCloseTo(240, 6);
  expect(points.bestEfficiency).toBeCloseTo((1 - Math.sqrt(1.5 / 240)) ** 2, 9);
  expect(points.bestA).toBeCloseTo(Math.sqrt(360), 6);
  expect(points.rated!.rpm).toBeCloseTo((275 * 30) / Math.PI, 6);
  expect(points.rated!.shaftW).toBeCloseTo(0.08 * 275 * 18.5, 6);
  expect(points.rated!.rpmGap).toBeCloseTo(1 - (275 * 30) / Math.PI / 2800, 3);
  expect(motorPoints({ ...motor, ratedCurrentA: 300 }, fit.constants).rated).toBeNull();
});
