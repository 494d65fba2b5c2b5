import type { CoordinationDrawing, CoordinationRole } from './coordination-drawing.ts';
import { escapedMarkup } from './escaped-markup.ts';

/** Pens of a picture that leaves the program: told apart in black and white by dash and width. */
const pens: Readonly<Record<CoordinationRole, string>> = {
  grid: 'fill="none" stroke="#b8bfc9" stroke-width="1"',
  minor: 'fill="none" stroke="#e3e6ea" stroke-width="0.6"',
  scale: 'fill="#4a5566" font-size="11"',
  band: 'fill="#0072b2" fill-opacity="0.16"',
  fuse: 'fill="none" stroke="#0072b2" stroke-width="2"',
  rated: 'fill="none" stroke="#009e73" stroke-width="2" stroke-dasharray="7 4"',
  harmed: 'fill="none" stroke="#d55e00" stroke-width="3"',
  mark: 'fill="none" stroke="#1c2430" stroke-width="1.5" stroke-dasharray="2 3"',
  lasts: 'fill="none" stroke="#1c2430" stroke-width="3"',
  leader: 'fill="none" stroke="#8a94a3" stroke-width="0.8"',
  name: 'fill="#1c2430" font-size="11"',
};

/**
 * The coordination chart as a standing SVG document, for the sheet and for a file.
 *
 * @param title named in the picture for readers who cannot see it
 * @param readings what the chart says, in words
 */
export function coordinationSvg(
  { width, height, shapes }: CoordinationDrawing,
  title: string,
  readings: string,
): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="system-ui, 'DejaVu Sans', sans-serif">`,
    `<title>${escapedMarkup(title)}</title><desc>${escapedMarkup(readings)}</desc>`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...shapes.map((shape) =>
      shape.kind === 'path'
        ? `<path d="${shape.d}" ${pens[shape.role]}/>`
        : `<text x="${shape.x}" y="${shape.y}" text-anchor="${shape.anchor}" ${pens[shape.role]}>${escapedMarkup(shape.text)}</text>`,
    ),
    '</svg>',
    '',
  ].join('\n');
}
