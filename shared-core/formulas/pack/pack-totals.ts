import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

export const packTotalsFormula = defineFormula({
  id: 'pack-totals',
  title: 'Equal blocks in series and in parallel',
  equation: 'V = n V_b; C = p C_b; E = n p V_b C_b; R = n R_b/p',
  inputs: {
    blockV: number('V', 0.5, 500, 'nominal voltage of a block'),
    blockAh: number('A·h', 0.01, 10_000, 'capacity of a block'),
    blockOhm: number('Ω', 0, 10, 'resistance of a block', 0),
    inSeries: number('1', 1, 100, 'blocks in series'),
    inParallel: number('1', 1, 100, 'strings in parallel', 1),
  },
  outputs: {
    packV: ['V', 'nominal voltage'],
    packAh: ['A·h', 'capacity'],
    packWh: ['W·h', 'nominal energy'],
    packOhm: ['Ω', 'resistance'],
  },
  assumptions: 'Equal blocks; joints and leads not counted.',
  validity: 'Always; unequal blocks need the simulation.',
  source: { class: 'derived', citation: 'Kirchhoff’s laws' },
  compute: ({ blockV, blockAh, blockOhm, inSeries, inParallel }) => ({
    values: {
      packV: blockV * inSeries,
      packAh: blockAh * inParallel,
      packWh: blockV * inSeries * blockAh * inParallel,
      packOhm: (blockOhm * inSeries) / inParallel,
    },
  }),
});
