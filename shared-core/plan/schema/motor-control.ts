import { z } from 'zod';
import { quantity, unknownQuantity } from './field.ts';

/** From the pedal's travel to the controller's duty: the pedal's volts at both ends and the window the controller reads. */
export const throttleCurveSchema = z
  .object({
    pedalRestV: quantity({ title: 'Pedal signal at rest', unit: 'V', min: 0, max: 48 }),
    pedalFullV: quantity({ title: 'Pedal signal when fully pressed', unit: 'V', min: 0, max: 48 }),
    startV: quantity({
      title: 'Controller starts at',
      unit: 'V',
      min: 0,
      max: 48,
      help: 'Signal at which the duty leaves zero: the lower dead band ends here.',
    }),
    fullV: quantity({
      title: 'Controller is full at',
      unit: 'V',
      min: 0,
      max: 48,
      help: 'Signal from which the duty is full: the upper dead band begins here.',
    }),
    exponent: quantity({
      title: 'Curve',
      min: 0.3,
      max: 4,
      help: '1: duty rises evenly. Above 1: gentle at first.',
    }),
  })
  .meta({ title: 'Throttle curve' });
export type ThrottleCurve = z.infer<typeof throttleCurveSchema>;

/** How the controller turns pack voltage into motor voltage. */
export const motorControlSchema = z
  .object({
    kind: z.enum(['pwm', 'switch']).meta({
      title: 'Kind',
      help: 'pwm: an electronic controller. switch: a plain switch or relay, full voltage at once.',
    }),
    rampUpS: unknownQuantity({
      title: 'Ramp up',
      unit: 's',
      min: 0,
      max: 20,
      help: 'Seconds from zero to full duty.',
    }),
    rampDownS: unknownQuantity({ title: 'Ramp down', unit: 's', min: 0, max: 20 }),
    efficiencyPercent: unknownQuantity({
      title: 'Efficiency',
      unit: '%',
      min: 50,
      max: 100,
      help: 'Not known: 96 % for an electronic controller, 100 % for a switch.',
    }),
    reducesBelowV: unknownQuantity({
      title: 'Reduces power below',
      unit: 'V',
      min: 0,
      max: 200,
      help: 'Some controllers limp before they cut off. Not set: no such stage.',
    }),
    reducedCurrentPercent: quantity({
      title: 'Current left when reduced',
      unit: '%',
      min: 1,
      max: 100,
      help: 'Share of its current limits while it limps.',
    }),
    throttle: throttleCurveSchema,
  })
  .meta({ title: 'Motor control' });
export type MotorControl = z.infer<typeof motorControlSchema>;
