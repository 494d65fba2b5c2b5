import type { ChartSeries, ChartWindow } from '../../charts/chart-series.ts';
import { valueAtX } from '../../charts/thin-series.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';

interface RunTableProps {
  readonly caption: string;
  readonly series: readonly ChartSeries[];
  readonly whole: ChartWindow;
}

/** Rows of the table; the CSV has every step. */
const rowCount = 40;

/** The chart as a table: every option at even times. */
export const RunTable = ({ caption, series, whole }: RunTableProps) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  const step = niceStep((whole.to - whole.from) / rowCount);
  const times = Array.from(
    { length: Math.ceil(whole.to / step) },
    (_, index) => Math.round(index * step * 1000) / 1000,
  );
  return (
    <DataTable
      caption={caption}
      columns={[
        { id: 'time', label: text.time, unit: 'min' },
        ...series.map(({ id, name }) => ({ id, label: name, isNumber: true })),
      ]}
      rows={times.map((time) => ({
        id: String(time),
        cells: {
          time: formatFigure(time, language, 4),
          ...Object.fromEntries(
            series.map(({ id, x, y }) => {
              const value = valueAtX(x, y, time);
              return [id, value === null ? '–' : formatFigure(value, language, 4)];
            }),
          ),
        },
      }))}
    />
  );
};

/** The next of 1, 2, 5 times a power of ten. */
function niceStep(wanted: number): number {
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([1, 2, 5, 10].find((factor) => factor * power >= wanted) ?? 10);
}
