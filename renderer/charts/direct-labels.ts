import type { Chart, Plugin } from 'chart.js';

/** What a dataset carries for its label at the end of the line. */
export interface LabelledDataset {
  readonly directLabel?: string;
  /** The same for a level: stands at its left end. */
  readonly startLabel?: string;
}

const lineHeight = 15;

/** Options may be functions of the context in general; here they are plain colours. */
const colourOf = (option: unknown): string => (typeof option === 'string' ? option : '');

/** Writes a word with the ground around it, so that lines below it do not strike it through. */
function write(chart: Chart<'line'>, text: string, x: number, y: number, colour: unknown): void {
  const { ctx } = chart;
  ctx.lineWidth = 4;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = colourOf(chart.options.backgroundColor);
  ctx.strokeText(text, x, y);
  ctx.fillStyle = colourOf(colour);
  ctx.fillText(text, x, y);
}

/** Writes the name of each line at its last point inside the chart, moved apart where they would touch. */
export const directLabels: Plugin<'line'> = {
  id: 'directLabels',
  afterDatasetsDraw(chart: Chart<'line'>) {
    const { ctx, chartArea } = chart;
    const labels = chart.data.datasets
      .flatMap((dataset, index) => {
        const text = (dataset as LabelledDataset).directLabel;
        const points = chart.getDatasetMeta(index).data;
        const last = points.findLast(({ x }) => x <= chartArea.right + 1 && x >= chartArea.left);
        if (text === undefined || last === undefined) return [];
        return [{ text, x: last.x, y: last.y }];
      })
      .toSorted((one, other) => one.y - other.y);
    const family = chart.options.font?.family ?? 'sans-serif';
    ctx.save();
    ctx.textBaseline = 'middle';
    ctx.font = `11px ${family}`;
    chart.data.datasets.forEach((dataset, index) => {
      const { startLabel } = dataset as LabelledDataset;
      const y = chart.getDatasetMeta(index).data[0]?.y;
      if (startLabel === undefined || y === undefined) return;
      write(chart, startLabel, chartArea.left + 4, y - 9, dataset.borderColor);
    });
    ctx.font = `600 12px ${family}`;
    const placed: { left: number; right: number; y: number }[] = [];
    for (const label of labels) {
      const width = ctx.measureText(label.text).width;
      const left = Math.min(
        Math.max(chartArea.left + 4, label.x - width - 8),
        chartArea.right - width - 4,
      );
      let y = Math.max(chartArea.top + 8, label.y - 12);
      for (const other of placed) {
        const touches = left < other.right && left + width > other.left;
        if (touches && Math.abs(other.y - y) < lineHeight) y = other.y + lineHeight;
      }
      placed.push({ left, right: left + width, y });
      write(chart, label.text, left, y, chart.options.color);
    }
    ctx.restore();
  },
};

/** Paints the ground, so that a picture of the chart is no transparent one. */
export const paintedGround: Plugin = {
  id: 'paintedGround',
  beforeDraw(chart) {
    const { ctx, width, height } = chart;
    ctx.save();
    ctx.fillStyle = colourOf(chart.options.backgroundColor);
    ctx.fillRect(0, 0, width, height);
    ctx.restore();
  },
};
