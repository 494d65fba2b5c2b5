import type { ChartDataset } from 'chart.js';
import { seriesLook } from '../styles/series.ts';
import type { ChartColours } from './chart-colours.ts';
import type { ChartBand } from './chart-series.ts';
import type { Point } from './thin-series.ts';

/** Opacity of a band as two hexadecimal digits: three of them on each other still let the lines stand out. */
const veil = '2b';

/** A colour token with the opacity of a band; the style sheet may have been shortened from #ffffff to #fff. */
const veiled = (colour: string): string =>
  `${colour.length === 4 ? colour.replaceAll(/[^#]/g, '$&$&') : colour}${veil}`;

const pointsOf = (x: Float64Array, edge: Float64Array): Point[] =>
  Array.from(edge, (y, at) => ({ x: x[at] ?? 0, y }));

/** Bands as Chart.js draws them: an upper edge without a line, and a lower one filled up to it. */
export function bandDatasets(
  bands: readonly ChartBand[],
  colours: ChartColours,
): ChartDataset<'line', Point[]>[] {
  const plain = { borderWidth: 0, pointRadius: 0, pointHitRadius: 0, order: 2 } as const;
  return bands.flatMap(({ id, index, x, low, high }) => {
    const upper = pointsOf(x, high);
    const lower = pointsOf(x, low);
    const end = upper.at(-1);
    // From where the low edge ends the band narrows to the end of the high one.
    if (end !== undefined && low.length < high.length) lower.push(end);
    return [
      { ...plain, label: `${id} high`, data: upper, fill: false },
      {
        ...plain,
        label: `${id} low`,
        data: lower,
        fill: '-1',
        backgroundColor: veiled(colours.series(seriesLook(index).number)),
      },
    ];
  });
}
