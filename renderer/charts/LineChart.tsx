import { useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import type { Chart as ChartType } from 'chart.js';
import { Line } from 'react-chartjs-2';
import { useTheme } from '../app/theme.ts';
import { useSettings } from '../state/settings-store.ts';
import { chartTexts } from '../text/charts.ts';
import { useText } from '../text/use-text.ts';
import { ChartCopies } from './ChartCopies.tsx';
import { lineCsv } from './line-csv.ts';
import './register-charts.ts';
import { areaReport, type DrawnArea } from './area-report.ts';
import { bandDatasets } from './band-data.ts';
import { chartColours } from './chart-colours.ts';
import { moved, zoomed, type ChartWindow, type LinePicture } from './chart-series.ts';
import { directLabels, paintedGround } from './direct-labels.ts';
import { lineDatasets } from './line-data.ts';
import { lineOptions } from './line-options.ts';
import { eventDatasets, levelDatasets } from './mark-data.ts';
import { useGestures } from './use-gestures.ts';
import type { Point } from './thin-series.ts';
import './chart.css';

export interface LineChartProps extends LinePicture {
  /** How to use the chart by keyboard. */
  readonly howTo: string;
  readonly whole: ChartWindow;
  readonly onWindow: (window: ChartWindow) => void;
  readonly cursor: number | null;
  readonly onCursor: (x: number | null) => void;
  readonly chartRef?: (chart: ChartType<'line', Point[]> | null) => void;
  readonly height?: string;
  /** The place offers copies of the chart itself. */
  readonly ownCopies?: boolean;
}

const none: readonly never[] = [];
/** Stretches of the window that each keep first, lowest, highest and last point: about a point a pixel. */
const bucketCount = 300;

/** Lines over time with zoom, pan and a read-out line, by pointer and by keys. */
export const LineChart = (props: LineChartProps) => {
  const {
    xAxis,
    yAxis,
    series,
    bands = none,
    levels = none,
    events = none,
    window,
    whole,
    cursor,
  } = props;
  const { onWindow, onCursor } = props;
  const language = useSettings((state) => state.language);
  const text = useText(chartTexts);
  const theme = useTheme();
  const id = useId();
  const chart = useRef<ChartType<'line', Point[]> | null>(null);
  const [area, setArea] = useState<DrawnArea | null>(null);
  const plugins = useMemo(() => [directLabels, paintedGround, areaReport(setArea)], []);

  const colours = chartColours(theme);
  const data = useMemo(
    () => ({
      datasets: [
        ...lineDatasets(series, window, colours, bucketCount),
        ...bandDatasets(bands, colours),
        ...levelDatasets(levels, window, colours),
        ...eventDatasets(events, window, colours),
      ],
    }),
    [series, bands, levels, events, window, colours],
  );
  const options = useMemo(
    () => lineOptions({ xAxis, yAxis, window, whole, colours, language, onWindow }),
    [xAxis, yAxis, window, whole, colours, language, onWindow],
  );
  useGestures(chart);
  const xOf = (pixel: number): number | null => {
    const now = chart.current?.chartArea;
    if (now === undefined || pixel < now.left || pixel > now.right) return null;
    return window.from + ((pixel - now.left) / (now.right - now.left)) * (window.to - window.from);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = (window.to - window.from) / 100;
    const at = cursor ?? window.from;
    const read = (to: number): void => onCursor(Math.min(whole.to, Math.max(whole.from, to)));
    const direction = { ArrowLeft: -1, ArrowRight: 1, PageUp: -10, PageDown: 10 }[event.key];
    if (direction !== undefined && event.shiftKey) onWindow(moved(window, whole, direction / 10));
    else if (direction !== undefined) read(at + direction * step);
    else if (event.key === 'Home') read(window.from);
    else if (event.key === 'End') read(window.to);
    else if (event.key === '+') onWindow(zoomed(window, whole, 0.6, cursor ?? undefined));
    else if (event.key === '-') onWindow(zoomed(window, whole, 1 / 0.6, cursor ?? undefined));
    else if (event.key === '0') onWindow(whole);
    else if (event.key === 'Escape') onCursor(null);
    else return;
    event.preventDefault();
  };
  const cursorAt =
    cursor === null || area === null || cursor < window.from || cursor > window.to
      ? null
      : area.left + ((cursor - window.from) / (window.to - window.from)) * (area.right - area.left);
  return (
    <figure className="chart">
      <div
        className="chart-box"
        style={{ height: props.height ?? '24rem' }}
        tabIndex={0}
        role="group"
        aria-label={props.title}
        aria-describedby={`${id}-summary`}
        onKeyDown={onKeyDown}
        onPointerMove={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          onCursor(xOf(event.clientX - box.left));
        }}
        onPointerLeave={() => onCursor(null)}
        onDoubleClick={() => onWindow(whole)}
      >
        <Line
          ref={(made) => {
            chart.current = made ?? null;
            props.chartRef?.(made ?? null);
          }}
          data={data}
          options={options}
          plugins={plugins}
          role="img"
          aria-label={props.summary}
        />
        {cursorAt === null || area === null ? null : (
          <span
            className="chart-cursor"
            style={{
              left: `${cursorAt}px`,
              top: `${area.top}px`,
              height: `${area.bottom - area.top}px`,
            }}
          />
        )}
      </div>
      {props.ownCopies === true ? null : (
        <div className="chart-copies">
          <ChartCopies
            name={props.title}
            csv={() => lineCsv(text.line, xAxis, yAxis, series)}
            chart={() => chart.current}
            lines={() => props}
          />
        </div>
      )}
      <figcaption className="only-spoken" id={`${id}-summary`}>
        {`${props.summary} ${props.howTo}`}
      </figcaption>
    </figure>
  );
};
