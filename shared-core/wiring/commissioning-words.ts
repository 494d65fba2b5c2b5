import type { Words } from '../plan/language.ts';

interface StepWords {
  readonly what: Words;
  readonly how: Words;
}

/** What is tested and how, by topic. Words in braces are filled in. */
export const commissioningWords = {
  'insulation-plus': {
    what: { en: 'Plus against the frame', de: 'Plus gegen den Rahmen' },
    how: {
      en: 'Pack disconnected, isolator closed: ohms from the plus lead to bare metal of the frame.',
      de: 'Akku getrennt, Trennschalter zu: Ohm von der Plusleitung zum blanken Rahmen.',
    },
  },
  'insulation-minus': {
    what: { en: 'Minus against the frame', de: 'Minus gegen den Rahmen' },
    how: {
      en: 'The same from the minus lead. Where the frame is the return on purpose, mark this as passed.',
      de: 'Dasselbe von der Minusleitung. Wo der Rahmen absichtlich Rückleiter ist, als bestanden eintragen.',
    },
  },
  'no-short': {
    what: { en: 'No short circuit in the machine', de: 'Kein Kurzschluss in der Maschine' },
    how: {
      en: 'Pack disconnected, isolator closed: ohms between plus and minus lead. Capacitors first read low, then climb.',
      de: 'Akku getrennt, Trennschalter zu: Ohm zwischen Plus- und Minusleitung. Kondensatoren zeigen erst wenig, dann mehr.',
    },
  },
  fuse: {
    what: { en: 'Fuse of {name}: {rating} A', de: 'Sicherung von {name}: {rating} A' },
    how: {
      en: 'Read the rating on the part, tug both wires at its holder.',
      de: 'Den Wert am Teil ablesen, an beiden Leitungen des Halters ziehen.',
    },
  },
  block: {
    what: { en: 'Block {name} at rest', de: 'Block {name} in Ruhe' },
    how: {
      en: 'Volts across its own terminals after some hours of rest. Note them: they are compared.',
      de: 'Spannung an seinen Polen nach einigen Stunden Ruhe. Notieren: sie werden verglichen.',
    },
  },
  strings: {
    what: { en: 'Strings before they are joined', de: 'Stränge vor dem Verbinden' },
    how: {
      en: 'Join the minus ends only; volts between the plus ends.',
      de: 'Nur die Minus-Enden verbinden; Spannung zwischen den Plus-Enden.',
    },
  },
  'pack-voltage': {
    what: {
      en: 'Pack voltage at the last open connector',
      de: 'Akkuspannung am letzten offenen Stecker',
    },
    how: {
      en: 'Red lead on plus, black on minus, before it is plugged: the display must be positive.',
      de: 'Rot an Plus, Schwarz an Minus, vor dem Stecken: die Anzeige muss positiv sein.',
    },
  },
  polarity: {
    what: { en: 'Plus meets plus', de: 'Plus trifft Plus' },
    how: {
      en: 'Hold both halves of the connector side by side and follow both wires to their ends.',
      de: 'Beide Steckerhälften nebeneinander halten und beide Leitungen bis ans Ende verfolgen.',
    },
  },
  precharge: {
    what: { en: 'Precharge of {name}', de: 'Vorladen von {name}' },
    how: {
      en: 'Main contact open, precharge on: volts at the controller after {seconds} s.',
      de: 'Hauptkontakt offen, Vorladen ein: Spannung an der Steuerung nach {seconds} s.',
    },
  },
  'idle-current': {
    what: {
      en: 'Current with the key on, nothing moving',
      de: 'Strom bei Schlüssel ein, nichts bewegt sich',
    },
    how: {
      en: 'Clamp meter on the main line, accessories off.',
      de: 'Zangenamperemeter an der Hauptleitung, Zubehör aus.',
    },
  },
  converter: {
    what: {
      en: 'Converter output before the accessories are joined',
      de: 'Ausgang des Wandlers vor dem Anschließen des Zubehörs',
    },
    how: {
      en: 'Volts at its output, plus and minus checked.',
      de: 'Spannung an seinem Ausgang, Plus und Minus geprüft.',
    },
  },
  direction: {
    what: { en: 'Wheels turn the right way', de: 'Räder drehen richtig herum' },
    how: {
      en: 'Wheels off the ground and guarded, a touch of throttle, hand on the isolator.',
      de: 'Räder frei und gesichert, wenig Gas, Hand am Trennschalter.',
    },
  },
  'throttle-supply': {
    what: {
      en: 'Throttle supply wire off: the motor stops',
      de: 'Versorgung des Gasgebers ab: der Motor steht',
    },
    how: {
      en: 'Wheels off the ground, slow; unplug that wire alone. It must never speed up.',
      de: 'Räder frei, langsam; nur diese Leitung abziehen. Er darf nie schneller werden.',
    },
  },
  'throttle-signal': {
    what: {
      en: 'Throttle signal wire off: the motor stops',
      de: 'Signal des Gasgebers ab: der Motor steht',
    },
    how: {
      en: 'Wheels off the ground, slow; unplug that wire alone.',
      de: 'Räder frei, langsam; nur diese Leitung abziehen.',
    },
  },
  'throttle-return': {
    what: {
      en: 'Throttle return wire off: the motor stops',
      de: 'Rückleiter des Gasgebers ab: der Motor steht',
    },
    how: {
      en: 'A lost return may read as full throttle: hand on the isolator.',
      de: 'Ein verlorener Rückleiter kann als Vollgas gelten: Hand am Trennschalter.',
    },
  },
  interlock: {
    what: {
      en: 'Switched on with the throttle pressed: it stays still',
      de: 'Mit gedrücktem Gas eingeschaltet: er bleibt stehen',
    },
    how: {
      en: 'Wheels off the ground, throttle pressed, then key on.',
      de: 'Räder frei, Gas gedrückt, dann Schlüssel ein.',
    },
  },
  stop: {
    what: { en: 'Isolator stops the motor', de: 'Trennschalter hält den Motor an' },
    how: {
      en: 'Wheels off the ground, slow: open it with the throttle held.',
      de: 'Räder frei, langsam: bei gehaltenem Gas öffnen.',
    },
  },
  'brake-resistor': {
    what: { en: 'Brake resistor takes hold', de: 'Bremswiderstand greift' },
    how: {
      en: 'Wheels off the ground: release the throttle, the wheels slow down clearly; the resistor is free of anything that burns.',
      de: 'Räder frei: Gas loslassen, die Räder werden deutlich langsamer; am Widerstand liegt nichts Brennbares.',
    },
  },
  joints: {
    what: { en: 'Joints of {name}', de: 'Verbindungen von {name}' },
    how: {
      en: 'Millivolts across each lug and contact at about {current} A; the worst one counts. Enter it with the joint.',
      de: 'Millivolt über jedem Kabelschuh und Kontakt bei etwa {current} A; der schlechteste zählt. Bei der Verbindung eintragen.',
    },
  },
  'cruise-current': {
    what: { en: 'Current of the first slow drive', de: 'Strom der ersten langsamen Fahrt' },
    how: {
      en: 'Clamp meter or watt meter, dead weight instead of a rider, level ground.',
      de: 'Zangenamperemeter oder Wattmeter, Ballast statt Fahrer, ebener Boden.',
    },
  },
  brake: {
    what: {
      en: 'It stops within its own length and holds on the slope',
      de: 'Er hält auf kurzer Strecke und steht am Hang',
    },
    how: {
      en: 'Walking speed, then the steepest grade of the plan, empty.',
      de: 'Schrittgeschwindigkeit, dann die steilste Steigung des Plans, leer.',
    },
  },
  'port-polarity': {
    what: { en: 'Charger plug and port agree', de: 'Ladestecker und Ladebuchse passen zusammen' },
    how: {
      en: 'Meter on the charger plug, then on the port: plus on the same pin.',
      de: 'Messgerät am Ladestecker, dann an der Buchse: Plus am selben Stift.',
    },
  },
  'charge-inhibit': {
    what: { en: 'Charger plugged in: it does not drive', de: 'Ladegerät gesteckt: er fährt nicht' },
    how: {
      en: 'Wheels off the ground, charger plugged in, key on, throttle pressed.',
      de: 'Räder frei, Ladegerät gesteckt, Schlüssel ein, Gas gedrückt.',
    },
  },
  'charge-end': {
    what: {
      en: 'Voltage at the end of the first charge',
      de: 'Spannung am Ende der ersten Ladung',
    },
    how: {
      en: 'Stay with it; volts at the pack just before the charger turns over. Nothing may be warm.',
      de: 'Dabeibleiben; Spannung am Akku kurz vor dem Umschalten. Nichts darf warm sein.',
    },
  },
} as const satisfies Readonly<Record<string, StepWords>>;

export type StepTopic = keyof typeof commissioningWords;
