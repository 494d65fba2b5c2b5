import { newMotor } from '../plan/drive-defaults.ts';
import type { Motor } from '../plan/schema/motor.ts';
import type { Part } from './part.ts';
import { asOnSheets } from './part.ts';

/** Use, rated [V], without load [rpm] and [A], winding with brushes [Ω], rated [A], mass [kg]. */
type MotorRow = readonly [
  use: 'gearbox' | 'chain',
  ratedV: number,
  noLoadRpm: number,
  noLoadA: number,
  windingOhm: number,
  ratedA: number,
  massKg: number,
];

/** Fast small motors for plastic gearboxes and slow ones for chain or belt, as the trade sells them. From memory. */
const rows: readonly MotorRow[] = [
  ['gearbox', 12, 14000, 1.1, 0.2, 5.5, 0.22],
  ['gearbox', 12, 12000, 1.6, 0.13, 9, 0.38],
  ['chain', 12, 2800, 2.2, 0.09, 14, 1.8],
  ['chain', 12, 2700, 3, 0.055, 22, 2.4],
  ['gearbox', 24, 15000, 0.6, 0.75, 3.2, 0.24],
  ['gearbox', 24, 12500, 0.9, 0.42, 5.5, 0.4],
  ['chain', 24, 2900, 1.2, 0.34, 7.5, 1.6],
  ['chain', 24, 3000, 1.8, 0.15, 14, 2.3],
  ['chain', 24, 3000, 2.2, 0.1, 19, 2.9],
  ['chain', 24, 2900, 2.8, 0.066, 27, 3.8],
  ['chain', 36, 3000, 1.3, 0.22, 13, 2.7],
  ['chain', 36, 2900, 1.8, 0.14, 18, 3.7],
  ['chain', 36, 3100, 2.5, 0.08, 29, 4.8],
  ['chain', 48, 3000, 1.4, 0.26, 13, 3.6],
  ['chain', 48, 3200, 2.4, 0.1, 27, 5.2],
];

const uses = {
  gearbox: 'for a gearbox',
  chain: 'for chain or belt',
} as const;

const rpmPerRadPerS = 30 / Math.PI;

/** Permanent-magnet brushed motors of the library; speed and power at the rated current follow from the motor equations. */
export const motorParts: readonly Part<Motor>[] = rows.map(
  ([use, ratedV, noLoadRpm, noLoadA, windingOhm, ratedA, massKg]) => {
    const backEmfVs = ((ratedV - noLoadA * windingOhm) / noLoadRpm) * rpmPerRadPerS;
    const ratedRadPerS = (ratedV - ratedA * windingOhm) / backEmfVs;
    const watts = backEmfVs * (ratedA - noLoadA) * ratedRadPerS;
    const ratedPowerW = watts < 100 ? Math.round(watts / 5) * 5 : Math.round(watts / 10) * 10;
    const name = `Brushed motor ${ratedV} V, ${ratedPowerW} W, ${uses[use]}`;
    const id = `motor-${ratedV}v-${ratedPowerW}w-${use}`;
    return {
      id,
      group: `Brushed, ${ratedV} V`,
      name,
      value: {
        ...newMotor(),
        name,
        ratedVoltageV: ratedV,
        noLoadRpm,
        noLoadCurrentA: noLoadA,
        windingOhm,
        ratedCurrentA: ratedA,
        ratedRpm: asOnSheets(ratedRadPerS * rpmPerRadPerS),
        ratedPowerW,
        massKg,
        partId: id,
      },
      figures: [
        {
          field: 'windingOhm',
          unit: 'Ω',
          low: asOnSheets(0.7 * windingOhm),
          typical: windingOhm,
          high: asOnSheets(1.5 * windingOhm),
          sourceClass: 'from-memory',
          source:
            'Winding with brushes; parts of one label differ by a third and more. From memory: measure it.',
        },
        {
          field: 'noLoadCurrentA',
          unit: 'A',
          low: asOnSheets(0.6 * noLoadA),
          typical: noLoadA,
          high: asOnSheets(1.6 * noLoadA),
          sourceClass: 'common-practice',
          source:
            'Without load a brushed motor takes 8 to 20 % of its rated current. Common practice, no source.',
        },
        {
          field: 'noLoadRpm',
          unit: 'rpm',
          low: asOnSheets(0.9 * noLoadRpm),
          typical: noLoadRpm,
          high: asOnSheets(1.1 * noLoadRpm),
          sourceClass: 'common-practice',
          source: 'Speed without load within 10 % of the label. Common practice, no source.',
        },
      ],
      sourceClass: 'from-memory',
    };
  },
);
