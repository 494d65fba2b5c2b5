import { z } from 'zod';
import { quantity } from './field.ts';

/** A copper conductor by its trade size. Gauges above 1 are written 0, -1, -2, -3 for 1/0 to 4/0. */
export const conductorSchema = z
  .discriminatedUnion('system', [
    z.object({
      system: z.literal('metric'),
      areaMm2: quantity({
        title: 'Cross-section',
        unit: 'mm²',
        min: 0.2,
        max: 300,
        help: 'Fine-stranded copper, as printed on the jacket.',
      }),
    }),
    z.object({
      system: z.literal('awg'),
      gauge: quantity({
        title: 'Gauge',
        unit: 'AWG',
        min: -3,
        max: 30,
        integer: true,
        help: '18 is thin, 4 is thick. 1/0 to 4/0 are written 0, -1, -2, -3.',
      }),
    }),
  ])
  .meta({ title: 'Conductor' });
export type Conductor = z.infer<typeof conductorSchema>;

/** Temperature the insulation stands in continuous use [°C]. */
export const insulationRatings = [60, 75, 80, 90, 105] as const;
export const insulationRatingSchema = z.literal(insulationRatings).meta({
  title: 'Insulation stands',
  unit: '°C',
  help: 'Printed on the jacket. Household flex mostly 70 (take 60), automotive PVC 105, silicone more (take 105).',
});
export type InsulationRating = z.infer<typeof insulationRatingSchema>;
