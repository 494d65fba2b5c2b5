import type { DischargeCurve } from '#core/plan/schema/block.ts';

/** Points of a discharge curve as text, or the number of the line [from 1] that is none. */
export type ReadCurve =
  | { readonly kind: 'points'; readonly points: DischargeCurve['points'] }
  | { readonly kind: 'wrong'; readonly line: number }
  | { readonly kind: 'few' }
  | { readonly kind: 'many' };

/** Counts the schema allows. */
const fewest = 3;
const most = 400;

/** Reads lines of minutes and volts; a comma is a decimal mark, columns are parted by blanks, tabs or semicolons. */
export function readCurve(text: string): ReadCurve {
  const points: DischargeCurve['points'] = [];
  for (const [index, line] of text.split('\n').entries()) {
    const words = line.trim().split(/[\s;]+/);
    if (words.length === 1 && words[0] === '') continue;
    const [timeMin, voltageV] = words.map((word) => Number(word.replace(',', '.')));
    const isPoint =
      words.length === 2 &&
      timeMin !== undefined &&
      voltageV !== undefined &&
      timeMin >= 0 &&
      timeMin <= 12000 &&
      voltageV >= 0 &&
      voltageV <= 200;
    if (!isPoint) return { kind: 'wrong', line: index + 1 };
    points.push({ timeMin, voltageV });
  }
  if (points.length < fewest) return { kind: 'few' };
  if (points.length > most) return { kind: 'many' };
  return { kind: 'points', points: points.toSorted((one, other) => one.timeMin - other.timeMin) };
}
