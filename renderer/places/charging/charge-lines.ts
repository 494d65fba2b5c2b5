import { chargeStages, type ChargeResult } from '#core/charge/charge-result.ts';
import type { Language } from '#core/plan/language.ts';
import type { ChartEvent, ChartSeries, ChartWindow } from '../../charts/chart-series.ts';
import { valueAtX } from '../../charts/thin-series.ts';
import type { Row } from '../../controls/DataTable.tsx';
import type { ChargeQuantity, ChargingTexts } from '../../text/charging.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';

/** The lines of one quantity of a charge. */
export function chargeSeries(
  { series }: ChargeResult,
  quantity: ChargeQuantity,
  name: string,
  index: number,
  text: ChargingTexts['curve'],
): ChartSeries[] {
  const line = (
    id: string,
    label: string,
    y: Float64Array,
    role: ChartSeries['role'],
    at = index,
  ): ChartSeries => ({
    id,
    name: label,
    index: at,
    x: series.timeH,
    y,
    role,
  });
  switch (quantity) {
    case 'voltage':
      return [line('voltage', name, series.voltageV, 'main')];
    case 'current':
      return [line('current', name, series.currentA, 'main')];
    case 'percent':
      return [line('percent', name, series.chargePercent, 'main')];
    case 'cells':
      return [
        line('highest', text.highestCell, series.highestCellV, 'main'),
        line('lowest', text.lowestCell, series.lowestCellV, 'main', index + 1),
      ];
  }
}

/** Where the stages change. */
export function chargeEvents(
  charge: ChargeResult,
  quantity: ChargeQuantity,
  index: number,
  text: ChargingTexts['curve'],
): ChartEvent[] {
  const { series } = charge;
  const column = {
    voltage: series.voltageV,
    current: series.currentA,
    percent: series.chargePercent,
    cells: series.highestCellV,
  }[quantity];
  const events: ChartEvent[] = [];
  for (let row = 1; row < series.stage.length; row += 1) {
    if (series.stage[row] === series.stage[row - 1]) continue;
    const stage = chargeStages[series.stage[row]!];
    const label =
      stage === 'absorption'
        ? text.stages.absorption
        : stage === 'float'
          ? text.stages.float
          : text.stages.end;
    events.push({
      id: `stage ${row}`,
      label,
      x: series.timeH[row - 1]!,
      y: column[row - 1]!,
      index,
    });
  }
  return events;
}

const rowCount = 24;

/** The lines as a table of evenly spaced times. */
export function chargeRows(
  lines: readonly ChartSeries[],
  whole: ChartWindow,
  language: Language,
): Row[] {
  return Array.from({ length: rowCount + 1 }, (_, index) => {
    const at = (index / rowCount) * whole.to;
    return {
      id: String(index),
      cells: {
        time: formatMinutes(at * 60, language),
        ...Object.fromEntries(
          lines.map(({ id, x, y }) => {
            const value = valueAtX(x, y, at);
            return [id, value === null ? '–' : formatFigure(value, language, 4)];
          }),
        ),
      },
    };
  });
}
