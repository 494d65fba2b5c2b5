import { escapedMarkup } from './escaped-markup.ts';
import type { OneLineDiagram } from './diagram-layout.ts';
import type { DiagramShape, ShapeRole } from './diagram-shapes.ts';

/** Colours of a picture that leaves the program: dark ink on white paper, marks told apart by word as well. */
const ink: Readonly<Record<ShapeRole, string>> = {
  wire: '#1c2430',
  symbol: '#1c2430',
  name: '#1c2430',
  size: '#4a5566',
  value: '#1c2430',
  good: '#006b4e',
  warn: '#8a4b00',
  stop: '#a3190f',
};

const fontPx: Readonly<Record<ShapeRole, number>> = {
  wire: 0,
  symbol: 0,
  name: 12,
  size: 10.5,
  value: 10.5,
  good: 10.5,
  warn: 10.5,
  stop: 10.5,
};

function shapeMarkup(shape: DiagramShape): string {
  const colour = ink[shape.role];
  if (shape.kind === 'text') {
    return `<text x="${shape.x}" y="${shape.y}" text-anchor="${shape.anchor}" font-size="${fontPx[shape.role]}" fill="${colour}"${shape.role === 'name' ? ' font-weight="600"' : ''}>${escapedMarkup(shape.text)}</text>`;
  }
  const paint = shape.filled
    ? `fill="${colour}"`
    : `fill="none" stroke="${colour}" stroke-width="${shape.role === 'wire' ? 1.8 : 1.5}"`;
  return `<path d="${shape.d}" ${paint}${shape.dashed ? ' stroke-dasharray="5 4"' : ''}/>`;
}

/**
 * The one-line diagram as a standing SVG document, for the sheet and for a file.
 *
 * @param title named in the picture for readers who cannot see it
 */
export function diagramSvg(diagram: OneLineDiagram, title: string): string {
  const { width, height, shapes, summary } = diagram;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="system-ui, 'DejaVu Sans', sans-serif">`,
    `<title>${escapedMarkup(title)}</title><desc>${escapedMarkup(summary)}</desc>`,
    ...shapes.map(shapeMarkup),
    '</svg>',
    '',
  ].join('\n');
}
