import { drawingMarkup } from '../markup/drawing-markup.ts';
import { writeMarkup } from '../markup/write-markup.ts';
import type { Drawing } from './drawing.ts';

/** A drawing as a file of its own: SVG on white ground. */
export function drawingSvg(drawing: Drawing): string {
  const { width, height, marks } = drawing;
  const ground = {
    kind: 'path',
    d: `M0 0h${width}v${height}h-${width}z`,
    fill: '#ffffff',
  } as const;
  const node = drawingMarkup({ ...drawing, marks: [ground, ...marks] });
  const attributes = {
    ...node.attributes,
    'font-family': "system-ui, 'DejaVu Sans', sans-serif",
  };
  return `${writeMarkup({ ...node, attributes })}\n`;
}
