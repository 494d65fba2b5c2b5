import { describe, expect, test } from 'vitest';
import { applyMapText, createLogReader, guessMapping, type LogMapping } from '#core/bench/index.ts';
import { parseNumber } from '#core/bench/log/parse-number.ts';
import { parseTime } from '#core/bench/log/parse-time.ts';
import { readRuns } from '../../support/bench-log.ts';

function mappingOf(text: string, nominalVoltageV: number | null = null): LogMapping {
  const guess = guessMapping(text, { nominalVoltageV });
  if (!guess.ok) throw new Error(guess.problem.problem);
  return guess.value.mapping;
}

/** A discharge at 5 A from 12.6 V down, one row a minute. */
const rows = (line: (minute: number, volts: number, amps: number) => string, count = 60) =>
  Array.from({ length: count }, (_, minute) => line(minute, 12.6 - minute * 0.02, 5)).join('\n');

describe('numbers', () => {
  test.each([
    ['12.5', '.', 12.5],
    ['1,234.5', '.', 1234.5],
    ['12,5', ',', 12.5],
    ['1.234,5', ',', 1234.5],
    ['-1e-3', '.', -0.001],
    ['−2,5', ',', -2.5],
    ['3 V', '.', 3],
    ['5.25A', '.', 5.25],
  ] as const)('%s with the decimal mark %s reads as %d', (text, mark, value) => {
    expect(parseNumber(text, mark)).toBeCloseTo(value, 12);
  });
  test.each(['', ' ', '-', 'NaN', 'Infinity', '1e999', '12:30', '3 mV', 'V'])(
    '"%s" is no number',
    (text) => {
      expect(parseNumber(text, '.')).toBeNaN();
    },
  );
});

describe('times', () => {
  test.each([
    ['90', 's', 90],
    ['1.5', 'min', 90],
    ['0.5', 'h', 1800],
    ['1:02:03.5', 'h:m:s', 3723.5],
    ['01:30', 'h:m:s', 5400],
    ['2 03:00:00', 'h:m:s', 183600],
    // Seconds since 1970 counted with the date command of GNU coreutils (date -u -d ... +%s).
    ['2017-03-25 12:00:00', 'iso', 1490443200],
    ['2024-02-29T23:59:59Z', 'iso', 1709251199],
    ['2024-02-29T23:59:59+02:00', 'iso', 1709243999],
    ['31.12.2025 08:30', 'day-first', 1767169800],
    ['12/31/2025 08:30 PM', 'month-first', 1767213000],
  ] as const)('%s as %s is %d s', (text, format, seconds) => {
    expect(parseTime(text, format, '.')).toBeCloseTo(seconds, 6);
  });
  test('a date that does not exist is no time', () => {
    expect(parseTime('2025-02-29', 'iso', '.')).toBeNaN();
    expect(parseTime('31/04/2025', 'day-first', '.')).toBeNaN();
  });
});

describe('guessing the columns', () => {
  test('reads headers with units, in any order, with a column that names the run', () => {
    const text = `run,note,pack_mV,I (mA),elapsed [min],cell_temp_F\n${rows((minute, volts, amps) => `A,x,${volts * 1000},${amps * 1000},${minute},77`)}`;
    const [run] = readRuns(text);
    expect(run!.timeS[2]).toBeCloseTo(120, 9);
    expect(run!.voltageV![0]).toBeCloseTo(12.6, 4);
    expect(run!.currentA[0]).toBeCloseTo(5, 4);
    expect(run!.temperatureC![0]).toBeCloseTo(25, 4);
    expect(mappingOf(text).run).toEqual([0]);
  });
  test('runs named by their current keep their names', () => {
    const text = `run,time_s,voltage_V,current_A\n${['3.0A', '1.0A']
      .flatMap((name) =>
        Array.from({ length: 30 }, (_, row) => `${name},${row * 60},${12.6 - row * 0.02},5`),
      )
      .join('\n')}`;
    expect(readRuns(text).map(({ name }) => name)).toEqual(['3.0A', '1.0A']);
  });
  test('reads semicolons with decimal commas and German headers', () => {
    const text = `Zeit in s;Spannung in V;Strom in A\n${rows((minute, volts, amps) => `${minute * 60};${volts.toFixed(2).replace('.', ',')};-${amps},0`)}`;
    const [run] = readRuns(text);
    expect(run!.voltageV![1]).toBeCloseTo(12.58, 4);
    expect(run!.currentA[1]).toBeCloseTo(5, 9);
    expect(run!.turned).toBe(true);
  });
  test('reads a header of two lines, names above and units below, under lines of remarks', () => {
    const text = `Logger 4711\nmade by hand\nTime,Voltage,Current\ns,mV,mA\n${rows((minute, volts, amps) => `${minute * 60},${volts * 1000},${amps * 1000}`)}`;
    expect(readRuns(text)[0]!.voltageV![0]).toBeCloseTo(12.6, 4);
  });
  test('reads a log without a header by its values, and says so', () => {
    const text = rows(
      (minute, volts, amps) => `${minute * 60}\t${volts.toFixed(3)}\t${amps.toFixed(2)}`,
    );
    const guess = guessMapping(text, { nominalVoltageV: 12 });
    expect(guess.ok && guess.value.mapping).toMatchObject({
      delimiter: '\t',
      headerLines: 0,
      time: { column: 0 },
      voltage: { column: 1 },
      current: { column: 2 },
    });
    expect(guess.ok && guess.value.doubts.length).toBeGreaterThan(2);
  });
  test('finds the volts of single cell groups beside the pack', () => {
    const text = `t_s,I_A,U_V,cell2_V,cell1_V\n${rows((minute, volts, amps) => `${minute},${amps},${volts},3.2,3.1`)}`;
    expect(readRuns(text)[0]!.unitVoltageV.map((unit) => unit[0]!.toFixed(1))).toEqual([
      '3.1',
      '3.2',
    ]);
  });
  test('a table without time is refused with the columns it has', () => {
    const guess = guessMapping('cell,soc,ocv_V\na,0.1,3.2\na,0.2,3.3\n', { nominalVoltageV: null });
    expect(guess.ok).toBe(false);
    if (!guess.ok)
      expect(`${guess.problem.field} ${guess.problem.problem}`).toContain(
        'time no column of time among "cell", "soc", "ocv_V"',
      );
  });
  test('text that is no table is refused', () => {
    expect(guessMapping('hello\nworld\n', { nominalVoltageV: null }).ok).toBe(false);
    expect(guessMapping('', { nominalVoltageV: null }).ok).toBe(false);
  });
});

