import { monotoneCurve } from '../../battery/monotone-curve.ts';
import { chemistryTraits } from '../../battery/index.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Fitted } from '../../plan/schema/fitted.ts';
import type { Decoded } from './decode.ts';
import type { FittedHeat } from './fit-heat.ts';
import { openCircuitNodes, readTable } from '../../battery/deviated-curve.ts';

/** The plan's record of a fit, in values of the whole block. */
export function fittedSection(
  block: Block,
  { cell }: Decoded,
  heat: FittedHeat | null,
  about: { readonly source: string; readonly ageYears: number; readonly cyclesDone: number },
  referenceC: number,
): Fitted {
  const cells = block.cellGroups;
  return {
    source: about.source,
    temperatureC: clean(referenceC),
    ageYears: about.ageYears,
    cyclesDone: about.cyclesDone,
    capacityAh: clean(cell.capacityAh),
    availableShare: clean(1 / (1 + cell.boundRatio)),
    levellingPerMin: clean(cell.levellingPerS * 60),
    resistanceOhm: clean(cell.resistanceOhm * cells),
    polarisationOhm: clean(cell.polarisationOhm * cells),
    polarisationS: clean(cell.polarisationS),
    kneeOhm: clean(cell.kneeOhm * cells),
    resistanceColdRatePerK: clean(cell.coldRatePerK),
    heatCapacityJPerK: heat === null ? null : clean(heat.heatCapacityJPerK * cells),
    heatResistanceKPerW:
      heat === null ? null : clean(Math.min(1000, heat.heatResistanceKPerW / cells)),
    openCircuit: curvePoints(block, cell.openCircuit),
  };
}

/** Most points the plan holds for one curve. */
const mostPoints = 78;

/**
 * Points of the curve at the fit's nodes, at the usual curve's own points and between, so that the engine's interpolation
 * gives the fitted curve back.
 */
function curvePoints(block: Block, table: Float64Array): Fitted['openCircuit'] {
  const usual = chemistryTraits[block.chemistry].openCircuit.map(([charge]) => charge);
  const charges = new Set(
    [...openCircuitNodes, ...usual].map((charge) => Math.round(charge * 1e4) / 1e4),
  );
  while (charges.size < mostPoints) {
    const sorted = [...charges].toSorted((a, b) => a - b);
    let widest = 1;
    for (let index = 1; index < sorted.length; index += 1) {
      if (sorted[index]! - sorted[index - 1]! > sorted[widest]! - sorted[widest - 1]!)
        widest = index;
    }
    charges.add(Math.round(((sorted[widest]! + sorted[widest - 1]!) / 2) * 1e4) / 1e4);
  }
  return [...charges]
    .toSorted((a, b) => a - b)
    .map((charge) => ({
      chargePercent: clean(charge * 100),
      voltageV: clean(Math.max(0, readTable(table, charge)) * block.cellGroups),
    }));
}

/** Six significant digits: a fit knows no more, and the file stays readable. */
function clean(value: number): number {
  return Number(value.toPrecision(6));
}

/** Volts of a fitted curve at a charge, as the engine reads it; for showing the curve. */
export function fittedCurve(fitted: Fitted): (charge: number) => number {
  return monotoneCurve(
    fitted.openCircuit.map((point) => [point.chargePercent / 100, point.voltageV] as const),
  );
}
