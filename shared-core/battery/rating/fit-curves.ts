import { covarianceAt, descend } from '../../numerics/descend.ts';
import type { Block, DischargeCurve } from '../../plan/schema/block.ts';
import type { Fitted } from '../../plan/schema/fitted.ts';
import { chemistryTraits } from '../chemistry.ts';
import { defaultResistanceOhm } from '../default-resistance.ts';
import { readTable } from '../deviated-curve.ts';
import { curveParameterNames, curvePrior } from './curve-parameters.ts';
import type { CurveCell, CurveParameterName } from './curve-parameters.ts';
import { cellCurve, curveResiduals, rmsV } from './curve-residuals.ts';
import type { CellCurve } from './curve-residuals.ts';
import { endMisfit, headAfter } from './curve-volts.ts';
import { fitRatedPoints } from './fit-rated-points.ts';

/** How well one curve is met. */
export interface CurveMisfit {
  readonly currentA: number;
  /** Model minus curve over the points of the curve, whole block, root mean square [mV]. */
  readonly rmsMv: number;
  /** Charge to the curve's last voltage, model over curve, minus 1 [%]. */
  readonly endPercent: number;
}

/** A block's behaviour found from its discharge curves. */
export interface CurvesFit {
  readonly fitted: Fitted;
  readonly curves: readonly CurveMisfit[];
  /** What the curves do not tell: these values stayed near what is usual for the chemistry. */
  readonly unknown: readonly CurveParameterName[];
  /** Lowest charge at which the curves tell the rest voltage [1]; below it the usual shape of the chemistry is kept. */
  readonly restKnownDownTo: number;
}

/** Error a curve's volts are credited with, per cell [V]; taken from the residuals within these bounds. */
const sigmaRangeV = [0.0015, 0.03] as const;
/** A value whose error is still this share of the usual spread has not been told by the curves. */
const unknownAbove = 0.6;
/** Rounds of the search: the error of the volts is estimated anew after each. */
const rounds = [30, 20, 20];

/** Fits made so far by what they were made from: a study repeats with every edit of the plan. */
const known = new Map<string, CurvesFit>();
const mostKnown = 32;

/**
 * Wells, resistance, polarisation, knee and rest voltages of a block by least squares from discharge curves at constant
 * current, taken from full at the temperature the chemistry is rated at. Usual values of the chemistry pull weakly, so
 * that what the curves do not tell keeps its usual value and is named.
 *
 * The model is the closed form of the two wells under constant current (Manwell & McGowan, Solar Energy 50 (1993) 399)
 * with `V = OCV(s) - I (R0 + K (1/s - 1) + R1 (1 - e^{-t/tau}))`.
 *
 * @param curves at least one; times rise, voltages of the whole block [V]
 */
export function fitCurves(block: Block, curves: readonly DischargeCurve[]): CurvesFit {
  const key = JSON.stringify([
    curves,
    block.chemistry,
    block.cellGroups,
    block.capacityAh,
    block.ratedHours,
    block.resistanceOhm,
    block.bms === null,
  ]);
  let fit = known.get(key);
  if (fit === undefined) {
    fit = search(block, curves);
    if (known.size >= mostKnown) known.clear();
    known.set(key, fit);
  }
  return fit;
}

