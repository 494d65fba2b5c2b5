import type { Block } from '../../plan/schema/block.ts';
import { buildBlock, newBlockConditions } from '../build-block-model.ts';
import type { BuiltBlock } from '../build-block-model.ts';
import { chemistryTraits } from '../chemistry.ts';
import { ratingEndVoltagePerCell } from '../end-voltage.ts';
import { ratedPoints } from '../rating-points.ts';
import { steadyCapacityAh } from '../steady-discharge.ts';
import { fitCurves } from './fit-curves.ts';
import type { CurveMisfit } from './fit-curves.ts';
import type { RatingRemark } from './rating-remark.ts';

/** How well a block's model meets one of the capacities it was made from. */
export interface PointMisfit {
  readonly hours: number;
  readonly endVoltageV: number;
  readonly capacityAh: number;
  /** What the model gives at that current to that end voltage, new and at the temperature of the rating [A·h]. */
  readonly modelAh: number;
  readonly misfitPercent: number;
}

/** What the rating of a block tells, how well the model meets it, and what had to be assumed. */
export interface RatingReport {
  readonly kind: 'exponent' | 'points' | 'curves' | 'fitted';
  readonly points: readonly PointMisfit[];
  /** One entry for each discharge curve; empty for other ratings. */
  readonly curves: readonly CurveMisfit[];
  readonly remarks: readonly RatingRemark[];
}

/** Misfits above these are said in words: of a rated capacity, of a curve per cell. */
const pointLimitPercent = 3;
const curveLimitMv = 20;
/** A label that lies further than this from what the curves show is said so. */
const labelLimitPercent = 5;

/** Reports on the rating of a block, new and at the temperature its chemistry is rated at. */
export function ratingReport(block: Block): RatingReport {
  if (block.fitted !== null) return { kind: 'fitted', points: [], curves: [], remarks: [] };
  const traits = chemistryTraits[block.chemistry];
  const built = buildBlock(block, { ...newBlockConditions, temperatureC: traits.ratedC });
  const points = ratedPoints(block).map((point): PointMisfit => {
    const modelAh = steadyCapacityAh(
      built.model,
      point.capacityAh / point.hours,
      point.endVoltageV,
    );
    return {
      hours: point.hours,
      endVoltageV: point.endVoltageV,
      capacityAh: point.capacityAh,
      modelAh,
      misfitPercent: 100 * (modelAh / point.capacityAh - 1),
    };
  });
  const missed = points.filter(({ misfitPercent }) => Math.abs(misfitPercent) > pointLimitPercent);
  const common: RatingRemark[] = missed.map(({ hours, misfitPercent }) => ({
    kind: 'point-missed',
    hours,
    percent: misfitPercent,
  }));
  const { rating } = block;
  if (rating.kind === 'curves') {
    const { curves, unknown, restKnownDownTo } = fitCurves(block, rating.curves);
    return {
      kind: 'curves',
      points,
      curves,
      remarks: [
        ...common,
        ...curves
          .filter(({ rmsMv }) => rmsMv > curveLimitMv * block.cellGroups)
          .map(({ currentA, rmsMv }) => ({ kind: 'curve-missed', currentA, rmsMv }) as const),
        ...unknown.map((value) => ({ kind: 'not-told', value }) as const),
        ...(restKnownDownTo > 0.03
          ? [{ kind: 'rest-assumed-below', chargePercent: 100 * restKnownDownTo } as const]
          : []),
        ...labelRemark(block, built),
      ],
    };
  }
  return {
    kind: rating.kind,
    points,
    curves: [],
    remarks: [
      ...common,
      ...(rating.kind === 'points' ? untoldWells(built) : []),
      ...(rating.kind === 'exponent' && rating.exponent === null
        ? [{ kind: 'exponent-assumed', ...traits.exponent } as const]
        : []),
      ...(block.resistanceOhm === null ? [{ kind: 'resistance-assumed' } as const] : []),
      { kind: 'shape-assumed' },
    ],
  };
}

/** Says when the curves make the block clearly larger or smaller than its label. */
function labelRemark(block: Block, { model }: BuiltBlock): RatingRemark[] {
  const shownAh = steadyCapacityAh(
    model,
    block.capacityAh / block.ratedHours,
    block.cellGroups * ratingEndVoltagePerCell(block.chemistry, block.ratedHours),
  );
  const percent = 100 * (shownAh / block.capacityAh - 1);
  if (Math.abs(percent) <= labelLimitPercent) return [];
  return [
    {
      kind: 'label-contradicted',
      labelAh: block.capacityAh,
      shownAh,
      hours: block.ratedHours,
    },
  ];
}

/** Without rate loss there is no levelling to know. */
function untoldWells({ wells }: BuiltBlock): RatingRemark[] {
  if (wells.availableShare === 1) return [];
  return wells.undetermined.map((value) => ({
    kind: 'not-told',
    value: value === 'availableShare' ? 'rateLoss' : 'levelling',
  }));
}
