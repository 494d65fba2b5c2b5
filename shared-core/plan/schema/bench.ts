import { z } from 'zod';
import { identifier, line, quantity, unknownQuantity } from './field.ts';
import { differenceSchema, groupDifferenceSchema } from './option.ts';
import { readingSchema } from './reading.ts';

const date = () =>
  z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .meta({ title: 'Date', help: 'Year-month-day.' });

/** A value found by a fit with the limits between which it lies at 95 % confidence. */
export const fittedValueSchema = z.object({
  name: line({ title: 'Value' }, 60),
  unit: line({ title: 'Unit' }, 20),
  value: quantity({ title: 'Fitted', min: -1e9, max: 1e9 }),
  low: unknownQuantity({ title: 'Lower limit', min: -1e9, max: 1e9 }),
  high: unknownQuantity({ title: 'Upper limit', min: -1e9, max: 1e9 }),
  identified: z.boolean().meta({
    title: 'Told by the data',
    help: 'No: the value comes from the usual figures of the chemistry.',
  }),
});
export type FittedValue = z.infer<typeof fittedValueSchema>;

/** Record of one fit that was taken into the plan. */
export const fitRecordSchema = z.object({
  id: identifier(),
  date: date(),
  optionId: identifier(),
  logs: z
    .array(line({ title: 'Log or readings' }, 200))
    .min(1)
    .max(40),
  values: z.array(fittedValueSchema).max(80),
  rmsMv: unknownQuantity({
    title: 'Volts between model and log, rms',
    unit: 'mV',
    min: 0,
    max: 1e6,
    help: 'None: no volts were fitted.',
  }),
  remarks: z.array(line({ title: 'What could not be told apart' }, 400)).max(40),
  before: z
    .object({
      differences: z
        .array(differenceSchema)
        .max(480)
        .nullable()
        .meta({ title: 'Blocks that differed', help: 'None: the fit did not touch them.' }),
      groupDifferences: z
        .array(groupDifferenceSchema)
        .max(4000)
        .nullable()
        .meta({ title: 'Cell groups that differed', help: 'None: the fit did not touch them.' }),
    })
    .nullable()
    .default(null)
    .meta({
      title: 'Before the first fit',
      help: 'What is put back when the block returns to its label.',
    }),
});
export type FitRecord = z.infer<typeof fitRecordSchema>;

/** What a block was worth on a day. */
export const healthPointSchema = z.object({
  date: date(),
  optionId: identifier(),
  string: quantity({ title: 'String', min: 1, max: 12, integer: true }),
  position: quantity({ title: 'Block', min: 1, max: 40, integer: true }),
  capacityPercent: unknownQuantity({
    title: 'Capacity against rated',
    unit: '%',
    min: 0,
    max: 300,
  }),
  resistancePercent: unknownQuantity({
    title: 'Resistance against new',
    unit: '%',
    min: 0,
    max: 5000,
  }),
  source: line({ title: 'Found by' }, 200),
});
export type HealthPoint = z.infer<typeof healthPointSchema>;

/** Readings and what was made of them. */
export const benchSchema = z
  .object({
    readings: z.array(readingSchema).max(2000).meta({ title: 'Readings' }),
    fits: z.array(fitRecordSchema).max(200).meta({ title: 'Fits taken into the plan' }),
    health: z.array(healthPointSchema).max(2000).meta({ title: 'Health of the blocks over time' }),
  })
  .meta({ title: 'Bench' });
export type Bench = z.infer<typeof benchSchema>;