function search(block: Block, curves: readonly DischargeCurve[]): CurvesFit {
  const cells = block.cellGroups;
  const { hysteresisV } = chemistryTraits[block.chemistry];
  const cut = curves.map((curve) => cellCurve(curve, cells));
  const prior = curvePrior(
    block,
    Math.max(...cut.map(({ currentA, hours }) => currentA * hours.at(-1)!)),
    usualWells(block),
  );
  let at: readonly number[] = Array.from({ length: prior.size }, () => 0);
  let sigmaV = 0.006;
  const residualsOf = () => (point: readonly number[]) =>
    curveResiduals(prior, cut, point, sigmaV, hysteresisV);
  for (const iterations of rounds) {
    at = descend(residualsOf(), at, prior, iterations);
    const cell = prior.cellAt(at);
    const rms = Math.hypot(...cut.map((curve) => rmsV(cell, curve, hysteresisV)));
    sigmaV = Math.min(sigmaRangeV[1], Math.max(sigmaRangeV[0], rms / Math.sqrt(cut.length)));
  }
  const cell = prior.cellAt(at);
  const covariance = covarianceAt(residualsOf(), at, prior);
  const errorOf = (index: number) => Math.sqrt(Math.abs(covariance[index]![index]!));
  return {
    fitted: section(block, cell),
    curves: cut.map((curve) => ({
      currentA: curve.currentA,
      rmsMv: 1000 * cells * rmsV(cell, curve, hysteresisV),
      endPercent:
        100 *
        endMisfit(cell, curve.currentA, curve.hours.at(-1)!, curve.voltageV.at(-1)!, hysteresisV),
    })),
    unknown: curveParameterNames.filter(
      (name, index) => tells(name, cell) && (errorOf(index) > unknownAbove || hidden(name, cut)),
    ),
    restKnownDownTo: Math.max(0, Math.min(...cut.map((curve) => lastHead(cell, curve)))),
  };
}

/** Without rate loss there is no levelling to know. */
function tells(name: CurveParameterName, cell: CurveCell): boolean {
  return name !== 'levelling' || cell.boundRatio > 0.01;
}

/** Head of the available well at the end of a curve: how far down it saw. */
function lastHead(cell: CurveCell, { currentA, hours }: CellCurve): number {
  return headAfter(cell, currentA, hours.at(-1)!);
}

/** Curves nearer to one another than this ratio of currents are of one rate. */
const oneRate = 1.5;

/** At one rate the loss at other rates can only be guessed from the shape of the curve: that is no knowledge. */
function hidden(name: CurveParameterName, curves: readonly CellCurve[]): boolean {
  const currents = curves.map(({ currentA }) => currentA);
  return name === 'rateLoss' && Math.max(...currents) < oneRate * Math.min(...currents);
}

/** Wells as usual for the chemistry at the block's label. */
function usualWells(block: Block): { boundRatio: number; levellingPerH: number } {
  const { chemistry } = block;
  const unrated: Block = { ...block, rating: { kind: 'exponent', exponent: null } };
  const { ratedC } = chemistryTraits[chemistry];
  const ohm = block.resistanceOhm ?? defaultResistanceOhm(block);
  const { wells } = fitRatedPoints(unrated, ohm, 1, ratedC);
  return {
    boundRatio: (1 - wells.availableShare) / wells.availableShare,
    levellingPerH: Math.min(5, Math.max(0.03, wells.levellingPerH)),
  };
}

/** Entries between the points the rest curve is handed on with. */
const restStride = 4;

function section(block: Block, cell: CurveCell): Fitted {
  const { cellGroups: cells, chemistry } = block;
  const traits = chemistryTraits[chemistry];
  const last = cell.restV.length - 1;
  return {
    source: 'discharge curves of the rating',
    temperatureC: traits.ratedC,
    ageYears: 0,
    cyclesDone: 0,
    capacityAh: cell.capacityAh,
    availableShare: 1 / (1 + cell.boundRatio),
    levellingPerMin: cell.levellingPerH / 60,
    resistanceOhm: cell.resistanceOhm * cells,
    polarisationOhm: cell.polarisationOhm * cells,
    polarisationS: cell.polarisationS,
    kneeOhm: cell.kneeOhm * cells,
    resistanceColdRatePerK: traits.resistanceColdRatePerK,
    heatCapacityJPerK: null,
    heatResistanceKPerW: null,
    openCircuit: Array.from({ length: last / restStride + 1 }, (_, index) => ({
      chargePercent: (100 * index * restStride) / last,
      voltageV: Math.max(0, readTable(cell.restV, (index * restStride) / last)) * cells,
    })),
  };
}
