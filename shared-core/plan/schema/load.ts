import { z } from 'zod';
import { quantity } from './field.ts';

/** An electric load as the source sees it. */
export const loadSchema = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('current'),
      currentA: quantity({
        title: 'Current',
        unit: 'A',
        min: 0,
        max: 2000,
        help: 'Drawn whatever the voltage, as a clamp meter reads it.',
      }),
    }),
    z.object({
      kind: z.literal('power'),
      powerW: quantity({
        title: 'Power',
        unit: 'W',
        min: 0,
        max: 50000,
        help: 'Constant power: the current rises as the voltage sags.',
      }),
    }),
    z.object({
      kind: z.literal('resistance'),
      resistanceOhm: quantity({
        title: 'Resistance',
        unit: 'Ω',
        min: 0,
        aboveMin: true,
        max: 100000,
        help: 'A plain resistor, such as a filament lamp or a heater.',
      }),
    }),
  ])
  .meta({ title: 'Load', help: 'How the current depends on the voltage.' });

export type Load = z.infer<typeof loadSchema>;
