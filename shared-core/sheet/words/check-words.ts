export const checkWords = {
  title: { en: 'Commissioning', de: 'Inbetriebnahme' },
  lead: {
    en: 'In this order, before the first drive. Stop at the first step that fails.',
    de: 'In dieser Reihenfolge, vor der ersten Fahrt. Beim ersten Fehler aufhören.',
  },
  step: { en: 'Step', de: 'Schritt' },
  how: { en: 'How', de: 'Wie' },
  expected: { en: 'Should read', de: 'Soll' },
  reading: { en: 'Reads', de: 'Ist' },
  passed: { en: 'OK', de: 'OK' },
  yes: { en: 'yes', de: 'ja' },
  no: { en: 'no', de: 'nein' },
  atLeast: { en: 'at least {low}', de: 'mindestens {low}' },
  range: { en: '{low} to {high}', de: '{low} bis {high}' },
  'before-power': { en: 'Before the pack is joined', de: 'Bevor der Akku verbunden wird' },
  'last-connector': { en: 'At the last open connector', de: 'Am letzten offenen Stecker' },
  'power-on': { en: 'Power on', de: 'Eingeschaltet' },
  'wheels-up': { en: 'Wheels off the ground', de: 'Räder frei' },
  'first-drive': {
    en: 'First drive, in the open, walking pace',
    de: 'Erste Fahrt, im Freien, Schritttempo',
  },
  charging: { en: 'First charge, with somebody beside it', de: 'Erstes Laden, jemand steht dabei' },
  done: { en: 'Commissioned by', de: 'In Betrieb genommen von' },
  checked: { en: 'Checked by a qualified person', de: 'Geprüft von einer Fachkraft' },
  date: { en: 'Date', de: 'Datum' },
} as const;

export const monthlyWords = {
  title: { en: 'Monthly check', de: 'Monatliche Prüfung' },
  lead: {
    en: 'Ten minutes, machine switched off, isolator open, before a weekend of use.',
    de: 'Zehn Minuten, Maschine aus, Trennschalter offen, vor einem Wochenende im Gebrauch.',
  },
  look: { en: 'Look and feel', de: 'Ansehen und Anfassen' },
  bay: {
    en: 'Bay dry and clean, blocks held fast, no swelling, no smell.',
    de: 'Fach trocken und sauber, Blöcke fest, nichts gebläht, kein Geruch.',
  },
  terminals: {
    en: 'Terminals bright and tight, covers on.',
    de: 'Pole blank und fest, Kappen drauf.',
  },
  acid: {
    en: 'Acid level over the plates; distilled water only, after charging.',
    de: 'Säurestand über den Platten; nur destilliertes Wasser, nach dem Laden.',
  },
  wires: {
    en: 'No wire rubbed, pinched or hard; grommets in place.',
    de: 'Keine Leitung gescheuert, gequetscht oder verhärtet; Tüllen vorhanden.',
  },
  connectors: {
    en: 'Connectors without brown or melted spots.',
    de: 'Stecker ohne braune oder geschmolzene Stellen.',
  },
  fuses: {
    en: 'Fuses of the right rating ({ratings}), spare ones aboard.',
    de: 'Sicherungen mit richtigem Nennstrom ({ratings}), Ersatz dabei.',
  },
  tyres: {
    en: 'Tyres, wheel nuts, chain or gear: play and noise.',
    de: 'Reifen, Radmuttern, Kette oder Getriebe: Spiel und Geräusch.',
  },
  measure: { en: 'Measure and write into the log sheet', de: 'Messen und ins Messblatt schreiben' },
  rest: {
    en: 'Every block at rest, some hours after charging:',
    de: 'Jeder Block in Ruhe, einige Stunden nach dem Laden:',
  },
  restHint: {
    en: 'full is near {volts}; none more than {apart} from the others.',
    de: 'voll ist nahe {volts}; keiner weicht mehr als {apart} ab.',
  },
  sealed: {
    en: 'Pack at rest, some hours after charging:',
    de: 'Akku in Ruhe, einige Stunden nach dem Laden:',
  },
  sealedHint: { en: 'full is near {volts}.', de: 'voll ist nahe {volts}.' },
  minutes: { en: 'Minutes of the outing “{outing}”:', de: 'Minuten der Fahrt „{outing}“:' },
  minutesHint: {
    en: 'planned {planned}; look closer below {low}.',
    de: 'geplant {planned}; unter {low} genauer hinsehen.',
  },
  green: { en: 'Hours until the charger is done:', de: 'Stunden, bis das Ladegerät fertig ist:' },
  greenHint: { en: 'planned about {hours}.', de: 'geplant etwa {hours}.' },
  try: { en: 'Try', de: 'Ausprobieren' },
  isolator: {
    en: 'Isolator and kill switch cut the drive, wheels off the ground.',
    de: 'Trennschalter und Notaus trennen den Antrieb, Räder frei.',
  },
  brake: {
    en: 'Brake stops the loaded machine from top speed in the usual way; parking brake holds on the steepest spot.',
    de: 'Bremse hält die beladene Maschine aus Höchsttempo wie gewohnt an; Feststellbremse hält an der steilsten Stelle.',
  },
  throttle: {
    en: 'Pedal springs back by itself; nothing moves when power comes on with the pedal down.',
    de: 'Pedal federt selbst zurück; nichts bewegt sich, wenn mit getretenem Pedal eingeschaltet wird.',
  },
  inhibit: {
    en: 'The machine does not drive while the charger is plugged in.',
    de: 'Die Maschine fährt nicht, solange das Ladegerät steckt.',
  },
  lights: {
    en: 'Lights, horn and accessories work with the motor under load.',
    de: 'Licht, Hupe und Verbraucher arbeiten unter Motorlast.',
  },
  stop: {
    en: 'Anything not right: isolator open, machine out of use, find out why.',
    de: 'Stimmt etwas nicht: Trennschalter auf, Maschine stilllegen, Ursache suchen.',
  },
  months: { en: 'Done in', de: 'Erledigt im' },
} as const;
