import type { RunEventKind } from '#core/run/result.ts';
import { texts } from './spoken.ts';

export type QuantityId =
  | 'bus'
  | 'current'
  | 'power'
  | 'charge'
  | 'speed'
  | 'motorCurrent'
  | 'motorTemperature';

export interface RunTexts {
  readonly chartTitle: string;
  readonly chartLead: string;
  readonly quantities: Readonly<Record<QuantityId, string>>;
  readonly axis: Readonly<Record<QuantityId, string>>;
  readonly time: string;
  readonly view: string;
  readonly singleBlocks: string;
  readonly blocksOf: string;
  readonly before: string;
  readonly cutoff: string;
  readonly converterFloor: string;
  readonly summary: (parts: string) => string;
  readonly summaryOf: (name: string, minutes: string, cause: string, voltage: string) => string;
  readonly howTo: string;
  readonly readout: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly zoomAll: string;
  readonly showTable: string;
  readonly showChart: string;
  readonly csvCopied: string;
  readonly moreCopies: string;
  readonly waiting: string;
  readonly endsTitle: string;
  readonly endsLead: string;
  readonly endedBy: string;
  readonly left: string;
  readonly lowest: string;
  readonly peak: string;
  readonly average: string;
  readonly afterRest: (minutes: string) => string;
  readonly afterRestShort: string;
  readonly more: string;
  readonly noMore: string;
  readonly eventsTitle: string;
  readonly event: Readonly<Record<RunEventKind, string>>;
  readonly eventAt: (minutes: string, what: string, where: string) => string;
  readonly blockPlace: (string: number, position: number) => string;
  readonly groupPlace: (group: number) => string;
  readonly blocksTitle: string;
  readonly block: string;
  readonly blockLeft: string;
  readonly blockEnd: string;
  readonly blockLow: string;
  readonly blockTemperature: string;
  readonly accessoryTitle: string;
  readonly accessoryLead: string;
  readonly accessoryAnswer: (name: string, minutes: string, percent: string) => string;
  readonly accessoryNothing: (name: string) => string;
  readonly withAccessories: string;
  readonly withoutAccessories: string;
  readonly efficiency: string;
  readonly brownOut: (minutes: string) => string;
  readonly noBrownOut: string;
  readonly brownOutLabel: string;
  readonly standby: string;
  readonly standbyNever: string;
  readonly days: string;
  readonly switchThem: string;
  readonly ledgerTitle: string;
  readonly ledgerLead: string;
  readonly ledger: Readonly<
    Record<
      | 'motorWh'
      | 'controllerIdleWh'
      | 'accessoriesWh'
      | 'converterLossWh'
      | 'harnessLossWh'
      | 'linkLossWh'
      | 'resistanceLossWh'
      | 'polarisationLossWh'
      | 'rateLossWh',
      string
    >
  >;
  readonly ledgerAxis: string;
  readonly ledgerSummary: (name: string, motor: string, lost: string) => string;
  readonly whyTitle: string;
  readonly whyLead: string;
  readonly plain: string;
  readonly peukert: string;
  readonly simulated: string;
  readonly missing: string;
  readonly whyText: string;
  readonly option: string;
  readonly plainSource: string;
  readonly plainValidity: string;
}

