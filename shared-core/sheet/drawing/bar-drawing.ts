import type { SheetVoice } from '../sheet-voice.ts';
import { ink, type Drawing, type Mark } from './drawing.ts';

export interface BarDrawing {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly bars: readonly { readonly label: string; readonly value: number }[];
}

const width = 340;
const nameEnd = 138;
const top = 24;
const rowHeight = 17;

/** Lying bars with their figures, longest first. */
export function barDrawing(chart: BarDrawing, voice: SheetVoice): Drawing {
  const bars = chart.bars.toSorted((one, other) => other.value - one.value);
  const largest = Math.max(1e-9, ...bars.map(({ value }) => value));
  const sum = bars.reduce((total, { value }) => total + value, 0);
  const scale = (width - nameEnd - 74) / largest;
  const marks: Mark[] = [
    {
      kind: 'text',
      x: 0,
      y: 11,
      text: chart.title,
      size: 11,
      anchor: 'start',
      colour: ink.dark,
      bold: true,
    },
  ];
  bars.forEach(({ label, value }, index) => {
    const y = top + index * rowHeight;
    const length = Math.max(0.8, Math.round(value * scale * 10) / 10);
    marks.push(
      {
        kind: 'text',
        x: nameEnd - 6,
        y: y + 10,
        text: label,
        size: 9,
        anchor: 'end',
        colour: ink.dark,
      },
      { kind: 'path', d: `M${nameEnd} ${y + 1.5}h${length}v10h-${length}z`, fill: ink.first },
      {
        kind: 'text',
        x: nameEnd + length + 5,
        y: y + 10,
        text: `${voice.quantity(value, 'W·h')} · ${voice.quantity((100 * value) / (sum || 1), '%', 2)}`,
        size: 9,
        anchor: 'start',
        colour: ink.soft,
      },
    );
  });
  return {
    id: chart.id,
    title: chart.title,
    summary: chart.summary,
    width,
    height: Math.max(120, top + bars.length * rowHeight + 6),
    marks,
  };
}
