import { headLow, headsPerOne, propagator } from './circuit.ts';
import type { Circuit } from './circuit.ts';
import type { LoadTerms } from '../run/load-source.ts';
import { fastMoveV, stepsPerWarming, warmGently } from './march.ts';
import type { March } from './march.ts';

/**
 * `march` for a pack of one distinct string of one distinct unit, the most common of all: the same equations with the
 * state in local variables, which doubles the speed.
 */
export function marchSingle(
  circuit: Circuit,
  terms: LoadTerms,
  harnessOhm: number,
  stepS: number,
  steps: number,
  into: March,
): number {
  const factors = propagator(circuit, stepS);
  const lagKeep = factors[0]!;
  const lagTake = factors[1]!;
  const polarisationKeep = factors[2]!;
  const polarisationTake = factors[3]!;
  const table = circuit.tables[0]!;
  const last = table.length / 2 - 1.000001;
  const count = circuit.count[0]!;
  const linkOhm = circuit.linkOhm[0]!;
  const times = circuit.multiplicity[0]!;
  const perString = 1 / times;
  const moved = circuit.inverseChargePerAs[0]! * stepS;
  const { currentA: fixedA, powerW, conductanceS } = terms;
  const { watchBelowV, watchAboveA } = into;
  const unitBound = into.watchUnitBelowV[0]!;
  let charge = circuit.charge[0]!;
  let lag = circuit.lag[0]!;
  let polarisationV = circuit.polarisationV[0]!;
  let warmth = circuit.warmth[0]!;
  let current = circuit.stringCurrentA[0]!;
  let previous = circuit.previousCurrentA[0]!;
  let heatJ = circuit.heatJ[0]!;
  let busV = circuit.bus[0]!;
  let busA = circuit.bus[1]!;
  let emf = circuit.emfV[0]!;
  let ohm = circuit.ohm[0]!;
  let missed = 0;
  let mean = 0;
  let taken = 0;
  let { chargeAs, energyWs, lowestBusV, peakA } = into;
  while (taken < steps && busV > watchBelowV) {
    const used = 1.5 * current - 0.5 * previous;
    const take = warmth * polarisationTake;
    heatJ += stepS * mean * (mean * ohm + polarisationV);
    charge -= (missed + used) * moved;
    lag = (lag + missed * lagTake) * lagKeep + used * lagTake;
    polarisationV = (polarisationV + missed * take) * polarisationKeep + used * take;
    const place = Math.min(last, Math.max(0, (charge - lag - headLow) * headsPerOne));
    const index = place | 0;
    const fraction = place - index;
    const lowV = table[2 * index]!;
    const lowOhm = table[2 * index + 1]!;
    emf = lowV + (table[2 * index + 2]! - lowV) * fraction - polarisationV;
    ohm = (lowOhm + (table[2 * index + 3]! - lowOhm) * fraction) * warmth;
    let suspect = current > watchAboveA || emf - current * ohm < unitBound;
    const sourceOhm = (linkOhm + count * ohm) * perString + harnessOhm;
    const a = 1 + conductanceS * sourceOhm;
    const b = count * emf - fixedA * sourceOhm;
    const inside = b * b - 4 * a * powerW * sourceOhm;
    const newV = a === 1 ? 0.5 * (b + Math.sqrt(inside)) : (b + Math.sqrt(inside)) / (2 * a);
    const newA = fixedA + powerW / newV + conductanceS * newV;
    previous = current;
    current = newA * perString;
    mean = 0.5 * (current + previous);
    missed = mean - used;
    taken += 1;
    if (taken % stepsPerWarming === 0) {
      circuit.heatJ[0] = heatJ;
      warmGently(circuit, stepsPerWarming * stepS);
      heatJ = 0;
      warmth = circuit.warmth[0]!;
    }
    chargeAs += 0.5 * stepS * (busA + newA);
    energyWs +=
      0.5 * stepS * (busA * (busV + busA * harnessOhm) + newA * (newV + newA * harnessOhm));
    if (!(Math.abs(newV - busV) < fastMoveV)) suspect = true;
    busV = newV;
    busA = newA;
    if (newV < lowestBusV) lowestBusV = newV;
    if (newA > peakA) peakA = newA;
    if (suspect) break;
  }
  circuit.heatJ[0] = heatJ + stepS * mean * (mean * ohm + polarisationV);
  circuit.charge[0] = charge - missed * moved;
  circuit.lag[0] = lag + missed * lagTake;
  circuit.polarisationV[0] = polarisationV + missed * warmth * polarisationTake;
  circuit.emfV[0] = emf;
  circuit.ohm[0] = ohm;
  circuit.stringEmfV[0] = count * emf;
  circuit.stringOhm[0] = linkOhm + count * ohm;
  circuit.stringCurrentA[0] = current;
  circuit.previousCurrentA[0] = previous;
  circuit.bus[0] = busV;
  circuit.bus[1] = busA;
  into.chargeAs = chargeAs;
  into.energyWs = energyWs;
  into.lowestBusV = lowestBusV;
  into.peakA = peakA;
  return taken;
}
