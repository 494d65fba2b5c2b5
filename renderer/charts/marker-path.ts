import type { Mark } from '#core/sheet/drawing/drawing.ts';
import type { MarkerShape } from '../styles/series.ts';

const outlines: Readonly<Record<MarkerShape, string>> = {
  disc: 'm-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z',
  square: 'm-3.5 -3.5h7v7h-7z',
  triangle: 'm0 -4.5l4.2 7.5h-8.4z',
  diamond: 'm0 -5l5 5l-5 5l-5 -5z',
  cross: 'm-3.5 -3.5l7 7m0 -7l-7 7',
};

/** Marker of a series about a point. */
export const markerPath = (shape: MarkerShape, x: number, y: number, colour: string): Mark => ({
  kind: 'path',
  d: `M${x} ${y}${outlines[shape]}`,
  stroke: { colour, width: 2 },
  ...(shape === 'cross' ? {} : { fill: colour }),
});
