import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitBlock, type LoggedRun } from '#core/bench/index.ts';
import { fittedSchema } from '#core/plan/schema/fitted.ts';
import { readAnyLog } from '../support/read-any-log.ts';
import { newBlock } from '#core/plan/defaults.ts';

const cell = fc.oneof(
  fc.double({ noDefaultInfinity: true, noNaN: true, min: -1e4, max: 1e4 }).map(String),
  fc.constantFrom(
    '',
    'NaN',
    '-',
    '12,5',
    '1:02:03',
    '2024-02-30 10:00',
    'x',
    '"a,b"',
    '"',
    '1e400',
    ' 7 ',
  ),
);
const table = fc
  .tuple(
    fc.constantFrom(
      'time_s,voltage_V,current_A',
      'run;Zeit;U;I',
      '',
      '# x',
      't\tcell1_V\tcell2_V\tA',
      'a|b|c',
    ),
    fc.constantFrom(',', ';', '\t', '|', ' '),
    fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { maxLength: 40 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([header, delimiter, rows, end]) =>
    [header, ...rows.map((row) => row.join(delimiter))].join(end),
  );

describe('any text as a log', () => {
  test('is refused or read into finite, rising rows, each row kept or counted', () => {
    fc.assert(
      fc.property(fc.oneof(table, fc.string({ maxLength: 400 })), (text) => {
        for (const run of readAnyLog(text, 17)?.runs ?? []) {
          for (const column of [
            run.timeS,
            run.currentA,
            run.voltageV ?? [],
            ...run.unitVoltageV,
            run.temperatureC ?? [],
          ]) {
            expect([...column].every(Number.isFinite)).toBe(true);
          }
          expect(run.timeS.every((time, row) => row === 0 || time >= run.timeS[row - 1]!)).toBe(
            true,
          );
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('any run of finite numbers', () => {
  test('is refused by name or fitted to values the plan accepts', () => {
    // Whole steps of a meter: doubles would crowd at the ends of their range and deliver no charge.
    const steps = (from: number, to: number, step: number) =>
      fc.integer({ min: from / step, max: to / step }).map((count) => count * step);
    const reading = fc.record({
      stepS: steps(0, 900, 1),
      currentA: steps(-1, 8, 0.25),
      voltageV: steps(10, 13.5, 0.05),
    });
    let fits = 0;
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 60, size: 'max' }), (readings) => {
        let clock = 0;
        const run: LoggedRun = {
          name: 'any',
          timeS: Float64Array.from(readings, ({ stepS }) => (clock += stepS)),
          currentA: Float64Array.from(readings, ({ currentA }) => currentA),
          voltageV: Float64Array.from(readings, ({ voltageV }) => voltageV),
          unitVoltageV: [],
          temperatureC: null,
          speedKmh: null,
          sortedRows: 0,
          repeatedRows: 0,
          gaps: { count: 0, longestS: 0 },
          turned: false,
        };
        const outcome = fitBlock({
          block: newBlock(),
          layout: { kind: 'pack', count: 1, cells: 6, strings: 1, linkOhm: 0 },
          runs: [run],
          temperatureC: 20,
          ageYears: 0,
          cyclesDone: 0,
          source: 'fuzz',
        });
        if (!outcome.ok) {
          expect(outcome.problem.length).toBeGreaterThan(0);
          return;
        }
        fits += 1;
        const checked = fittedSchema.safeParse(outcome.fit.fitted);
        expect(checked.success, checked.error?.message ?? '').toBe(true);
        expect(Number.isFinite(outcome.fit.rmsMv)).toBe(true);
        for (const { value, low, high } of outcome.fit.values) {
          expect([value, low ?? 0, high ?? 0].every(Number.isFinite)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
    expect(fits).toBeGreaterThan(5);
  });
});
