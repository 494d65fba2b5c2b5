import type { ReadingKind } from '#core/plan/schema/reading.ts';

/** Number fields of each kind of reading, in the order in which they are taken. */
export const readingFields: Readonly<Record<ReadingKind, readonly string[]>> = {
  'rest-voltage': ['voltageV', 'hoursSinceCharge'],
  'loaded-voltage': [
    'beforeV',
    'beforeA',
    'loadedV',
    'currentA',
    'secondsOnLoad',
    'blockTemperatureC',
  ],
  'joint-drop': ['dropMv', 'jointCurrentA'],
  'time-to-cutoff': ['timeMin'],
  speed: ['distanceM', 'timeS', 'packCurrentA', 'gradePercent'],
  'watt-meter': ['chargeAh', 'energyWh', 'peakCurrentA', 'overMin'],
  charge: ['hours', 'takenAh'],
  'standby-current': ['currentMa'],
  'stop-distance': ['stopDistanceM', 'speedKmh'],
  'case-temperature': ['caseTemperatureC', 'ambientC'],
};

/** Text fields of each kind. */
export const readingTexts: Readonly<Partial<Record<ReadingKind, readonly string[]>>> = {
  'joint-drop': ['joint'],
  'case-temperature': ['part'],
};

/** Kinds that are taken at one block or at the whole pack. */
export const placedKinds: ReadonlySet<ReadingKind> = new Set(['rest-voltage', 'loaded-voltage']);
