import { z } from 'zod';
import { identifier, line, quantity, unknownQuantity } from './field.ts';

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export const weekdaySchema = z.enum(weekdays).meta({ title: 'Weekday' });
export type Weekday = z.infer<typeof weekdaySchema>;

const days = (title: string) => z.array(weekdaySchema).min(1).max(7).meta({ title });
const clock = (title: string, help?: string) =>
  quantity({
    title,
    unit: 'min',
    min: 0,
    max: 1439,
    integer: true,
    help: help ?? 'Minutes after midnight.',
  });

/** An outing that returns every week. */
export const usageSchema = z
  .object({
    id: identifier(),
    outingId: identifier().meta({ title: 'Outing' }),
    days: days('On'),
    startMin: clock('Begins at'),
    durationMin: unknownQuantity({
      title: 'Lasts',
      unit: 'min',
      min: 0,
      aboveMin: true,
      max: 1439,
      help: 'Not set: the minutes wanted of the outing.',
    }),
    chancePercent: quantity({
      title: 'Chance',
      unit: '%',
      min: 0,
      max: 100,
      help: 'How often it really takes place.',
    }),
  })
  .meta({ title: 'Use' });
export type Usage = z.infer<typeof usageSchema>;

/** A time in which the charger can be plugged in and someone is about. */
export const chargeWindowSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    days: days('On'),
    fromMin: clock('From'),
    toMin: clock('Until', 'Minutes after midnight; earlier than the beginning means the next day.'),
    attended: z.boolean().meta({ title: 'Someone is awake and near' }),
  })
  .meta({ title: 'Charging window' });
export type ChargeWindow = z.infer<typeof chargeWindowSchema>;

export const tariffSchema = z
  .object({
    pricePerKWh: unknownQuantity({
      title: 'Price of energy',
      unit: 'per kWh',
      min: 0,
      max: 100,
      help: "In the plan's currency.",
    }),
    cheap: z
      .object({
        pricePerKWh: quantity({ title: 'Night price', unit: 'per kWh', min: 0, max: 100 }),
        fromMin: clock('From'),
        toMin: clock('Until'),
      })
      .nullable()
      .meta({ title: 'Night tariff' }),
  })
  .meta({ title: 'Tariff' });
export type Tariff = z.infer<typeof tariffSchema>;

export const chargePlaceSchema = z
  .object({
    kind: z.enum(['open-air', 'ventilated-room', 'closed-room', 'sleeping-room']).meta({
      title: 'Charged in',
      help: 'open-air: outdoors or under a roof. ventilated-room: garage or shed with openings. closed-room: cellar, cupboard, cabin. sleeping-room: anywhere people sleep.',
    }),
    openingCm2: unknownQuantity({
      title: 'Opening for fresh air',
      unit: 'cm²',
      min: 0,
      max: 100000,
      help: 'Free area of the inlet; the outlet is as large.',
    }),
    onEscapeRoute: z.boolean().meta({
      title: 'Stands on the way out',
      help: 'A hallway, a stair or beside the only door.',
    }),
    chargeTemperatureC: unknownQuantity({
      title: 'Temperature there',
      unit: '°C',
      min: -30,
      max: 60,
      help: 'Not known: as outdoors.',
    }),
  })
  .meta({ title: 'Charging place' });
export type ChargePlace = z.infer<typeof chargePlaceSchema>;

export const climateSchema = z
  .object({
    warmestMonthC: quantity({ title: 'Mean of the warmest month', unit: '°C', min: -30, max: 60 }),
    coldestMonthC: quantity({ title: 'Mean of the coldest month', unit: '°C', min: -50, max: 50 }),
    warmestMonth: quantity({
      title: 'Warmest month',
      min: 1,
      max: 12,
      integer: true,
      help: '7 north of the equator, 1 south of it.',
    }),
  })
  .meta({ title: 'Climate' });
export type Climate = z.infer<typeof climateSchema>;

export const seasonSchema = z
  .object({
    firstMonth: quantity({ title: 'Season begins in month', min: 1, max: 12, integer: true }),
    weeks: quantity({
      title: 'Weeks of use',
      unit: 'weeks',
      min: 1,
      max: 52,
      integer: true,
      help: 'The rest of the year the machine is stored.',
    }),
    seed: quantity({
      title: 'Seed of the chances',
      min: 0,
      max: 4294967295,
      integer: true,
      help: 'Another number deals other weeks.',
    }),
  })
  .meta({ title: 'Season' });

/** When to plug in. */
export const routineSchema = z
  .object({
    trigger: z.enum(['after-use', 'nightly', 'weekend', 'own']).meta({
      title: 'Plug in',
      help: 'after-use: in the first window after an outing. nightly: in the last window of every day. weekend: on Saturday and Sunday only. own: on the days chosen.',
    }),
    ownDays: z.array(weekdaySchema).max(7).meta({ title: 'Own days' }),
    untilPercent: unknownQuantity({
      title: 'Charge up to',
      unit: '%',
      min: 20,
      max: 100,
      help: 'Not set: lead full, lithium full.',
    }),
  })
  .meta({ title: 'Routine' });
export type Routine = z.infer<typeof routineSchema>;

export const weekSchema = z
  .object({
    usage: z.array(usageSchema).max(60).meta({ title: 'Use over the week' }),
    windows: z.array(chargeWindowSchema).max(40).meta({ title: 'Charging windows' }),
    tariff: tariffSchema,
    place: chargePlaceSchema,
    climate: climateSchema,
    season: seasonSchema,
    isolatedWhenParked: z.boolean().meta({
      title: 'Isolator open while parked',
      help: 'Then standby drain stops and only self-discharge is left.',
    }),
    minimumPercent: quantity({
      title: 'Never below',
      unit: '%',
      min: 0,
      max: 90,
      help: 'Lowest charge you want to see at the end of an outing.',
    }),
    packCount: quantity({
      title: 'Packs in rotation',
      min: 1,
      max: 2,
      integer: true,
      help: '2: one drives while the other charges.',
    }),
    sharedCharger: z.boolean().meta({ title: 'One charger for both packs' }),
    routine: routineSchema,
  })
  .meta({ title: 'Week' });
export type Week = z.infer<typeof weekSchema>;

/** Limits of the care findings. */
export const careThresholdsSchema = z
  .object({
    leadTopUpDays: quantity({
      title: 'Lead: top up in storage every',
      unit: 'days',
      min: 7,
      max: 365,
      help: 'Makers state one to six months; warmer means oftener.',
    }),
    leadStoragePercent: quantity({ title: 'Lead: store above', unit: '%', min: 20, max: 100 }),
    lithiumStorageLowPercent: quantity({
      title: 'Lithium: store above',
      unit: '%',
      min: 5,
      max: 100,
    }),
    lithiumStorageHighPercent: quantity({
      title: 'Lithium: store below',
      unit: '%',
      min: 20,
      max: 100,
    }),
    seasons: quantity({ title: 'Life, note below', unit: 'seasons', min: 0, max: 50 }),
  })
  .meta({ title: 'Care and storage' });
export type CareThresholds = z.infer<typeof careThresholdsSchema>;

export const defaultCareThresholds: CareThresholds = {
  leadTopUpDays: 30,
  leadStoragePercent: 80,
  lithiumStorageLowPercent: 40,
  lithiumStorageHighPercent: 60,
  seasons: 4,
};
