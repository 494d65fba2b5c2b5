import type { WaysTexts } from '../ways.ts';

export const ways: WaysTexts = {
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