export const runTexts = texts('run', {
  chartTitle: 'Discharge',
  chartLead:
    'All options on the same outing. Move over the chart to read every option at that minute.',
  quantities: {
    bus: 'Voltage',
    current: 'Current',
    power: 'Power',
    charge: 'Charge left',
    speed: 'Speed',
    motorCurrent: 'Motor current',
    motorTemperature: 'Motor heat',
  },
  axis: {
    bus: 'Bus voltage',
    current: 'Pack current',
    power: 'Pack power',
    charge: 'Charge left',
    speed: 'Speed',
    motorCurrent: 'Current of the motor circuit',
    motorTemperature: 'Winding temperature',
  },
  time: 'Time',
  view: 'Quantity shown',
  singleBlocks: 'Single blocks',
  blocksOf: 'Blocks of',
  before: 'before the edit',
  cutoff: 'Controller cutoff',
  converterFloor: 'Converter needs',
  summary: (parts) => `Discharge of the options. ${parts}`,
  summaryOf: (name, minutes, cause, voltage) =>
    `${name} runs ${minutes}, ended by: ${cause}, lowest bus voltage ${voltage}.`,
  howTo: 'Arrow keys read, plus and minus zoom, 0 shows all, shift with arrows moves.',
  readout: 'Read-out',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  zoomAll: 'Show all',
  showTable: 'Show as table',
  showChart: 'Show as chart',
  csvCopied: 'The run is on the clipboard as CSV',
  moreCopies: 'Copy and save',
  waiting: 'The first run is being computed.',
  endsTitle: 'How each run ends',
  endsLead: 'What stops the machine, what is left in the blocks then, and what a rest gives back.',
  endedBy: 'Ended by',
  left: 'Charge left',
  lowest: 'Lowest bus voltage',
  peak: 'Peak current',
  average: 'Average current',
  afterRest: (minutes) => `After ${minutes} of rest`,
  afterRestShort: 'After a rest',
  more: 'more',
  noMore: 'no more',
  eventsTitle: 'Events in order',
  event: {
    'controller-cutoff': 'The controller cuts off',
    'bms-group-low': 'The BMS opens: a cell group is low',
    'bms-over-current': 'The BMS opens: overcurrent',
    'string-fuse': 'A string fuse opens',
    'main-fuse': 'The main fuse opens',
    'depth-limit': 'The depth limit is reached',
    'supply-collapse': 'The pack cannot feed the load',
    'time-limit': 'The longest time is reached',
    'not-computable': 'The run could not be computed',
    'converter-brown-out': 'The converter no longer holds its voltage',
    'converter-off': 'The converter switches off',
    'converter-recovered': 'The converter holds again',
    'block-reversed': 'A block is driven below zero volts',
    'string-joined-surge': 'Surge as unequal strings are joined',
    'block-empty': 'A block is empty',
    'controller-restart': 'The controller starts again',
    'controller-limit': 'The controller limits the battery current',
  },
  eventAt: (minutes, what, where) => `${minutes}: ${what}${where}`,
  blockPlace: (string, position) => ` (string ${string}, block ${position})`,
  groupPlace: (group) => `, cell group ${group}`,
  blocksTitle: 'Blocks at the end',
  block: 'Block',
  blockLeft: 'Charge left',
  blockEnd: 'End voltage',
  blockLow: 'Lowest voltage',
  blockTemperature: 'Temperature',
  accessoryTitle: 'What do the accessories cost?',
  accessoryLead: 'The same outing twice: as switched now, and with everything off.',
  accessoryAnswer: (name, minutes, percent) => `${name}: ${minutes} (${percent} %)`,
  accessoryNothing: (name) => `${name}: nothing is switched on`,
  withAccessories: 'With',
  withoutAccessories: 'All off',
  efficiency: 'Converter efficiency',
  brownOut: (minutes) => `after ${minutes}`,
  noBrownOut: 'never',
  brownOutLabel: 'Converter fades',
  standby: 'Parked, to half charge',
  standbyNever: 'no drain',
  days: 'days',
  switchThem: 'Switch accessories',
  ledgerTitle: 'Where the energy goes',
  ledgerLead: 'Every watt-hour the blocks gave up, from the wheels to the losses inside.',
  ledger: {
    motorWh: 'Motor circuit',
    accessoriesWh: 'Accessories',
    converterLossWh: 'Converter loss',
    controllerIdleWh: 'Controller idle',
    harnessLossWh: 'Cable',
    linkLossWh: 'Links',
    resistanceLossWh: 'Heat inside the blocks',
    polarisationLossWh: 'Polarisation',
    rateLossWh: 'Rate loss',
  },
  ledgerAxis: 'Energy',
  ledgerSummary: (name, motor, lost) => `${name}: ${motor} to the motor, ${lost} lost on the way.`,
  whyTitle: 'Why less than Ah / A?',
  whyLead: 'Three figures for the same pack and average current.',
  plain: 'Ah / A',
  peukert: 'Peukert',
  simulated: 'Run',
  missing: 'of the plain figure',
  whyText:
    'The label holds for a slow discharge, 20 h for most lead blocks. Drawn faster, charge cannot reach the plates in time (Peukert), and the voltage sags into the cutoff while charge is left. Cold and age take more. The run counts all of it, leg by leg.',
  option: 'Option',
  plainSource: 'Definition of the ampere-hour (derived).',
  plainValidity: 'discharges as slow as the rating; never for the rates of a drive.',
});
