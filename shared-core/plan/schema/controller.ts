import { z } from 'zod';
import { line, quantity, unknownQuantity } from './field.ts';
import { motorControlSchema } from './motor-control.ts';

/** The motor controller as the battery sees it. */
export const controllerSchema = z
  .object({
    name: line({ title: 'Name' }),
    minimumVoltageV: unknownQuantity({
      title: 'Lowest supply voltage',
      unit: 'V',
      min: 0,
      max: 200,
    }),
    maximumVoltageV: unknownQuantity({
      title: 'Highest supply voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 400,
      help: 'What its capacitors and transistors stand, from its sheet.',
    }),
    cutoffVoltageV: unknownQuantity({
      title: 'Low-voltage cutoff',
      unit: 'V',
      min: 0,
      max: 200,
      help: 'Loaded voltage below which it stops the motor. Unknown or none: nothing protects a lead pack.',
    }),
    restartVoltageV: unknownQuantity({
      title: 'Restarts above',
      unit: 'V',
      min: 0,
      max: 200,
      help: 'Not known: 1 V per 12 V above the cutoff.',
    }),
    cutoffDelayS: quantity({
      title: 'Cutoff delay',
      unit: 's',
      min: 0,
      max: 60,
      help: 'How long the voltage must stay below the cutoff.',
    }),
    batteryCurrentLimitA: unknownQuantity({
      title: 'Battery current limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    motorCurrentLimitA: unknownQuantity({
      title: 'Motor current limit',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
    idleCurrentA: quantity({
      title: 'Idle current',
      unit: 'A',
      min: 0,
      max: 10,
      help: 'Drawn from the pack while switched on.',
    }),
    control: motorControlSchema.nullable().meta({
      title: 'Motor control',
      help: 'Ramps, throttle and losses; needed where legs are driven with the motor model.',
    }),
  })
  .meta({ title: 'Controller' });
export type Controller = z.infer<typeof controllerSchema>;
