import type { LedgerPart } from '../places/run/ledger-parts.ts';
import { texts } from './spoken.ts';

export interface FigureWorkingTexts {
  readonly ofRun: string;
  readonly speed: string;
  readonly drive: string;
  readonly averageSpeed: string;
  readonly rollingSpeed: string;
  readonly ofCharge: string;
  readonly left: string;
  readonly lowest: string;
  readonly peak: string;
  readonly rest: string;
  readonly restInput: string;
  readonly cable: string;
  readonly delivered: string;
  readonly goal: string;
  readonly goalFormula: string;
  readonly energy: string;
  readonly nominal: string;
  readonly standby: string;
  readonly standbySource: string;
  readonly standbyInput: string;
  readonly perMinute: string;
  readonly share: string;
  readonly plainTime: string;
  readonly efficiency: string;
  readonly intoConverter: string;
  readonly outOfConverter: string;
  readonly ledger: Readonly<Record<LedgerPart, string>>;
  readonly ledgerShare: string;
  readonly chargeTime: string;
  readonly chargeMark: (percent: number) => string;
  readonly start: string;
  readonly end: string;
  readonly current: string;
  readonly tail: string;
  readonly bulk: string;
  readonly held: string;
  readonly into: string;
  readonly stored: string;
  readonly gassed: string;
  readonly bled: string;
  readonly mains: string;
  readonly intoPack: string;
  readonly chargerEfficiency: string;
  readonly costFormula: string;
  readonly price: string;
  readonly highest: string;
  readonly endVoltage: string;
  readonly chargeValidity: string;
}

export const figureWorkingTexts = texts('figureWorkings', {
  speed: 'highest v of the run, from m · dv/dt = F(motor) − F(rolling) − F(grade) − F(air)',
  drive: 'Motors, gears, masses',
  averageSpeed: 'Average, standing counted',
  rollingSpeed: 'Average while it rolls',
  ofRun: 'Read off the simulated run (derived). How the run goes: the working of its minutes.',
  ofCharge: 'Read off the simulated charge (derived): current, then voltage held, step by step.',
  left: 's = Σ charge in the blocks / Σ capacity in these conditions',
  lowest: 'lowest of V(pack) − I · R(cable) over the whole run',
  peak: 'highest pack current over the whole run, starts counted',
  rest: 'after the rest the run goes on from where it stopped, until it stops again',
  restInput: 'Rest before trying again',
  cable: 'Cable resistance',
  delivered: 'Delivered',
  goal: 'Minutes wanted',
  goalFormula: 'share = t(run) / t(wanted)',
  energy: 'E = C(pack) · V(nominal)',
  nominal: 'Nominal voltage',
  standby: 'd = half the capacity / (standing current + self-discharge)',
  standbySource:
    'Sum of what draws while parked, and the self-discharge of the chemistry (derived).',
  standbyInput: 'What stays on',
  perMinute: 'price / t(run)',
  share: 'share = t(run) / t(Ah / A)',
  plainTime: 'Ah / A',
  efficiency: 'η = ∫ P(out) dt / ∫ P(in) dt over the run',
  intoConverter: 'Into the converter',
  outOfConverter: 'Out of it, into the accessories',
  ledger: {
    motorWh: '∫ V(controller) · I(motor circuit) dt',
    accessoriesWh: '∫ V · I dt at the accessories',
    converterLossWh: '∫ (P(in) − P(out)) dt of the converter',
    controllerIdleWh: '∫ V(controller) · I(idle) dt',
    harnessLossWh: '∫ I² · R(cable) dt',
    linkLossWh: 'Σ strings ∫ I² · R(links) dt',
    resistanceLossWh: 'Σ blocks ∫ I² · (R0 + knee) dt',
    polarisationLossWh: 'Σ blocks ∫ I · v(polarisation) dt',
    rateLossWh: 'energy lost while charge flows to the plates, between the two wells',
  },
  ledgerShare: 'Share of what the blocks gave up',
  chargeTime: 't = t(current held) + t(voltage held, until the current has fallen)',
  chargeMark: (percent) => `time at which the curve reaches ${percent} %`,
  start: 'Charge at the start',
  end: 'Charge at the end',
  current: 'Charge current',
  tail: 'Ends at current',
  bulk: 'Current held for',
  held: 'Voltage held for',
  into: 'Q = ∫ I dt at the pack terminals',
  stored: 'Stored over put in',
  gassed: 'Into gas and heat',
  bled: 'Burnt by balancing',
  mains: 'E(mains) = ∫ V · I dt / η(charger)',
  intoPack: 'Into the pack',
  chargerEfficiency: 'Efficiency of the charger',
  costFormula: 'cost = price · E(mains)',
  price: 'Price of a kWh',
  highest: 'highest pack voltage of the curve',
  endVoltage: 'End voltage of the charger',
  chargeValidity:
    'blocks at one temperature throughout; full is 98 %, as the last 2 % of lead take as long as the 20 % before.',
});
