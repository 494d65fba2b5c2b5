import { propagator } from './circuit.ts';
import type { Circuit } from './circuit.ts';
import {
  at,
  enterPiece,
  marchColumn,
  pieceLength,
  settleColumn,
  warmColumn,
} from './march-columns.ts';
import type { LoadTerms } from '../run/load-source.ts';
import { fastMoveV, stepsPerWarming } from './march.ts';
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
  const column = marchColumn(circuit, propagator(circuit, stepS), stepS, into.watchUnitBelowV);
  const linkOhm = circuit.linkOhm[0]!;
  const perString = 1 / circuit.multiplicity[0]!;
  const chargeBefore = column[at.chargeBefore]!;
  const moved = column[at.moved]!;
  const lagKeep = column[at.lagKeep]!;
  const lagTake = column[at.lagTake]!;
  const polarisationKeep = column[at.polarisationKeep]!;
  const unitBound = column[at.watchBelowV]!;
  const { currentA: fixedA, powerW, conductanceS } = terms;
  const { watchBelowV, watchAboveA } = into;
  let polarisationTake = column[at.polarisationTake]!;
  let pieceHead = column[at.pieceHead]!;
  let pieceV = column[at.pieceV]!;
  let pieceVPerHead = column[at.pieceVPerHead]!;
  let pieceOhm = column[at.pieceOhm]!;
  let pieceOhmPerHead = column[at.pieceOhmPerHead]!;
  let lag = column[at.lag]!;
  let polarisationV = column[at.polarisationV]!;
  let heatJ = column[at.heatJ]!;
  let ohm = column[at.ohm]!;
  let current = circuit.stringCurrentA[0]!;
  let previous = circuit.previousCurrentA[0]!;
  let busV = circuit.bus[0]!;
  let busA = circuit.bus[1]!;
  let busW = busA * (busV + busA * harnessOhm);
  let emf = circuit.stringEmfV[0]!;
  let drawn = 0;
  let missed = 0;
  let mean = 0;
  let taken = 0;
  let { chargeAs, energyWs, lowestBusV, peakA } = into;
  while (taken < steps && busV > watchBelowV) {
    const used = 1.5 * current - 0.5 * previous;
    heatJ += stepS * mean * (mean * ohm + polarisationV);
    drawn += missed + used;
    lag = lag * lagKeep + (missed * lagKeep + used) * lagTake;
    polarisationV =
      polarisationV * polarisationKeep + (missed * polarisationKeep + used) * polarisationTake;
    const head = chargeBefore - drawn * moved - lag;
    let along = head - pieceHead;
    if (!(along >= 0 && along <= pieceLength)) {
      enterPiece(circuit, column, 0, head);
      pieceHead = column[at.pieceHead]!;
      pieceV = column[at.pieceV]!;
      pieceVPerHead = column[at.pieceVPerHead]!;
      pieceOhm = column[at.pieceOhm]!;
      pieceOhmPerHead = column[at.pieceOhmPerHead]!;
      along = head - pieceHead;
    }
    emf = pieceV + pieceVPerHead * along - polarisationV;
    ohm = pieceOhm + pieceOhmPerHead * along;
    let suspect = current > watchAboveA || emf - current * ohm < unitBound;
    const sourceOhm = (linkOhm + ohm) * perString + harnessOhm;
    const a = 1 + conductanceS * sourceOhm;
    const b = emf - fixedA * sourceOhm;
    const root = Math.sqrt(b * b - 4 * a * powerW * sourceOhm);
    const newV = a === 1 ? 0.5 * (b + root) : (b + root) / (2 * a);
    const newA = fixedA + powerW / newV + conductanceS * newV;
    previous = current;
    current = newA * perString;
    mean = 0.5 * (current + previous);
    missed = mean - used;
    taken += 1;
    if (taken % stepsPerWarming === 0) {
      column[at.heatJ] = heatJ;
      warmColumn(circuit, column, stepsPerWarming * stepS);
      heatJ = 0;
      polarisationTake = column[at.polarisationTake]!;
      pieceOhm = column[at.pieceOhm]!;
      pieceOhmPerHead = column[at.pieceOhmPerHead]!;
    }
    const newW = newA * (newV + newA * harnessOhm);
    chargeAs += 0.5 * stepS * (busA + newA);
    energyWs += 0.5 * stepS * (busW + newW);
    if (!(Math.abs(newV - busV) < fastMoveV)) suspect = true;
    busV = newV;
    busA = newA;
    busW = newW;
    if (newV < lowestBusV) lowestBusV = newV;
    if (newA > peakA) peakA = newA;
    if (suspect) break;
  }
  column[at.lag] = lag;
  column[at.polarisationV] = polarisationV;
  column[at.heatJ] = heatJ;
  column[at.ohm] = ohm;
  circuit.stringEmfV[0] = emf;
  circuit.stringOhm[0] = linkOhm + ohm;
  circuit.stringCurrentA[0] = current;
  circuit.previousCurrentA[0] = previous;
  settleColumn(
    circuit,
    column,
    {
      drawnA: Float64Array.of(drawn),
      meanA: Float64Array.of(mean),
      missedA: Float64Array.of(missed),
    },
    stepS,
  );
  circuit.bus[0] = busV;
  circuit.bus[1] = busA;
  into.chargeAs = chargeAs;
  into.energyWs = energyWs;
  into.lowestBusV = lowestBusV;
  into.peakA = peakA;
  return taken;
}
