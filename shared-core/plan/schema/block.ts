import { z } from 'zod';
import { line, quantity, unknownQuantity } from './field.ts';
import { fittedSchema } from './fitted.ts';

/** Chemistries the core models. The three lead types differ in rest voltage, gassing and care. */
export const chemistrySchema = z.enum(['agm', 'gel', 'flooded', 'lfp', 'nmc']).meta({
  title: 'Chemistry',
  help: 'agm, gel, flooded: lead-acid. lfp: lithium iron phosphate. nmc: lithium nickel-manganese-cobalt and its kin.',
});
export type Chemistry = z.infer<typeof chemistrySchema>;

export const ratingPointSchema = z.object({
  hours: quantity({ title: 'Discharge time', unit: 'h', min: 0, aboveMin: true, max: 200 }),
  capacityAh: quantity({
    title: 'Capacity at that time',
    unit: 'A·h',
    min: 0,
    aboveMin: true,
    max: 2000,
  }),
  endVoltageV: unknownQuantity({
    title: 'End voltage of the rating',
    unit: 'V',
    min: 0,
    aboveMin: true,
    max: 200,
    help: 'Block voltage at which the maker stopped. Not known: the usual end voltage of the chemistry at that rate.',
  }),
});
export type RatingPoint = z.infer<typeof ratingPointSchema>;

export const dischargeCurveSchema = z.object({
  currentA: quantity({
    title: 'Current of the curve',
    unit: 'A',
    min: 0,
    aboveMin: true,
    max: 2000,
  }),
  points: z
    .array(
      z.object({
        timeMin: quantity({ title: 'Time', unit: 'min', min: 0, max: 12000 }),
        voltageV: quantity({ title: 'Voltage', unit: 'V', min: 0, max: 200 }),
      }),
    )
    .min(3)
    .max(400)
    .meta({ title: 'Points of the curve' }),
});
export type DischargeCurve = z.infer<typeof dischargeCurveSchema>;

/** How the block's capacity falls with rate: an exponent, the maker's rating table, or measured curves. */
export const ratingSchema = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('exponent'),
      exponent: unknownQuantity({
        title: 'Peukert exponent',
        min: 1,
        max: 1.6,
        help: '1 means no rate loss. Not known: the default of the chemistry, which is a wide guess.',
      }),
    }),
    z.object({
      kind: z.literal('points'),
      points: z
        .array(ratingPointSchema)
        .min(2)
        .max(12)
        .meta({ title: 'Rating points', help: 'Capacities the maker states at several rates.' }),
    }),
    z.object({
      kind: z.literal('curves'),
      curves: z
        .array(dischargeCurveSchema)
        .min(1)
        .max(8)
        .meta({ title: 'Discharge curves', help: 'Voltage against time at constant currents.' }),
    }),
  ])
  .meta({ title: 'Rate behaviour' });
export type Rating = z.infer<typeof ratingSchema>;

export const bmsSchema = z.object({
  continuousDischargeA: quantity({
    title: 'BMS continuous discharge',
    unit: 'A',
    min: 0,
    aboveMin: true,
    max: 2000,
  }),
  peakDischargeA: unknownQuantity({
    title: 'BMS peak discharge',
    unit: 'A',
    min: 0,
    aboveMin: true,
    max: 5000,
    help: 'Current at which the BMS opens at once or within seconds.',
  }),
  peakSeconds: quantity({ title: 'Peak allowed for', unit: 's', min: 0.001, max: 120 }),
  continuousChargeA: unknownQuantity({
    title: 'BMS continuous charge',
    unit: 'A',
    min: 0,
    aboveMin: true,
    max: 1000,
  }),
  groupLowV: quantity({ title: 'Opens at cell-group voltage below', unit: 'V', min: 0.5, max: 4 }),
  groupHighV: quantity({ title: 'Opens at cell-group voltage above', unit: 'V', min: 2, max: 5 }),
  reconnectV: unknownQuantity({
    title: 'Closes again above',
    unit: 'V',
    min: 0.5,
    max: 4.5,
    help: 'Cell-group voltage at which discharge is allowed again.',
  }),
});
export type Bms = z.infer<typeof bmsSchema>;

/** The smallest battery unit the user buys or can measure. */
export const blockSchema = z
  .object({
    name: line({ title: 'Name' }),
    chemistry: chemistrySchema,
    cellGroups: quantity({
      title: 'Cell groups in series',
      min: 1,
      max: 40,
      integer: true,
      help: 'Six for a 12 V lead block, eight for a 24 V LFP pack.',
    }),
    capacityAh: quantity({
      title: 'Rated capacity',
      unit: 'A·h',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    ratedHours: quantity({
      title: 'Rated at',
      unit: 'h',
      min: 0.1,
      max: 200,
      help: 'Hours over which the rated capacity was delivered: 20 for most lead blocks, 5 or 1 for lithium.',
    }),
    rating: ratingSchema,
    resistanceOhm: unknownQuantity({
      title: 'Inner resistance',
      unit: 'Ω',
      min: 0,
      aboveMin: true,
      max: 10,
      help: 'Direct-current resistance of the whole block, new, full, at 25 °C. Not known: typical for chemistry and capacity.',
    }),
    continuousDischargeA: unknownQuantity({
      title: 'Continuous discharge limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 5000,
    }),
    peakDischargeA: unknownQuantity({
      title: 'Peak discharge limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 10000,
    }),
    maximumChargeA: unknownQuantity({
      title: 'Charge current limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    chargeEndVoltageV: unknownQuantity({
      title: 'Charge end voltage',
      unit: 'V',
      min: 1,
      max: 200,
      help: "From the maker's sheet, at 25 °C. Not known: usual for the chemistry.",
    }),
    bms: bmsSchema.nullable().meta({
      title: 'Battery management system',
      help: 'Built into the block. None for lead blocks.',
    }),
    massKg: unknownQuantity({ title: 'Mass', unit: 'kg', min: 0, aboveMin: true, max: 500 }),
    lengthMm: unknownQuantity({ title: 'Length', unit: 'mm', min: 0, aboveMin: true, max: 3000 }),
    widthMm: unknownQuantity({ title: 'Width', unit: 'mm', min: 0, aboveMin: true, max: 3000 }),
    heightMm: unknownQuantity({ title: 'Height', unit: 'mm', min: 0, aboveMin: true, max: 3000 }),
    price: unknownQuantity({
      title: 'Price',
      min: 0,
      max: 100000,
      help: "For one block, in the plan's currency.",
    }),
    partId: z.string().max(64).nullable().meta({
      title: 'Taken from part',
      help: 'Which library or own part these figures were copied from. Editing a figure never changes the part.',
    }),
    fitted: fittedSchema.nullable().meta({
      title: 'Fitted values',
      help: 'Set by the bench from measurements; none: the figures above count.',
    }),
  })
  .meta({ title: 'Block' });
export type Block = z.infer<typeof blockSchema>;
