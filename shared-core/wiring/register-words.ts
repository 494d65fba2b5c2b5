import type { Words } from '../plan/language.ts';
import type { WireFunction } from '../plan/schema/wire-register.ts';
import type { Deduction } from './deduce-wires.ts';
import type { RegisterConflict } from './register-conflicts.ts';
import type { RegisterStep } from './register-steps.ts';

/** Names of the functions a wire may have. */
export const functionWords: Readonly<Record<WireFunction, Words>> = {
  'battery-plus': { en: 'battery plus, always live', de: 'Batterie-Plus, immer unter Spannung' },
  'switched-plus': { en: 'switched plus', de: 'geschaltetes Plus' },
  return: { en: 'return (minus)', de: 'Rückleiter (Minus)' },
  'throttle-supply': { en: 'throttle supply, 5 V', de: 'Versorgung des Gasgebers, 5 V' },
  'throttle-signal': { en: 'throttle signal', de: 'Signal des Gasgebers' },
  'throttle-return': { en: 'throttle return', de: 'Rückleiter des Gasgebers' },
  motor: { en: 'motor', de: 'Motor' },
  'converter-output': { en: 'converter output', de: 'Ausgang des Wandlers' },
  'charge-plus': { en: 'charge plus', de: 'Lade-Plus' },
  'brake-signal': { en: 'brake signal', de: 'Bremssignal' },
  'not-connected': { en: 'not connected', de: 'nicht angeschlossen' },
};

export const reasonWords: Readonly<Record<Deduction['reason'], Words>> = {
  known: { en: 'entered as known', de: 'als bekannt eingetragen' },
  'live-key-off': {
    en: 'carries pack voltage with the key off',
    de: 'führt bei ausgeschaltetem Schlüssel Akkuspannung',
  },
  'live-key-on': {
    en: 'carries pack voltage only with the key on',
    de: 'führt nur bei eingeschaltetem Schlüssel Akkuspannung',
  },
  'steady-five-volts': {
    en: 'about 5 V with the key on',
    de: 'etwa 5 V bei eingeschaltetem Schlüssel',
  },
  'follows-throttle': {
    en: 'about 1 V at rest, rises with the throttle',
    de: 'etwa 1 V in Ruhe, steigt mit dem Gas',
  },
  'converter-voltage': {
    en: 'carries the output voltage of the converter',
    de: 'führt die Ausgangsspannung des Wandlers',
  },
  'beeps-to-minus': { en: 'joined to minus', de: 'mit Minus verbunden' },
  'low-resistance-pair': {
    en: 'a few ohms to minus: probably through a winding',
    de: 'wenige Ohm nach Minus: wohl durch eine Wicklung',
  },
  dead: { en: 'no voltage and no path', de: 'keine Spannung und kein Durchgang' },
  'readings-missing': { en: 'readings are missing', de: 'es fehlen Messwerte' },
  'no-pattern': {
    en: 'the readings fit no usual function',
    de: 'die Messwerte passen zu keiner üblichen Funktion',
  },
};

export const conflictWords: Readonly<Record<RegisterConflict['kind'], Words>> = {
  'two-sources': {
    en: 'Two sources on one node: connecting both feeds one into the other.',
    de: 'Zwei Quellen an einem Knoten: beide verbunden speist eine die andere.',
  },
  'unlike-volts': {
    en: 'Wires that beep with each other show different volts: a reading is wrong, or two sources meet here.',
    de: 'Leitungen mit Durchgang zueinander zeigen verschiedene Volt: ein Messwert stimmt nicht, oder hier treffen sich zwei Quellen.',
  },
  'return-missing': {
    en: 'No return wire found: a circuit needs a way back.',
    de: 'Kein Rückleiter gefunden: ein Stromkreis braucht den Weg zurück.',
  },
  'colour-twice': {
    en: 'One colour serves two functions: label both ends before unplugging.',
    de: 'Eine Farbe hat zwei Funktionen: beide Enden beschriften, bevor etwas getrennt wird.',
  },
  'label-twice': {
    en: 'The same label is on two wires.',
    de: 'Dieselbe Beschriftung steht an zwei Leitungen.',
  },
  reversed: {
    en: 'A reading is negative: leads swapped, or the supply is reversed. Find out before connecting.',
    de: 'Ein Messwert ist negativ: Messleitungen vertauscht oder die Versorgung verpolt. Vor dem Anschließen klären.',
  },
  'known-against-reading': {
    en: 'The reading contradicts the function entered as known.',
    de: 'Der Messwert widerspricht der als bekannt eingetragenen Funktion.',
  },
  'plus-joined-to-minus': {
    en: 'A live wire beeps with minus: a short circuit. Do not connect the pack.',
    de: 'Eine spannungführende Leitung hat Durchgang zu Minus: Kurzschluss. Akku nicht anschließen.',
  },
};

export const stepWords: Readonly<Record<RegisterStep['test'], Words>> = {
  'resistance-to-minus': {
    en: "Pack disconnected: measure the resistance from each wire to the pack's minus lead.",
    de: 'Akku getrennt: Widerstand jeder Leitung zur Minusleitung des Akkus messen.',
  },
  continuity: {
    en: 'Pack disconnected: try each wire against the others with the continuity test; note which beep together.',
    de: 'Akku getrennt: jede Leitung gegen die anderen auf Durchgang prüfen; notieren, welche zusammen piepen.',
  },
  'volts-key-off': {
    en: "Pack connected, key off, ends insulated: volts from the pack's minus to each wire.",
    de: 'Akku angeschlossen, Schlüssel aus, Enden isoliert: Spannung vom Minus des Akkus zu jeder Leitung.',
  },
  'volts-key-on': {
    en: 'Wheels off the ground, key on, hands off the throttle: volts from minus to each wire.',
    de: 'Räder frei, Schlüssel ein, Gas in Ruhe: Spannung von Minus zu jeder Leitung.',
  },
  'volts-throttle': {
    en: 'Wheels off the ground and guarded, throttle pressed slowly: volts from minus to each wire.',
    de: 'Räder frei und gesichert, Gas langsam drücken: Spannung von Minus zu jeder Leitung.',
  },
  'trace-by-hand': {
    en: 'All readings are there and say nothing: follow the wire by hand, or look up the plug at its end.',
    de: 'Alle Messwerte sind da und sagen nichts: die Leitung von Hand verfolgen oder den Stecker an ihrem Ende nachschlagen.',
  },
};
