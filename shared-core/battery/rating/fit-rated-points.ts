import type { Block } from '../../plan/schema/block.ts';
import type { BlockModel } from '../block-model.ts';
import { chemistryTraits } from '../chemistry.ts';
import { endHead } from '../end-head.ts';
import { fitWells } from '../fit-wells.ts';
import type { FittedWells } from '../fit-wells.ts';
import { monotoneCurve } from '../monotone-curve.ts';
import { ratedPoints } from '../rating-points.ts';
import { shareAgainstRating } from '../temperature.ts';
import { sampleUniform } from '../uniform-table.ts';
import type { UniformTable } from '../uniform-table.ts';

type Electrical = Pick<
  BlockModel,
  'openCircuit' | 'hysteresisV' | 'resistanceOhm' | 'kneeOhm' | 'polarisationOhm' | 'polarisationS'
>;

/** Knee resistances to try, as shares of the usual one. */
const kneeTrials = [1, 0.5, 0.25, 0];

/**
 * Fits the wells under the usual knee; where the ratings show less rate loss than that knee alone would cause, the knee
 * is reduced until they are met. A block rated with an exponent of 1 ends up with one well and hardly a knee.
 */
export function fitRatedPoints(
  block: Block,
  resistanceOhm: number,
  ownShare: number,
  temperatureC: number,
): { electrical: Electrical; wells: FittedWells } {
  const traits = chemistryTraits[block.chemistry];
  let electrical: Electrical | undefined;
  let wells: FittedWells | undefined;
  for (const trial of kneeTrials) {
    const tried: Electrical = {
      openCircuit: openCircuitTable(block.chemistry, block.cellGroups),
      hysteresisV: traits.hysteresisV * block.cellGroups,
      resistanceOhm,
      kneeOhm: resistanceOhm * traits.kneeShare * trial,
      polarisationOhm: resistanceOhm * traits.polarisation.share,
      polarisationS: traits.polarisation.timeS,
    };
    electrical = tried;
    wells = fitWells(
      ratedPoints(block).map((point) => {
        const capacityAh =
          point.capacityAh *
          ownShare *
          shareAgainstRating(block.chemistry, temperatureC, point.hours);
        return {
          hours: point.hours,
          capacityAh,
          weight: point.weight,
          endHead: endHead(tried, capacityAh / point.hours, point.hours * 3600, point.endVoltageV),
        };
      }),
    );
    if (wells.availableShare < 1 || Math.max(...wells.residuals.map(Math.abs)) < 0.02) break;
  }
  return { electrical: electrical!, wells: wells! };
}

const tableCount = 1001;
const cellTables = new Map<string, UniformTable>();

function openCircuitTable(chemistry: Block['chemistry'], cellGroups: number): UniformTable {
  const key = `${chemistry}-${cellGroups}`;
  let table = cellTables.get(key);
  if (table === undefined) {
    const cellV = monotoneCurve(chemistryTraits[chemistry].openCircuit);
    table = sampleUniform((charge) => cellGroups * cellV(charge), tableCount);
    cellTables.set(key, table);
  }
  return table;
}
