import { describe, expect, it } from 'vitest';
import { parseNumber, parseQuantity, unitTable, unitTyped } from '#core/units/index.ts';

describe('parseQuantity', () => {
  // Right-hand values by definition: 1 lb = 0.45359237 kg, 1 in = 25.4 mm, 1 mi = 1609.344 m; AWG by ASTM B258.
  const good: readonly (readonly [string, string, number])[] = [
    ['8 mph', 'm/s', (8 * 1609.344) / 3600],
    ['8 mph', 'km/h', 8 * 1.609344],
    ['5 lb', 'kg', 2.26796185],
    ['1/0 AWG', 'mm²', 53.4752],
    ['12 AWG', 'mm²', 3.30877],
    ['AWG 16', 'mm²', 1.3087],
    ['10 AWG', 'mm', 2.58819],
    ['12 in', 'mm', 304.8],
    ['12"', 'm', 0.3048],
    ['70 °F', '°C', 21.1111111],
    ['70F', '°C', 21.1111111],
    ['-40 F', '°C', -40],
    ['20 C', '°C', 20],
    ['250 mA', 'A', 0.25],
    ['0.3 A', 'mA', 300],
    ['1.5 kW', 'W', 1500],
    ['1 hp', 'W', 745.69987],
    ['12,5 V', 'V', 12.5],
    ['12.5', 'V', 12.5],
    ['12,5', 'V', 12.5],
    ['.5 V', 'V', 0.5],
    ['−3 V', 'V', -3],
    ['20Ah', 'A·h', 20],
    ['7200 mAh', 'A·h', 7.2],
    ['5.5 A·min', 'A·h', 5.5 / 60],
    ['0.122/min', '1/h', 7.32],
    ['15 mohm', 'Ω', 0.015],
    ['15 mΩ', 'Ω', 0.015],
    ['2 MΩ', 'Ω', 2e6],
    ['1 h 30 min', 'min', 90],
    ['5 ft 6 in', 'm', 1.6764],
    ['1/2 in', 'mm', 12.7],
    ['1 1/2 in', 'mm', 38.1],
    ['10 %', '1', 0.1],
    ['2581 cmil', 'mm²', 1.30779],
    ['1.234.567 g', 'kg', 1234.567],
    ["1'000 W", 'W', 1000],
    ['1,234.5 W', 'W', 1234.5],
    ['1.234,5 W', 'W', 1234.5],
    ['1e3 W', 'W', 1000],
    ['8', 'mA/Ah', 8],
  ];
  for (const [text, symbol, value] of good) {
    it(`reads “${text}” into ${symbol}`, () => {
      const reading = parseQuantity(text, symbol);
      expect(reading.ok, JSON.stringify(reading)).toBe(true);
      if (reading.ok)
        expect(Math.abs(reading.value - value)).toBeLessThan(2e-5 * Math.max(1, Math.abs(value)));
    });
  }

  it('asks back when a comma may mark decimals or thousands', () => {
    expect(parseQuantity('1,234 V', 'mV')).toMatchObject({
      ok: false,
      kind: 'question',
      readings: [
        { label: '1.234 V', value: 1234 },
        { label: '1234 V', value: 1_234_000 },
      ],
    });
  });
  it('does not ask where the user’s own decimal mark settles it', () => {
    expect(parseNumber('1,234', ',')).toEqual({ kind: 'number', value: 1.234 });
    expect(parseNumber('1.234', '.')).toEqual({ kind: 'number', value: 1.234 });
    expect(parseNumber('1.234', ',').kind).toBe('ambiguous');
    expect(parseNumber('0,234')).toEqual({ kind: 'number', value: 0.234 });
    expect(parseNumber('1234,567')).toEqual({ kind: 'number', value: 1234.567 });
  });
  const bad = [
    '',
    'NaN',
    'Infinity',
    'volts',
    '12 furlongs',
    '12 kg',
    '--3',
    '1..2',
    '1,2,3',
    '12 34',
    '1/0',
    '1e999',
  ];
  for (const text of bad) {
    it(`refuses “${text}” for a voltage with a remedy that names the unit`, () => {
      const reading = parseQuantity(text, 'V');
      expect(reading).toMatchObject({ ok: false, kind: 'mistake' });
      if (!reading.ok && reading.kind === 'mistake') expect(reading.remedy).toContain('V');
    });
  }
  it('says which kind of quantity a misplaced unit measures', () => {
    expect(parseQuantity('12 kg', 'V')).toMatchObject({
      problem: '“kg” is a unit of mass, which does not fit here.',
    });
  });
  it('does not take a bare number in a field of mm² for a gauge', () => {
    expect(parseQuantity('12', 'mm²')).toMatchObject({ ok: true, value: 12 });
  });
  it('takes no other unit where the wanted one has no conversions', () => {
    expect(parseQuantity('8 V', 'mA/Ah')).toMatchObject({ ok: false, kind: 'mistake' });
    expect(parseQuantity('8 mA/Ah', 'mA/Ah')).toMatchObject({ ok: true, value: 8 });
  });
  it('refuses a gauge thinner than 40', () => {
    expect(parseQuantity('77 AWG', 'mm²')).toMatchObject({ ok: false, kind: 'mistake' });
  });
});

describe('unit table', () => {
  it('lists each symbol once', () => {
    const symbols = unitTable.map((unit) => unit.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
  });
  it('finds every unit by its own symbol and kind, and each spelling within its kind', () => {
    for (const unit of unitTable) {
      expect(unitTyped(unit.symbol, unit.kind)?.symbol).toBe(unit.symbol);
      for (const spelling of unit.spellings)
        expect(unitTyped(spelling, unit.kind)?.symbol).toBe(unit.symbol);
    }
  });
});
