import { describe, expect, it } from 'vitest';
import {
  findRoot,
  fitCurve,
  fitLine,
  interpolateLogLog,
  interpolateTable,
  interpolateUniform,
  percentile,
} from '#core/numerics/index.ts';

const decay = (p: readonly number[], at: number) => p[0]! * Math.exp(-p[1]! * at);

describe('interpolation', () => {
  const table = [
    [0, 1],
    [1, 3],
    [4, 0],
  ] as const;
  it('returns the tabulated value at every table place', () => {
    for (const [x, y] of table) expect(interpolateTable(table, x)).toBe(y);
  });
  it('is linear between unevenly spaced places', () => {
    expect(interpolateTable(table, 0.25)).toBeCloseTo(1.5, 14);
    expect(interpolateTable(table, 3)).toBeCloseTo(1, 14);
  });
  it('holds the end values outside the table', () => {
    expect(interpolateTable(table, -9)).toBe(1);
    expect(interpolateTable(table, 9)).toBe(0);
    expect(interpolateUniform([5, 7], 10, 2, 0)).toBe(5);
    expect(interpolateUniform([5, 7], 10, 2, 99)).toBe(7);
  });
  it('reads an even grid as the uneven table with the same points', () => {
    const values = [2, 5, 1, 8];
    const points = values.map((y, i) => [10 + 0.5 * i, y] as const);
    for (const x of [10, 10.1, 10.5, 10.99, 11.3, 11.5]) {
      expect(interpolateUniform(values, 10, 0.5, x)).toBeCloseTo(interpolateTable(points, x), 12);
    }
  });
  it('follows a power law exactly on logarithmic axes', () => {
    const law = [1, 10, 100].map((x) => [x, 3 * x ** -0.7] as const);
    expect(interpolateLogLog(law, 37)).toBeCloseTo(3 * 37 ** -0.7, 12);
  });
  it('refuses an empty table', () => {
    expect(() => interpolateTable([], 1)).toThrow(/at least one point/);
    expect(() => interpolateUniform([], 0, 1, 1)).toThrow(/at least one value/);
  });
});

describe('findRoot', () => {
  const cases: readonly (readonly [string, (x: number) => number, number, number, number])[] = [
    ['cos x = x', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x^3 = 2', (x) => x ** 3 - 2, 0, 5, Math.cbrt(2)],
    ['a root near a flat place', (x) => (x - 1) ** 9, 0, 3, 1],
    ['a reversed bracket', (x) => Math.exp(x) - 3, 4, -4, Math.log(3)],
    ['a step', (x) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
  ];
  for (const [name, f, low, high, root] of cases) {
    it(`finds ${name}`, () => {
      const result = findRoot(f, low, high);
      expect(result.ok && result.x).toBeCloseTo(root, name.includes('flat') ? 3 : 9);
    });
  }
  it('finds a smooth root with far fewer evaluations than halving would need', () => {
    const result = findRoot((x) => Math.cos(x) - x, 0, 1);
    expect(result.ok && result.evaluations).toBeLessThan(12);
  });
  it('says when the signs do not differ or a value is not finite', () => {
    expect(findRoot((x) => x * x + 1, -1, 1)).toEqual({ ok: false, reason: 'not-bracketed' });
    expect(findRoot(() => Number.NaN, -1, 1)).toEqual({ ok: false, reason: 'not-finite' });
  });
});

describe('percentile', () => {
  // Linear definition on 1..5: the p-th percentile is 1 + 4 p / 100, by hand.
  it('interpolates linearly between order statistics', () => {
    const sample = [5, 1, 4, 2, 3];
    for (const p of [0, 10, 25, 50, 90, 100])
      expect(percentile(sample, p)).toBeCloseTo(1 + (4 * p) / 100, 12);
    expect(sample).toEqual([5, 1, 4, 2, 3]);
  });
  it('gives the only value of a single one and refuses none', () => {
    expect(percentile([7], 90)).toBe(7);
    expect(() => percentile([], 50)).toThrow(/at least one value/);
  });
});

describe('fitLine', () => {
  it('recovers an exact line with zero residuals', () => {
    const fit = fitLine([1, 2, 5], [1, -1, -7]);
    expect(fit?.slope).toBeCloseTo(-2, 12);
    expect(fit?.intercept).toBeCloseTo(3, 12);
    for (const r of fit?.residuals ?? [1]) expect(r).toBeCloseTo(0, 12);
  });
  // By hand: y = 0,1,1 at x = 0,1,2 gives slope 1/2, intercept 1/6, residual sum of squares 1/6, slope error sqrt(1/12).
  it('gives the least-squares line and its error of a small set worked by hand', () => {
    const fit = fitLine([0, 1, 2], [0, 1, 1]);
    expect(fit?.slope).toBeCloseTo(0.5, 14);
    expect(fit?.intercept).toBeCloseTo(1 / 6, 14);
    expect(fit?.slopeError).toBeCloseTo(Math.sqrt(1 / 12), 14);
  });
  it('counts a point of weight two like the point given twice', () => {
    const weighted = fitLine([0, 1, 3], [1, 0, 5], [1, 2, 1]);
    const doubled = fitLine([0, 1, 1, 3], [1, 0, 0, 5]);
    expect(weighted?.slope).toBeCloseTo(doubled?.slope ?? Number.NaN, 12);
    expect(weighted?.intercept).toBeCloseTo(doubled?.intercept ?? Number.NaN, 12);
  });
  it('returns null when the points do not determine a line', () => {
    expect(fitLine([], [])).toBeNull();
    expect(fitLine([2, 2], [1, 5])).toBeNull();
    expect(fitLine([1, 2], [1, Number.NaN])).toBeNull();
  });
});

describe('fitCurve', () => {
  const x = [0, 1, 2, 3, 5, 8];
  it('recovers the parameters of an exact curve from a distant start', () => {
    const fit = fitCurve(
      x,
      x.map((at) => decay([4, 0.3], at)),
      decay,
      [
        { start: 1, min: 0, max: 20 },
        { start: 1, min: 0, max: 5 },
      ],
    );
    expect(fit.parameters[0]).toBeCloseTo(4, 6);
    expect(fit.parameters[1]).toBeCloseTo(0.3, 6);
    expect(fit.cost).toBeLessThan(1e-12);
  });
  it('stops at a bound when the best curve lies beyond it', () => {
    const fit = fitCurve(
      x,
      x.map((at) => decay([4, 0.3], at)),
      decay,
      [
        { start: 2, min: 0, max: 3 },
        { start: 1, min: 0, max: 5 },
      ],
    );
    expect(fit.parameters[0]).toBeLessThanOrEqual(3);
    expect(fit.parameters[0]).toBeCloseTo(3, 3);
  });
});
