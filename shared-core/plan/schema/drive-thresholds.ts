import { z } from 'zod';
import { quantity } from './field.ts';

/** Limits of the findings about motors, start and brakes. */
export const driveThresholdsSchema = z
  .object({
    overvoltageWarn: quantity({
      title: 'Motor over its rated voltage, warn above',
      unit: '×',
      min: 1,
      max: 3,
    }),
    overvoltageStop: quantity({
      title: 'Motor over its rated voltage, stop above',
      unit: '×',
      min: 1,
      max: 5,
    }),
    gentleRampS: quantity({
      title: 'Start ramp, warn below',
      unit: 's',
      min: 0,
      max: 10,
    }),
    brakeMps2: quantity({
      title: 'Braking on release, warn above',
      unit: 'm/s²',
      min: 0.5,
      max: 9,
      help: 'A third of g throws an unready rider forward.',
    }),
    nearlyFullPercent: quantity({
      title: 'Full pack for regeneration, above',
      unit: '%',
      min: 50,
      max: 100,
    }),
  })
  .meta({ title: 'Limits of the drive findings' });
export type DriveThresholds = z.infer<typeof driveThresholdsSchema>;

/** Common practice, no source; braking derived from a third of g. */
export const defaultDriveThresholds: DriveThresholds = {
  overvoltageWarn: 1.25,
  overvoltageStop: 1.6,
  gentleRampS: 0.5,
  brakeMps2: 3.5,
  nearlyFullPercent: 90,
};
