import type { ReadingKind } from '#core/plan/schema/reading.ts';

/** Number fields of each kind of reading, in the order in which they are taken. */
export const readingFields: Readonly<Record<ReadingKind, readonly string[]>> = {
  'rest-voltage': ['voltageV', 'hoursSinceCharge'],
  'loaded-voltage': ['beforeV', 'beforeA', 'voltageV', 'currentA', 'secondsOnLoad', 'temperatureC'],
  'joint-drop': ['dropMv', 'currentA'],
  'time-to-cutoff': ['timeMin'],
  speed: ['distanceM', 'timeS', 'currentA'],
  'watt-meter': ['chargeAh', 'energyWh', 'peakCurrentA', 'timeMin'],
  charge: ['hours', 'chargeAh'],
  'standby-current': ['currentMa'],
  'stop-distance': ['distanceM', 'speedKmh'],
  'case-temperature': ['temperatureC', 'ambientC'],
};

/** Text fields of each kind. */
export const readingTexts: Readonly<Partial<Record<ReadingKind, readonly string[]>>> = {
  'joint-drop': ['joint'],
  'case-temperature': ['part'],
};

/** Kinds that are taken at one block or at the whole pack. */
export const placedKinds: ReadonlySet<ReadingKind> = new Set(['rest-voltage', 'loaded-voltage']);
