import { buildBlockModel, newBlockConditions } from '../battery/build-block-model.ts';
import { readUniform } from '../battery/uniform-table.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { LoadTerms } from '../run/load-source.ts';

/** A pack as the drive's quick views see it: a voltage behind a resistance. */
export interface Supply {
  readonly emfV: number;
  readonly resistanceOhm: number;
}

/**
 * The option's pack, new, at 25 °C, with links and harness, at a charge.
 *
 * @param charge 0 to 1; full by default, where speed and current are highest
 * Assumes equal blocks. Source: derived.
 */
export function packSupply(option: Option, machine: Machine, charge = 1): Supply {
  const { pack } = option;
  const model = buildBlockModel(pack.block, newBlockConditions);
  const stringOhm = pack.seriesCount * model.resistanceOhm + pack.linkResistanceOhm;
  return {
    emfV: pack.seriesCount * readUniform(model.openCircuit, charge),
    resistanceOhm: stringOhm / pack.parallelCount + machine.harnessResistanceOhm,
  };
}

/** Voltage under a load, `V = E - R I(V)`, the upper root; null where the supply cannot carry it. */
export function suppliedV({ emfV, resistanceOhm }: Supply, load: LoadTerms): number | null {
  const a = 1 + resistanceOhm * load.conductanceS;
  const b = emfV - resistanceOhm * load.currentA;
  const root = b * b - 4 * a * resistanceOhm * load.powerW;
  return root < 0 || b <= 0 ? null : (b + Math.sqrt(root)) / (2 * a);
}