describe('changing the columns by words', () => {
  const text = `a,b,c,t\n${rows((minute, volts, amps) => `${amps},${volts},${volts * 2},${minute}`)}`;
  const base = mappingOf(`t,V,A\n0,12,1\n1,12,1\n`);
  test('roles, formats, senses and factors are taken', () => {
    const mapped = applyMapText(
      { ...base, columnNames: ['a', 'b', 'c', 't'] },
      'time=t:min,current=A:charge-positive,voltage=2:x0.5,units=b+c',
    );
    expect(mapped.ok && mapped.value).toMatchObject({
      time: { column: 3, format: 'min' },
      current: { column: 0, sense: 'charge-positive' },
      voltage: { column: 1, scale: 0.5 },
      unitVoltages: [{ column: 1 }, { column: 2 }],
    });
    expect(text.length).toBeGreaterThan(0);
  });
  test.each([
    ['colour=a', 'colour'],
    ['time=z', 'no column "z"'],
    ['time=a:weeks', 'no time format'],
    ['nonsense', 'ROLE=COLUMN'],
  ])('%s is refused by name', (words, part) => {
    const mapped = applyMapText({ ...base, columnNames: ['a', 'b', 'c', 't'] }, words);
    expect(
      mapped.ok ? '' : `${mapped.problem.field} ${mapped.problem.problem} ${mapped.problem.remedy}`,
    ).toContain(part);
  });
});

describe('reading', () => {
  const clean = `time_s,voltage_V,current_A\n${rows((minute, volts, amps) => `${minute * 60},${volts.toFixed(3)},${amps}`)}\n`;
  test('the result does not depend on where the text is cut', () => {
    const whole = readRuns(clean, clean.length)[0]!;
    for (const length of [1, 7, 64, 1000])
      expect(readRuns(clean, length)[0]!.voltageV).toEqual(whole.voltageV);
    expect(readRuns(clean.replaceAll('\n', '\r\n'), 13)[0]!.timeS).toEqual(whole.timeS);
  });
  test('every row left out is counted with its reason', () => {
    const text = `${clean}\n# a remark\n3600,11\n3660,,5\n3720,11.1,x\nbad,11,5\ntime_s,voltage_V,current_A\n3540,11.420,5\n`;
    const reader = createLogReader(mappingOf(clean));
    reader.push(text);
    const log = reader.finish();
    expect(Object.fromEntries(log.dropped)).toEqual({
      'blank line': 1,
      comment: 1,
      'too few columns': 1,
      'no volts': 1,
      'no current': 1,
      'no time': 1,
      'repeated header': 1,
      'repeated row': 1,
    });
    expect(log.rowsKept).toBe(60);
  });
  test('unsorted rows are sorted in and counted', () => {
    const lines = clean.trim().split('\n');
    const shuffled = [lines[0], ...lines.slice(31), ...lines.slice(1, 31)].join('\n');
    const [run] = readRuns(shuffled);
    expect(run!.timeS).toEqual(readRuns(clean)[0]!.timeS);
    expect(run!.sortedRows).toBe(30);
  });
  test('a clock that passes midnight runs on', () => {
    const text = `clock,voltage_V,current_A\n${rows((minute, volts, amps) => `${String((23 + Math.floor((minute + 30) / 60)) % 24).padStart(2, '0')}:${String((minute + 30) % 60).padStart(2, '0')}:00,${volts},${amps}`)}`;
    const [run] = readRuns(text);
    expect(run!.timeS.at(-1)! - run!.timeS[0]!).toBe(59 * 60);
    expect(run!.sortedRows).toBe(0);
  });
  test('a time that starts afresh opens another run', () => {
    const body = clean.split('\n').slice(1).join('\n');
    expect(readRuns(clean + body).map((run) => [run.name, run.timeS.length])).toEqual([
      ['log', 60],
      ['log 2', 60],
    ]);
  });
  test('gaps of the logger are counted', () => {
    const [run] = readRuns(
      clean
        .split('\n')
        .filter((_, index) => index < 20 || index > 40)
        .join('\n'),
    );
    expect(run!.gaps).toEqual({ count: 1, longestS: 22 * 60 });
  });
});
