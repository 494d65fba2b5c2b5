import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { advanceWells, fullWells } from './two-well.ts';
import { wellInputs, wellSource } from './two-well-inputs.ts';

export const twoWellStateFormula = defineFormula({
  id: 'two-well-state',
  title: 'Charge of both wells after a constant current and a rest',
  equation:
    'q1 = q10 r + (q0 k′ c - I)(1 - r)/k′ - I c (k′ t - 1 + r)/k′; q2 = q20 r + q0 (1 - c)(1 - r) - I (1 - c)(k′ t - 1 + r)/k′; r = exp(-k′ t)',
  inputs: {
    ...wellInputs,
    currentA: number('A', -10_000, 10_000, 'constant current, positive while discharging'),
    timeH: number('h', 0, 10_000, 'duration of the current'),
    restH: number('h', 0, 10_000, 'rest after it', 0),
    startPercent: number('%', 0, 100, 'charge at the start, wells level', 100),
  },
  outputs: {
    availableAh: [
      'A·h',
      'charge in the available well; negative where the current could not be held',
    ],
    boundAh: ['A·h', 'charge in the bound well'],
    headPercent: ['%', 'level of the available well'],
    chargePercent: ['%', 'charge in both wells'],
  },
  assumptions: 'Wells level at the start, constant parameters, no self-discharge.',
  validity: 'Currents and times like those the parameters were fitted to.',
  source: wellSource,
  compute: ({ currentA, timeH, restH, startPercent, ...wells }) => {
    const full = fullWells(wells);
    const start = {
      availableAh: (full.availableAh * startPercent) / 100,
      boundAh: (full.boundAh * startPercent) / 100,
    };
    const loaded = advanceWells(wells, start, currentA, timeH);
    const { availableAh, boundAh } = advanceWells(wells, loaded, 0, restH);
    return {
      values: {
        availableAh,
        boundAh,
        headPercent: (100 * availableAh) / full.availableAh,
        chargePercent: (100 * (availableAh + boundAh)) / wells.capacityAh,
      },
      steps: [
        step('Available charge at the end of the current', loaded.availableAh, 'A·h'),
        step('r = exp(-k′ t)', Math.exp(-wells.levellingPerH * timeH), '1'),
      ],
    };
  },
});
