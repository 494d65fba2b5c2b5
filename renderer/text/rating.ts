import { texts } from './spoken.ts';

export interface RatingTexts {
  readonly row: string;
  readonly summary: Readonly<Record<'exponent', string>> & {
    readonly points: (count: number) => string;
    readonly curves: (count: number) => string;
  };
  readonly title: (name: string) => string;
  readonly lead: string;
  readonly kind: string;
  readonly kinds: Readonly<Record<'exponent' | 'points' | 'curves', string>>;
  readonly kindLeads: Readonly<Record<'exponent' | 'points' | 'curves', string>>;
  readonly changed: string;
  readonly point: (at: number) => string;
  readonly addPoint: string;
  readonly removePoint: (at: number) => string;
  readonly curve: (at: number) => string;
  readonly addCurve: string;
  readonly removeCurve: (at: number) => string;
  readonly curvePoints: string;
  readonly curveHelp: string;
  readonly curveCount: (count: number, minutes: string) => string;
  readonly curveWrong: (line: number) => string;
  readonly curveFew: string;
  readonly curveMany: string;
  readonly done: string;
}

export const ratingTexts = texts('rating', {
  row: 'Capacity at other rates',
  summary: {
    exponent: 'by one exponent',
    points: (count) => `by ${count} rating points`,
    curves: (count) => (count === 1 ? 'by 1 discharge curve' : `by ${count} discharge curves`),
  },
  title: (name) => `Capacity at other rates: ${name}`,
  lead: 'A block gives less when it is emptied faster. Say how much less with whatever its sheet offers; the table beats the exponent, curves beat both.',
  kind: 'Known from',
  kinds: { exponent: 'One exponent', points: 'Rating table', curves: 'Discharge curves' },
  kindLeads: {
    exponent: 'When the sheet gives one capacity only.',
    points: 'Capacity at two to twelve discharge times, as most sheets of lead blocks list them.',
    curves: 'Voltage against time at constant current, read off the sheet or measured.',
  },
  changed: 'Rate behaviour',
  point: (at) => `point ${at}`,
  addPoint: 'Add point',
  removePoint: (at) => `Remove point ${at}`,
  curve: (at) => `Curve ${at}`,
  addCurve: 'Add curve',
  removeCurve: (at) => `Remove curve ${at}`,
  curvePoints: 'Minutes and volts',
  curveHelp:
    'One point a line: minutes, then volts, with a space, tab or semicolon between. Copied columns of a table fit.',
  curveCount: (count, minutes) => `${count} points over ${minutes}`,
  curveWrong: (line) => `Line ${line} is not minutes and volts. Write it as 60 12.4`,
  curveFew: 'A curve needs at least three points.',
  curveMany: 'A curve takes at most 400 points. Leave some out.',
  done: 'Done',
});
