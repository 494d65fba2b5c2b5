import { z } from 'zod';
import { identifier, line, quantity, unknownQuantity } from './field.ts';
import { loadSchema } from './load.ts';

/** Losses of a step-down converter, either as coefficients or as its sheet states them. */
export const converterLossSchema = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('coefficients'),
      idleLossW: quantity({ title: 'Idle loss', unit: 'W', min: 0, max: 100 }),
      dropV: quantity({ title: 'Loss per ampere', unit: 'V', min: 0, max: 10 }),
      lossResistanceOhm: quantity({ title: 'Loss resistance', unit: 'Ω', min: 0, max: 10 }),
    }),
    z.object({
      kind: z.literal('sheet'),
      efficiencyPercent: quantity({
        title: 'Efficiency at rated load',
        unit: '%',
        min: 20,
        max: 100,
        aboveMin: true,
      }),
      idleCurrentA: quantity({ title: 'Idle current at the input', unit: 'A', min: 0, max: 5 }),
    }),
  ])
  .meta({ title: 'Losses' });

export const converterSchema = z
  .object({
    name: line({ title: 'Name' }),
    outputVoltageV: quantity({ title: 'Output voltage', unit: 'V', min: 1, max: 60 }),
    ratedCurrentA: quantity({
      title: 'Rated output current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 500,
    }),
    peakCurrentA: unknownQuantity({
      title: 'Start-up or peak output current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 1000,
    }),
    minimumInputV: unknownQuantity({ title: 'Lowest input voltage', unit: 'V', min: 0, max: 200 }),
    maximumInputV: unknownQuantity({
      title: 'Highest input voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 400,
    }),
    maximumDutyPercent: quantity({
      title: 'Highest duty',
      unit: '%',
      min: 10,
      max: 100,
      help: 'A step-down cannot give out more than this share of its input voltage.',
    }),
    dropoutResistanceOhm: quantity({ title: 'Dropout resistance', unit: 'Ω', min: 0, max: 5 }),
    loss: converterLossSchema,
    alwaysOn: z.boolean().meta({ title: 'Stays on when the machine is switched off' }),
    price: unknownQuantity({ title: 'Price', min: 0, max: 100000 }),
    partId: z.string().max(64).nullable().meta({ title: 'Taken from part' }),
  })
  .meta({ title: 'Step-down converter' });
export type Converter = z.infer<typeof converterSchema>;

/** Lights, sound, chargers for telephones and the like. */
export const accessorySchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    on: z.boolean().meta({ title: 'Switched on during the outing' }),
    supply: z.enum(['converter', 'pack', 'mid-point']).meta({
      title: 'Fed from',
      help: 'converter: through the step-down. pack: straight from the pack. mid-point: tapped between blocks of a series string.',
    }),
    load: loadSchema,
    dutyPercent: quantity({ title: 'Share of the time it draws', unit: '%', min: 0, max: 100 }),
    startupCurrentA: unknownQuantity({ title: 'Start-up current', unit: 'A', min: 0, max: 500 }),
    maximumInputV: unknownQuantity({
      title: 'Highest supply voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 400,
    }),
    standbyA: quantity({
      title: 'Standby current when the machine is off',
      unit: 'A',
      min: 0,
      max: 5,
      help: 'At its own supply voltage.',
    }),
    partId: z.string().max(64).nullable().meta({ title: 'Taken from part' }),
  })
  .meta({ title: 'Accessory' });
export type Accessory = z.infer<typeof accessorySchema>;
