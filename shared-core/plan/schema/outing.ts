import { z } from 'zod';
import { identifier, line, quantity } from './field.ts';
import { legLoadSchema } from './leg-load.ts';

/** One stretch of an outing. The load is what the motor circuit takes from the pack; none means standing still. */
export const legSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    durationMin: quantity({ title: 'Duration', unit: 'min', min: 0, aboveMin: true, max: 1440 }),
    load: legLoadSchema
      .nullable()
      .meta({ title: 'Motor load', help: 'None: the machine stands, accessories go on.' }),
    otherLoads: z.array(legLoadSchema).max(5).meta({
      title: 'Known otherwise',
      help: 'The same leg as amps, as a log or driven with the motor model: kept to be set beside the load that counts.',
    }),
  })
  .meta({ title: 'Leg' });
export type Leg = z.infer<typeof legSchema>;

export const outingSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    goalMin: quantity({ title: 'Minutes wanted', unit: 'min', min: 0, max: 2880 }),
    ambientC: quantity({
      title: 'Temperature',
      unit: '°C',
      min: -30,
      max: 60,
      help: 'Of the blocks at the start and the air around them.',
    }),
    legs: z.array(legSchema).min(1).max(100).meta({
      title: 'Legs',
      help: 'Repeated in order until a cutoff trips or the longest time is reached.',
    }),
    longestMin: quantity({ title: 'Stop the run after', unit: 'min', min: 1, max: 6000 }),
    restAfterMin: quantity({
      title: 'Rest before trying again',
      unit: 'min',
      min: 0,
      max: 1440,
      help: 'After the cutoff: how much more runs after this rest.',
    }),
  })
  .meta({ title: 'Outing' });
export type Outing = z.infer<typeof outingSchema>;
