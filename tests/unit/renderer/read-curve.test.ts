import { expect, test } from 'vitest';
import { readCurve } from '#renderer/places/packs/read-curve.ts';

test('reads columns parted by blanks, tabs or semicolons, with point or comma', () => {
  expect(readCurve('0 12.9\n300\t12,4\n\n600; 11.9\n')).toEqual({
    kind: 'points',
    points: [
      { timeMin: 0, voltageV: 12.9 },
      { timeMin: 300, voltageV: 12.4 },
      { timeMin: 600, voltageV: 11.9 },
    ],
  });
});

test('puts points in order of time', () => {
  const read = readCurve('60 12\n0 13\n30 12.5');
  expect(read.kind === 'points' && read.points.map(({ timeMin }) => timeMin)).toEqual([0, 30, 60]);
});

test('names the line that is no point', () => {
  expect(readCurve('0 12.9\nminutes volts\n60 12')).toEqual({ kind: 'wrong', line: 2 });
  expect(readCurve('0 12.9\n30 12.6\n60')).toEqual({ kind: 'wrong', line: 3 });
  expect(readCurve('0 12.9\n30 -4\n60 12')).toEqual({ kind: 'wrong', line: 2 });
});

test('refuses too few and too many points', () => {
  expect(readCurve('0 12.9\n30 12.6')).toEqual({ kind: 'few' });
  const many = Array.from({ length: 401 }, (_, at) => `${at} 12`).join('\n');
  expect(readCurve(many)).toEqual({ kind: 'many' });
});
