import type { Circuit } from './circuit.ts';

/**
 * Charge left in the pack in percent of its capacity in the run's conditions: of each string the charge of its emptiest
 * unit counts, since it ends the string's discharge.
 */
export function packChargePercent(circuit: Circuit): number {
  const { stringStart, charge, inverseChargePerAs, multiplicity, pack } = circuit;
  let left = 0;
  for (let string = 0; string < multiplicity.length; string += 1) {
    let least = Number.POSITIVE_INFINITY;
    for (let unit = stringStart[string]!; unit < stringStart[string + 1]!; unit += 1) {
      least = Math.min(least, charge[unit]! / inverseChargePerAs[unit]!);
    }
    left += multiplicity[string]! * least;
  }
  return (100 * left) / (pack.capacityAh * 3600);
}
