import type { RangeClass } from '#core/compare/inputs/input.ts';
import { texts } from './spoken.ts';

export interface CompareTexts {
  readonly spreadColumn: string;
  readonly chanceColumn: string;
  readonly spreadOf: (name: string) => string;
  readonly chanceOf: (name: string) => string;
  readonly barRange: (low: string, high: string) => string;
  readonly computing: string;
  readonly behind: Readonly<Record<'spread' | 'sensitivity' | 'band', string>>;
  readonly progress: (percent: string, left: string) => string;
  readonly seconds: (seconds: string) => string;
  readonly cancel: string;
  readonly stopped: string;
  readonly failed: (message: string) => string;
  readonly again: string;
  readonly outdated: string;
  readonly title: string;
  readonly lead: (cases: string) => string;
  readonly cases: string;
  readonly casesEntry: (cases: string) => string;
  readonly option: string;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly planned: string;
  readonly chance: string;
  readonly ends: string;
  readonly noGoal: string;
  readonly tenth: string;
  readonly error: (minutes: string) => string;
  readonly outlasts: (winner: string, loser: string, count: string, difference: string) => string;
  readonly even: (one: string, other: string) => string;
  readonly pairsTitle: string;
  readonly histogramOf: (name: string) => string;
  readonly histogramSummary: (
    name: string,
    low: string,
    likely: string,
    high: string,
    chance: string,
  ) => string;
  readonly classes: string;
  readonly classColumn: string;
  readonly countColumn: string;
  readonly from: string;
  readonly goal: string;
  readonly band: string;
  readonly bandKey: string;
  readonly assumptionsTitle: string;
  readonly assumptionsLead: string;
  readonly assumption: string;
  readonly lowValue: string;
  readonly highValue: string;
  readonly atLow: string;
  readonly atHigh: string;
  readonly swing: string;
  readonly perUnit: string;
  readonly share: string;
  readonly rangeFrom: string;
  readonly rangeClass: Readonly<Record<RangeClass, string>>;
  readonly measureFirst: (label: string) => string;
  readonly measureLeft: (percent: string) => string;
  readonly nothingToMeasure: string;
  readonly tornadoSummary: (name: string, parts: string) => string;
  readonly tornadoPart: (label: string, low: string, high: string) => string;
  readonly tornadoAxis: string;
  readonly barKey: string;
  readonly lowBar: string;
  readonly highBar: string;
  readonly spreadFormula: readonly string[];
  readonly spreadCases: string;
  readonly spreadSeed: string;
  readonly spreadInputs: string;
  readonly spreadValidity: string;
  readonly spreadSource: string;
  readonly lowExact: string;
  readonly likelyExact: string;
  readonly highExact: string;
}

export const compareTexts = texts('compare', {
  spreadColumn: 'Low to high',
  chanceColumn: 'Meets goal',
  spreadOf: (name) => `Spread of ${name}`,
  chanceOf: (name) => `Chance that ${name} meets the goal`,
  barRange: (low, high) => `eight times in ten between ${low} and ${high}`,
  computing: 'being computed',
  behind: {
    spread: 'Drawing the assumptions anew',
    sensitivity: 'Trying each assumption',
    band: 'Drawing the band',
  },
  progress: (percent, left) => `${percent} %, ${left} left`,
  seconds: (seconds) => `${seconds} s`,
  cancel: 'Cancel',
  stopped: 'Broken off. What stands here is of the plan before.',
  failed: (message) => `It could not be computed: ${message}`,
  again: 'Compute',
  outdated: 'of the plan before the last edit',
  title: 'How sure is it?',
  lead: (cases) =>
    `The same outing ${cases} times, with capacity, load, weather and everything else that nobody knows exactly drawn anew each time. One in ten runs is shorter than low, one in ten longer than high.`,
  cases: 'Cases',
  casesEntry: (cases) => `${cases} cases`,
  option: 'Option',
  low: 'Low',
  likely: 'Likely',
  high: 'High',
  planned: 'as planned',
  chance: 'Meets goal',
  ends: 'Mostly ended by',
  noGoal: 'no goal',
  tenth: '10th, 50th and 90th percentile, with the error of the sample',
  error: (minutes) => `± ${minutes}`,
  outlasts: (winner, loser, count, difference) =>
    `${winner} outlasts ${loser} in ${count} of 100 cases, usually by ${difference}.`,
  even: (one, other) => `${one} and ${other} last equally long.`,
  pairsTitle: 'Against each other, on the same cases',
  histogramOf: (name) => `Run times of ${name}`,
  histogramSummary: (name, low, likely, high, chance) =>
    `${name}: low ${low}, likely ${likely}, high ${high}${chance}.`,
  classes: 'Cases by run time',
  classColumn: 'Run time',
  countColumn: 'Cases',
  from: 'from',
  goal: 'goal',
  band: 'Spread',
  bandKey: 'shaded: eight cases in ten',
  assumptionsTitle: 'What matters most?',
  assumptionsLead:
    'Each assumption by itself from its low to its high value, the others as planned. The widest bar is what to measure first.',
  assumption: 'Assumption',
  lowValue: 'Low',
  highValue: 'High',
  atLow: 'Runs at low',
  atHigh: 'Runs at high',
  swing: 'Swing',
  perUnit: 'Per unit',
  share: 'Share',
  rangeFrom: 'Range from',
  rangeClass: {
    'usual-for-kind': 'usual for the kind',
    library: 'library part',
    entered: 'entered figure',
    'rated-points': 'maker’s table',
    measured: 'measured',
  },
  measureFirst: (label) => `Measure first: ${label}.`,
  measureLeft: (percent) => `Once it is known, ${percent} % of the width is left.`,
  nothingToMeasure: 'Nothing that can be measured moves the run time.',
  tornadoSummary: (name, parts) => `Run time of ${name} by assumption. ${parts}`,
  tornadoPart: (label, low, high) => `${label}: ${low} to ${high}.`,
  tornadoAxis: 'Run time',
  barKey: 'Hatched: at the low value. Filled: at the high value.',
  lowBar: 'at the low value',
  highBar: 'at the high value',
  spreadFormula: [
    'Each input is drawn from its range, the outing is run, the run times are sorted.',
    'Low = 10th, likely = 50th, high = 90th percentile',
  ],
  spreadCases: 'Cases',
  spreadSeed: 'Start of the draws',
  spreadInputs: 'Ranges, sources and effects: place Run, “What matters most?”',
  spreadValidity: 'inputs independent of each other; ranges as stated with each',
  spreadSource:
    'Latin hypercube sampling (McKay, Beckman & Conover, Technometrics 21 (1979) 239); ranges by class of source.',
  lowExact: 'Low',
  likelyExact: 'Likely',
  highExact: 'High',
});
