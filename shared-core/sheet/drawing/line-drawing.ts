import type { SheetVoice } from '../sheet-voice.ts';
import { ink, type Drawing, type Mark, type Stroke } from './drawing.ts';
import { niceTicks } from './nice-ticks.ts';
import { thinLine } from './thin-line.ts';

export interface DrawnLine {
  readonly name: string;
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly stroke: Stroke;
}

export interface LineDrawing {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly lines: readonly DrawnLine[];
  /** Straight lines across, such as a cutoff. */
  readonly levels?: readonly { readonly label: string; readonly y: number }[];
  /** The axis reaches at least so far. */
  readonly yLow?: number;
  readonly yHigh?: number;
}

const width = 340;
const height = 196;
const left = 40;
const right = 12;
const top = 34;
const bottom = 34;

/** A small chart for paper: one quantity against time, hairline grid, names beside the lines. */
export function lineDrawing(chart: LineDrawing, voice: SheetVoice): Drawing {
  const { id, title, summary, lines, levels = [] } = chart;
  const thin = lines.map((line) => ({ ...line, points: thinLine(line.x, line.y, 160) }));
  const every = thin.flatMap(({ points }) => points);
  const xHigh = Math.max(1e-9, ...every.map(([x]) => x));
  const yValues = [...every.map(([, y]) => y), ...levels.map(({ y }) => y)];
  const lowest = Math.min(chart.yLow ?? Infinity, ...yValues);
  const highest = Math.max(chart.yHigh ?? -Infinity, ...yValues);
  const [yLow, yHigh] = padded(lowest, highest, chart);
  const xAt = (x: number) => left + ((width - left - right) * x) / xHigh;
  const yAt = (y: number) =>
    height - bottom - ((height - top - bottom) * (y - yLow)) / (yHigh - yLow);
  const marks: Mark[] = [
    {
      kind: 'text',
      x: 0,
      y: 11,
      text: title,
      size: 11,
      anchor: 'start',
      colour: ink.dark,
      bold: true,
    },
    { kind: 'text', x: 0, y: 25, text: chart.yLabel, size: 9, anchor: 'start', colour: ink.soft },
    {
      kind: 'text',
      x: width - right,
      y: height - 3,
      text: chart.xLabel,
      size: 9,
      anchor: 'end',
      colour: ink.soft,
    },
  ];
  for (const tick of niceTicks(yLow, yHigh, 4)) {
    const y = round(yAt(tick));
    marks.push(
      {
        kind: 'path',
        d: `M${left} ${y}H${width - right}`,
        stroke: { colour: ink.line, width: 0.6 },
      },
      {
        kind: 'text',
        x: left - 5,
        y: y + 3,
        text: voice.number(tick),
        size: 9,
        anchor: 'end',
        colour: ink.soft,
      },
    );
  }
  for (const tick of niceTicks(0, xHigh, 6)) {
    const x = round(xAt(tick));
    marks.push(
      {
        kind: 'path',
        d: `M${x} ${height - bottom}v4`,
        stroke: { colour: ink.soft, width: 0.8 },
      },
      {
        kind: 'text',
        x,
        y: height - bottom + 14,
        text: voice.number(tick),
        size: 9,
        anchor: 'middle',
        colour: ink.soft,
      },
    );
  }
  marks.push({
    kind: 'path',
    d: `M${left} ${height - bottom}H${width - right}`,
    stroke: { colour: ink.soft, width: 0.8 },
  });
  for (const level of levels) {
    const y = round(yAt(level.y));
    marks.push(
      {
        kind: 'path',
        d: `M${left} ${y}H${width - right}`,
        stroke: { colour: ink.stop, width: 1, dash: '2 2.5' },
      },
      {
        kind: 'text',
        x: left + 4,
        // Below the axis' last tick there is no room under the line.
        y: y + 11 > height - bottom ? y - 4 : y + 10,
        text: level.label,
        size: 9,
        anchor: 'start',
        colour: ink.stop,
      },
    );
  }
  thin.forEach(({ points, stroke }) => {
    const d = points.map(
      ([x, y], at) => `${at === 0 ? 'M' : 'L'}${round(xAt(x))} ${round(yAt(y))}`,
    );
    if (d.length > 1) marks.push({ kind: 'path', d: d.join(''), stroke });
  });
  if (lines.length > 1) marks.push(...legend(lines));
  return { id, title, summary, width, height, marks };
}

function padded(low: number, high: number, chart: LineDrawing): [number, number] {
  const span = Math.max(high - low, 1e-6 + Math.abs(high) * 0.01);
  return [
    chart.yLow === undefined ? low - 0.06 * span : Math.min(low, chart.yLow),
    chart.yHigh === undefined ? high + 0.06 * span : Math.max(high, chart.yHigh),
  ];
}

/** Names with a piece of each line, along the top at the right. */
function legend(lines: readonly DrawnLine[]): Mark[] {
  const marks: Mark[] = [];
  let x = width - right;
  for (const { name, stroke } of lines.toReversed()) {
    marks.push({ kind: 'text', x, y: 25, text: name, size: 9, anchor: 'end', colour: ink.dark });
    x -= 5.2 * name.length + 6;
    marks.push({ kind: 'path', d: `M${round(x - 18)} 22h18`, stroke });
    x -= 30;
  }
  return marks;
}

const round = (value: number): number => Math.round(value * 10) / 10;
