import { describe, expect, it } from 'vitest';
import { evaluateFormula } from '#core/formulas/index.ts';
import { evaluate, valueOf } from '../support/evaluate.ts';

const bundledAmpacity = (bundled: number) =>
  valueOf('ampacity', 'ampacityA', { gauge: '12', insulation: '105', bundled });

describe('conductors', () => {
  // ASTM B258 [P]: 36 AWG is 0.127 mm and 4/0 AWG is 11.684 mm (0.46 in) by definition.
  it('have the two diameters that define the gauge', () => {
    expect(valueOf('wire-gauge-size', 'diameterMm', { gauge: '36' })).toBeCloseTo(0.127, 12);
    expect(valueOf('wire-gauge-size', 'diameterMm', { gauge: '4/0' })).toBeCloseTo(11.684, 9);
    // 16 AWG is 2581 or 2583 cmil by rounding of its diameter in handbooks.
    expect(Math.round(valueOf('wire-gauge-size', 'circularMils', { gauge: '16' }))).toBeGreaterThan(
      2579,
    );
    expect(Math.round(valueOf('wire-gauge-size', 'circularMils', { gauge: '16' }))).toBeLessThan(
      2584,
    );
  });
  // IEC 60228 class 5, Ω/km at 20 °C [P].
  const flexible: readonly (readonly [string, number])[] = [
    ['0.5', 39],
    ['0.75', 26],
    ['1', 19.5],
    ['1.5', 13.3],
    ['2.5', 7.98],
    ['4', 4.95],
    ['6', 3.3],
    ['10', 1.91],
    ['16', 1.21],
    ['25', 0.78],
    ['35', 0.554],
    ['50', 0.386],
  ];
  it('of class 5 have the resistances of the standard', () => {
    for (const [nominalMm2, ohmPerKm] of flexible) {
      expect(valueOf('flexible-conductor-resistance', 'ohmPerKm', { nominalMm2 })).toBe(ohmPerKm);
    }
  });
  // National Electrical Code, chapter 9, table 8, stranded, Ω/kft at 75 °C [P].
  const stranded: readonly (readonly [number, number])[] = [
    [18, 7.95],
    [16, 4.99],
    [14, 3.14],
    [12, 1.98],
    [8, 0.778],
    [6, 0.491],
    [4, 0.308],
    [2, 0.194],
  ];
  it('of stranded gauges have the resistances of the code', () => {
    for (const [gauge, ohmPerKft] of stranded) {
      expect(valueOf('stranded-gauge-resistance', 'ohmPerKft', { gauge })).toBeCloseTo(
        ohmPerKft,
        9,
      );
    }
    expect(evaluateFormula('stranded-gauge-resistance', { gauge: 13 })).toMatchObject({
      ok: false,
      field: 'gauge',
    });
  });
  it('agree within 5 % between the code’s table and copper of the gauge’s area', () => {
    for (const [gauge] of stranded) {
      const areaMm2 = valueOf('wire-gauge-size', 'areaMm2', { gauge });
      const plain = valueOf('conductor-resistance', 'resistanceOhm', {
        areaMm2,
        lengthM: 1000,
        temperatureC: 75,
      });
      const table = valueOf('stranded-gauge-resistance', 'ohmPerKm', { gauge });
      expect(Math.abs(table / plain - 1)).toBeLessThan(0.05);
    }
  });
  // 2.5 mm² class 5, 3 m one way, 15 A: 0.7182 V at 20 °C, 0.8593 V at 70 °C [R].
  it('lose 0.7182 V cold and 0.8593 V hot', () => {
    const wire = { areaMm2: 2.5, oneWayM: 3, currentA: 15 };
    expect(valueOf('voltage-drop', 'dropV', wire)).toBeCloseTo(0.7182, 4);
    expect(valueOf('voltage-drop', 'dropV', { ...wire, temperatureC: 70 })).toBeCloseTo(0.8593, 4);
    expect(valueOf('voltage-drop', 'dropV', { ...wire, currentA: 0 })).toBe(0);
  });
});

describe('ampacity', () => {
  // 33 CFR 183.425, table 5 [P], by insulation 60/75/80/90/105 °C.
  const table: readonly (readonly [string, readonly number[]])[] = [
    ['18', [10, 10, 15, 20, 20]],
    ['16', [15, 15, 20, 25, 25]],
    ['14', [20, 20, 25, 30, 35]],
    ['12', [25, 25, 35, 40, 45]],
    ['10', [40, 40, 50, 55, 60]],
    ['8', [55, 65, 70, 70, 80]],
    ['6', [80, 95, 100, 100, 120]],
    ['4', [105, 125, 130, 135, 160]],
    ['3', [120, 145, 150, 155, 180]],
    ['2', [140, 170, 175, 180, 210]],
    ['1', [165, 195, 210, 210, 245]],
    ['1/0', [195, 230, 245, 245, 285]],
    ['2/0', [225, 265, 285, 285, 330]],
    ['3/0', [260, 310, 330, 330, 385]],
    ['4/0', [300, 360, 385, 385, 445]],
  ];
  it('is that of the regulation for each gauge and insulation', () => {
    for (const [gauge, amperes] of table) {
      for (const [index, insulation] of ['60', '75', '80', '90', '105'].entries()) {
        expect(valueOf('ampacity', 'ampacityA', { gauge, insulation })).toBe(amperes[index]);
      }
    }
  });
  it('falls to 0.70, 0.60 and 0.50 in bundles of 3, 4 to 6 and 7 to 24', () => {
    const expected = [
      [1, 45],
      [2, 45],
      [3, 31.5],
      [4, 27],
      [6, 27],
      [7, 22.5],
      [24, 22.5],
    ] as const;
    for (const [bundled, amperes] of expected)
      expect(bundledAmpacity(bundled)).toBeCloseTo(amperes, 9);
  });
  // Correction factors for 50 °C engine spaces: 0.58 and 0.75 and 0.82 and 0.85 [P], 0.78 [M].
  it('comes within 0.01 of the regulation’s factors for 50 °C engine spaces', () => {
    const factors = [
      ['60', 0.58],
      ['75', 0.75],
      ['80', 0.78],
      ['90', 0.82],
      ['105', 0.85],
    ] as const;
    for (const [insulation, factor] of factors) {
      const cool = valueOf('ampacity', 'ampacityA', { gauge: '8', insulation });
      const warm = valueOf('ampacity', 'ampacityA', { gauge: '8', insulation, ambientC: 50 });
      expect(Math.abs(warm / cool - factor)).toBeLessThan(0.01);
    }
  });
  it('of a metric area is that of the thickest gauge with no more copper', () => {
    // 2.5 mm² lies between 14 AWG (2.08 mm²) and 12 AWG (3.31 mm²); 6 mm² between 10 (5.26) and 8 (8.37).
    expect(valueOf('ampacity-by-area', 'tableGauge', { areaMm2: 2.5 })).toBe(14);
    expect(valueOf('ampacity-by-area', 'tableGauge', { areaMm2: 6 })).toBe(10);
  });
  it('does not exist in air as hot as the insulation bears', () => {
    expect(
      evaluateFormula('ampacity', { gauge: '8', insulation: '60', ambientC: 60 }),
    ).toMatchObject({
      ok: false,
      field: 'ambientC',
    });
  });
});

