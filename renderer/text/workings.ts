import { texts } from './spoken.ts';

export interface WorkingTexts {
  readonly simulated: string;
  readonly stepwise: string;
  readonly runSource: string;
  readonly runValidity: string;
  readonly runTime: string;
  readonly delivered: string;
  readonly averageCurrent: string;
  readonly remaining: string;
  readonly fullCharge: string;
  readonly startCharge: string;
  readonly ambient: string;
  readonly endCause: string;
  readonly endVoltage: string;
  readonly with: string;
  readonly without: string;
  readonly cost: string;
  readonly costFormula: string;
  readonly costSource: string;
  readonly share: string;
  readonly efficiency: string;
  readonly energyFormula: string;
  readonly energySource: string;
  readonly givenUp: string;
  readonly losses: string;
  readonly ledgerClosure: string;
  readonly chargeFormula: string;
  readonly chargeSource: string;
  readonly hours: string;
  readonly wantedEnd: string;
  readonly givenEnd: string;
  readonly verdict: string;
  readonly blocks: string;
  readonly blockMass: string;
  readonly blockPrice: string;
  readonly charger: string;
  readonly mass: string;
  readonly price: string;
  readonly sumSource: string;
  readonly exact: string;
  readonly notKnown: string;
}

export const workingTexts = texts('workings', {
  simulated: 'run until the first cutoff of: controller, BMS, fuse, depth limit',
  stepwise: 'V = OCV(s) − I·(R0 + K·(1/s − 1)) − v_p, per block, balanced on one bus',
  runSource:
    'Two-well charge (Manwell & McGowan, Solar Energy 50 (1993) 399), knee after Shepherd (J. Electrochem. Soc. 112 (1965) 657), stepped through the outing.',
  runValidity:
    'blocks as described; the real ones spread by 10 to 20 % with age and make. The Bench narrows it by readings.',
  runTime: 'Run time',
  delivered: 'Delivered',
  averageCurrent: 'Average current',
  remaining: 'Charge left at the end',
  fullCharge: 'Rated capacity of the pack',
  startCharge: 'Charge at the start',
  ambient: 'Temperature',
  endCause: 'Ended by',
  endVoltage: 'Lowest bus voltage',
  with: 'With accessories',
  without: 'All accessories off',
  cost: 'Accessories cost',
  costFormula: 't(all off) − t(as switched), both runs of the same outing',
  costSource: 'Two simulations of the same outing (derived).',
  share: 'Share of the run time',
  efficiency: 'Converter, output over input',
  energyFormula: 'E = ∫ V · I dt at the pack terminals',
  energySource: 'Integral over the simulated run (derived).',
  givenUp: 'Given up by the blocks',
  losses: 'Lost inside the blocks',
  ledgerClosure: 'Ledger closes to',
  chargeFormula:
    't = t(current held) + t(voltage held, until the charger ends it; where it never does, until the pack holds 98 %)',
  chargeSource:
    'The simulated charge drawn in the place Charging: acceptance of the chemistry, gassing, leads (derived).',
  hours: 'Charger done after',
  wantedEnd: 'End voltage wanted',
  givenEnd: 'End voltage given',
  verdict: 'Verdict',
  blocks: 'Blocks',
  blockMass: 'Mass of a block',
  blockPrice: 'Price of a block',
  charger: 'Charger',
  mass: 'Mass of the pack',
  price: 'Price with charger',
  sumSource: 'Sum of the figures of the plan.',
  exact: 'In full',
  notKnown: 'not known',
});
