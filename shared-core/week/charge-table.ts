import { chargeOption } from '../charge/charge-option.ts';
import type { ChargeEnd } from '../charge/charge-result.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import { bisectLast } from './bisect.ts';

/** One charger on one pack at one temperature: charge and mains energy against hours, from empty. */
export interface ChargeTable {
  readonly timeH: Float64Array;
  readonly chargePercent: Float64Array;
  /** Mains energy up to then [Wh]. */
  readonly mainsWh: Float64Array;
  /** Charge at which the charger stops [%]. */
  readonly endPercent: number;
  readonly endedBy: ChargeEnd;
}

/**
 * Simulates one charge from empty. A charge that starts later joins the same line at its charge: current and voltage
 * depend on the charge and hardly on what was before.
 */
export function chargeTable(option: Option, charger: Charger, temperatureC: number): ChargeTable {
  const result = chargeOption(
    option,
    { ...charger, maximumHours: null },
    {
      temperatureC,
      startPercent: 1,
      wishes: { shareStep: 0.01, longestHours: 72 },
    },
  );
  const { series } = result;
  const mainsWh = new Float64Array(series.timeH.length);
  const scale = result.inWh > 0 ? result.mainsWh / result.inWh : 0;
  for (let index = 1; index < mainsWh.length; index += 1) {
    const hours = series.timeH[index]! - series.timeH[index - 1]!;
    const before =
      index === 1
        ? series.voltageV[1]! * series.currentA[1]!
        : series.voltageV[index - 1]! * series.currentA[index - 1]!;
    const after = series.voltageV[index]! * series.currentA[index]!;
    mainsWh[index] = mainsWh[index - 1]! + (scale * hours * (before + after)) / 2;
  }
  return {
    timeH: series.timeH,
    chargePercent: series.chargePercent,
    mainsWh,
    endPercent: result.endPercent,
    endedBy: result.endedBy,
  };
}

export interface ChargedFor {
  readonly percent: number;
  readonly mainsWh: number;
  /** Hours in which the charger really worked. */
  readonly hours: number;
}

/** What `hours` on the charger do to a pack at `percent`, stopping at `untilPercent` or where the charger stops. */
export function chargeFor(
  table: ChargeTable,
  percent: number,
  hours: number,
  untilPercent: number,
): ChargedFor {
  const top = Math.min(untilPercent, table.endPercent);
  if (percent >= top || table.endedBy === 'no-current') return { percent, mainsWh: 0, hours: 0 };
  const from = placeOfPercent(table, percent);
  const fromH = valueAt(table.timeH, from);
  const end = Math.min(placeOfPercent(table, top), placeOfTime(table, fromH + hours));
  return {
    percent: Math.max(percent, valueAt(table.chargePercent, end)),
    mainsWh: valueAt(table.mainsWh, end) - valueAt(table.mainsWh, from),
    hours: valueAt(table.timeH, end) - fromH,
  };
}

/** Hours from a charge to another, or to where the charger stops. */
export function hoursFromTo(table: ChargeTable, percent: number, untilPercent: number): number {
  const top = Math.min(untilPercent, table.endPercent);
  if (percent >= top) return 0;
  return (
    valueAt(table.timeH, placeOfPercent(table, top)) -
    valueAt(table.timeH, placeOfPercent(table, percent))
  );
}

function placeOfPercent(table: ChargeTable, percent: number): number {
  const last = table.chargePercent.length - 1;
  if (percent >= table.endPercent) return last;
  return placeIn(table.chargePercent, percent);
}

function placeOfTime(table: ChargeTable, timeH: number): number {
  return timeH >= table.timeH[table.timeH.length - 1]!
    ? table.timeH.length - 1
    : placeIn(table.timeH, timeH);
}

/** Fractional index of a value in a rising column. */
function placeIn(column: Float64Array, value: number): number {
  const index = Math.max(
    0,
    bisectLast(column.length, (at) => column[at]! <= value),
  );
  if (index >= column.length - 1) return column.length - 1;
  const span = column[index + 1]! - column[index]!;
  return index + (span > 0 ? Math.min(1, Math.max(0, (value - column[index]!) / span)) : 0);
}

function valueAt(column: Float64Array, place: number): number {
  const index = Math.floor(place);
  if (index >= column.length - 1) return column[column.length - 1]!;
  return column[index]! + (place - index) * (column[index + 1]! - column[index]!);
}
