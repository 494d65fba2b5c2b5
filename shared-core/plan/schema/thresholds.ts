import { z } from 'zod';
import { chargeThresholdsSchema } from './charge-thresholds.ts';
import { driveThresholdsSchema } from './drive-thresholds.ts';
import { quantity } from './field.ts';
import { packThresholdsSchema } from './pack-thresholds.ts';
import { careThresholdsSchema } from './week.ts';
import { wiringThresholdsSchema } from './wiring.ts';

/** Limits of the findings on which sources disagree; the user may shift them. */
export const thresholdsSchema = z
  .object({
    leadCyclicVoltPerBlock: quantity({
      title: 'Lead cyclic end voltage per 12 V',
      unit: 'V',
      min: 13.8,
      max: 15,
      help: 'Makers state 14.4 to 14.7 V.',
    }),
    endVoltageTolerancePercent: quantity({
      title: 'End voltage tolerance',
      unit: '%',
      min: 0.1,
      max: 5,
    }),
    restDifferenceNoteV: quantity({
      title: 'Rest voltage difference, note',
      unit: 'V',
      min: 0,
      max: 2,
    }),
    restDifferenceWarnV: quantity({
      title: 'Rest voltage difference, warn',
      unit: 'V',
      min: 0,
      max: 2,
    }),
    restDifferenceStopV: quantity({
      title: 'Rest voltage difference, stop',
      unit: 'V',
      min: 0,
      max: 3,
    }),
    converterLoadPercent: quantity({
      title: 'Converter load, warn above',
      unit: '%',
      min: 10,
      max: 100,
    }),
    standbyDays: quantity({ title: 'Standby, note below', unit: 'days', min: 0, max: 400 }),
    sagLeftPercent: quantity({
      title: 'Charge left at a sag cutoff, warn above',
      unit: '%',
      min: 1,
      max: 90,
    }),
    promisePercent: quantity({
      title: 'Plain A·h over A, note above',
      unit: '%',
      min: 1,
      max: 200,
      help: 'How much more it promises than the run gives.',
    }),
    pack: packThresholdsSchema,
    charge: chargeThresholdsSchema,
    drive: driveThresholdsSchema,
    wiring: wiringThresholdsSchema,
    care: careThresholdsSchema,
  })
  .meta({ title: 'Limits of the findings' });
export type Thresholds = z.infer<typeof thresholdsSchema>;
