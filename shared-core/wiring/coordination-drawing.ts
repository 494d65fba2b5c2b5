import type { Language } from '../plan/language.ts';
import { formatSignificant } from '../units/index.ts';
import { longestS, shortestS } from './coordination.ts';
import type { Coordination, CurrentMark, CurvePoint } from './coordination.ts';

/** What a shape of the chart means; the place and the file choose colours by it. */
export type CoordinationRole =
  | 'grid'
  | 'minor'
  | 'scale'
  | 'band'
  | 'fuse'
  | 'rated'
  | 'harmed'
  | 'mark'
  | 'lasts'
  | 'leader'
  | 'name';

export type CoordinationShape =
  | { readonly kind: 'path'; readonly d: string; readonly role: CoordinationRole }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly role: CoordinationRole;
    };

export interface CoordinationDrawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly CoordinationShape[];
}

export interface CoordinationLabels {
  readonly current: string;
  readonly time: string;
  readonly band: string;
  readonly rated: string;
  readonly harmed: string;
  readonly marks: Readonly<Record<CurrentMark['kind'], string>>;
}

const width = 640;
const plot = { left: 58, right: 624, top: 70, bottom: 386 } as const;
const height = 452;
/** Width of a letter of the labels, generous, so that they never touch. */
const letter = 6.4;

/**
 * The time-current chart as shapes, so that screen, sheet and file draw the same picture: both axes logarithmic, the
 * fuse as a band, the wire as two lines, the currents that occur as upright marks.
 */
export function drawCoordination(
  chart: Coordination,
  labels: CoordinationLabels,
  language: Language,
): CoordinationDrawing {
  const currents = [
    ...chart.marks.map((mark) => mark.currentA),
    chart.fuse.ratedA,
    ...chart.fuseLatest.map((point) => point.currentA),
  ];
  const lowA = 10 ** Math.floor(Math.log10(Math.min(...currents) * 0.8));
  const highA = Math.max(...currents) * 1.25;
  const x = (currentA: number): number =>
    plot.left + ((plot.right - plot.left) * Math.log(currentA / lowA)) / Math.log(highA / lowA);
  const y = (timeS: number): number =>
    plot.top +
    ((plot.bottom - plot.top) * Math.log(longestS / timeS)) / Math.log(longestS / shortestS);
  const line = (points: readonly CurvePoint[]): string =>
    points
      .map(
        ({ currentA, timeS }, index) =>
          `${index === 0 ? 'M' : 'L'}${x(currentA).toFixed(1)} ${y(timeS).toFixed(1)}`,
      )
      .join('');
  return {
    width,
    height,
    shapes: [
      ...grid(lowA, highA, x, y, labels, language),
      { kind: 'path', role: 'band', d: bandPath(chart, line) },
      { kind: 'path', role: 'fuse', d: line(chart.fuseEarliest) },
      { kind: 'path', role: 'fuse', d: line(chart.fuseLatest) },
      { kind: 'path', role: 'rated', d: line(chart.wireRated) },
      { kind: 'path', role: 'harmed', d: line(chart.wireHarmed) },
      ...marks(chart.marks, labels, x, y),
      ...legend(labels),
    ],
  };
}

/** Between the earliest and the latest opening; where a latest is not promised, up to the top. */
function bandPath(chart: Coordination, line: (points: readonly CurvePoint[]) => string): string {
  const [firstSure] = chart.fuseLatest;
  const [firstEver] = chart.fuseEarliest;
  if (firstEver === undefined) return '';
  const top = [firstSure, firstEver].flatMap((point) =>
    point === undefined ? [] : [{ currentA: point.currentA, timeS: longestS }],
  );
  return `${line([...chart.fuseEarliest, ...chart.fuseLatest.toReversed(), ...top])}Z`;
}

