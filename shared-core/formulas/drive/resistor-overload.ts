import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Short overload that metal-element power resistors are tested with: times rated power, and for how long [s]. From
 * memory of MIL-PRF-49465.
 */
export const resistorOverload = { timesRated: 5, timeS: 5 } as const;

export const resistorOverloadFormula = defineFormula({
  id: 'resistor-overload',
  title: 'Short overload of a brake resistor',
  equation: 'P_short = 5 P_rated for 5 s',
  inputs: {
    ratedW: number('W', 0.1, 100_000, 'rated power of the resistor'),
    peakW: number('W', 0, 1e6, 'power at the first instant of braking'),
  },
  outputs: {
    allowedW: ['W', 'power allowed for 5 s'],
    timesRated: ['1', 'peak power against rated power'],
    within: ['', 'yes or no'],
  },
  assumptions: 'Cold at the start, mounted as its sheet says.',
  validity: 'Metal-element power resistors; more only if the part’s sheet says so.',
  source: {
    class: 'from-memory',
    citation: 'MIL-PRF-49465, short-time overload; the part’s own sheet beats it',
  },
  compute: ({ ratedW, peakW }) => {
    const allowedW = resistorOverload.timesRated * ratedW;
    return {
      values: { allowedW, timesRated: peakW / ratedW, within: peakW <= allowedW ? 'yes' : 'no' },
    };
  },
});
