import { z } from 'zod';
import { line, quantity, unknownQuantity } from './field.ts';
import { foundWireSchema } from './wire-register.ts';
import { wiringBranchSchema, wiringDeviceSchema } from './wiring-branch.ts';

/** A reading or an answer entered for one step of the commissioning list. */
export const commissioningReadingSchema = z
  .object({
    step: z.string().min(1).max(120).meta({ title: 'Step' }),
    value: unknownQuantity({ title: 'Reading', min: -1e9, max: 1e9 }),
    passed: z.enum(['yes', 'no']).nullable().meta({ title: 'Passed' }),
    note: line({ title: 'Remark' }),
  })
  .meta({ title: 'Commissioning reading' });
export type CommissioningReading = z.infer<typeof commissioningReadingSchema>;

/** The power wiring of the machine, its unknown wires, and the readings taken before the first drive. */
export const wiringSchema = z
  .object({
    devices: z.array(wiringDeviceSchema).min(1).max(80).meta({ title: 'Devices' }),
    branches: z.array(wiringBranchSchema).max(120).meta({ title: 'Branches' }),
    chargeInhibit: z.enum(['yes', 'no', 'unknown']).meta({
      title: 'Cannot drive while charging',
      help: "A contact in the charge port or the controller's inhibit input.",
    }),
    portPolarity: z.enum(['yes', 'no', 'unknown']).meta({
      title: 'Charge port polarity right',
      help: 'Read with a meter at the open port, and the pins compared with the plug of the charger.',
    }),
    startSeconds: quantity({
      title: 'A start lasts',
      unit: 's',
      min: 0.05,
      max: 60,
      help: 'Time at the starting current, for the fuse.',
    }),
    register: z.array(foundWireSchema).max(120).meta({ title: 'Wire register' }),
    readings: z
      .array(commissioningReadingSchema)
      .max(200)
      .meta({ title: 'Commissioning readings' }),
  })
  .meta({ title: 'Wiring' });
export type Wiring = z.infer<typeof wiringSchema>;

export const wiringThresholdsSchema = z
  .object({
    dropNotePercent: quantity({ title: 'Voltage drop, note above', unit: '%', min: 0.5, max: 20 }),
    dropWarnPercent: quantity({ title: 'Voltage drop, warn above', unit: '%', min: 0.5, max: 30 }),
    jointWarnMohm: quantity({ title: 'Joint, warn above', unit: 'mΩ', min: 0.05, max: 100 }),
    fuseDistanceMm: quantity({
      title: 'Fuse from the terminal, warn beyond',
      unit: 'mm',
      min: 10,
      max: 5000,
    }),
    fuseMargin: quantity({
      title: 'Fuse over continuous current',
      min: 1,
      max: 3,
      help: 'Rating at least this many times the continuous current.',
    }),
    motorOverloadFactor: quantity({
      title: 'Fuse over the motors, warn above',
      unit: '×',
      min: 1,
      max: 5,
      help: 'What the fuse may carry for minutes over the rated current of the motors.',
    }),
    ampacityStopFactor: quantity({
      title: 'Current over ampacity, stop above',
      min: 1,
      max: 3,
      help: 'Below this factor, and above 1, a warning.',
    }),
  })
  .meta({ title: 'Limits of the wiring findings' });
export type WiringThresholds = z.infer<typeof wiringThresholdsSchema>;

/** 18 cm: 33 CFR 183.460 (7 inches from the terminal), as a guide. The rest: common practice, no source. */
export const defaultWiringThresholds: WiringThresholds = {
  dropNotePercent: 3,
  dropWarnPercent: 5,
  jointWarnMohm: 1.5,
  fuseDistanceMm: 180,
  fuseMargin: 1.25,
  motorOverloadFactor: 1.5,
  ampacityStopFactor: 1.2,
};