function grid(
  lowA: number,
  highA: number,
  x: (currentA: number) => number,
  y: (timeS: number) => number,
  labels: CoordinationLabels,
  language: Language,
): CoordinationShape[] {
  const say = (value: number): string => formatSignificant(value, 3, language);
  const { left, right, top, bottom } = plot;
  const shapes: CoordinationShape[] = [];
  for (const [decade, step] of logSteps(lowA, highA)) {
    const at = x(decade * step).toFixed(1);
    shapes.push({
      kind: 'path',
      role: step === 1 ? 'grid' : 'minor',
      d: `M${at} ${top}V${bottom}`,
    });
    if (step === 1 || (step !== 3 && [2, 5].includes(step) && highA / lowA < 200))
      shapes.push(label(Number(at), bottom + 16, say(decade * step), 'middle', 'scale'));
  }
  for (const [decade, step] of logSteps(shortestS, longestS)) {
    const at = y(decade * step);
    shapes.push({
      kind: 'path',
      role: step === 1 ? 'grid' : 'minor',
      d: `M${left} ${at.toFixed(1)}H${right}`,
    });
    if (step === 1) shapes.push(label(left - 6, at + 4, say(decade), 'end', 'scale'));
  }
  shapes.push(label(right, bottom + 32, `${labels.current}, A`, 'end', 'scale'));
  shapes.push(label(left - 6, top - 12, `${labels.time}, s`, 'end', 'scale'));
  return shapes;
}

/** Decades and the steps 1 to 9 within them, inside a range. */
function logSteps(low: number, high: number): [decade: number, step: number][] {
  const found: [number, number][] = [];
  for (let power = Math.floor(Math.log10(low)); 10 ** power <= high; power += 1) {
    for (let step = 1; step <= 9; step += 1) {
      const value = 10 ** power * step;
      if (value >= low * (1 - 1e-9) && value <= high) found.push([10 ** power, step]);
    }
  }
  return found;
}

function marks(
  all: readonly CurrentMark[],
  labels: CoordinationLabels,
  x: (currentA: number) => number,
  y: (timeS: number) => number,
): CoordinationShape[] {
  /** Where the labels of each line above the plot end; a label goes into the first line with room. */
  const ends = [0, 0, 0, 0];
  return all
    .toSorted((one, other) => one.currentA - other.currentA)
    .flatMap((mark): CoordinationShape[] => {
      const at = x(mark.currentA);
      const head = mark.timeS === null ? plot.top : y(Math.min(longestS, mark.timeS));
      const text = labels.marks[mark.kind];
      const half = (text.length * letter) / 2;
      const middle = Math.min(width - half - 2, Math.max(plot.left + half - 8, at));
      const free = ends.findIndex((end) => end <= middle - half);
      const row = free < 0 ? ends.length - 1 : free;
      ends[row] = middle + half + 6;
      const labelY = plot.top - 8 - 14 * row;
      const cap = `M${(at - 5).toFixed(1)} ${head.toFixed(1)}h10`;
      const stem = `M${at.toFixed(1)} ${plot.bottom}V${head.toFixed(1)}`;
      return [
        { kind: 'path', role: 'leader', d: `M${at.toFixed(1)} ${head.toFixed(1)}V${labelY + 3}` },
        mark.timeS === null
          ? { kind: 'path', role: 'mark', d: stem }
          : { kind: 'path', role: 'lasts', d: `${stem}${cap}` },
        label(middle, labelY, text, 'middle', 'name'),
      ];
    });
}

function legend(labels: CoordinationLabels): CoordinationShape[] {
  const y = height - 12;
  let x: number = plot.left;
  return (['fuse', 'rated', 'harmed'] as const).flatMap((role): CoordinationShape[] => {
    const text = role === 'fuse' ? labels.band : labels[role];
    const start = x;
    x += 38 + text.length * letter + 10;
    return [
      { kind: 'path', role, d: `M${start} ${y - 4}h28` },
      label(start + 34, y, text, 'start', 'scale'),
    ];
  });
}

function label(
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end',
  role: CoordinationRole,
): CoordinationShape {
  return { kind: 'text', x: Math.round(x * 10) / 10, y, text, anchor, role };
}
