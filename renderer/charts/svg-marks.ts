import { ink, type Mark } from '#core/sheet/drawing/drawing.ts';

/** A line, with its dashes. */
export const stroked = (
  d: string,
  colour: string,
  breadth: number,
  dash: readonly number[] = [],
): Mark => ({
  kind: 'path',
  d,
  stroke: { colour, width: breadth, ...(dash.length === 0 ? {} : { dash: dash.join(' ') }) },
});

/** A word, its foot at y. */
export const label = (
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end',
  colour: string = ink.soft,
  size = 12,
  bold = false,
): Mark => ({ kind: 'text', x, y, text, size, anchor, colour, bold });
