import { z } from 'zod';
import { identifier, line, unknownQuantity } from './field.ts';

/** What a wire is for, as known or as deduced. */
export const wireFunctions = [
  'battery-plus',
  'switched-plus',
  'return',
  'throttle-supply',
  'throttle-signal',
  'throttle-return',
  'motor',
  'converter-output',
  'charge-plus',
  'brake-signal',
  'not-connected',
] as const;
export const wireFunctionSchema = z.enum(wireFunctions).meta({ title: 'Function' });
export type WireFunction = z.infer<typeof wireFunctionSchema>;

const voltage = (title: string, help: string) =>
  unknownQuantity({ title, unit: 'V', min: -200, max: 200, help });

/** A wire found in a machine, with what the meter said about it. */
export const foundWireSchema = z
  .object({
    id: identifier(),
    label: line({ title: 'Label put on it' }, 40),
    colour: line({ title: 'Colour as found' }, 40),
    endA: line({ title: 'One end' }),
    endB: line({ title: 'Other end' }),
    keyOffV: voltage('Volts, key off', "Against the pack's minus."),
    keyOnV: voltage('Volts, key on', "Against the pack's minus, throttle at rest."),
    throttleV: voltage('Volts, full throttle', "Wheels off the ground, against the pack's minus."),
    toMinusOhm: unknownQuantity({
      title: 'Resistance to minus',
      unit: 'Ω',
      min: 0,
      max: 1e8,
      help: 'Pack disconnected. Write 100000000 for no reading.',
    }),
    joinedTo: z.array(identifier()).max(40).meta({
      title: 'Beeps with',
      help: 'Wires with which the continuity test beeps, pack disconnected.',
    }),
    known: wireFunctionSchema.nullable().meta({ title: 'Function known for sure' }),
  })
  .meta({ title: 'Found wire' });
export type FoundWire = z.infer<typeof foundWireSchema>;
