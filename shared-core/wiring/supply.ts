import { readUniform } from '../battery/uniform-table.ts';
import { expandPack } from '../pack/expand-pack.ts';
import type { Option } from '../plan/schema/option.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';

/** The pack as the wiring sees it: strings of one voltage behind one resistance. */
export interface Supply {
  readonly stringCount: number;
  /** Open-circuit voltage of one string, full and rested [V]. */
  readonly fullV: number;
  /** Open-circuit voltage of one string at half charge [V]. */
  readonly halfV: number;
  /** Blocks of one string, without links [Ω]. */
  readonly stringOhm: number;
  /** Links and leads of one string, as the option states them [Ω]. */
  readonly linkOhm: number;
  readonly nominalV: number;
  /** Open-circuit voltage of the lower half of a string [V] and its resistance [Ω], for taps. */
  readonly tapV: number;
  readonly tapOhm: number;
}

/**
 * Voltage and resistance of a pack as a source. Strings that differ are averaged (derived: equal strings behave as one
 * with a part of the resistance).
 *
 * @param temperatureC of the blocks [°C]
 */
export function packSupply(option: Option, temperatureC: number): Supply {
  const model = expandPack(option, temperatureC, true);
  let count = 0;
  let fullV = 0;
  let halfV = 0;
  let stringOhm = 0;
  let tapV = 0;
  let tapOhm = 0;
  for (const string of model.strings) {
    const weight = string.strings.length;
    count += weight;
    for (const { model: block, count: alike, belowTap } of string.units) {
      const times = weight * alike;
      const full = readUniform(block.openCircuit, 1);
      fullV += times * full;
      halfV += times * readUniform(block.openCircuit, 0.5);
      stringOhm += times * block.resistanceOhm;
      if (belowTap) {
        tapV += times * full;
        tapOhm += times * block.resistanceOhm;
      }
    }
  }
  return {
    stringCount: count,
    fullV: fullV / count,
    halfV: halfV / count,
    stringOhm: stringOhm / count,
    linkOhm: option.pack.linkResistanceOhm,
    nominalV: nominalVoltageV(option),
    tapV: tapV / count,
    tapOhm: tapOhm / count,
  };
}
