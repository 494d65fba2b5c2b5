import type { RejectRule } from '#core/compare/search/candidate.ts';
import type { ChargerChoice } from '#core/compare/search/usual-wishes.ts';
import { texts } from './spoken.ts';

/** What packs are compared by in chart and table. */
export type SearchFigure = 'runTimeMin' | 'massKg' | 'price' | 'chargeHours';

export interface SearchTexts {
  readonly open: string;
  readonly title: string;
  readonly lead: string;
  readonly wishes: string;
  readonly leastVoltage: string;
  readonly mostVoltage: string;
  readonly goal: string;
  readonly mass: string;
  readonly price: string;
  readonly length: string;
  readonly width: string;
  readonly height: string;
  readonly bay: string;
  readonly parallel: string;
  readonly noLimit: string;
  readonly chemistries: string;
  readonly chargers: string;
  readonly chargerChoice: Readonly<Record<ChargerChoice, string>>;
  readonly start: string;
  readonly cancel: string;
  readonly close: string;
  readonly screening: string;
  readonly trying: string;
  readonly progress: (percent: string, left: string) => string;
  readonly broken: string;
  readonly failed: (message: string) => string;
  readonly stale: string;
  readonly empty: string;
  readonly none: string;
  readonly bounds: string;
  readonly found: (found: string, candidates: string) => string;
  readonly notRun: (count: string) => string;
  readonly figures: Readonly<Record<SearchFigure, string>>;
  readonly across: string;
  readonly up: string;
  readonly chartKey: string;
  readonly chartSummary: (found: string, best: string, parts: string) => string;
  readonly pack: string;
  readonly best: string;
  readonly bestYes: string;
  readonly onlyBest: string;
  readonly bayColumn: string;
  readonly bayWords: Readonly<Record<'fits' | 'not-found' | 'unknown', string>>;
  readonly rough: string;
  readonly take: string;
  readonly takeNamed: (name: string) => string;
  readonly taken: (name: string) => string;
  readonly undo: string;
  readonly full: string;
  readonly chosen: string;
  readonly fellOut: string;
  readonly rule: string;
  readonly count: string;
  readonly rules: Readonly<Record<RejectRule, string>>;
  readonly care: string;
}

export const searchTexts = texts('search', {
  open: 'Find packs that fit…',
  title: 'Find packs that fit',
  lead: 'Every block of the library and of your own parts, in every number in series and in parallel, is held against these wishes; what passes is run on the outing.',
  wishes: 'Wishes',
  leastVoltage: 'Nominal voltage from',
  mostVoltage: 'Nominal voltage to',
  goal: 'Runs at least',
  mass: 'Pack weighs at most',
  price: 'Costs at most',
  length: 'Bay, length',
  width: 'Bay, width',
  height: 'Bay, height',
  bay: 'Bay',
  parallel: 'Strings in parallel, at most',
  noLimit: 'no limit',
  chemistries: 'Chemistries',
  chargers: 'Charger',
  chargerChoice: { any: 'any of the library', 'at-hand': 'one I have', open: 'leave open' },
  start: 'Search',
  cancel: 'Cancel',
  close: 'Close',
  screening: 'Sorting out what cannot fit',
  trying: 'Running what passed',
  progress: (percent, left) => `${percent} %, ${left} s left`,
  broken: 'Broken off. The packs below are of the search before.',
  failed: (message) => `The search went wrong: ${message}`,
  stale: 'The plan has changed since this search.',
  empty: 'Set the wishes and search. The plan’s bay, mass limit and goal are filled in already.',
  none: 'No pack meets all wishes. The list of what fell out tells which one to loosen.',
  bounds: 'The highest voltage must not lie below the lowest, and one chemistry must be left.',
  found: (found, candidates) => `${found} packs of ${candidates} candidates meet every wish.`,
  notRun: (count) =>
    `${count} more passed the first sorting but carry less energy for their mass; they were not run.`,
  figures: {
    runTimeMin: 'Run time',
    massKg: 'Mass',
    price: 'Price with charger',
    chargeHours: 'Charger done after',
  },
  across: 'Across',
  up: 'Up',
  chartKey:
    'Filled: nothing beats it in every figure at once. Hollow: another pack is better or equal in all.',
  chartSummary: (found, best, parts) =>
    `${found} packs, ${best} of them unbeaten. ${parts} The table below holds the same figures.`,
  pack: 'Pack',
  best: 'Unbeaten',
  bestYes: 'yes',
  onlyBest: 'Only unbeaten packs',
  bayColumn: 'Bay',
  bayWords: {
    fits: 'fits',
    'not-found': 'no layout found',
    unknown: 'size not known',
  },
  rough: 'about, usual price: ask a dealer',
  take: 'Take',
  takeNamed: (name) => `Take ${name} as an option`,
  taken: (name) => `${name} is an option now`,
  undo: 'Undo',
  full: 'The plan holds twelve options. Remove one first.',
  chosen: 'Chosen pack',
  fellOut: 'Why the rest fell out',
  rule: 'First wish not met',
  count: 'Candidates',
  rules: {
    chemistry: 'Chemistry not wanted',
    'no-bms': 'Lithium cells without a BMS',
    voltage: 'Nominal voltage out of range',
    'controller-voltage': 'Full pack above what the controller stands',
    mass: 'Too heavy',
    price: 'Too dear',
    bay: 'Does not go into the bay',
    charger: 'No charger fits',
    'too-short': 'Holds too little charge for the goal',
    goal: 'Run falls short of the goal',
  },
  care: 'Library figures are typical. Size, mass, currents and price of the part you buy decide; its sheet comes first.',
});
