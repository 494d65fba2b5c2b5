import type { ChartDataset } from 'chart.js';
import { seriesLook } from '../styles/series.ts';
import type { ChartColours } from './chart-colours.ts';
import type { ChartEvent, ChartLevel, ChartWindow } from './chart-series.ts';
import type { LabelledDataset } from './direct-labels.ts';
import type { Point } from './thin-series.ts';

type DrawnMark = ChartDataset<'line', Point[]> & LabelledDataset;

const still = { pointHitRadius: 0, pointHoverRadius: 0 } as const;

/** Levels as dashed lines across the window, below everything else. */
export const levelDatasets = (
  levels: readonly ChartLevel[],
  window: ChartWindow,
  colours: ChartColours,
): DrawnMark[] =>
  levels.map(({ label, y }) => ({
    ...still,
    label,
    data: [
      { x: window.from, y },
      { x: window.to, y },
    ],
    borderColor: colours.inkSoft,
    borderWidth: 1,
    borderDash: [6, 4],
    pointRadius: 0,
    startLabel: label,
    order: 3,
  }));

/** Events as rings in the colour of their option, above everything else. */
export const eventDatasets = (
  events: readonly ChartEvent[],
  window: ChartWindow,
  colours: ChartColours,
): DrawnMark[] =>
  events
    .filter(({ x }) => x >= window.from && x <= window.to)
    .map(({ label, x, y, index }) => ({
      ...still,
      label,
      data: [{ x, y }],
      showLine: false,
      borderColor: colours.series(seriesLook(index).number),
      backgroundColor: colours.sheet,
      borderWidth: 2,
      pointRadius: 6,
      order: -1,
    }));
