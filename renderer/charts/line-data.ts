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

/** Series as Chart.js draws them: thinned to the window, dashed and marked as the option's look says. */
export function lineDatasets(
  series: readonly ChartSeries[],
  window: ChartWindow,
  colours: ChartColours,
  buckets: number,
): (ChartDataset<'line', Point[]> & LabelledDataset)[] {
  return series.map((entry) => {
    const look = seriesLook(entry.index);
    const isMain = entry.role === 'main';
    const colour = entry.role === 'ghost' ? colours.ghost : colours.series(look.number);
    const data = thinSeries(entry.x, entry.y, window.from, window.to, buckets);
    const marked = markedPoints(data, window, entry.index);
    return {
      label: entry.name,
      data,
      borderColor: colour,
      backgroundColor: colour,
      borderWidth: isMain ? 2 : 1,
      borderDash: entry.role === 'ghost' ? [2, 2] : [...look.dash],
      pointStyle: pointStyles[look.marker],
      pointRadius: ({ dataIndex }) => (isMain && marked.has(dataIndex) ? 4 : 0),
      pointHitRadius: 0,
      pointHoverRadius: 0,
      borderJoinStyle: 'round',
      ...(isMain ? { directLabel: entry.name } : {}),
      order: isMain ? 0 : 1,
    };
  });
}

/** Points nearest to evenly spaced places, staggered by option so that markers of like lines do not cover each other. */
function markedPoints(
  points: readonly Point[],
  window: ChartWindow,
  index: number,
): ReadonlySet<number> {
  const step = (window.to - window.from) / markerCount;
  const marked = new Set<number>();
  let next = window.from + step * (0.25 + (index % 4) * 0.2);
  points.forEach(({ x }, at) => {
    if (x < next || x > window.to) return;
    marked.add(at);
    while (next <= x) next += step;
  });
  return marked;
}
