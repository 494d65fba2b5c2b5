import type { ChartOptions } from 'chart.js';
import { formatFigure } from '../text/format.ts';
import type { Language } from '#core/plan/language.ts';
import type { ChartAxis, ChartWindow } from './chart-series.ts';
import type { ChartColours } from './chart-colours.ts';

interface LineOptionsInput {
  readonly xAxis: ChartAxis;
  readonly yAxis: ChartAxis;
  readonly window: ChartWindow;
  readonly whole: ChartWindow;
  readonly colours: ChartColours;
  readonly language: Language;
  readonly onWindow: (window: ChartWindow) => void;
}

/** Options of a line chart over time in the program's look. Zoom and pan report the window and leave the rest to it. */
export function lineOptions(input: LineOptionsInput): ChartOptions<'line'> {
  const { xAxis, yAxis, window, whole, colours, language, onWindow } = input;
  const axis = ({ label, unit }: ChartAxis) => ({
    border: { color: colours.ghost },
    grid: { color: colours.line, tickLength: 4 },
    title: {
      display: true,
      text: `${label} [${unit}]`,
      color: colours.inkSoft,
      font: { family: colours.font },
    },
    ticks: {
      color: colours.inkSoft,
      font: { family: colours.font },
      includeBounds: false,
      maxRotation: 0,
      callback: (value: number | string) => formatFigure(Number(value), language, 4),
    },
  });
  const report = ({
    chart,
  }: {
    chart: { scales: Record<string, { min: number; max: number }> };
  }): void => {
    const scale = chart.scales['x'];
    if (scale !== undefined) onWindow({ from: scale.min, to: scale.max });
  };
  return {
    animation: false,
    parsing: false,
    normalized: true,
    maintainAspectRatio: false,
    backgroundColor: colours.sheet,
    color: colours.ink,
    font: { family: colours.font },
    events: [],
    layout: { padding: { top: 8, right: 12 } },
    scales: {
      x: { type: 'linear', min: window.from, max: window.to, ...axis(xAxis) },
      y: { type: 'linear', grace: '4%', ...axis(yAxis) },
    },
    plugins: {
      tooltip: { enabled: false },
      zoom: {
        limits: { x: { min: whole.from, max: whole.to } },
        zoom: { mode: 'x', wheel: { enabled: true }, pinch: { enabled: true }, onZoom: report },
        pan: { enabled: true, mode: 'x', onPan: report },
      },
    },
  };
}