describe('faults and fuses', () => {
  // IEC 60364-5-54 [P], figures [R].
  it('give k 115.00 for PVC and 143.08 for XLPE', () => {
    expect(valueOf('withstand-factor', 'factor', { initialC: 70, finalC: 160 })).toBeCloseTo(
      115,
      2,
    );
    expect(valueOf('withstand-factor', 'factor', { initialC: 90, finalC: 250 })).toBeCloseTo(
      143.08,
      2,
    );
  });
  it('need 6.875 mm² for 2500 A over 0.1 s and 1.944 mm² for 500 A over 0.2 s', () => {
    expect(valueOf('fault-withstand', 'areaMm2', { currentA: 2500, timeS: 0.1 })).toBeCloseTo(
      6.875,
      3,
    );
    expect(valueOf('fault-withstand', 'areaMm2', { currentA: 500, timeS: 0.2 })).toBeCloseTo(
      1.944,
      3,
    );
  });
  // Onderdonk: 16 AWG (2581 cmil), 5 s, 25 °C -> 168.86 A [R]; 234 - Ta in the divisor would give another value.
  it('melt 2581 cmil with 168.86 A over 5 s, and the sign of the air temperature matters', () => {
    const currentA = valueOf('fusing-current', 'currentA', {
      areaMm2: '2581 cmil',
      timeS: 5,
      ambientC: 25,
    });
    expect(currentA).toBeCloseTo(168.86, 2);
    const wrongSign = 2581 * Math.sqrt(Math.log10((1083 - 25) / (234 - 25) + 1) / (33 * 5));
    expect(Math.abs(currentA - wrongSign)).toBeGreaterThan(5);
  });
  // ISO 8820-3 gates [M].
  const gates: readonly (readonly [number, number, number])[] = [
    [1.35, 0.75, 600],
    [1.6, 0.25, 50],
    [2, 0.15, 5],
    [3.5, 0.04, 0.5],
    [6, 0.02, 0.1],
  ];
  it('open blade fuses within the remembered gates', () => {
    for (const [times, earliestS, latestS] of gates) {
      const opening = evaluate('blade-fuse-time', { ratingA: 20, currentA: 20 * times });
      expect(opening['opening']).toBe('opens');
      expect(opening['earliestS']).toBeCloseTo(earliestS, 9);
      expect(opening['latestS']).toBeCloseTo(latestS, 9);
    }
  });
  it('let a blade fuse hold 1.1 times its rating for 100 h and leave 1.2 times undecided', () => {
    expect(evaluate('blade-fuse-time', { ratingA: 20, currentA: 22 })).toMatchObject({
      opening: 'holds',
      earliestS: 360_000,
      latestS: null,
    });
    expect(evaluate('blade-fuse-time', { ratingA: 20, currentA: 24 })).toMatchObject({
      opening: 'between',
      latestS: null,
    });
  });
  it('never promise a slower opening for a larger current', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let times = 1.35; times < 60; times *= 1.07) {
      const latestS = valueOf('blade-fuse-time', 'latestS', { ratingA: 10, currentA: 10 * times });
      expect(latestS).toBeLessThanOrEqual(before);
      before = latestS;
    }
  });
  // [P] makers' guides: 75 % of the rating at 25 °C.
  it('load a blade fuse with three quarters of its rating', () => {
    expect(evaluate('fuse-continuous', { ratingA: 40, loadA: 22.5 })).toEqual({
      continuousA: 30,
      leastRatingA: 30,
    });
  });
  // R = V/I, t = 5 R C, E = C V²/2 for 24 V, 1000 µF, 2 A by hand: 12 Ω, 60 ms, 0.288 J.
  it('precharge 1000 µF at 24 V through 12 Ω in 60 ms', () => {
    const values = evaluate('precharge', { busVoltageV: 24, capacitanceUf: 1000, inrushA: 2 });
    expect(values['resistanceOhm']).toBe(12);
    expect(values['timeS']).toBeCloseTo(0.06, 12);
    expect(values['energyJ']).toBeCloseTo(0.288, 12);
  });
});
