import { describe, expect, test } from 'vitest';
import { e12Near } from '#core/drive/e12.ts';
import { meanSpeed, speedAfter, timeToReach } from '#core/drive/linear-motion.ts';
import { logRemainingS, logTerms, logTime } from '#core/drive/log-replay.ts';
import { motorHeat } from '#core/drive/motor-heat.ts';
import { surfaces } from '#core/drive/surfaces.ts';
import { throttleDuty } from '#core/drive/throttle-duty.ts';
import type { LogLoad } from '#core/plan/schema/leg-load.ts';
import { bareControl, bareMotor } from '../../support/drive-plan.ts';

describe('E12 values', () => {
  // IEC 60063 [P]: 1.0 1.2 1.5 1.8 2.2 2.7 3.3 3.9 4.7 5.6 6.8 8.2 in every decade.
  test.each([
    [0.47, { nearest: 0.47, below: 0.47, above: 0.47 }],
    [0.5, { nearest: 0.47, below: 0.47, above: 0.56 }],
    [0.095, { nearest: 0.1, below: 0.082, above: 0.1 }],
    [9.4, { nearest: 10, below: 8.2, above: 10 }],
    [1, { nearest: 1, below: 1, above: 1 }],
    [333, { nearest: 330, below: 330, above: 390 }],
  ])('lie around %d ohms', (ohm, expected) => {
    expect(e12Near(ohm)).toEqual(expected);
  });
});

describe('the throttle curve', () => {
  const { throttle } = bareControl();
  test('is zero inside the lower dead band and full inside the upper one', () => {
    // 0.8 V at rest, starts at 1 V; 4.2 V pressed, full at 4 V.
    expect(throttleDuty(throttle, 5)).toBe(0);
    expect(throttleDuty(throttle, 100)).toBe(1);
    expect(throttleDuty(throttle, 95)).toBe(1);
  });

  test('rises evenly between the dead bands', () => {
    // 50 %: 2.5 V, half way from 1 V to 4 V.
    expect(throttleDuty(throttle, 50)).toBeCloseTo(0.5, 12);
  });

  test('is gentle at first with an exponent above one', () => {
    expect(throttleDuty({ ...throttle, exponent: 2 }, 50)).toBeCloseTo(0.25, 12);
  });

  test('reads a pedal and a controller whose signal falls', () => {
    const falling = { pedalRestV: 4.2, pedalFullV: 0.8, startV: 4, fullV: 1, exponent: 1 };
    expect(throttleDuty(falling, 50)).toBeCloseTo(0.5, 12);
    expect(throttleDuty(falling, 0)).toBe(0);
  });
});

describe('motion under a straight line of force', () => {
  test('reaches 1 - 1/e of the settled speed in one time constant', () => {
    expect(speedAfter(0, 2, 0.5, 2)).toBeCloseTo(4 * (1 - Math.exp(-1)), 12);
    expect(timeToReach(0, 2, 0.5, 4 * (1 - Math.exp(-1)))).toBeCloseTo(2, 12);
  });

  test('is one of constant acceleration without damping', () => {
    expect(speedAfter(1, 2, 0, 3)).toBe(7);
    expect(meanSpeed(1, 2, 0, 3)).toBe(4);
    expect(timeToReach(1, 2, 0, 7)).toBe(3);
  });

  test('averages what its integral says, also where the closed form cancels', () => {
    for (const damping of [1e-6, 1e-3, 0.4, 0.99, 1.01, 50]) {
      const steps = 20_000;
      let sum = 0;
      for (let i = 0; i < steps; i += 1)
        sum += speedAfter(0.3, 1.7, damping, ((i + 0.5) / steps) * 1.25);
      expect(meanSpeed(0.3, 1.7, damping, 1.25)).toBeCloseTo(sum / steps, 7);
    }
  });

  test('never reaches a speed beyond the settled one or against its direction', () => {
    expect(timeToReach(0, 2, 0.5, 4.01)).toBe(Infinity);
    expect(timeToReach(1, 2, 0.5, 0)).toBe(Infinity);
    expect(timeToReach(0, 2, 0, Infinity)).toBe(Infinity);
  });
});

describe('replay of a log', () => {
  const log: LogLoad = {
    kind: 'log',
    name: 'log',
    replay: 'power',
    lastsS: 10,
    timeS: [0, 4, 6],
    currentA: [2, 20, -1],
    voltageV: [25, 24, 25.5],
  };
  const terms = { currentA: 9, powerW: 9, conductanceS: 9 };

  test('holds each row until the next and starts again at its end', () => {
    logTerms({ ...log, replay: 'current' }, logTime(log, 25), terms);
    expect(terms).toEqual({ currentA: 20, powerW: 0, conductanceS: 0 });
    expect(logRemainingS(log, 5)).toBe(1);
    expect(logRemainingS(log, 7)).toBe(3);
  });

  test('asks for the logged watts, charging included', () => {
    logTerms(log, 4, terms);
    expect(terms.powerW).toBe(480);
    logTerms(log, 9, terms);
    expect(terms.powerW).toBe(-25.5);
  });
});

describe('thermal data of a motor', () => {
  const constants = {
    resistanceOhm: 0.1,
    backEmfVs: 0.08,
    noLoadCurrentA: 2,
    resistanceOrigin: 'given',
    backEmfOrigin: 'given',
    noLoadOrigin: 'given',
  } as const;

  test('follow from the rated point, which heats the winding by 80 K', () => {
    // 15 A: 22.5 W in the winding and 22.5 V x 2 A of friction: 67.5 W.
    const heat = motorHeat(bareMotor({ ratedCurrentA: 15 }), constants);
    expect(heat?.resistanceKPerW).toBeCloseTo(80 / 67.5, 12);
  });

  test('are absent where neither resistance to air nor rated current is known', () => {
    expect(motorHeat(bareMotor(), constants)).toBeNull();
  });
});

test('the surfaces keep the published coefficients and order low, likely, high', () => {
  // Marks, Carvill [P]: asphalt 0.01, worn 0.02, packed gravel 0.012, loose worn gravel 0.04, soil 0.08, sand 0.1 to 0.2.
  const published = {
    asphalt: 0.01,
    'worn-paving': 0.02,
    'packed-gravel': 0.012,
    'loose-gravel': 0.04,
    soil: 0.08,
  };
  for (const [id, rolling] of Object.entries(published)) {
    expect(surfaces.find((surface) => surface.id === id)?.rolling).toBe(rolling);
  }
  for (const surface of surfaces) {
    expect(surface.rollingLow).toBeLessThanOrEqual(surface.rolling);
    expect(surface.rolling).toBeLessThanOrEqual(surface.rollingHigh);
  }
});
