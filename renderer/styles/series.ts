export type MarkerShape = 'disc' | 'square' | 'triangle' | 'diamond' | 'cross';

export interface SeriesLook {
  /** Number of the colour token, `--series-1` to `--series-5`. */
  readonly number: number;
  /** Lengths of dash and gap in pixels; empty for a whole line. */
  readonly dash: readonly number[];
  readonly marker: MarkerShape;
}

/** The colours of the light theme, for pictures that leave the program; the tokens of the style sheet are the same. */
export const lightSeries = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#000000'] as const;

const colours = lightSeries.length;
const dashes: readonly (readonly number[])[] = [[], [8, 4], [2, 3], [10, 3, 2, 3]];
const markers: readonly MarkerShape[] = ['disc', 'square', 'triangle', 'diamond', 'cross'];

/**
 * Look of the series of an option, counted from 0. Colour, dash and marker each tell neighbours apart by themselves;
 * twelve options never share all three.
 */
export const seriesLook = (index: number): SeriesLook => ({
  number: (index % colours) + 1,
  dash: dashes[index % dashes.length] ?? [],
  marker: markers[(index + Math.floor(index / colours)) % markers.length] ?? 'disc',
});
