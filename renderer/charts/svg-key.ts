import { ink, type Mark } from '#core/sheet/drawing/drawing.ts';
import { seriesLook } from '../styles/series.ts';
import type { ChartSeries } from './chart-series.ts';
import { markerPath } from './marker-path.ts';
import { label, stroked } from './svg-marks.ts';

const sample = 34;
const rowHeight = 20;
/** A file's reader may have any font: rather too wide than over one another [of the size of the letters]. */
const letterWidth = 0.6;
const size = 12;

/** Names of the lines with a piece of each, in rows that end before `end`; `bottom` is where the last row stands. */
export function svgKey(
  series: readonly ChartSeries[],
  colourOf: (index: number) => string,
  left: number,
  top: number,
  end: number,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const marks: Mark[] = [];
  let x = left;
  let y = top;
  for (const { name, index } of series) {
    const { dash, marker } = seriesLook(index);
    const width = sample + 8 + letterWidth * size * name.length + 20;
    if (x > left && x + width > end) {
      x = left;
      y += rowHeight;
    }
    const colour = colourOf(index);
    marks.push(
      stroked(`M${x} ${y - 4}h${sample}`, colour, 2, dash),
      markerPath(marker, x + sample / 2, y - 4, colour),
      label(x + sample + 8, y, name, 'start', ink.dark, size),
    );
    x += width;
  }
  return { marks, bottom: y };
}
