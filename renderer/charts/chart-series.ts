/** One line of a chart. */
export interface ChartSeries {
  readonly id: string;
  readonly name: string;
  /** Position of the option, for colour, dash and marker. */
  readonly index: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** `main` carries a label; `detail` is a thin line of the same colour; `ghost` is grey. */
  readonly role: 'main' | 'detail' | 'ghost';
}

/** The range in which eight of ten cases lie; an edge ends before `x` does where that share of them has ended. */
export interface ChartBand {
  readonly id: string;
  readonly index: number;
  readonly x: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** A level that means something, drawn across the chart. */
export interface ChartLevel {
  readonly id: string;
  readonly label: string;
  readonly y: number;
}

/** A point where something happened. */
export interface ChartEvent {
  readonly id: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly index: number;
}

export interface ChartAxis {
  readonly label: string;
  readonly unit: string;
}

/** The stretch of the x axis on screen. */
export interface ChartWindow {
  readonly from: number;
  readonly to: number;
}

/** What a line chart shows, on screen and as a drawing. */
export interface LinePicture {
  readonly title: string;
  /** What a look at the chart tells, in words. */
  readonly summary: string;
  readonly xAxis: ChartAxis;
  readonly yAxis: ChartAxis;
  readonly series: readonly ChartSeries[];
  readonly bands?: readonly ChartBand[];
  readonly levels?: readonly ChartLevel[];
  readonly events?: readonly ChartEvent[];
  readonly window: ChartWindow;
}

/** Shortest stretch that can be shown, as a share of the whole. */
const smallestShare = 0.002;

/** A window after zooming by `factor` (below 1 goes in) about `centre`, kept inside `whole`. */
export function zoomed(
  window: ChartWindow,
  whole: ChartWindow,
  factor: number,
  centre = (window.from + window.to) / 2,
): ChartWindow {
  const full = whole.to - whole.from;
  const width = Math.min(full, Math.max(smallestShare * full, (window.to - window.from) * factor));
  const share = (centre - window.from) / (window.to - window.from);
  return moved({ from: centre - share * width, to: centre + (1 - share) * width }, whole, 0);
}

/** A window shifted by a share of its width, kept inside `whole`. */
export function moved(window: ChartWindow, whole: ChartWindow, share: number): ChartWindow {
  const width = window.to - window.from;
  const from = Math.min(
    Math.max(whole.from, window.from + share * width),
    Math.max(whole.from, whole.to - width),
  );
  return { from, to: from + width };
}
