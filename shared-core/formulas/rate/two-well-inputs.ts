import { number } from '../input-spec.ts';

/** Inputs that every formula of the two-well model takes. */
export const wellInputs = {
  capacityAh: number('A·h', 1e-4, 10_000, 'charge of both wells when full, Q'),
  availableShare: number('1', 0.01, 1, 'share of the available well, c'),
  levellingPerH: number('1/h', 1e-4, 1e4, 'rate at which the wells level, k′'),
} as const;

export const wellSource = {
  class: 'published',
  citation: 'Manwell & McGowan, Solar Energy 50 (1993) 399',
} as const;
