import { z } from 'zod';
import { quantity, unknownQuantity } from './field.ts';

export const brakeResistorSchema = z
  .object({
    resistanceOhm: quantity({ title: 'Resistance', unit: 'Ω', min: 0, aboveMin: true, max: 100 }),
    ratedPowerW: unknownQuantity({
      title: 'Rated power',
      unit: 'W',
      min: 0,
      aboveMin: true,
      max: 10000,
    }),
    overloadFactor: quantity({
      title: 'Overload for 5 s',
      min: 1,
      max: 50,
      help: "Multiple of the rated power. 5 for metal-element power resistors; more only if the part's sheet says so.",
    }),
    pulseEnergyJ: unknownQuantity({
      title: 'Pulse energy',
      unit: 'J',
      min: 0,
      aboveMin: true,
      max: 1000000,
      help: "For one stop, from the part's sheet. Not known: overload factor x rated power x 5 s.",
    }),
    heatTimeS: unknownQuantity({
      title: 'Thermal time constant',
      unit: 's',
      min: 1,
      max: 5000,
      help: 'Not known: 150 s.',
    }),
    riseAtRatedK: unknownQuantity({
      title: 'Temperature rise at rated power',
      unit: 'K',
      min: 1,
      max: 600,
      help: 'Not known: 250 K, usual for wirewound parts.',
    }),
  })
  .meta({ title: 'Brake resistor' });
export type BrakeResistor = z.infer<typeof brakeResistorSchema>;

/** What stops and holds the machine. */
export const brakesSchema = z
  .object({
    onRelease: z.enum(['coast', 'short', 'resistor', 'regeneration']).meta({
      title: 'When the pedal is released',
      help: 'coast: the motor turns freely. short: its terminals are joined. resistor: through a resistor. regeneration: back into the pack.',
    }),
    resistor: brakeResistorSchema.nullable().meta({ title: 'Brake resistor' }),
    regenerationLimitA: unknownQuantity({
      title: 'Regeneration limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 1000,
      help: 'Motor current while braking into the pack.',
    }),
    serviceDecelerationMps2: unknownQuantity({
      title: 'Service brake',
      unit: 'm/s²',
      min: 0,
      aboveMin: true,
      max: 10,
      help: 'Deceleration the mechanical foot or hand brake reaches. Not set: there is none.',
    }),
    parking: z.enum(['none', 'manual', 'automatic']).meta({
      title: 'Parking brake',
      help: 'manual: the rider sets it. automatic: closes when the current is off.',
    }),
  })
  .meta({ title: 'Brakes' });
export type Brakes = z.infer<typeof brakesSchema>;
