import type { OneLineDiagram } from '../../wiring/diagram-layout.ts';
import type { DiagramShape, ShapeRole } from '../../wiring/diagram-shapes.ts';
import { ink, type Drawing, type Mark } from './drawing.ts';

const colours: Readonly<Record<ShapeRole, string>> = {
  wire: ink.dark,
  symbol: ink.dark,
  name: ink.dark,
  size: ink.soft,
  value: ink.dark,
  good: ink.third,
  warn: ink.warn,
  stop: ink.stop,
};

/** The one-line diagram of the place Wiring as a drawing of the sheet. */
export function diagramDrawing(diagram: OneLineDiagram, title: string): Drawing {
  const { width, height, shapes, summary } = diagram;
  return { id: 'one-line', title, summary, width, height, marks: shapes.map(markOf) };
}

function markOf(shape: DiagramShape): Mark {
  const colour = colours[shape.role];
  if (shape.kind === 'text') {
    const isName = shape.role === 'name';
    const { x, y, text, anchor } = shape;
    return { kind: 'text', x, y, text, anchor, colour, size: isName ? 12 : 10.5, bold: isName };
  }
  if (shape.filled) return { kind: 'path', d: shape.d, fill: colour };
  const stroke = { colour, width: shape.role === 'wire' ? 1.8 : 1.5 };
  return {
    kind: 'path',
    d: shape.d,
    stroke: shape.dashed ? { ...stroke, dash: '5 4' } : stroke,
  };
}
