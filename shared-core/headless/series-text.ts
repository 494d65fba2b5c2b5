import Papa from 'papaparse';
import type { DriveResult } from '../drive/drive-result.ts';
import type { BlockSeries, RunSeries } from '../run/result.ts';
import { driveColumns, driveReader } from './drive-columns.ts';

/** A run and the option it belongs to. */
export interface NamedSeries {
  readonly optionId: string;
  readonly series: RunSeries;
  /** What the wheels did; null where nothing is driven. */
  readonly drive: DriveResult | null;
}

/** The plain columns, in the order they are written; units stand in the heading. */
const columns = [
  ['time [s]', 'timeS'],
  ['pack voltage [V]', 'packVoltageV'],
  ['bus voltage [V]', 'busVoltageV'],
  ['pack current [A]', 'packCurrentA'],
  ['motor current [A]', 'motorCurrentA'],
  ['converter input [A]', 'converterInputA'],
  ['charge left [%]', 'chargePercent'],
] as const satisfies readonly (readonly [string, keyof RunSeries])[];

/**
 * The time series of several runs as one CSV text: a row for each instant of each option, block voltages in columns of
 * their own (empty where an option has no such block), and where anything is driven the columns of the drive, read at the
 * same instants (empty where nothing is known). Decimal points, commas between, one line feed a row.
 */
export function seriesText(runs: readonly NamedSeries[]): string {
  const blockTitles = [...new Set(runs.flatMap(({ series }) => series.blocks.map(blockTitle)))];
  const driven = runs.some(({ drive }) => drive !== null) ? driveColumns : [];
  const fields = [
    'option',
    ...columns.map(([title]) => title),
    ...blockTitles,
    ...driven.map(([title]) => title),
  ];
  const data: string[][] = [];
  for (const { optionId, series, drive } of runs) {
    const wheels = driveReader(drive);
    const blocks = blockTitles.map((title) =>
      series.blocks.find((block) => blockTitle(block) === title),
    );
    for (let row = 0; row < series.timeS.length; row += 1) {
      data.push([
        optionId,
        ...columns.map(([, key]) => plainNumber(series[key][row])),
        ...blocks.map((block) => plainNumber(block?.voltageV[row])),
        ...(driven.length === 0 ? [] : wheels(series.timeS[row]!).map(plainNumber)),
      ]);
    }
  }
  return `${Papa.unparse({ fields, data }, { newline: '\n' })}\n`;
}

/** Heading of a block's column, e.g. `string 1+2 block 1 voltage [V]`. */
function blockTitle({ strings, positions, group }: BlockSeries): string {
  const inner = group === null ? '' : ` group ${group}`;
  return `string ${strings.join('+')} block ${positions.join('+')}${inner} voltage [V]`;
}

function plainNumber(value: number | undefined): string {
  return value === undefined || !Number.isFinite(value) ? '' : String(Number(value.toPrecision(9)));
}
