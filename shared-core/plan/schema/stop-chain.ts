import { z } from 'zod';
import { unknownQuantity } from './field.ts';

const answer = (title: string, help: string) =>
  z.enum(['yes', 'no', 'unknown']).meta({ title, help });

/** What stops the motor when the controller no longer obeys. */
export const stopChainSchema = z
  .object({
    isolator: z.enum(['none', 'switch', 'contactor', 'plug', 'unknown']).meta({
      title: 'Isolator',
      help: 'A switch, contactor or pull-out plug in the main line that opens it whatever the controller does.',
    }),
    isolatorReachable: answer(
      "Within the rider's or keeper's reach",
      'While the machine is moving.',
    ),
    isolatorDcVoltageV: unknownQuantity({
      title: 'Isolator, rated direct voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 1000,
      help: 'The DC rating; an AC rating says nothing about direct current.',
    }),
    isolatorBreakingA: unknownQuantity({
      title: 'Isolator, breaking current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 10000,
      help: 'At that direct voltage.',
    }),
    throttleFaultDetection: answer(
      'Throttle fault detection',
      'The controller stops when a throttle wire breaks or shorts.',
    ),
    startInterlock: answer(
      'Start interlock',
      'It does not move when switched on with the pedal pressed.',
    ),
  })
  .meta({ title: 'Stop chain' });
export type StopChain = z.infer<typeof stopChainSchema>;
