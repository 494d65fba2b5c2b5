import { texts } from './spoken.ts';

export interface MachineTexts {
  readonly machineTitle: string;
  readonly controllerTitle: string;
  readonly controllerLead: string;
  readonly accessoriesTitle: string;
  readonly accessoriesLead: string;
  readonly accessoriesCost: (minutes: string, option: string) => string;
  readonly addAccessory: string;
  readonly addedAccessory: string;
  readonly removedAccessory: (name: string) => string;
  readonly removeAccessory: (name: string) => string;
  readonly bringBack: string;
  readonly noAccessories: string;
  readonly noAccessoriesLead: string;
  readonly converterTitle: string;
  readonly converterLead: string;
  readonly noConverter: string;
  readonly noConverterLead: string;
  readonly pickConverter: string;
  readonly pickAccessory: string;
  readonly removeConverter: string;
  readonly change: string;
  readonly on: string;
  readonly supply: Readonly<Record<'converter' | 'pack' | 'mid-point', string>>;
  readonly loadKind: string;
  readonly loadTitle: string;
  readonly share: string;
  readonly loadKinds: Readonly<
    Record<'none' | 'power' | 'current' | 'resistance' | 'drive' | 'surface-amps' | 'log', string>
  >;
  readonly lossKind: string;
  readonly lossKinds: Readonly<Record<'sheet' | 'coefficients', string>>;
  readonly outingsTitle: string;
  readonly outingsLead: string;
  readonly addOuting: string;
  readonly copyOf: (name: string) => string;
  readonly removeOuting: string;
  readonly removedOuting: (name: string) => string;
  readonly headline: string;
  readonly isHeadline: string;
  readonly legsTitle: (minutes: string, watts: string) => string;
  readonly leg: string;
  readonly addLeg: string;
  readonly removeLeg: (name: string) => string;
  readonly removedLeg: (name: string) => string;
  readonly moveUp: (name: string) => string;
  readonly moveDown: (name: string) => string;
  readonly legMoved: string;
  readonly standing: string;
  readonly legMore: string;
  readonly bayTitle: string;
  readonly bayLead: string;
  readonly noLimit: string;
  readonly details: string;
  readonly legBar: (legs: string) => string;
}

export const machineTexts = texts('machine', {
  machineTitle: 'Machine',
  controllerTitle: 'Controller and cable',
  controllerLead:
    'Where the run usually ends: the loaded voltage at which the controller stops the motor.',
  accessoriesTitle: 'Accessories',
  accessoriesLead: 'Lights, sound and the rest. Switch one off and read what it gives back.',
  accessoriesCost: (minutes, option) => `${minutes} with ${option}`,
  addAccessory: 'Add accessory',
  addedAccessory: 'Add accessory',
  removedAccessory: (name) => `Removed ${name}`,
  removeAccessory: (name) => `Remove ${name}`,
  bringBack: 'Undo',
  noAccessories: 'No accessories',
  noAccessoriesLead: 'Add lights, a radio or a horn to see what they cost in minutes.',
  converterTitle: 'Step-down converter',
  converterLead:
    'Feeds the accessories from the whole pack. It draws a little even when nothing is on.',
  noConverter: 'No converter',
  noConverterLead: 'Accessories then hang on the pack itself, or worse, on half of it.',
  pickConverter: 'Choose a converter',
  pickAccessory: 'Choose an accessory',
  removeConverter: 'Remove converter',
  change: 'Change',
  on: 'On',
  supply: { converter: 'Step-down', pack: 'Pack', 'mid-point': 'Mid-point of a string' },
  loadKind: 'Known as',
  loadTitle: 'Draws',
  share: 'Of the time',
  loadKinds: {
    none: 'Stands still',
    power: 'Watts',
    current: 'Amps',
    resistance: 'Ohms',
    drive: 'Driven with the motor model',
    'surface-amps': 'Clamp-meter amps on a surface',
    log: 'Replayed log',
  },
  lossKind: 'Losses known as',
  lossKinds: { sheet: 'Efficiency from the sheet', coefficients: 'Coefficients' },
  outingsTitle: 'Outings',
  outingsLead:
    'A pattern of legs that repeats until a cutoff trips. The strip above shows one of them.',
  addOuting: 'Add outing',
  copyOf: (name) => `${name} (copy)`,
  removeOuting: 'Remove outing',
  removedOuting: (name) => `Removed ${name}`,
  headline: 'Show in the strip',
  isHeadline: 'Shown in the strip',
  legsTitle: (minutes, watts) => `One round takes ${minutes} and ${watts} on average.`,
  leg: 'Leg',
  addLeg: 'Add leg',
  removeLeg: (name) => `Remove leg ${name}`,
  removedLeg: (name) => `Removed leg ${name}`,
  moveUp: (name) => `Move ${name} up`,
  moveDown: (name) => `Move ${name} down`,
  legMoved: 'Move leg',
  standing: 'stands',
  legMore: 'More fields of this leg stand with the drive.',
  bayTitle: 'Battery bay',
  bayLead: 'Room for the pack and what the frame may carry.',
  noLimit: 'no limit',
  details: 'Details',
  legBar: (legs) => `Legs of one round, drawn to time: ${legs}`,
});
