import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Current into a dead short: `I = E/(R_pack + R_wire)`.
 *
 * Source: Ohm's law (derived).
 *
 * @param openCircuitV E [V]
 * @param packOhm R_pack, of the whole pack [Ω]
 * @param wireOhm R_wire, out and back to the fault [Ω]; sum above 0
 */
export function shortCircuitCurrentA(
  openCircuitV: number,
  packOhm: number,
  wireOhm: number,
): number {
  return openCircuitV / (packOhm + wireOhm);
}

export const shortCircuitCurrentFormula = defineFormula({
  id: 'short-circuit-current',
  title: 'Short-circuit current',
  equation: 'I = n E/((n R + R_wire)), n blocks in series; strings in parallel divide R',
  inputs: {
    blockV: number('V', 0.5, 500, 'rest voltage of a block'),
    blockOhm: number('Ω', 1e-5, 10, 'resistance of a block'),
    inSeries: number('1', 1, 100, 'blocks in series', 1),
    inParallel: number('1', 1, 100, 'strings in parallel', 1),
    wireOhm: number('Ω', 0, 10, 'wire and joints out and back to the fault', 0),
  },
  outputs: { currentA: ['A', 'current into the short'] },
  assumptions: 'Equal blocks, no BMS or fuse opening, resistance as at small currents.',
  validity: 'Upper limit for choosing breaking capacity and checking wires.',
  source: { class: 'derived', citation: 'Ohm’s law' },
  compute: ({ blockV, blockOhm, inSeries, inParallel, wireOhm }) => {
    const packV = blockV * inSeries;
    const packOhm = (blockOhm * inSeries) / inParallel;
    return {
      values: { currentA: shortCircuitCurrentA(packV, packOhm, wireOhm) },
      steps: [
        step('Voltage of the pack', packV, 'V'),
        step('Resistance of the loop', packOhm + wireOhm, 'Ω'),
      ],
    };
  },
});
