import { expect, test } from 'vitest';
import { moved, zoomed } from '#renderer/charts/chart-series.ts';
import { thinSeries, valueAtX } from '#renderer/charts/thin-series.ts';

const length = 30_000;
const x = Float64Array.from({ length }, (_, index) => index);
const y = Float64Array.from({ length }, (_, index) => Math.sin(index / 50));

test('a long line is thinned and keeps its lowest and highest point', () => {
  const spiked = Float64Array.from(y);
  spiked[12_345] = 9;
  spiked[23_456] = -9;
  const points = thinSeries(x, spiked, 0, length - 1, 500);
  expect(points.length).toBeLessThanOrEqual(2010);
  expect(points).toContainEqual({ x: 12_345, y: 9 });
  expect(points).toContainEqual({ x: 23_456, y: -9 });
});

test('a thinned line still rises in time', () => {
  const points = thinSeries(x, y, 0, length - 1, 300);
  expect(
    points.every((point, index) => index === 0 || point.x >= (points[index - 1]?.x ?? 0)),
  ).toBe(true);
});

test('a short stretch is drawn with every point and one neighbour on each side', () => {
  const points = thinSeries(x, y, 100, 110, 500);
  expect(points[0]?.x).toBe(99);
  expect(points.at(-1)?.x).toBe(111);
  expect(points).toHaveLength(13);
});

test('an empty line gives no points', () => {
  expect(thinSeries(new Float64Array(), new Float64Array(), 0, 1, 10)).toEqual([]);
});

test('a value between two points lies on the line between them', () => {
  const times = Float64Array.of(0, 10, 20);
  const volts = Float64Array.of(24, 22, 12);
  expect(valueAtX(times, volts, 5)).toBeCloseTo(23, 12);
  expect(valueAtX(times, volts, 20)).toBe(12);
  expect(valueAtX(times, volts, 21)).toBeNull();
  expect(valueAtX(times, volts, -1)).toBeNull();
});

test('zooming in and out about a minute keeps that minute in its place', () => {
  const whole = { from: 0, to: 100 };
  const near = zoomed(whole, whole, 0.5, 20);
  expect(near).toEqual({ from: 10, to: 60 });
  expect((20 - near.from) / (near.to - near.from)).toBeCloseTo(0.2, 12);
});

test('a window never leaves the whole', () => {
  const whole = { from: 0, to: 100 };
  expect(moved({ from: 80, to: 100 }, whole, 1)).toEqual({ from: 80, to: 100 });
  expect(moved({ from: 10, to: 30 }, whole, -1)).toEqual({ from: 0, to: 20 });
  expect(zoomed({ from: 40, to: 60 }, whole, 100)).toEqual(whole);
});
