import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/formulas/index.ts';
import { evaluate, valueOf } from '../support/evaluate.ts';

// Classes: [P] published, [R] recomputed exactly outside this code, [M] printed figure from memory.

// Parameters and cycles of Jongerden, Haverkort, Bohnenkamp & Katoen, DSN 2009 [M for the print]; figures [R].
const small = { capacityAh: '5.5 A·min', availableShare: 0.166, levellingPerH: '0.122/min' };
const large = { ...small, capacityAh: '11 A·min' };
const availableAfter = (currentA: number, timeH: string, restH: string) =>
  valueOf('two-well-state', 'availableAh', { ...small, currentA, timeH, restH }) * 60;

describe('Peukert’s law', () => {
  // [R] t = H (C/(I H))^k, evaluated outside this code.
  const table: readonly (readonly [number, number, number, number, number])[] = [
    [200, 20, 1.25, 20, 8.40896],
    [200, 20, 1.25, 50, 2.67496],
    [100, 20, 1.2, 10, 8.70551],
    [7.2, 20, 1.15, 7.2, 0.63804],
  ];
  for (const [capacityAh, ratedHours, exponent, currentA, hours] of table) {
    it(`gives ${hours} h for ${capacityAh} A·h over ${ratedHours} h, k ${exponent}, at ${currentA} A`, () => {
      const timeH = valueOf('peukert-time', 'timeH', {
        capacityAh,
        ratedHours,
        exponent,
        currentA,
      });
      expect(timeH).toBeCloseTo(hours, 5);
    });
  }
  it('gives exactly the rated time at the rated current, whatever the exponent', () => {
    for (const exponent of [1, 1.1, 1.2, 1.5, 2]) {
      const inputs = { capacityAh: 100, ratedHours: 20, currentA: 5, exponent };
      expect(valueOf('peukert-time', 'timeH', inputs)).toBe(20);
    }
  });
  it('gives capacity over current when the exponent is 1', () => {
    const inputs = { capacityAh: 17, ratedHours: 20, currentA: 3.04, exponent: 1 };
    expect(valueOf('peukert-time', 'timeH', inputs)).toBeCloseTo(17 / 3.04, 12);
  });
  it('differs from the form C/I^n without the rated time, which is wrong', () => {
    const timeH = valueOf('peukert-time', 'timeH', {
      capacityAh: 200,
      currentA: 20,
      exponent: 1.25,
    });
    const withoutRatedTime = 200 / 20 ** 1.25;
    expect(Math.abs(timeH / withoutRatedTime - 1)).toBeGreaterThan(0.5);
    // The wrong form fails the maker's own rating; the law must not.
    expect(200 / 10 ** 1.25).not.toBeCloseTo(20, 0);
    expect(
      valueOf('peukert-time', 'timeH', { capacityAh: 200, currentA: 10, exponent: 1.25 }),
    ).toBe(20);
  });
});

describe('Peukert exponent', () => {
  // [R] ln(20/1)/ln(7.2/0.6)
  const two = { firstCapacityAh: 12, firstHours: 20, secondCapacityAh: 7.2, secondHours: 1 };
  it('follows from two ratings', () => {
    expect(valueOf('peukert-exponent', 'exponent', two)).toBeCloseTo(1.205571, 6);
  });
  it('is the same by least squares on those two ratings, with no residual and no error to state', () => {
    const fit = evaluate('peukert-fit', { hours: [20, 1], capacityAh: [12, 7.2] });
    expect(fit['exponent']).toBeCloseTo(1.205571, 6);
    expect(fit['exponentError']).toBeNull();
    expect(fit['largestResidualPercent']).toBeCloseTo(0, 9);
    expect(fit['referenceCapacityAh']).toBeCloseTo(12, 9);
  });
  it('refuses two ratings at the same current', () => {
    const same = { ...two, secondCapacityAh: 6, secondHours: 10 };
    expect(evaluateFormula('peukert-exponent', same)).toMatchObject({
      ok: false,
      field: 'secondCapacityAh',
    });
  });
});

