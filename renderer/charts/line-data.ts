import type { ChartDataset } from 'chart.js';
import { seriesLook, type MarkerShape } from '../styles/series.ts';
import type { ChartColours } from './chart-colours.ts';
import type { ChartSeries, ChartWindow } from './chart-series.ts';
import type { LabelledDataset } from './direct-labels.ts';
import { thinSeries, type Point } from './thin-series.ts';

const pointStyles: Readonly<
  Record<MarkerShape, 'circle' | 'rect' | 'triangle' | 'rectRot' | 'crossRot'>
> = {
  disc: 'circle',
  square: 'rect',
  triangle: 'triangle',
  diamond: 'rectRot',
  cross: 'crossRot',
};

/** Markers on a line across the chart. */
const markerCount = 7;

type DrawnLine = ChartDataset<'line', Point[]> & LabelledDataset;

/**
 * Series as Chart.js draws them: thinned to the window, dashed and marked as the option's look says. Lines and their
 * markers are apart, because a line whose points differ is drawn point by point.
 */
export function lineDatasets(
  series: readonly ChartSeries[],
  window: ChartWindow,
  colours: ChartColours,
  buckets: number,
): DrawnLine[] {
  return series.flatMap((entry) => {
    const look = seriesLook(entry.index);
    const isMain = entry.role === 'main';
    const colour = entry.role === 'ghost' ? colours.ghost : colours.series(look.number);
    const data = thinSeries(entry.x, entry.y, window.from, window.to, buckets);
    const shared = {
      label: entry.name,
      borderColor: colour,
      backgroundColor: colour,
      pointHitRadius: 0,
      pointHoverRadius: 0,
    };
    const line: DrawnLine = {
      ...shared,
      data,
      borderWidth: isMain ? 2 : 1,
      borderDash: entry.role === 'ghost' ? [2, 2] : [...look.dash],
      borderJoinStyle: 'round',
      pointRadius: 0,
      ...(isMain ? { directLabel: entry.name } : {}),
      order: isMain ? 1 : 2,
    };
    if (!isMain) return [line];
    const markers: DrawnLine = {
      ...shared,
      data: markedPoints(data, window, entry.index),
      showLine: false,
      borderWidth: 2,
      pointStyle: pointStyles[look.marker],
      pointRadius: 4,
      order: 0,
    };
    return [line, markers];
  });
}

/**
 * Points nearest to evenly spaced places, staggered by option so that markers of like lines do not cover each other. The
 * places are counted from zero, so that markers move with their line.
 */
export function markedPoints(
  points: readonly Point[],
  window: ChartWindow,
  index: number,
): Point[] {
  const step = (window.to - window.from) / markerCount;
  const offset = step * (0.25 + (index % 4) * 0.2);
  let next = Math.ceil((window.from - offset) / step) * step + offset;
  const marked: Point[] = [];
  for (const point of points) {
    if (point.x > window.to) break;
    if (point.x < next) continue;
    marked.push(point);
    while (next <= point.x) next += step;
  }
  return marked;
}
