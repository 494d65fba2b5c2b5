import { describe, expect, test } from 'vitest';
import { createLogReader, guessMapping } from '#core/bench/index.ts';

/*
 * One invented discharge, 2 h at 5 A from 25.4 to 22.4 V, written down the way loggers, meters and spreadsheets write.
 * Each must be read without help: 121 rows, 10 A·h, discharge positive, volts falling from 25.4 to 22.4 V.
 */
const count = 121;
const minutes = Array.from({ length: count }, (_, row) => row);
const volts = (row: number): number => 25.4 - (3 * row) / (count - 1);
const lines = (line: (row: number) => string, end = '\n'): string => minutes.map(line).join(end);
const comma = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');
const two = (value: number): string => String(value).padStart(2, '0');
const clock = (row: number): string => `${two(Math.floor(row / 60))}:${two(row % 60)}:00`;

const layouts: Readonly<Record<string, string>> = {
  'commas with plain heads': `time_s,voltage_V,current_A\n${lines((row) => `${row * 60},${volts(row)},5`)}`,
  'semicolons and decimal commas': `Zeit [s];Spannung [V];Strom [A]\n${lines((row) => `${row * 60};${comma(volts(row), 3)};5,0`)}`,
  'tabs and decimal commas': `Zeit (min)\tU (V)\tI (A)\n${lines((row) => `${row}\t${comma(volts(row), 3)}\t5,00`)}`,
  'several blanks between the columns': `time  volts  amps\n${lines((row) => `${row * 60}   ${volts(row).toFixed(3)}  5.0`)}`,
  'bars between the columns': `time s|pack V|pack A\n${lines((row) => `${row * 60}|${volts(row)}|5`)}`,
  'a byte-order mark and carriage returns': `\uFEFFTime (s),Voltage (V),Current (A)\r\n${lines((row) => `${row * 60},${volts(row)},5`, '\r\n')}\r\n`,
  'old line ends': `Time (s),Voltage (V),Current (A)\r${lines((row) => `${row * 60},${volts(row)},5`, '\r')}`,
  'quoted cells': `"Time (s)","Voltage (V)","Current (A)"\n${lines((row) => `"${row * 60}","${volts(row)}","5"`)}`,
  'millivolts and milliamperes': `t_ms,U_mV,I_mA\n${lines((row) => `${row * 60000},${(volts(row) * 1000).toFixed(0)},5000`)}`,
  'hours as time': `Elapsed (h),Volts,Amps\n${lines((row) => `${row / 60},${volts(row)},5`)}`,
  'minutes as time, current first': `Current[A],Voltage[V],Time[min]\n${lines((row) => `5,${volts(row)},${row}`)}`,
  'a clock': `Time,Voltage,Current\n${lines((row) => `${clock(row)},${volts(row)},5`)}`,
  'a clock that passes midnight': `Time,Voltage,Current\n${lines((row) => `${clock((row + 1380) % 1440)},${volts(row)},5`)}`,
  'a date and time': `Timestamp,Voltage (V),Current (A)\n${lines((row) => `2025-06-01 ${clock(row)},${volts(row)},5`)}`,
  'a date with T and Z': `timestamp,battery_voltage,battery_current\n${lines((row) => `2025-06-01T${clock(row)}Z,${volts(row)},5`)}`,
  'a German date': `Datum;Spannung;Strom\n${lines((row) => `13.06.2025 ${clock(row)};${comma(volts(row), 2)};5,0`)}`,
  'an American date': `Date,Volts,Amps\n${lines((row) => `6/13/2025 ${clock(row)},${volts(row)},5`)}`,
  'date and clock in two columns': `Date,Time,Voltage (V),Current (A)\n${lines((row) => `2025-06-01,${clock(row)},${volts(row)},5`)}`,
  'charge counted positive': `time_s,voltage_V,current_A\n${lines((row) => `${row * 60},${volts(row)},-5`)}`,
  'a head that says the sign': `time_s,discharge current (A),voltage (V)\n${lines((row) => `${row * 60},5,${volts(row)}`)}`,
  'no heads': lines((row) => `${row * 60},${volts(row)},5`),
  'no heads, decimal commas': lines((row) => `${row * 60};${comma(volts(row), 3)};5,0`),
  'remarks above': `# meter 7\n# started by hand\nTime (s),Voltage (V),Current (A)\n${lines((row) => `${row * 60},${volts(row)},5`)}`,
  'a block of settings above': `Device;XY-7\nSerial;123456\nInterval;60\n\nTime (s);Voltage (V);Current (A)\n${lines((row) => `${row * 60};${volts(row)};5`)}`,
  'heads above units': `Time;Voltage;Current\n[s];[V];[A]\n${lines((row) => `${row * 60};${volts(row)};5`)}`,
  'charge, energy and power beside': `Time(s),Voltage(V),Current(A),Capacity(Ah),Energy(Wh),Power(W)\n${lines((row) => `${row * 60},${volts(row)},5,${(row * 5) / 60},${row * 2},${5 * volts(row)}`)}`,
  'a row number in front': `No,Time (s),Voltage (V),Current (A)\n${lines((row) => `${row + 1},${row * 60},${volts(row)},5`)}`,
  'a row id and a step': `row_id,step,time_s,pack_V,current_A\n${lines((row) => `${row},1,${row * 60},${volts(row)},5`)}`,
  'a trailing separator': `time_s,voltage_V,current_A,\n${lines((row) => `${row * 60},${volts(row)},5,`)}`,
  'two block voltages beside the pack': `time_s,pack_V,block 1 V,block 2 V,current_A\n${lines((row) => `${row * 60},${volts(row)},${volts(row) / 2},${volts(row) / 2},5`)}`,
  'rows out of order': `time_s,voltage_V,current_A\n${[...minutes.slice(60), ...minutes.slice(0, 60)].map((row) => `${row * 60},${volts(row)},5`).join('\n')}`,
  'every row twice': `time_s,voltage_V,current_A\n${lines((row) => `${row * 60},${volts(row)},5\n${row * 60},${volts(row)},5`)}`,
  'units after the figures': `Time,Voltage,Current\n${lines((row) => `${row * 60} s,${volts(row)} V,5 A`)}`,
  'empty lines between the rows': `time_s,voltage_V,current_A\n${lines((row) => `${row * 60},${volts(row)},5\n`)}`,
  'seconds since 1970': `timestamp,voltage,current\n${lines((row) => `${1748779200 + row * 60},${volts(row)},5`)}`,
};

describe('a discharge written down in many ways', () => {
  test.each(Object.entries(layouts))('is read from %s', (_, text) => {
    const guess = guessMapping(text.slice(0, 65_536), { nominalVoltageV: 24 });
    if (!guess.ok) throw new Error(`${guess.problem.field}: ${guess.problem.problem}`);
    const reader = createLogReader(guess.value.mapping);
    for (let from = 0; from < text.length; from += 700) reader.push(text.slice(from, from + 700));
    const log = reader.finish();
    expect(log.runs).toHaveLength(1);
    const run = log.runs[0]!;
    expect(run.timeS).toHaveLength(count);
    expect(run.timeS.at(-1)! - run.timeS[0]!).toBeCloseTo(7200, 3);
    expect(run.currentA.every((current) => Math.abs(current - 5) < 1e-6)).toBe(true);
    expect(run.voltageV![0]).toBeCloseTo(25.4, 2);
    expect(run.voltageV!.at(-1)).toBeCloseTo(22.4, 2);
    // What was left out is counted: rows read are rows kept and rows dropped.
    const dropped = [...log.dropped.values()].reduce((sum, value) => sum + value, 0);
    expect(log.rowsKept + dropped).toBe(log.rowsRead);
  });
});
