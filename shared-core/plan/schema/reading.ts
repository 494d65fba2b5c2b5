import { z } from 'zod';
import { surfaceIdSchema } from './surface.ts';
import { identifier, line, quantity, unknownQuantity } from './field.ts';

const date = () =>
  z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .meta({ title: 'Date', help: 'Year-month-day.' });

const common = {
  id: identifier(),
  date: date(),
  optionId: identifier().meta({ title: 'Option', help: 'The pack the reading was taken on.' }),
  string: quantity({ title: 'String', min: 1, max: 12, integer: true }),
  position: quantity({
    title: 'Block',
    min: 0,
    max: 40,
    integer: true,
    help: 'Position in the string, 1 at the negative end; 0 means the whole pack.',
  }),
  note: line({ title: 'Note' }),
  accuracyPercent: quantity({
    title: 'Accuracy',
    unit: '%',
    min: 0.01,
    max: 50,
    help: 'Of the instrument and the way it was held, as a share of the reading.',
  }),
};

/** One thing read with a multimeter, a clamp meter, a watt-meter, a stopwatch or a tape. */
export const readingSchema = z
  .discriminatedUnion('kind', [
    z.object({
      ...common,
      kind: z.literal('rest-voltage'),
      voltageV: quantity({ title: 'Volts at rest', unit: 'V', min: -50, max: 250 }),
      hoursSinceCharge: quantity({
        title: 'Hours since charge or use',
        unit: 'h',
        min: 0,
        max: 2000,
      }),
    }),
    z.object({
      ...common,
      kind: z.literal('loaded-voltage'),
      loadedV: quantity({ title: 'Volts under load', unit: 'V', min: -50, max: 250 }),
      currentA: quantity({
        title: 'Current at the same moment',
        unit: 'A',
        min: 0,
        aboveMin: true,
        max: 2000,
      }),
      beforeV: quantity({
        title: 'Volts just before',
        unit: 'V',
        min: 0,
        aboveMin: true,
        max: 250,
      }),
      beforeA: quantity({ title: 'Current just before', unit: 'A', min: 0, max: 2000 }),
      secondsOnLoad: quantity({ title: 'Seconds on load', unit: 's', min: 0, max: 3600 }),
      blockTemperatureC: unknownQuantity({
        title: 'Block temperature',
        unit: '°C',
        min: -30,
        max: 80,
      }),
    }),
    z.object({
      ...common,
      kind: z.literal('joint-drop'),
      dropMv: quantity({ title: 'Drop across the joint', unit: 'mV', min: 0, max: 10000 }),
      jointCurrentA: quantity({
        title: 'Current at the same moment',
        unit: 'A',
        min: 0,
        aboveMin: true,
        max: 2000,
      }),
      joint: line({
        title: 'Joint or lead',
        help: 'Which lug, switch, fuse or lead the probes stood on.',
      }),
    }),
    z.object({
      ...common,
      kind: z.literal('time-to-cutoff'),
      timeMin: quantity({
        title: 'Minutes until it stopped',
        unit: 'min',
        min: 0,
        aboveMin: true,
        max: 6000,
      }),
      outingId: identifier().meta({ title: 'Outing driven' }),
    }),
    z.object({
      ...common,
      kind: z.literal('speed'),
      distanceM: quantity({ title: 'Distance', unit: 'm', min: 0, aboveMin: true, max: 100000 }),
      timeS: quantity({ title: 'Time', unit: 's', min: 0, aboveMin: true, max: 100000 }),
      packCurrentA: unknownQuantity({
        title: 'Pack current meanwhile',
        unit: 'A',
        min: 0,
        max: 2000,
        help: 'Accessories off. With it the reading tells the road resistance.',
      }),
      surface: surfaceIdSchema,
      gradePercent: quantity({ title: 'Grade', unit: '%', min: -50, max: 100 }),
    }),
    z.object({
      ...common,
      kind: z.literal('watt-meter'),
      chargeAh: quantity({ title: 'Charge delivered', unit: 'A·h', min: 0, max: 10000 }),
      energyWh: unknownQuantity({ title: 'Energy delivered', unit: 'W·h', min: 0, max: 1e6 }),
      peakCurrentA: unknownQuantity({ title: 'Peak current', unit: 'A', min: 0, max: 5000 }),
      overMin: unknownQuantity({ title: 'Over', unit: 'min', min: 0, max: 10000 }),
      untilCutoff: z.boolean().meta({ title: 'From full until it stopped' }),
    }),
    z.object({
      ...common,
      kind: z.literal('charge'),
      hours: quantity({ title: 'Hours to full', unit: 'h', min: 0, aboveMin: true, max: 500 }),
      takenAh: unknownQuantity({ title: 'Charge taken in', unit: 'A·h', min: 0, max: 10000 }),
    }),
    z.object({
      ...common,
      kind: z.literal('standby-current'),
      currentMa: quantity({ title: 'Current when switched off', unit: 'mA', min: 0, max: 10000 }),
    }),
    z.object({
      ...common,
      kind: z.literal('stop-distance'),
      stopDistanceM: quantity({ title: 'Stopping distance', unit: 'm', min: 0, max: 1000 }),
      speedKmh: quantity({ title: 'Speed before', unit: 'km/h', min: 0, aboveMin: true, max: 100 }),
    }),
    z.object({
      ...common,
      kind: z.literal('case-temperature'),
      caseTemperatureC: quantity({ title: 'Case temperature', unit: '°C', min: -30, max: 200 }),
      ambientC: quantity({ title: 'Air temperature', unit: '°C', min: -30, max: 60 }),
      part: line({ title: 'Of which part', help: 'Motor, controller, block, connector.' }),
    }),
  ])
  .meta({ title: 'Reading' });
export type Reading = z.infer<typeof readingSchema>;
export type ReadingKind = Reading['kind'];
