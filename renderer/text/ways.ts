import type { Texts } from './use-text.ts';

/** Words of the ways a leg's load may be known in: logs attached to legs, ways set beside each other. */
export interface WaysTexts {
  readonly logTitle: string;
  readonly logLead: string;
  readonly logPick: string;
  readonly logNone: string;
  readonly logTake: (run: string) => string;
  readonly logTakeShort: string;
  readonly logEmpty: string;
  readonly logCharges: string;
  readonly logTaken: string;
  readonly logOther: string;
  readonly logFigures: (length: string, mean: string, peak: string, charge: string) => string;
  readonly replay: Readonly<Record<'current' | 'power', string>>;
  readonly noVolts: string;
  readonly title: string;
  readonly lead: string;
  readonly onlyOne: string;
  readonly way: string;
  readonly ways: Readonly<Record<'amps' | 'log' | 'model', string>>;
  readonly option: string;
  readonly known: (known: number, of: number) => string;
  readonly counts: string;
  readonly count: string;
  readonly countLabel: (way: string) => string;
  readonly minutes: string;
  readonly average: string;
  readonly peak: string;
  readonly round: string;
  readonly scale: string;
  readonly scaleLabel: (way: string) => string;
  readonly scaled: (percent: string) => string;
  readonly scaledFrom: (way: string, outing: string) => string;
  readonly scaledToCruise: (speed: string, surface: string) => string;
  readonly provenance: (
    source: string,
    read: string,
    model: string,
    before: string,
    after: string,
  ) => string;
  readonly takeBack: string;
  readonly fails: Readonly<Record<'not-computable' | 'nothing-shared' | 'out-of-range', string>>;
  readonly working: string;
  readonly alsoKnown: (kinds: string) => string;
}

const en: WaysTexts = {
  logTitle: 'Attach a log',
  logLead:
    'A watt-meter log of the drive as text: time, amperes and volts. Take one of its runs as the load of this leg; the file itself is not kept.',
  logPick: 'Choose a log file',
  logNone: 'No log yet. Logs put on the bench stand here as well.',
  logTake: (run) => `Take ${run} for this leg`,
  logTakeShort: 'Take',
  logEmpty: 'This run has no rows of any length.',
  logCharges:
    'Nothing is taken out of the pack in a run that cannot be taken: check the sign of the current under "Change columns".',
  logTaken: 'Attach log',
  logOther: 'Choose another log',
  logFigures: (length, mean, peak, charge) =>
    `${length} logged: ${mean} on average, ${peak} at most, ${charge} in all.`,
  replay: { current: 'Amps as logged', power: 'Watts as logged' },
  noVolts: 'The log has no volts: it can only be replayed as amps.',
  title: 'Ways of giving the load',
  lead: 'The same outing by amps, by a log and by the motor model. Change how a leg is known above: what it had before is kept and stands here.',
  onlyOne:
    'Only one way is known so far. Give a leg its amps, a log or the motor model as well, and they stand side by side here.',
  way: 'Way',
  ways: { amps: 'Amps, watts or ohms', log: 'Log', model: 'Motor model' },
  option: 'Option',
  known: (known, of) => `${known} of ${of} legs`,
  counts: 'counts',
  count: 'Let it count',
  countLabel: (way) => `Let ${way} count`,
  minutes: 'Run',
  average: 'Average',
  peak: 'Peak',
  round:
    'Average and peak of one round from full, accessories off. Scaling looks only at the legs known both ways.',
  scale: 'Scale the model to it',
  scaleLabel: (way) => `Scale the model to ${way}`,
  scaled: (percent) => `Road resistance is now ${percent} of the table`,
  scaledFrom: (way, outing) => `${way}, outing "${outing}"`,
  scaledToCruise: (speed, surface) => `even drive at ${speed}, ${surface}`,
  provenance: (source, read, model, before, after) =>
    `Scaled to a reading (${source}): ${read} read against ${model} of the model; ${before} became ${after}.`,
  takeBack: 'Take the scaling back',
  fails: {
    'not-computable': 'The model cannot be computed yet.',
    'nothing-shared': 'No leg is known both ways.',
    'out-of-range': 'No plausible road resistance explains this average.',
  },
  working: 'Working it out',
  alsoKnown: (kinds) => `Also known as: ${kinds}`,
};

