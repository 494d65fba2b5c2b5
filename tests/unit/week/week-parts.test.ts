import { describe, expect, test } from 'vitest';
import { ambientC, monthOfWeek } from '#core/week/ambient.ts';
import {
  civilDate,
  dayNumber,
  isoMinute,
  mondayOf,
  parseCivilDate,
} from '#core/week/civil-date.ts';
import { clockText, minutesInside, stretchesOf } from '#core/week/clock.ts';
import { cyclesAtDepth, expectedSeasons } from '#core/week/cycle-wear.ts';
import { plugStretches } from '#core/week/plug-stretches.ts';

describe('the calendar of days', () => {
  test('agrees with the platform over two hundred years', () => {
    for (let number = -20000; number < 60000; number += 37) {
      const date = new Date(number * 86_400_000);
      const own = civilDate(number);
      expect([own.year, own.month, own.day]).toEqual([
        date.getUTCFullYear(),
        date.getUTCMonth() + 1,
        date.getUTCDate(),
      ]);
      expect(dayNumber(own)).toBe(number);
      expect(new Date(mondayOf(number) * 86_400_000).getUTCDay()).toBe(1);
    }
  });

  test('refuses days that do not exist', () => {
    for (const text of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '26-01-01',
      'tomorrow',
    ])
      expect(parseCivilDate(text)).toBeNull();
    expect(parseCivilDate('2028-02-29')).toEqual({ year: 2028, month: 2, day: 29 });
  });

  test('carries minutes past midnight into the next day', () => {
    expect(isoMinute(dayNumber({ year: 2026, month: 12, day: 31 }), 1445)).toBe(
      '2027-01-01T00:05:00Z',
    );
  });
});

describe('the clock', () => {
  test('lets a window end the next day', () => {
    expect(stretchesOf(['sun'], 22 * 60, 6 * 60)).toEqual([
      { startMin: 6 * 1440 + 1320, endMin: 7 * 1440 + 360 },
    ]);
  });

  test('counts the minutes of a stretch inside a nightly time', () => {
    const night = (startMin: number, endMin: number) =>
      minutesInside({ startMin, endMin }, 22 * 60, 6 * 60);
    expect(night(20 * 60, 32 * 60)).toBe(480);
    expect(night(0, 60)).toBe(60);
    expect(night(8 * 60, 20 * 60)).toBe(0);
    expect(night(0, 3 * 1440)).toBe(3 * 480);
  });

  test('writes minutes as time of day', () => {
    expect(clockText(65)).toBe('1:05');
    expect(clockText(1440 + 1339)).toBe('22:19');
  });
});

test('the warmest month is the warmest and the month six later the coldest', () => {
  const climate = { warmestMonthC: 20, coldestMonthC: 0, warmestMonth: 7 };
  expect(ambientC(climate, 6.5)).toBeCloseTo(20, 9);
  expect(ambientC(climate, 0.5)).toBeCloseTo(0, 9);
  expect(monthOfWeek(4, 0)).toBeGreaterThan(3);
  expect(monthOfWeek(12, 10)).toBeLessThan(12);
});

test('AGM cycles at depth follow the table 200, 500, 1200 at 100, 50, 30 % [from memory] and go on below', () => {
  expect(cyclesAtDepth('agm', 1)).toBeCloseTo(200, 6);
  expect(cyclesAtDepth('agm', 0.5)).toBeCloseTo(500, 6);
  expect(cyclesAtDepth('agm', 0.3)).toBeCloseTo(1200, 6);
  expect(cyclesAtDepth('agm', 0.1)).toBeGreaterThan(5000);
  expect(cyclesAtDepth('lfp', 0.5)).toBe(2 * cyclesAtDepth('lfp', 1));
});

test('a pack that never cycles lasts its calendar life, and a warm one half as long each 10 K [P]', () => {
  expect(expectedSeasons('agm', 0, 20)).toBeCloseTo(2 * expectedSeasons('agm', 0, 30), 6);
  expect(expectedSeasons('agm', 1, 20)).toBeLessThan(1);
});

test('routines pick their windows: all, the last of each day, weekends, own days', () => {
  const windows = [
    {
      id: 'noon',
      name: 'Noon',
      days: ['mon', 'sat'] as ('mon' | 'sat')[],
      fromMin: 720,
      toMin: 780,
      attended: true,
    },
    {
      id: 'night',
      name: 'Night',
      days: ['mon', 'sat'] as ('mon' | 'sat')[],
      fromMin: 1320,
      toMin: 360,
      attended: false,
    },
  ];
  const ids = (trigger: 'after-use' | 'nightly' | 'weekend' | 'own', ownDays: 'mon'[] = []) =>
    plugStretches(windows, { trigger, ownDays, untilPercent: null }).map(
      (stretch) => `${stretch.windowId} ${Math.floor(stretch.startMin / 1440)}`,
    );
  expect(ids('after-use')).toEqual(['noon 0', 'night 0', 'noon 5', 'night 5']);
  expect(ids('nightly')).toEqual(['night 0', 'night 5']);
  expect(ids('weekend')).toEqual(['noon 5', 'night 5']);
  expect(ids('own', ['mon'])).toEqual(['noon 0', 'night 0']);
});

test('windows that overlap are counted once', () => {
  const windows = [
    { id: 'a', name: '', days: ['mon'] as 'mon'[], fromMin: 600, toMin: 900, attended: true },
    { id: 'b', name: '', days: ['mon'] as 'mon'[], fromMin: 700, toMin: 1000, attended: true },
  ];
  const stretches = plugStretches(windows, {
    trigger: 'after-use',
    ownDays: [],
    untilPercent: null,
  });
  expect(stretches.map(({ startMin, endMin }) => [startMin, endMin])).toEqual([
    [600, 900],
    [900, 1000],
  ]);
});
