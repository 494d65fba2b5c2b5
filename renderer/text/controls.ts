import { texts } from './spoken.ts';

export interface ControlTexts {
  readonly notKnown: string;
  readonly assumed: (value: string) => string;
  /** The same where there is little room. */
  readonly assumedShort: (value: string) => string;
  /** Under a figure that is assumed: how far off it may be. */
  readonly inPractice: (low: string, high: string) => string;
  readonly setNotKnown: string;
  /** How to say that a figure is not known, where no button stands for it. */
  readonly emptyWhenUnknown: string;
  /** Where the words of the unit reader are English only. */
  readonly mistake: (problem: string, remedy: string, unit: string) => string;
  readonly needed: (range: string) => string;
  readonly outOfRange: (range: string) => string;
  readonly whole: (range: string) => string;
  readonly fromTo: (low: string, high: string, above: boolean) => string;
  readonly ambiguous: (text: string) => string;
  readonly about: (title: string) => string;
  readonly close: string;
  readonly working: string;
  readonly openWorking: (label: string) => string;
  readonly inputs: string;
  readonly steps: string;
  readonly source: string;
  readonly validity: string;
  readonly copyFull: string;
  readonly copied: string;
  readonly likely: string;
  readonly none: string;
  readonly goToField: string;
}

export const controlTexts = texts('controls', {
  notKnown: 'not known',
  assumed: (value) => `not known · ${value} assumed`,
  assumedShort: (value) => `${value} assumed`,
  inPractice: (low, high) => `${low} to ${high} in practice`,
  setNotKnown: 'Set to not known',
  emptyWhenUnknown: 'Not known? Empty the field, and a usual value is taken.',
  mistake: (problem, remedy) => `${problem} ${remedy}`,
  needed: (range) => `A value is needed here: ${range}.`,
  outOfRange: (range) => `Outside of what is possible. Type a value ${range}.`,
  whole: (range) => `Only whole numbers count here, ${range}.`,
  fromTo: (low, high, above) => `${above ? 'above' : 'from'} ${low} to ${high}`,
  ambiguous: (text) => `“${text}” can be read two ways. Which one is meant?`,
  about: (title) => `About: ${title}`,
  close: 'Close',
  working: 'Working',
  openWorking: (label) => `${label}: show the working`,
  inputs: 'With',
  steps: 'Step by step',
  source: 'Source',
  validity: 'Holds for',
  copyFull: 'Copy full figure',
  copied: 'Copied',
  likely: 'likely',
  none: 'None',
  goToField: 'Go to the field',
});
