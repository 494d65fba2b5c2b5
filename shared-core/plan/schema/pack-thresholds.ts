import { z } from 'zod';
import { quantity } from './field.ts';

/** Limits of the findings about blocks joined in series and in parallel. */
export const packThresholdsSchema = z
  .object({
    capacityNotePercent: quantity({
      title: 'Capacity difference, note above',
      unit: '%',
      min: 0,
      max: 50,
      help: 'Between blocks of one string. Blocks of one batch lie within 5 %.',
    }),
    capacityWarnPercent: quantity({
      title: 'Capacity difference, warn above',
      unit: '%',
      min: 0,
      max: 80,
    }),
    ageApartYears: quantity({
      title: 'Age difference, warn above',
      unit: 'years',
      min: 0,
      max: 20,
    }),
    joiningPerAh: quantity({
      title: 'Joining current that does no harm',
      unit: 'A/(A·h)',
      min: 0.01,
      max: 5,
      help: 'Where the block states no highest charge current. Sources disagree on how equal strings must be.',
    }),
  })
  .meta({ title: 'Limits of the pack findings' });
export type PackThresholds = z.infer<typeof packThresholdsSchema>;

/** Common practice, no source. */
export const defaultPackThresholds: PackThresholds = {
  capacityNotePercent: 5,
  capacityWarnPercent: 10,
  ageApartYears: 1,
  joiningPerAh: 0.3,
};
