import { describe, expect, it } from 'vitest';
import {
  displaySymbol,
  formatDuration,
  formatFixed,
  formatGauge,
  formatQuantity,
  formatSignificant,
  fromDisplay,
  gaugeAreaMm2,
  glossary,
  parseGauge,
  toDisplay,
  unitOf,
} from '#core/units/index.ts';

describe('formatDuration', () => {
  const cases: readonly (readonly [number, string])[] = [
    [72, '1 h 12 min'],
    [60, '1 h'],
    [59.6, '1 h'],
    [45, '45 min'],
    [3.3333, '3 min 20 s'],
    [0.2, '12 s'],
    [0.05, '3 s'],
    [0, '0 s'],
    [48 * 60 + 180, '2 d 3 h'],
    [-72, '−1 h 12 min'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ];
  for (const [minutes, text] of cases) {
    it(`writes ${minutes} minutes as “${text}”`, () =>
      expect(formatDuration(minutes, 'en')).toBe(text));
  }
});

describe('formatSignificant', () => {
  it('keeps the asked digits and drops trailing zeros', () => {
    expect(formatSignificant(0.012345, 3, 'en')).toBe('0.0123');
    expect(formatSignificant(12.5, 4, 'en')).toBe('12.5');
    expect(formatSignificant(12.3456, 4, 'de')).toBe('12,35');
  });
  it('never rounds whole digits away', () => {
    expect(formatSignificant(12345.6, 3, 'en')).toBe('12,346');
  });
  it('writes no minus before zero and no NaN', () => {
    expect(formatSignificant(-0, 3, 'en')).toBe('0');
    expect(formatFixed(-0.001, 2, 'en')).toBe('0.00');
    expect(formatSignificant(Number.NaN, 3, 'en')).toBe('–');
  });
});

describe('display units', () => {
  it('shows lengths, speeds, masses and temperatures in the chosen system and leaves electrical units alone', () => {
    const us = { system: 'us', locale: 'en' } as const;
    expect(formatQuantity(21.1111, '°C', us)).toBe('70 °F');
    expect(formatQuantity(60, 'kg', us)).toBe('132 lb');
    expect(formatQuantity(1.4, 'm/s', us)).toBe('3.13 mph');
    expect(formatQuantity(12.64, 'V', us)).toBe('12.6 V');
    expect(formatQuantity(1.4, 'm/s', { system: 'metric', locale: 'de' })).toBe('5,04 km/h');
    expect(formatQuantity(0.85, '1', us)).toBe('0.85');
  });
  it('gives the stored value back after showing it', () => {
    for (const symbol of ['m/s', 'kg', '°C', 'mm', 'm', 'N·m', 'V', 'mA/Ah']) {
      expect(fromDisplay(toDisplay(17.3, symbol, 'us'), symbol, 'us')).toBeCloseTo(17.3, 12);
      expect(displaySymbol(displaySymbol(symbol, 'us'), 'us')).toBe(displaySymbol(symbol, 'us'));
    }
  });
});

describe('wire gauge', () => {
  // ASTM B258 nominal areas as printed in wire tables: 18 AWG 0.823 mm², 10 AWG 5.26 mm², 4/0 AWG 107.2 mm².
  it('has the areas of the printed wire table', () => {
    expect(gaugeAreaMm2(18)).toBeCloseTo(0.823, 3);
    expect(gaugeAreaMm2(10)).toBeCloseTo(5.26, 2);
    expect(gaugeAreaMm2(-3)).toBeCloseTo(107.2, 1);
  });
  it('reads and writes gauges thicker than 1 with their slash', () => {
    for (const gauge of [-3, -2, -1, 0, 1, 12, 40])
      expect(parseGauge(formatGauge(gauge))).toBe(gauge);
    expect(parseGauge('0000')).toBe(-3);
    expect(parseGauge('#14')).toBe(14);
    expect(parseGauge('5/0')).toBeNull();
    expect(parseGauge('twelve')).toBeNull();
  });
});

describe('glossary', () => {
  it('names each quantity once, and every unit in it is known or a quotient of known ones', () => {
    const names = glossary.map((entry) => entry.name);
    expect(new Set(names).size).toBe(names.length);
    for (const { unit } of glossary)
      expect(unitOf(unit) !== undefined || unit === 'V·s/rad', unit).toBe(true);
  });
  it('states that discharge current is positive', () => {
    expect(glossary.find((entry) => entry.name === 'current')?.sign).toMatch(
      /Positive while discharging/,
    );
  });
});
