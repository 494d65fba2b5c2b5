import type { Drawing, Mark } from '../drawing/drawing.ts';
import { element, type MarkupNode } from './node.ts';

/** A drawing as SVG, named for readers who do not see it. */
export function drawingMarkup(drawing: Drawing): MarkupNode {
  const { width, height, title, summary, marks } = drawing;
  return element(
    'svg',
    'drawing',
    [element('title', '', [title]), element('desc', '', [summary]), ...marks.map(markMarkup)],
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width: String(width),
      height: String(height),
      preserveAspectRatio: 'xMinYMin meet',
      role: 'img',
      'aria-label': `${title}. ${summary}`,
    },
  );
}

function markMarkup(mark: Mark): MarkupNode {
  if (mark.kind === 'text') {
    return element('text', '', [mark.text], {
      x: String(mark.x),
      y: String(mark.y),
      'font-size': String(mark.size),
      'text-anchor': mark.anchor,
      fill: mark.colour,
      ...(mark.bold === true ? { 'font-weight': '600' } : {}),
    });
  }
  const { stroke } = mark;
  return element('path', '', [], {
    d: mark.d,
    fill: mark.fill ?? 'none',
    ...(mark.fillOpacity === undefined ? {} : { 'fill-opacity': String(mark.fillOpacity) }),
    ...(stroke === undefined
      ? {}
      : {
          stroke: stroke.colour,
          'stroke-width': String(stroke.width),
          'stroke-linejoin': 'round',
          ...(stroke.dash === undefined ? {} : { 'stroke-dasharray': stroke.dash }),
        }),
  });
}
