import type { Reading, ReadingKind } from '../../plan/schema/reading.ts';

export const readingKinds: readonly ReadingKind[] = [
  'rest-voltage',
  'loaded-voltage',
  'joint-drop',
  'time-to-cutoff',
  'watt-meter',
  'speed',
  'charge',
  'standby-current',
  'stop-distance',
  'case-temperature',
];

/** Usual error of the reading, instrument and handling together [% of the reading]. Common practice, no source. */
export const usualAccuracyPercent: Readonly<Record<ReadingKind, number>> = {
  'rest-voltage': 0.5,
  'loaded-voltage': 1,
  'joint-drop': 5,
  'time-to-cutoff': 3,
  'watt-meter': 3,
  speed: 3,
  charge: 10,
  'standby-current': 5,
  'stop-distance': 10,
  'case-temperature': 5,
};

export interface ReadingStart {
  readonly id: string;
  readonly date: string;
  readonly optionId: string;
  readonly outingId: string;
  /** Rest voltage of one block, to begin with something near. */
  readonly blockVoltageV: number;
}

/** A reading of a kind with plausible figures to be typed over. */
export function newReading(kind: ReadingKind, start: ReadingStart): Reading {
  const { id, date, optionId, outingId, blockVoltageV } = start;
  const common = {
    id,
    date,
    optionId,
    string: 1,
    position: kind === 'rest-voltage' || kind === 'loaded-voltage' ? 1 : 0,
    note: '',
    accuracyPercent: usualAccuracyPercent[kind],
  };
  const volts = Number(blockVoltageV.toFixed(2));
  switch (kind) {
    case 'rest-voltage':
      return { ...common, kind, voltageV: volts, hoursSinceCharge: 12 };
    case 'loaded-voltage':
      return {
        ...common,
        kind,
        loadedV: Number((volts * 0.97).toFixed(2)),
        currentA: 10,
        beforeV: volts,
        beforeA: 0,
        secondsOnLoad: 10,
        blockTemperatureC: null,
      };
    case 'joint-drop':
      return { ...common, kind, dropMv: 10, jointCurrentA: 10, joint: '' };
    case 'time-to-cutoff':
      return { ...common, kind, timeMin: 60, outingId };
    case 'watt-meter':
      return {
        ...common,
        kind,
        chargeAh: 10,
        energyWh: null,
        peakCurrentA: null,
        overMin: null,
        untilCutoff: true,
      };
    case 'speed':
      return {
        ...common,
        kind,
        distanceM: 50,
        timeS: 36,
        packCurrentA: null,
        surface: 'worn-paving',
        gradePercent: 0,
      };
    case 'charge':
      return { ...common, kind, hours: 8, takenAh: null };
    case 'standby-current':
      return { ...common, kind, currentMa: 10 };
    case 'stop-distance':
      return { ...common, kind, stopDistanceM: 1.5, speedKmh: 5 };
    case 'case-temperature':
      return { ...common, kind, caseTemperatureC: 40, ambientC: 20, part: '' };
  }
}
