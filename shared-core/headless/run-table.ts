import type { RunEventKind } from '../run/result.ts';
import type { OptionStudy } from '../study/study.ts';
import { formatFixed, formatSignificant } from '../units/index.ts';
import { alignedTable } from './aligned-table.ts';

/** What ends a run or happens in it, in words of a table. */
export const eventWords: Readonly<Record<RunEventKind, string>> = {
  'controller-cutoff': 'controller cutoff',
  'bms-group-low': 'BMS, cell group low',
  'bms-over-current': 'BMS, over-current',
  'string-fuse': 'string fuse',
  'main-fuse': 'main fuse',
  'depth-limit': 'depth limit',
  'supply-collapse': 'supply collapses',
  'time-limit': 'longest time reached',
  'not-computable': 'not computable',
  'converter-brown-out': 'converter drops out',
  'converter-off': 'converter off',
  'converter-recovered': 'converter recovers',
  'block-reversed': 'block reversed',
  'string-joined-surge': 'surge between strings',
  'block-empty': 'block empty',
  'controller-restart': 'controller restarts',
  'controller-limit': 'controller limits current',
};

/** The headline figures of every option side by side. */
export function runTable(options: readonly OptionStudy[]): string {
  return alignedTable(
    [
      'Option',
      'Run min',
      'Peukert min',
      'Ended by',
      'A·h',
      'W·h',
      'Lowest V',
      'Left %',
      'Accessories cost min',
      'Charger',
      'Charger done h',
      'kg',
      'Price',
    ],
    options.map(({ name, run, peukertMin, accessoryCostMin, chargerMatch, massKg, price }) => [
      name,
      formatFixed(run.runTimeMin, 1, 'en'),
      peukertMin === null ? '–' : formatFixed(peukertMin, 1, 'en'),
      eventWords[run.endedBy],
      formatFixed(run.deliveredAh, 2, 'en'),
      formatFixed(run.deliveredWh, 0, 'en'),
      formatFixed(run.minimumBusVoltageV, 2, 'en'),
      formatFixed(run.remainingPercent, 0, 'en'),
      formatFixed(accessoryCostMin, 1, 'en'),
      chargerMatch?.verdict ?? 'none',
      figure(chargerMatch?.hoursToFull ?? null, 2),
      figure(massKg, 3),
      figure(price, 4),
    ]),
  );
}

function figure(value: number | null, digits: number): string {
  return value === null ? '–' : formatSignificant(value, digits, 'en');
}
