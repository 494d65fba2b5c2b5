import type { ChargerMatch } from '../../charge/match-result.ts';
import type { Severity } from '../../findings/finding.ts';
import type { Words } from '../../plan/language.ts';
import type { Charger } from '../../plan/schema/charger.ts';
import type { FuseClass, Switchgear } from '../../plan/schema/wiring-branch.ts';
import type { EndCause } from '../../run/result.ts';

/** What ended a run. */
export const endWords: Readonly<Record<EndCause, Words>> = {
  'controller-cutoff': { en: 'Controller cutoff', de: 'Abschaltung der Steuerung' },
  'bms-group-low': { en: 'BMS, cell group low', de: 'BMS, Zelle leer' },
  'bms-over-current': { en: 'BMS, over-current', de: 'BMS, Überstrom' },
  'string-fuse': { en: 'String fuse', de: 'Strangsicherung' },
  'main-fuse': { en: 'Main fuse', de: 'Hauptsicherung' },
  'depth-limit': { en: 'Depth limit', de: 'Entladegrenze' },
  'supply-collapse': { en: 'Pack cannot feed the load', de: 'Akku trägt die Last nicht' },
  'time-limit': { en: 'Longest time reached', de: 'Längste Zeit erreicht' },
  'not-computable': { en: 'Could not be computed', de: 'Nicht berechenbar' },
};

export const severityWords: Readonly<Record<Severity, Words>> = {
  stop: { en: 'Stop', de: 'Halt' },
  warn: { en: 'Warning', de: 'Warnung' },
  note: { en: 'Note', de: 'Hinweis' },
};

export const verdictWords: Readonly<Record<ChargerMatch['verdict'], Words>> = {
  fits: { en: 'fits', de: 'passt' },
  limits: { en: 'fits, slowly', de: 'passt, langsam' },
  misfits: { en: 'does not fit', de: 'passt nicht' },
  unknown: { en: 'not known', de: 'unbekannt' },
};

export const chargerKindWords: Readonly<Record<Charger['kind'], Words>> = {
  staged: { en: 'staged charger', de: 'Stufenladegerät' },
  'constant-voltage': { en: 'constant-voltage charger', de: 'Konstantspannungslader' },
  'wall-supply': { en: 'plug-in wall supply', de: 'Steckernetzteil' },
};

export const fuseClassWords: Readonly<Record<FuseClass, Words>> = {
  blade: { en: 'blade fuse', de: 'Flachstecksicherung' },
  'bolt-down': { en: 'bolt-down strip fuse', de: 'Streifensicherung' },
  'high-breaking': { en: 'high-breaking fuse', de: 'Sicherung mit hohem Schaltvermögen' },
  glass: { en: 'glass fuse', de: 'Glassicherung' },
  'breaker-manual': { en: 'circuit breaker, reset by hand', de: 'Automat, von Hand rückstellbar' },
  'breaker-auto-reset': {
    en: 'circuit breaker, self-resetting',
    de: 'Automat, selbst rückstellend',
  },
};

export const switchKindWords: Readonly<Record<Switchgear['kind'], Words>> = {
  isolator: { en: 'isolator', de: 'Trennschalter' },
  contactor: { en: 'contactor', de: 'Schütz' },
  relay: { en: 'relay', de: 'Relais' },
  'kill-switch': { en: 'kill switch', de: 'Notausschalter' },
  'key-switch': { en: 'key switch', de: 'Schlüsselschalter' },
};

/** The cautions that stand on every sheet, whatever is chosen. */
export const careWords = {
  title: { en: 'Before anything else', de: 'Vor allem anderen' },
  first: {
    en: "Local codes, makers' instructions and licensed practice come before this sheet. Have the wiring checked by a qualified person before the first drive.",
    de: 'Örtliche Vorschriften, Herstellerangaben und Fachleute gehen diesem Blatt vor. Die Verkabelung vor der ersten Fahrt von einer Fachkraft prüfen lassen.',
  },
  fuse: {
    en: 'A pack can drive hundreds of amperes into a slipped spanner: rings and watch off, tools insulated, fuse close to the terminal, isolator open while you work.',
    de: 'Ein Akku treibt Hunderte Ampere durch einen abgerutschten Schlüssel: Ringe und Uhr ab, Werkzeug isoliert, Sicherung dicht am Pol, Trennschalter offen während der Arbeit.',
  },
  lead: {
    en: 'Lead blocks give off hydrogen while charging and hold acid: fresh air, no flame, eye protection.',
    de: 'Bleiblöcke geben beim Laden Wasserstoff ab und enthalten Säure: Frischluft, keine Flamme, Augenschutz.',
  },
  lithium: {
    en: 'Lithium burns when charged wrongly, crushed or frozen and charged: only its own charger, never below 0 °C, within sight, never on the way out.',
    de: 'Lithium brennt, wenn es falsch, gequetscht oder gefroren geladen wird: nur das passende Ladegerät, nie unter 0 °C, in Sichtweite, nie auf dem Fluchtweg.',
  },
  rider: {
    en: 'A controller that fails may run at full speed: a switch within reach that does not depend on the controller must stop the machine, and the brakes must hold at the top speed below.',
    de: 'Eine defekte Steuerung kann mit Vollgas laufen: ein erreichbarer, von der Steuerung unabhängiger Schalter muss die Maschine anhalten, und die Bremsen müssen bei der unten genannten Höchstgeschwindigkeit halten.',
  },
} as const;
