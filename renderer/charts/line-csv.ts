import type { CsvTable } from './csv.ts';
import type { ChartAxis, ChartSeries } from './chart-series.ts';

/** The points of a chart as CSV, one row a point, names and units in the heads, full precision. */
export function lineCsv(
  lineHead: string,
  xAxis: ChartAxis,
  yAxis: ChartAxis,
  series: readonly ChartSeries[],
): CsvTable {
  const head = ({ label, unit }: ChartAxis): string => `${label} [${unit}]`;
  return {
    fields: [lineHead, head(xAxis), head(yAxis)],
    data: series.flatMap(({ name, x, y }) => Array.from(x, (at, row) => [name, at, y[row] ?? 0])),
  };
}
