import { solid, stroke, words } from './diagram-shapes.ts';
import type { DiagramShape } from './diagram-shapes.ts';

/** Symbols used, named after what IEC 60617 draws. */
export type SymbolKind =
  | 'battery'
  | 'junction'
  | 'fuse'
  | 'breaker'
  | 'disconnector'
  | 'contactor'
  | 'make-contact'
  | 'plug-socket'
  | 'dc-converter'
  | 'motor-controller'
  | 'motor'
  | 'resistor'
  | 'load'
  | 'socket';

/** Half the length a symbol takes along the line, in diagram units. */
export const symbolHalfWidth: Readonly<Record<SymbolKind, number>> = {
  battery: 12,
  junction: 3,
  fuse: 15,
  breaker: 15,
  disconnector: 16,
  contactor: 16,
  'make-contact': 16,
  'plug-socket': 9,
  'dc-converter': 17,
  'motor-controller': 17,
  motor: 17,
  resistor: 16,
  load: 15,
  socket: 8,
};

const circle = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
const box = (x: number, y: number, halfWidth: number, halfHeight: number) =>
  `M${x - halfWidth} ${y - halfHeight}h${2 * halfWidth}v${2 * halfHeight}h${-2 * halfWidth}z`;
/** The open lever every switch shares: fixed point left, lever up to the right. */
const lever = (x: number, y: number) => `M${x - 16} ${y}h7l17 -10M${x + 9} ${y}h7`;

/**
 * A symbol drawn on a horizontal line through (x, y), after IEC 60617 (shapes from memory, own drawing).
 *
 * @returns shapes; the line ends `symbolHalfWidth` left and right of x
 */
export function drawSymbol(kind: SymbolKind, x: number, y: number): DiagramShape[] {
  switch (kind) {
    case 'battery':
      return [
        stroke(
          `M${x - 9} ${y - 14}v28M${x + 3} ${y - 14}v28M${x - 3} ${y - 7}v14M${x + 9} ${y - 7}v14M${x + 9} ${y}h3`,
        ),
        words(x - 15, y - 8, '+', 'name'),
      ];
    case 'junction':
      return [solid(circle(x, y, 3.2))];
    case 'fuse':
      return [stroke(`${box(x, y, 11, 5)}M${x - 15} ${y}h30`)];
    case 'breaker':
      return [stroke(`${lever(x, y)}M${x + 4} ${y - 4}l8 8M${x + 4} ${y + 4}l8 -8`)];
    case 'disconnector':
      return [stroke(`${lever(x, y)}M${x + 9} ${y - 6}v12`)];
    case 'contactor':
      return [stroke(`${lever(x, y)}M${x + 9} ${y}a4 4 0 0 1 0 -8`)];
    case 'make-contact':
      return [stroke(lever(x, y))];
    case 'plug-socket':
      return [
        stroke(`M${x + 9} ${y}h-4M${x + 6} ${y - 6}a6 6 0 0 0 0 12`),
        solid(`M${x - 9} ${y - 2}h9v4h-9z`),
      ];
    case 'dc-converter':
      return [
        stroke(`${box(x, y, 17, 17)}M${x - 17} ${y + 17}l34 -34`),
        stroke(
          `M${x - 13} ${y - 10}h9M${x - 13} ${y - 7}h9M${x + 4} ${y + 8}h9M${x + 4} ${y + 11}h9`,
        ),
      ];
    case 'motor-controller':
      return [
        stroke(`${box(x, y, 17, 17)}M${x - 17} ${y + 17}l34 -34`),
        stroke(`M${x - 13} ${y - 9}h9M${x - 13} ${y - 6}h9M${x + 2} ${y + 12}h3v-6h4v6h4`),
      ];
    case 'motor':
      return [
        stroke(circle(x, y, 17)),
        words(x, y + 3, 'M', 'name'),
        stroke(`M${x - 6} ${y + 8}h12`),
      ];
    case 'resistor':
      return [stroke(box(x, y, 16, 6))];
    case 'load':
      return [
        stroke(
          `${circle(x, y, 11)}M${x - 7.8} ${y - 7.8}l15.6 15.6M${x - 7.8} ${y + 7.8}l15.6 -15.6M${x - 15} ${y}h4`,
        ),
      ];
    case 'socket':
      return [stroke(`M${x - 8} ${y}h4M${x + 4} ${y - 8}a8 8 0 0 0 0 16`)];
  }
}
