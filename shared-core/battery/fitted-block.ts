import type { Block } from '../plan/schema/block.ts';
import type { Fitted } from '../plan/schema/fitted.ts';
import { capacityShareAtAge, resistanceFactorAtAge } from './ageing.ts';
import type { BlockConditions, BlockModel } from './block-model.ts';
import { chemistryTraits } from './chemistry.ts';
import type { FittedWells } from './fit-wells.ts';
import { heatResistanceKPerW } from './heat.ts';
import { monotoneCurve } from './monotone-curve.ts';
import { capacityShareAtTemperature } from './temperature.ts';
import { sampleUniform } from './uniform-table.ts';

/**
 * Model of a block whose behaviour was measured: the fitted values hold at the temperature and age of the fit and are
 * carried from there to the wanted conditions by the same laws as for a block known from its label.
 */
export function buildFittedBlock(
  block: Block,
  fitted: Fitted,
  conditions: BlockConditions,
): { model: BlockModel; wells: FittedWells } {
  const { chemistry } = block;
  const traits = chemistryTraits[chemistry];
  const share = (temperatureC: number) =>
    capacityShareAtTemperature(chemistry, temperatureC, block.ratedHours);
  const ageNow = capacityShareAtAge(chemistry, conditions.ageYears, conditions.cyclesDone);
  const ageAtFit = capacityShareAtAge(chemistry, fitted.ageYears, fitted.cyclesDone);
  const capacityAh =
    (fitted.capacityAh *
      (conditions.capacityPercent / 100) *
      share(conditions.temperatureC) *
      ageNow) /
    (share(fitted.temperatureC) * ageAtFit);
  const resistance =
    Math.exp(fitted.resistanceColdRatePerK * (fitted.temperatureC - conditions.temperatureC)) *
    (resistanceFactorAtAge(chemistry, ageNow) / resistanceFactorAtAge(chemistry, ageAtFit)) *
    (conditions.resistancePercent / 100);
  const curve = monotoneCurve(
    fitted.openCircuit.map((point) => [point.chargePercent / 100, point.voltageV] as const),
  );
  return {
    wells: {
      capacityAh,
      availableShare: fitted.availableShare,
      levellingPerH: fitted.levellingPerMin * 60,
      residuals: [],
      undetermined: [],
    },
    model: {
      chemistry,
      cellGroups: block.cellGroups,
      capacityAh,
      availableShare: fitted.levellingPerMin > 0 ? fitted.availableShare : 1,
      levellingPerS: fitted.levellingPerMin / 60,
      resistanceOhm: fitted.resistanceOhm * resistance,
      kneeOhm: fitted.kneeOhm * resistance,
      polarisationOhm: fitted.polarisationOhm * resistance,
      polarisationS: fitted.polarisationS,
      openCircuit: sampleUniform(curve, 1001),
      hysteresisV: traits.hysteresisV * block.cellGroups,
      temperatureC: conditions.temperatureC,
      resistanceColdRatePerK: fitted.resistanceColdRatePerK,
      heatCapacityJPerK:
        fitted.heatCapacityJPerK ?? traits.heatJPerAhK * block.capacityAh * block.cellGroups,
      heatResistanceKPerW: fitted.heatResistanceKPerW ?? heatResistanceKPerW(block),
    },
  };
}
