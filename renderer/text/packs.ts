import { texts } from './spoken.ts';

export interface PacksTexts {
  readonly title: string;
  readonly lead: string;
  readonly add: string;
  readonly addEmpty: string;
  readonly addFromLibrary: string;
  readonly actions: (name: string) => string;
  readonly duplicate: string;
  readonly moveLeft: string;
  readonly moveRight: string;
  readonly remove: string;
  readonly saveBlock: string;
  readonly groups: Readonly<
    Record<'pack' | 'block' | 'limits' | 'bms' | 'charger' | 'chargerMore' | 'use', string>
  >;
  readonly schematic: (series: number, parallel: number, block: string) => string;
  readonly pickBlock: string;
  readonly pickCharger: string;
  readonly change: string;
  readonly noCharger: string;
  readonly removeCharger: string;
  readonly chargerFit: string;
  readonly exponent: string;
  readonly ratingMet: string;
  readonly ratingMetHelp: string;
  readonly ratingFitted: string;
  readonly ratingCurves: (millivolts: string) => string;
  readonly ratingPoints: (percent: string) => string;
  readonly hasBms: string;
  readonly differ: string;
  readonly differCount: (count: number) => string;
  readonly differNone: string;
  readonly differTitle: (name: string) => string;
  readonly differLead: string;
  readonly differAdd: string;
  readonly differAt: (string: number, position: number) => string;
  readonly differRemove: string;
  readonly untilCutoff: string;
  readonly noFuse: string;
  readonly noFloat: string;
  readonly ownController: string;
  readonly ownControllerYes: string;
  readonly chemistries: Readonly<Record<'agm' | 'gel' | 'flooded' | 'lfp' | 'nmc', string>>;
  readonly chargerKinds: Readonly<Record<'staged' | 'constant-voltage' | 'wall-supply', string>>;
  readonly madeFor: string;
  readonly compareTitle: string;
  readonly compareLead: string;
  readonly base: string;
  readonly figure: string;
  readonly best: string;
  readonly rows: Readonly<
    Record<
      | 'runTime'
      | 'goalShare'
      | 'delivered'
      | 'lowestBus'
      | 'accessories'
      | 'chargeHours'
      | 'energy'
      | 'mass'
      | 'price'
      | 'pricePerMin'
      | 'standby',
      string
    >
  >;
  readonly partFilter: string;
  readonly partOwn: string;
  readonly partTake: (name: string) => string;
  readonly partNone: string;
  readonly classWords: Readonly<
    Record<'published' | 'common-practice' | 'from-memory' | 'derived', string>
  >;
  readonly classLead: string;
}

export const packsTexts = texts('packs', {
  title: 'Options side by side',
  lead: 'Each column is one candidate: the block you buy, how many of them, and its charger. Change a figure and the strip above follows.',
  add: 'Add option',
  addEmpty: 'From plain figures',
  addFromLibrary: 'From the library…',
  actions: (name) => `Actions for ${name}`,
  duplicate: 'Duplicate',
  moveLeft: 'Move left',
  moveRight: 'Move right',
  remove: 'Remove',
  saveBlock: 'Keep block as own part',
  groups: {
    pack: 'Pack',
    block: 'Block',
    limits: 'Limits and size of the block',
    bms: 'Battery management system',
    charger: 'Charger',
    chargerMore: 'More about the charger',
    use: 'Age, start and protection',
  },
  schematic: (series, parallel, block) =>
    `${parallel} ${parallel === 1 ? 'string' : 'strings'} of ${series} x ${block}`,
  pickBlock: 'Choose a block',
  pickCharger: 'Choose a charger',
  change: 'Change',
  noCharger: 'No charger chosen',
  removeCharger: 'Without charger',
  chargerFit: 'Fits this pack?',
  exponent: 'Peukert exponent',
  ratingMet: 'Rating met within',
  ratingMetHelp:
    'How far the model of the new block is from what it was rated with: rated capacities in percent, discharge curves in millivolts rms. The mark beside it lists what the rating does not tell.',
  ratingFitted: 'measured on the bench',
  ratingCurves: (millivolts) => `${millivolts} mV rms`,
  ratingPoints: (percent) => `${percent} %`,
  hasBms: 'Has a BMS',
  differ: 'Blocks that differ',
  differCount: (count) => (count === 1 ? '1 differs' : `${count} differ`),
  differNone: 'All alike',
  differTitle: (name) => `Blocks that differ: ${name}`,
  differLead:
    'A weak, older or less full block ends the run for the whole string. Press a block in the drawing to describe it.',
  differAdd: 'This block differs',
  differAt: (string, position) => `String ${string}, block ${position}`,
  differRemove: 'Like the others again',
  untilCutoff: 'until a cutoff',
  noFuse: 'none',
  noFloat: 'none, it stops',
  ownController: 'Own controller',
  ownControllerYes: 'Needs another controller',
  chemistries: {
    agm: 'AGM',
    gel: 'Gel',
    flooded: 'Flooded lead',
    lfp: 'LFP (LiFePO4)',
    nmc: 'NMC (lithium-ion)',
  },
  chargerKinds: {
    staged: 'Staged',
    'constant-voltage': 'Constant voltage',
    'wall-supply': 'Wall supply',
  },
  madeFor: 'Made for',
  compareTitle: 'Compare',
  compareLead: 'Differences against the option you choose as base.',
  base: 'Base',
  figure: 'Figure',
  best: 'best',
  rows: {
    runTime: 'Runs',
    goalShare: 'Share of the goal',
    delivered: 'Delivers',
    lowestBus: 'Lowest bus voltage',
    accessories: 'Accessories cost',
    chargeHours: 'Charger done after',
    energy: 'Rated energy',
    mass: 'Mass',
    price: 'Price with charger',
    pricePerMin: 'Price of a minute',
    standby: 'Standby to half',
  },
  partFilter: 'Find a part',
  partOwn: 'Own parts',
  partTake: (name) => `Take ${name}`,
  partNone: 'No part of that name. Take a near one and change its figures.',
  classWords: {
    published: 'published figures',
    'common-practice': 'common practice',
    'from-memory': 'trade knowledge, no sheet',
    derived: 'derived',
  },
  classLead: 'Generic parts with typical figures. The sheet of the part you buy beats them.',
});