describe('two-well model', () => {
  const constant: readonly (readonly [string, typeof small, number, number])[] = [
    ['5.5', small, 0.25, 4.5262],
    ['5.5', small, 0.5, 2.017],
    ['11', large, 0.5, 4.5262],
    ['11', large, 0.25, 12.1601],
  ];
  for (const [name, wells, currentA, minutes] of constant) {
    it(`lasts ${minutes} min with ${name} A·min at a constant ${currentA} A`, () => {
      const timeH = valueOf('two-well-lifetime', 'timeH', { ...wells, currentA });
      expect(timeH * 60).toBeCloseTo(minutes, 4);
    });
  }
  const pulsed: readonly (readonly [number, number, number])[] = [
    [0.25, 1, 10.8026],
    [0.5, 1, 4.3044],
    [0.25, 2, 21.8581],
  ];
  for (const [currentA, offMin, minutes] of pulsed) {
    it(`lasts ${minutes} min at ${currentA} A, 1 min on and ${offMin} min off`, () => {
      const inputs = { ...small, currentA, onMin: 1, offMin };
      expect(valueOf('two-well-pulsed-lifetime', 'timeH', inputs) * 60).toBeCloseTo(minutes, 4);
    });
  }
  it('leaves the recomputed charge in the available well after a current and after a rest', () => {
    expect(availableAfter(0.25, '2 min', '0 min')).toBeCloseTo(0.459977, 6);
    expect(availableAfter(0.5, '1 min', '0 min')).toBeCloseTo(0.437433, 6);
    expect(availableAfter(0.5, '1 min', '1 min')).toBeCloseTo(0.48252, 6);
  });
  it('lasts exactly the time for which a current is the largest', () => {
    for (const timeH of [0.05, 1, 20]) {
      const wells = { capacityAh: 20, availableShare: 0.4, levellingPerH: 0.5 };
      const currentA = valueOf('two-well-largest-current', 'currentA', { ...wells, timeH });
      expect(valueOf('two-well-lifetime', 'timeH', { ...wells, currentA })).toBeCloseTo(timeH, 9);
    }
  });
  it('delivers all charge at any current when everything is available', () => {
    const wells = { capacityAh: 20, availableShare: 1, levellingPerH: 0.5 };
    expect(valueOf('two-well-lifetime', 'timeH', { ...wells, currentA: 40 })).toBeCloseTo(0.5, 12);
  });
  it('delivers the available well at huge currents and everything at tiny ones', () => {
    const wells = { capacityAh: 20, availableShare: 0.4, levellingPerH: 0.5 };
    expect(valueOf('two-well-lifetime', 'deliveredAh', { ...wells, currentA: 9999 })).toBeCloseTo(
      8,
      2,
    );
    expect(valueOf('two-well-lifetime', 'deliveredAh', { ...wells, currentA: 1e-4 })).toBeCloseTo(
      20,
      2,
    );
  });
  it('lasts as long without off-legs as at constant current', () => {
    const constantH = valueOf('two-well-lifetime', 'timeH', { ...small, currentA: 0.25 });
    const inputs = { ...small, currentA: 0.25, onMin: 0.37, offMin: 0 };
    expect(valueOf('two-well-pulsed-lifetime', 'timeH', inputs)).toBeCloseTo(constantH, 12);
  });
  it('says what to change where a pulse train would need millions of cycles', () => {
    const inputs = { ...small, currentA: 1e-6, onMin: 1e-4, offMin: 1 };
    expect(evaluateFormula('two-well-pulsed-lifetime', inputs)).toMatchObject({
      ok: false,
      field: 'onMin',
    });
  });
});

describe('two wells fitted to ratings', () => {
  // Data sheet of a 6 V 1.3 A·h sealed block [P]; parameters by SciPy least_squares on the logarithm of the times [R].
  const sheet = { hours: [20, 10, 5, 1], capacityAh: [1.3, 1.2, 1.05, 0.85] };
  it('finds the parameters of a maker’s sheet with residuals of at most 0.72 %', () => {
    const fit = evaluate('two-well-fit', sheet);
    expect(fit['capacityAh']).toBeCloseTo(1.4437, 4);
    expect(fit['availableShare']).toBeCloseTo(0.5412, 4);
    expect(fit['levellingPerH']).toBeCloseTo(0.3953, 4);
    expect(fit['largestResidualPercent']).toBeLessThanOrEqual(0.72);
    expect(fit['largestResidualPercent']).toBeGreaterThan(0.5);
  });
  it('takes everything as available where the ratings show no rate loss', () => {
    const fit = evaluate('two-well-fit', { hours: [20, 10, 5, 1], capacityAh: [17, 17, 17, 17] });
    expect(fit['largestResidualPercent']).toBeLessThan(0.1);
    expect(fit['capacityAh']).toBeCloseTo(17, 1);
  });
  it('refuses fewer than three times and lists of unequal length', () => {
    expect(
      evaluateFormula('two-well-fit', { hours: [20, 1], capacityAh: [1.3, 0.85] }),
    ).toMatchObject({
      ok: false,
      field: 'hours',
    });
    expect(evaluateFormula('two-well-fit', { ...sheet, capacityAh: [1, 2] })).toMatchObject({
      ok: false,
      field: 'capacityAh',
    });
  });
});
