import { expect, test } from 'vitest';
import { inRange, rangeOf, spinStep } from '#renderer/controls/quantity-range.ts';
import { readQuantity } from '#renderer/controls/read-quantity.ts';
import { bestOf } from '#renderer/state/compare-rows.ts';
import { seriesLook } from '#renderer/styles/series.ts';
import { formatDifference, formatMinutes } from '#renderer/text/format.ts';
import { shownUnit } from '#renderer/text/shown-unit.ts';

test('a bare number is in the shown unit and kept in the stored one', () => {
  expect(readQuantity('12', 'Ω', 'mΩ', '.')).toEqual({ kind: 'value', value: 0.012 });
  expect(readQuantity('5', 'kg', 'lb', '.')).toEqual({ kind: 'value', value: 2.26796185 });
});

test('a typed unit of the same kind is converted', () => {
  expect(readQuantity('8 mph', 'km/h', 'km/h', '.')).toEqual({ kind: 'value', value: 12.874752 });
});

test('a comma is a decimal mark where only that makes sense', () => {
  expect(readQuantity('2,5', 'V', 'V', '.')).toEqual({ kind: 'value', value: 2.5 });
});

test('a comma before three digits is asked about in English and not in German', () => {
  expect(readQuantity('1,250', 'A', 'A', '.').kind).toBe('question');
  expect(readQuantity('1,250', 'A', 'A', ',')).toEqual({ kind: 'value', value: 1.25 });
});

test('a unit of another kind is a mistake', () => {
  expect(readQuantity('5 kg', 'V', 'V', '.').kind).toBe('mistake');
});

test('the range of a field comes from the schema', () => {
  const range = rangeOf('options.0.pack.block.capacityAh');
  expect(inRange(0, range)).toBe(false);
  expect(inRange(0.1, range)).toBe(true);
  expect(inRange(2001, range)).toBe(false);
});

test.each([
  [18, false, 1],
  [2.5, false, 0.1],
  [150, false, 10],
  [0, false, 0.1],
  [2, true, 1],
])('a spin key moves %s by its second digit (whole: %s)', (value, integer, step) => {
  expect(spinStep(value, integer)).toBeCloseTo(step, 12);
});

test('resistances of leads and blocks are shown in milliohms, loads in ohms', () => {
  expect(shownUnit('machine.harnessResistanceOhm', 'Ω', 'metric')).toBe('mΩ');
  expect(shownUnit('machine.accessories.0.load.resistanceOhm', 'Ω', 'metric')).toBe('Ω');
  expect(shownUnit('options.0.pack.block.massKg', 'kg', 'us')).toBe('lb');
});

test('the best of a row is marked, and nothing where all are alike', () => {
  expect([...bestOf([63, 121, 95], 'more')]).toEqual([1]);
  expect([...bestOf([63, null, 95], 'less')]).toEqual([0]);
  expect([...bestOf([5, 5], 'more')]).toEqual([]);
  expect([...bestOf([5, null], 'more')]).toEqual([]);
});

test('twelve options never share colour, dash and marker', () => {
  const looks = Array.from({ length: 12 }, (_, index) => JSON.stringify(seriesLook(index)));
  expect(new Set(looks).size).toBe(12);
});

test('durations and differences read like a person writes them', () => {
  expect(formatMinutes(64.2, 'en').replaceAll('\u202F', ' ')).toBe('1 h 04 min');
  expect(formatMinutes(45, 'en').replaceAll('\u202F', ' ')).toBe('45 min');
  expect(formatDifference(-22.3, 'en')).toBe('−22');
  expect(formatDifference(0, 'en')).toBe('±0');
});
