import { drawingSvg } from '#core/sheet/drawing/drawing-svg.ts';
import { ink, type Mark } from '#core/sheet/drawing/drawing.ts';
import { niceTicks } from '#core/sheet/drawing/nice-ticks.ts';
import type { Language } from '#core/plan/language.ts';
import { lightSeries, seriesLook } from '../styles/series.ts';
import { formatFigure } from '../text/format.ts';
import type { ChartWindow, LinePicture } from './chart-series.ts';
import { markedPoints } from './line-data.ts';
import { markerPath } from './marker-path.ts';
import { svgKey } from './svg-key.ts';
import { label, stroked } from './svg-marks.ts';
import { thinSeries, valueAtX, type Point } from './thin-series.ts';

const width = 960;
const height = 540;
const left = 64;
const right = 24;
const bottom = 56;
const bucketCount = 600;

const colourOf = (index: number): string => lightSeries[seriesLook(index).number - 1] ?? ink.dark;
const round = (value: number): number => Math.round(value * 10) / 10;

/** The part of a line inside the window, cut at its edges. */
function within(x: Float64Array, y: Float64Array, { from, to }: ChartWindow): Point[] {
  const edge = (at: number): Point[] => {
    const value = valueAtX(x, y, at);
    return value === null ? [] : [{ x: at, y: value }];
  };
  const inside = thinSeries(x, y, from, to, bucketCount).filter((p) => p.x > from && p.x < to);
  return [...edge(from), ...inside, ...edge(to)];
}

/** A line chart as an SVG file, for paper and light ground: same lines, dashes, markers, bands and levels as on screen. */
export function lineSvg(picture: LinePicture, language: Language): string {
  const { title, summary, xAxis, yAxis, bands = [], levels = [], window } = picture;
  const lines = picture.series.map((entry) => ({
    entry,
    points: within(entry.x, entry.y, window),
  }));
  const veils = bands.map(({ index, x, low, high }) => {
    const upper = within(x.subarray(0, high.length), high, window);
    const lower = within(x.subarray(0, low.length), low, window);
    return { index, points: [...upper, ...lower.toReversed()] };
  });
  const main = picture.series.filter(({ role }) => role === 'main');
  const key = svgKey(main, colourOf, left, 46, width - right);
  const top = key.bottom + 14;
  const values = [
    ...lines.flatMap(({ points }) => points.map(({ y }) => y)),
    ...veils.flatMap(({ points }) => points.map(({ y }) => y)),
    ...levels.map(({ y }) => y),
  ];
  const lowest = Math.min(...values, Infinity);
  const highest = Math.max(...values, -Infinity);
  const [low, high] = lowest <= highest ? [lowest, highest] : [0, 1];
  const room = 0.04 * Math.max(high - low, 1e-6 + 0.01 * Math.abs(high));
  const xAt = (x: number): number =>
    round(left + ((width - left - right) * (x - window.from)) / (window.to - window.from));
  const yAt = (y: number): number =>
    round(height - bottom - ((height - top - bottom) * (y - low + room)) / (high - low + 2 * room));
  const path = (points: readonly Point[]): string =>
    points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${xAt(x)} ${yAt(y)}`).join('');

  const marks: Mark[] = [
    label(left, 24, title, 'start', ink.dark, 15, true),
    ...key.marks,
    ...niceTicks(low - room, high + room, 6).flatMap((tick): Mark[] => [
      stroked(`M${left} ${yAt(tick)}H${width - right}`, ink.line, 0.8),
      label(left - 8, yAt(tick) + 4, formatFigure(tick, language, 4), 'end'),
    ]),
    ...niceTicks(window.from, window.to, 8).flatMap((tick): Mark[] => [
      stroked(`M${xAt(tick)} ${height - bottom}v5`, ink.soft, 1),
      label(xAt(tick), height - bottom + 20, formatFigure(tick, language, 4), 'middle'),
    ]),
    stroked(`M${left} ${top}V${height - bottom}H${width - right}`, ink.soft, 1),
    label(left, height - 12, `↑ ${yAxis.label} [${yAxis.unit}]`, 'start'),
    label(width - right, height - 12, `${xAxis.label} [${xAxis.unit}] →`, 'end'),
    ...veils
      .filter(({ points }) => points.length > 2)
      .map(({ index, points }): Mark => ({
        kind: 'path',
        d: `${path(points)}Z`,
        fill: colourOf(index),
        fillOpacity: 0.17,
      })),
    ...levels.flatMap(({ label: name, y }): Mark[] => [
      stroked(`M${left} ${yAt(y)}H${width - right}`, ink.soft, 1, [6, 4]),
      label(left + 6, yAt(y) - 5, name, 'start'),
    ]),
  ];
  for (const { entry, points } of lines.toReversed()) {
    if (points.length === 0) continue;
    const look = seriesLook(entry.index);
    const isMain = entry.role === 'main';
    const colour = entry.role === 'ghost' ? ink.soft : colourOf(entry.index);
    const dash = entry.role === 'ghost' ? [2, 2] : look.dash;
    marks.push(stroked(path(points), colour, isMain ? 2 : 1, dash));
    if (!isMain) continue;
    for (const { x, y } of markedPoints(points, window, entry.index))
      marks.push(markerPath(look.marker, xAt(x), yAt(y), colour));
  }
  for (const { x, y, index } of picture.events ?? []) {
    if (x < window.from || x > window.to) continue;
    const d = `M${xAt(x) - 6} ${yAt(y)}a6 6 0 1 0 12 0a6 6 0 1 0 -12 0z`;
    marks.push({ kind: 'path', d, fill: '#ffffff', stroke: { colour: colourOf(index), width: 2 } });
  }
  return drawingSvg({ id: 'chart', title, summary, width, height, marks });
}
