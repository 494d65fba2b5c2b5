import { describe, expect, test } from 'vitest';
import { fitCurves } from '#core/battery/rating/fit-curves.ts';
import { ratingRemarkText } from '#core/battery/rating/rating-remark.ts';
import { ratingReport } from '#core/battery/rating/rating-report.ts';
import { steadyCapacityAh } from '#core/battery/steady-discharge.ts';
import { buildBlockModel, newBlockConditions } from '#core/battery/build-block-model.ts';
import { newBlock } from '#core/plan/defaults.ts';
import type { Block, DischargeCurve } from '#core/plan/schema/block.ts';

/** A 12 V block of 12 Ah without rate loss, drawn as a straight fall with an ohmic step; invented. */
const straight = (currentA: number, toPercent = 0): DischargeCurve => ({
  currentA,
  points: Array.from({ length: 24 }, (_, index) => {
    const out = ((index + 1) / 24) * (1 - toPercent / 100);
    return {
      timeMin: (60 * 12 * out) / currentA,
      voltageV: 12.75 - 1.6 * out - 0.03 * currentA - (out > 0.95 ? 20 * (out - 0.95) : 0),
    };
  }),
});

const rated = (rating: Block['rating'], change: Partial<Block> = {}): Block => ({
  ...newBlock(),
  capacityAh: 12,
  ratedHours: 20,
  rating,
  ...change,
});
const kinds = (block: Block) => ratingReport(block).remarks.map(({ kind }) => kind);

describe('what a rating tells and what it leaves open', () => {
  test('an unknown exponent and an unknown resistance are said to be assumed', () => {
    expect(kinds(rated({ kind: 'exponent', exponent: null }))).toEqual([
      'exponent-assumed',
      'resistance-assumed',
      'shape-assumed',
    ]);
    expect(kinds(rated({ kind: 'exponent', exponent: 1.1 }, { resistanceOhm: 0.02 }))).toEqual([
      'shape-assumed',
    ]);
  });

  test('two rated points cannot tell how charge flows after; four can', () => {
    const point = (hours: number, capacityAh: number) => ({ hours, capacityAh, endVoltageV: null });
    const two = [point(20, 12), point(1, 7.2)];
    const four = [point(20, 12), point(10, 11.1), point(5, 10.2), point(1, 7.2)];
    const untold = (points: typeof two) =>
      ratingReport(rated({ kind: 'points', points })).remarks.filter(
        ({ kind }) => kind === 'not-told',
      ).length;
    expect(untold(two)).toBe(2);
    expect(untold(four)).toBe(0);
  });

  test('rated points that contradict the resistance are named with their hours', () => {
    const points = [
      { hours: 20, capacityAh: 12, endVoltageV: null },
      { hours: 1, capacityAh: 11.9, endVoltageV: 12.2 },
    ];
    const report = ratingReport(rated({ kind: 'points', points }, { resistanceOhm: 0.2 }));
    expect(report.remarks).toContainEqual(
      expect.objectContaining({ kind: 'point-missed', hours: 1 }),
    );
  });

  test('curves at three rates tell every value and contradict a label that promises more', () => {
    const curves = [0.6, 3, 9].map((currentA) => straight(currentA));
    const block = rated({ kind: 'curves', curves }, { capacityAh: 15 });
    const report = ratingReport(block);
    expect(report.curves.map(({ currentA }) => currentA)).toEqual([0.6, 3, 9]);
    for (const { rmsMv, endPercent } of report.curves) {
      expect(rmsMv).toBeLessThan(60);
      expect(Math.abs(endPercent)).toBeLessThan(1);
    }
    expect(report.remarks.map(({ kind }) => kind)).toContain('label-contradicted');
    // The step between the curves, drawn as 30 mΩ, at the 20 °C lead is rated at.
    const { fitted } = fitCurves(block, curves);
    expect(fitted.resistanceOhm + fitted.polarisationOhm).toBeGreaterThan(0.024);
    expect(fitted.resistanceOhm + fitted.polarisationOhm).toBeLessThan(0.036);
  });

  test('one curve that ends early tells neither the rate loss nor the lower half of the rest curve', () => {
    const curves = [straight(3, 50)];
    const report = ratingReport(rated({ kind: 'curves', curves }));
    const told = report.remarks.map((remark) =>
      remark.kind === 'not-told' ? remark.value : remark.kind,
    );
    expect(told).toContain('rateLoss');
    expect(told).toContain('rest-assumed-below');
  });

  test('every remark reads as a sentence in both languages', () => {
    const curves = [straight(3, 50)];
    const remarks = [
      ...ratingReport(rated({ kind: 'exponent', exponent: null })).remarks,
      ...ratingReport(rated({ kind: 'curves', curves }, { capacityAh: 40 })).remarks,
    ];
    for (const remark of remarks) {
      for (const language of ['en', 'de'] as const)
        expect(ratingRemarkText(remark, language)).toMatch(/^[A-ZÄÖÜ].*\.$/);
    }
  });

  test('curves no battery ever gave still leave finite figures', () => {
    const odd: DischargeCurve[] = [
      { currentA: 2000, points: [0, 0.001, 0.002].map((timeMin) => ({ timeMin, voltageV: 0 })) },
      { currentA: 0.001, points: [0, 1, 12000].map((timeMin) => ({ timeMin, voltageV: 200 })) },
    ];
    for (const curve of odd) {
      const { fitted, curves } = fitCurves(rated({ kind: 'curves', curves: [curve] }), [curve]);
      for (const value of [fitted.capacityAh, fitted.resistanceOhm, curves[0]!.rmsMv])
        expect(Number.isFinite(value)).toBe(true);
    }
  });
});

describe('the charge a block gives at a steady current', () => {
  test('without rate loss and resistance it is the charge down to the end voltage', () => {
    const model = {
      ...buildBlockModel(rated({ kind: 'exponent', exponent: 1 }), newBlockConditions),
      availableShare: 1,
      resistanceOhm: 0,
      kneeOhm: 0,
      polarisationOhm: 0,
      capacityAh: 12,
    };
    // The AGM rest curve stands at 12.3 V at 50 %: half the charge is out.
    expect(steadyCapacityAh(model, 1, 12.3)).toBeCloseTo(6, 3);
  });
});
