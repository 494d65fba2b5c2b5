import { z } from 'zod';
import { line, quantity, unknownQuantity } from './field.ts';
import { loadSchema } from './load.ts';
import { surfaceIdSchema } from './surface.ts';

/** Pedal position held, or the speed the rider keeps. */
export const legCommandSchema = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('throttle'),
      throttlePercent: quantity({
        title: 'Throttle',
        unit: '%',
        min: 0,
        max: 100,
        help: 'Travel of the pedal.',
      }),
    }),
    z.object({
      kind: z.literal('speed'),
      targetSpeedKmh: quantity({
        title: 'Target speed',
        unit: 'km/h',
        min: 0.1,
        max: 150,
        help: 'Full throttle until it is reached, then held.',
      }),
    }),
  ])
  .meta({ title: 'How it is driven' });

/** A leg driven with motor and machine model (needs the drive section of the machine). */
export const driveLoadSchema = z.object({
  kind: z.literal('drive'),
  surface: surfaceIdSchema,
  gradePercent: quantity({
    title: 'Grade',
    unit: '%',
    min: -60,
    max: 60,
    help: 'Rise over run; negative is downhill.',
  }),
  gearId: z.string().max(64).nullable().meta({ title: 'Gear', help: 'Not set: the first gear.' }),
  command: legCommandSchema,
  distanceM: unknownQuantity({
    title: 'Distance',
    unit: 'm',
    min: 1,
    max: 200000,
    help: 'The leg ends after this distance, at the latest after its duration. Not set: after its duration.',
  }),
  starts: quantity({
    title: 'Starts',
    min: 0,
    max: 1000,
    integer: true,
    help: 'The leg is cut into this many equal stretches, each begun from a stand. 0: it rolls on from the leg before.',
  }),
  haltS: quantity({
    title: 'Each halt',
    unit: 's',
    min: 0,
    max: 3600,
    help: 'At the end of each stretch, braking included.',
  }),
  loadPercent: quantity({
    title: 'Load aboard',
    unit: '%',
    min: 0,
    max: 1000,
    help: 'Share of the load stated for the machine: 0 when it goes empty.',
  }),
  headwindKmh: quantity({ title: 'Headwind', unit: 'km/h', min: -100, max: 100 }),
});
export type DriveLoad = z.infer<typeof driveLoadSchema>;

/** Clamp-meter readings on a surface: the average while driving and the peak of a start. */
export const surfaceAmpsLoadSchema = z.object({
  kind: z.literal('surface-amps'),
  surface: surfaceIdSchema,
  averageA: quantity({
    title: 'Average current',
    unit: 'A',
    min: 0,
    max: 2000,
    help: 'From the pack, over the whole leg.',
  }),
  peakA: unknownQuantity({ title: 'Peak current of a start', unit: 'A', min: 0, max: 5000 }),
  peakS: quantity({ title: 'Peak lasts', unit: 's', min: 0.1, max: 60 }),
  starts: quantity({ title: 'Starts', min: 0, max: 1000, integer: true }),
});
export type SurfaceAmpsLoad = z.infer<typeof surfaceAmpsLoadSchema>;

/** A watt-meter log, thinned, replayed from its beginning and again when the leg lasts longer. */
export const logLoadSchema = z.object({
  kind: z.literal('log'),
  name: line({ title: 'Log' }),
  replay: z.enum(['current', 'power']).meta({
    title: 'Replay as',
    help: 'current: the amps as logged. power: the watts as logged, for a pack of another voltage.',
  }),
  lastsS: quantity({ title: 'Length', unit: 's', min: 0, aboveMin: true, max: 1000000 }),
  timeS: z
    .array(z.number().min(0).max(1000000))
    .min(1)
    .max(5000)
    .meta({ title: 'Times', help: 'Each value holds from its time to the next.' }),
  currentA: z.array(z.number().min(-2000).max(5000)).min(1).max(5000).meta({ title: 'Currents' }),
  voltageV: z
    .array(z.number().min(0).max(1000))
    .max(5000)
    .meta({ title: 'Voltages', help: 'Empty where the log has none.' }),
});
export type LogLoad = z.infer<typeof logLoadSchema>;

/** What a leg may ask: an electric load, clamp-meter amps, a log, or a stretch to drive. */
export const legLoadSchema = z
  .discriminatedUnion('kind', [
    ...loadSchema.options,
    driveLoadSchema,
    surfaceAmpsLoadSchema,
    logLoadSchema,
  ])
  .meta({
    title: 'Motor load',
    help: 'From least to most known: amps, a log, or the motor and machine model.',
  });
export type LegLoad = z.infer<typeof legLoadSchema>;
