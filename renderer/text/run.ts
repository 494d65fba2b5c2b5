import type { RunEventKind } from '#core/run/result.ts';
import type { Texts } from './use-text.ts';

export type QuantityId =
  | 'bus'
  | 'current'
  | 'power'
  | 'charge'
  | 'speed'
  | 'motorCurrent'
  | 'motorTemperature';

interface RunTexts {
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
  readonly copyCsv: string;
  readonly saveCsv: string;
  readonly savePng: string;
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

export const runTexts: Texts<RunTexts> = {
  en: {
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
    copyCsv: 'Copy as CSV',
    saveCsv: 'Save as CSV…',
    savePng: 'Save as picture…',
    csvCopied: 'The run is on the clipboard as CSV',
    moreCopies: 'Copy and save',
    waiting: 'The first run is being computed.',
    endsTitle: 'How each run ends',
    endsLead:
      'What stops the machine, what is left in the blocks then, and what a rest gives back.',
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
    ledgerSummary: (name, motor, lost) =>
      `${name}: ${motor} to the motor, ${lost} lost on the way.`,
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
  },
  de: {
    chartTitle: 'Entladung',
    chartLead:
      'Alle Varianten auf derselben Fahrt. Über das Diagramm fahren liest alle zur selben Minute ab.',
    quantities: {
      bus: 'Spannung',
      current: 'Strom',
      power: 'Leistung',
      charge: 'Restladung',
      speed: 'Tempo',
      motorCurrent: 'Motorstrom',
      motorTemperature: 'Motorwärme',
    },
    axis: {
      bus: 'Busspannung',
      current: 'Akkustrom',
      power: 'Akkuleistung',
      charge: 'Restladung',
      speed: 'Geschwindigkeit',
      motorCurrent: 'Strom des Motorkreises',
      motorTemperature: 'Wicklungstemperatur',
    },
    time: 'Zeit',
    view: 'Gezeigte Größe',
    singleBlocks: 'Einzelne Blöcke',
    blocksOf: 'Blöcke von',
    before: 'vor der Änderung',
    cutoff: 'Abschaltung der Steuerung',
    converterFloor: 'Wandler braucht',
    summary: (parts) => `Entladung der Varianten. ${parts}`,
    summaryOf: (name, minutes, cause, voltage) =>
      `${name} läuft ${minutes}, beendet durch: ${cause}, niedrigste Busspannung ${voltage}.`,
    howTo:
      'Pfeiltasten lesen ab, Plus und Minus vergrößern und verkleinern, 0 zeigt alles, Umschalt mit Pfeilen verschiebt.',
    readout: 'Ablesung',
    zoomIn: 'Vergrößern',
    zoomOut: 'Verkleinern',
    zoomAll: 'Alles zeigen',
    showTable: 'Als Tabelle zeigen',
    showChart: 'Als Diagramm zeigen',
    copyCsv: 'Als CSV kopieren',
    saveCsv: 'Als CSV sichern …',
    savePng: 'Als Bild sichern …',
    csvCopied: 'Die Fahrt liegt als CSV in der Zwischenablage',
    moreCopies: 'Kopieren und sichern',
    waiting: 'Die erste Fahrt wird gerechnet.',
    endsTitle: 'Wie jede Fahrt endet',
    endsLead:
      'Was die Maschine anhält, was dann noch in den Blöcken ist und was eine Pause zurückgibt.',
    endedBy: 'Beendet durch',
    left: 'Restladung',
    lowest: 'Niedrigste Busspannung',
    peak: 'Spitzenstrom',
    average: 'Mittlerer Strom',
    afterRest: (minutes) => `Nach ${minutes} Pause`,
    afterRestShort: 'Nach einer Pause',
    more: 'mehr',
    noMore: 'nichts mehr',
    eventsTitle: 'Ereignisse der Reihe nach',
    event: {
      'controller-cutoff': 'Die Steuerung schaltet ab',
      'bms-group-low': 'Das BMS öffnet: eine Zellgruppe ist leer',
      'bms-over-current': 'Das BMS öffnet: Überstrom',
      'string-fuse': 'Eine Strangsicherung öffnet',
      'main-fuse': 'Die Hauptsicherung öffnet',
      'depth-limit': 'Die Entladegrenze ist erreicht',
      'supply-collapse': 'Der Akku trägt die Last nicht',
      'time-limit': 'Die längste Zeit ist erreicht',
      'not-computable': 'Die Fahrt war nicht berechenbar',
      'converter-brown-out': 'Der Wandler hält seine Spannung nicht mehr',
      'converter-off': 'Der Wandler schaltet ab',
      'converter-recovered': 'Der Wandler hält wieder',
      'block-reversed': 'Ein Block wird unter null Volt getrieben',
      'string-joined-surge': 'Stromstoß beim Verbinden ungleicher Stränge',
      'block-empty': 'Ein Block ist leer',
      'controller-restart': 'Die Steuerung startet wieder',
      'controller-limit': 'Die Steuerung begrenzt den Batteriestrom',
    },
    eventAt: (minutes, what, where) => `${minutes}: ${what}${where}`,
    blockPlace: (string, position) => ` (Strang ${string}, Block ${position})`,
    groupPlace: (group) => `, Zellgruppe ${group}`,
    blocksTitle: 'Blöcke am Ende',
    block: 'Block',
    blockLeft: 'Restladung',
    blockEnd: 'Endspannung',
    blockLow: 'Niedrigste Spannung',
    blockTemperature: 'Temperatur',
    accessoryTitle: 'Was kosten die Verbraucher?',
    accessoryLead: 'Dieselbe Fahrt zweimal: wie jetzt geschaltet und mit allem aus.',
    accessoryAnswer: (name, minutes, percent) => `${name}: ${minutes} (${percent} %)`,
    accessoryNothing: (name) => `${name}: nichts ist eingeschaltet`,
    withAccessories: 'Mit',
    withoutAccessories: 'Alles aus',
    efficiency: 'Wirkungsgrad des Wandlers',
    brownOut: (minutes) => `nach ${minutes}`,
    noBrownOut: 'nie',
    brownOutLabel: 'Wandler gibt nach',
    standby: 'Geparkt, bis halb voll',
    standbyNever: 'kein Verbrauch',
    days: 'Tage',
    switchThem: 'Verbraucher schalten',
    ledgerTitle: 'Wohin die Energie geht',
    ledgerLead:
      'Jede Wattstunde, die die Blöcke hergaben: vom Motorkreis bis zu den Verlusten im Innern.',
    ledger: {
      motorWh: 'Motorkreis',
      accessoriesWh: 'Verbraucher',
      converterLossWh: 'Wandlerverlust',
      controllerIdleWh: 'Steuerung im Leerlauf',
      harnessLossWh: 'Kabel',
      linkLossWh: 'Verbinder',
      resistanceLossWh: 'Wärme in den Blöcken',
      polarisationLossWh: 'Polarisation',
      rateLossWh: 'Ratenverlust',
    },
    ledgerAxis: 'Energie',
    ledgerSummary: (name, motor, lost) =>
      `${name}: ${motor} zum Motor, ${lost} unterwegs verloren.`,
    whyTitle: 'Warum weniger als Ah / A?',
    whyLead: 'Drei Zahlen für denselben Akku und mittleren Strom.',
    plain: 'Ah / A',
    peukert: 'Peukert',
    simulated: 'Fahrt',
    missing: 'der einfachen Zahl',
    whyText:
      'Das Etikett gilt für langsame Entladung, bei Blei meist 20 h. Schneller entnommen, kommt die Ladung nicht rechtzeitig an die Platten (Peukert), und die Spannung sackt in die Abschaltung, während noch Ladung da ist. Kälte und Alter nehmen weiteres. Die Fahrt zählt alles mit, Abschnitt für Abschnitt.',
    option: 'Variante',
    plainSource: 'Definition der Amperestunde (hergeleitet).',
    plainValidity: 'Entladungen so langsam wie die Nennzeit; nie für die Ströme eines Antriebs.',
  },
};