const de: WaysTexts = {
  logTitle: 'Aufzeichnung anhängen',
  logLead:
    'Eine Aufzeichnung des Leistungsmessers als Text: Zeit, Ampere und Volt. Ein Lauf daraus wird zur Last dieses Abschnitts; die Datei selbst wird nicht behalten.',
  logPick: 'Datei wählen',
  logNone: 'Noch keine Aufzeichnung. Aufzeichnungen vom Messplatz stehen ebenfalls hier.',
  logTake: (run) => `${run} für diesen Abschnitt nehmen`,
  logTakeShort: 'Nehmen',
  logEmpty: 'Dieser Lauf hat keine Zeilen von Dauer.',
  logCharges:
    'In einem Lauf, der sich nicht nehmen lässt, wird dem Akku nichts entnommen: das Vorzeichen des Stroms unter „Spalten ändern“ prüfen.',
  logTaken: 'Aufzeichnung anhängen',
  logOther: 'Andere Aufzeichnung wählen',
  logFigures: (length, mean, peak, charge) =>
    `${length} aufgezeichnet: im Mittel ${mean}, höchstens ${peak}, zusammen ${charge}.`,
  replay: { current: 'Ampere wie aufgezeichnet', power: 'Watt wie aufgezeichnet' },
  noVolts: 'Die Aufzeichnung hat keine Volt: Sie lässt sich nur als Ampere abspielen.',
  title: 'Wege, die Last anzugeben',
  lead: 'Dieselbe Fahrt nach Ampere, nach einer Aufzeichnung und nach dem Motormodell. Oben ändern, wie ein Abschnitt bekannt ist: Was er vorher hatte, bleibt und steht hier.',
  onlyOne:
    'Bisher ist nur ein Weg bekannt. Einem Abschnitt auch Ampere, eine Aufzeichnung oder das Motormodell geben, dann stehen sie hier nebeneinander.',
  way: 'Weg',
  ways: { amps: 'Ampere, Watt oder Ohm', log: 'Aufzeichnung', model: 'Motormodell' },
  option: 'Option',
  known: (known, of) => `${known} von ${of} Abschnitten`,
  counts: 'zählt',
  count: 'Zählen lassen',
  countLabel: (way) => `${way} zählen lassen`,
  minutes: 'Fahrt',
  average: 'Mittel',
  peak: 'Spitze',
  round:
    'Mittel und Spitze einer Runde ab voll, Verbraucher aus. Die Anpassung sieht nur auf Abschnitte, die auf beide Weisen bekannt sind.',
  scale: 'Modell daran anpassen',
  scaleLabel: (way) => `Modell anpassen an: ${way}`,
  scaled: (percent) => `Der Fahrwiderstand ist jetzt ${percent} der Tabelle`,
  scaledFrom: (way, outing) => `${way}, Fahrt „${outing}“`,
  scaledToCruise: (speed, surface) => `gleichmäßige Fahrt mit ${speed}, ${surface}`,
  provenance: (source, read, model, before, after) =>
    `An eine Messung angepasst (${source}): ${read} gemessen gegen ${model} im Modell; aus ${before} wurden ${after}.`,
  takeBack: 'Anpassung zurücknehmen',
  fails: {
    'not-computable': 'Das Modell lässt sich noch nicht rechnen.',
    'nothing-shared': 'Kein Abschnitt ist auf beide Weisen bekannt.',
    'out-of-range': 'Kein glaubhafter Fahrwiderstand erklärt dieses Mittel.',
  },
  working: 'Wird gerechnet',
  alsoKnown: (kinds) => `Auch bekannt als: ${kinds}`,
};

export const waysTexts: Texts<WaysTexts> = { en, de };
