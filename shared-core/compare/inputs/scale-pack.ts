import { defaultResistanceOhm } from '../../battery/default-resistance.ts';
import { withMeasuredBehaviour } from '../../battery/rating/measured-behaviour.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Option, Pack } from '../../plan/schema/option.ts';
import type { Scenario } from '../scenario.ts';

/** The scenario with a change made to its pack. */
export function withPack(scenario: Scenario, change: (pack: Pack) => Pack): Scenario {
  const option: Option = { ...scenario.option, pack: change(scenario.option.pack) };
  return { ...scenario, option };
}

/** A block that holds `factor` times the charge at every rate. */
export function scaleCapacity(label: Block, factor: number): Block {
  const block = withMeasuredBehaviour(label);
  const { rating, fitted } = block;
  return {
    ...block,
    capacityAh: block.capacityAh * factor,
    // An unknown resistance is estimated from the capacity on the label; the label does not change.
    resistanceOhm: block.resistanceOhm ?? defaultResistanceOhm(block),
    rating:
      rating.kind === 'points'
        ? {
            ...rating,
            points: rating.points.map((point) => ({
              ...point,
              capacityAh: point.capacityAh * factor,
            })),
          }
        : rating,
    fitted: fitted === null ? null : { ...fitted, capacityAh: fitted.capacityAh * factor },
  };
}

/** A block of `factor` times the resistance, polarisation and knee included. */
export function scaleResistance(label: Block, factor: number): Block {
  const block = withMeasuredBehaviour(label);
  const { fitted } = block;
  return {
    ...block,
    resistanceOhm: (block.resistanceOhm ?? defaultResistanceOhm(block)) * factor,
    fitted:
      fitted === null
        ? null
        : {
            ...fitted,
            resistanceOhm: fitted.resistanceOhm * factor,
            polarisationOhm: fitted.polarisationOhm * factor,
            kneeOhm: fitted.kneeOhm * factor,
          },
  };
}
