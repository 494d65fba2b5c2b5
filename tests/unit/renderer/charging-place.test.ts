import { expect, test } from 'vitest';
import { newWeek } from '#core/week/index.ts';
import { clockOf, readClock } from '#renderer/places/charging/read-clock.ts';
import { nextSeasonStart } from '#renderer/places/charging/season-start.ts';
import { dayRows } from '#renderer/places/charging/week-bars.ts';

test('times are read as people write them, and nothing else is', () => {
  const cases: readonly (readonly [string, number | null])[] = [
    ['8', 480],
    ['8:30', 510],
    ['08.30', 510],
    ['0830', 510],
    ['20:15', 1215],
    ['8:30 pm', 1230],
    ['12 am', 0],
    ['12 pm', 720],
    ['9 Uhr', 540],
    ['24:00', null],
    ['8:60', null],
    ['13 pm', null],
    ['late', null],
    ['', null],
  ];
  for (const [text, minutes] of cases) expect(readClock(text), text).toBe(minutes);
  for (let minutes = 0; minutes < 1440; minutes += 7)
    expect(readClock(clockOf(minutes))).toBe(minutes);
});

test('a window over midnight stands in the rows of both days, on Sunday night in Monday’s', () => {
  const week = newWeek({ headlineOuting: 'x' });
  const rows = dayRows(
    { ...week, windows: [{ ...week.windows[0]!, days: ['sun'], fromMin: 1320, toMin: 360 }] },
    [],
    () => 60,
  );
  expect(rows[6]!.windows.map(({ fromMin, toMin }) => [fromMin, toMin])).toEqual([[1320, 1440]]);
  expect(rows[0]!.windows.map(({ fromMin, toMin }) => [fromMin, toMin])).toEqual([[0, 360]]);
  expect(rows[5]!.uses).toHaveLength(1);
  expect(rows[5]!.uses[0]!.toMin).toBe(15 * 60);
});

test('a season starts this month today, else on the first of its next month', () => {
  expect(nextSeasonStart(6, { year: 2026, month: 3, day: 9 })).toBe('2026-06-01');
  expect(nextSeasonStart(6, { year: 2026, month: 6, day: 9 })).toBe('2026-06-09');
  expect(nextSeasonStart(6, { year: 2026, month: 11, day: 9 })).toBe('2027-06-01');
});
