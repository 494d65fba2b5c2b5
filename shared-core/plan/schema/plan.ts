import { z } from 'zod';
import { accessorySchema, converterSchema } from './accessory.ts';
import { benchSchema } from './bench.ts';
import { blockSchema } from './block.ts';
import { chargerSchema } from './charger.ts';
import { identifier, line, paragraph } from './field.ts';
import { machineSchema } from './machine.ts';
import { optionSchema } from './option.ts';
import { outingSchema } from './outing.ts';
import { thresholdsSchema } from './thresholds.ts';
import { weekSchema } from './week.ts';
import { wiringSchema } from './wiring.ts';

/** First field of every plan file; tells the file from any other JSON. */
export const planFormat = 'cellwain-plan';
/** Version written by this program. Raised by one with each migration. */
export const planVersion = 1;

const ownPart = <T extends z.ZodType>(part: T) => z.object({ id: identifier(), part });

export const planSchema = z
  .object({
    format: z.literal(planFormat).meta({ title: 'Format' }),
    version: z.literal(planVersion).meta({ title: 'Format version' }),
    name: line({ title: 'Name of the plan' }),
    note: paragraph({ title: 'Note' }),
    invented: z.boolean().meta({
      title: 'Invented data',
      help: 'Set on the sample plans: their figures describe no real product.',
    }),
    currency: line({ title: 'Currency' }, 8),
    machine: machineSchema,
    outings: z.array(outingSchema).min(1).max(12).meta({ title: 'Outings' }),
    headlineOuting: identifier().meta({ title: 'Outing of the headline figures' }),
    options: z.array(optionSchema).min(1).max(12).meta({ title: 'Options' }),
    ownParts: z
      .object({
        blocks: z.array(ownPart(blockSchema)).max(200),
        chargers: z.array(ownPart(chargerSchema)).max(200),
        converters: z.array(ownPart(converterSchema)).max(200),
        accessories: z.array(ownPart(accessorySchema)).max(200),
      })
      .meta({ title: 'Own parts', help: 'Parts the user added; offered beside the library.' }),
    thresholds: thresholdsSchema,
    week: weekSchema.nullable().meta({
      title: 'Week',
      help: 'When the machine is used and when it can be charged. None yet: the place Charging starts one.',
    }),
    wiring: wiringSchema
      .nullable()
      .meta({ title: 'Wiring', help: 'None yet: the place Wiring proposes one from the plan.' }),
    bench: benchSchema.nullable().meta({
      title: 'Bench',
      help: 'Readings taken on the machine as built and the fits made from them.',
    }),
  })
  .meta({ title: 'Plan' });
export type Plan = z.infer<typeof planSchema>;
