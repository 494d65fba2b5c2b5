import { chemistryTraits } from '../battery/chemistry.ts';
import type { Block } from '../plan/schema/block.ts';
import type { Pack } from '../plan/schema/option.ts';
import type { Thresholds } from '../plan/schema/thresholds.ts';

/** Voltages a pack wants at the end of its charge and afterwards, for the whole pack at the temperature of the day. */
export interface WantedVoltages {
  /** Middle of what makers ask for [V]. */
  readonly endV: number;
  /** Lowest and highest end voltage makers ask for [V]; equal where the maker of this block states one. */
  readonly endLowV: number;
  readonly endHighV: number;
  /** Lowest and highest float voltage [V]; null where the chemistry must not be floated. */
  readonly float: { readonly lowV: number; readonly highV: number } | null;
  /** Where the figures come from. */
  readonly source: string;
}

/** Cyclic end voltage changes by this with temperature [V/K per cell]; -4 to -5 mV from memory of makers' sheets. */
const leadCyclicPerCellK = -0.004;
/** Float voltage changes by -3 mV/K per cell (published). */
const leadFloatPerCellK = -0.003;
/** Makers' cyclic end voltages of a 12 V block lie this far to either side of the middle [V]: 14.4 to 14.7 V. */
const leadSpreadPerBlockV = 0.15;
/** Gel wants this much less than AGM and flooded per 12 V block [V]: 14.1 to 14.4 V. */
const gelLowerPerBlockV = 0.3;

/** Number of cell groups in series of a pack. */
export function packGroups(pack: Pack): number {
  return pack.block.cellGroups * pack.seriesCount;
}

/**
 * Wanted charge voltages.
 *
 * Lead: cyclic end 14.4 to 14.7 V per 12 V block at 25 °C around the plan's own limit, -4 mV/K per cell; float 13.5 to
 * 13.8 V, -3 mV/K per cell. LFP 3.65 V, NMC 4.20 V per cell group, no float. A block's own end voltage beats all of
 * these. Published in makers' sheets; the compensation of the cyclic voltage from memory.
 *
 * @param pack the pack; its block decides
 * @param temperatureC of the blocks [°C], -30 to 60
 * @param thresholds the plan's limits; `leadCyclicVoltPerBlock` is used
 */
export function wantedVoltages(
  pack: Pack,
  temperatureC: number,
  thresholds: Thresholds,
): WantedVoltages {
  const { block } = pack;
  const cells = packGroups(pack);
  const warmerK = temperatureC - 25;
  if (chemistryTraits[block.chemistry].family === 'lithium') {
    const endV =
      block.chargeEndVoltageV === null
        ? cells * chemistryTraits[block.chemistry].chargeEndV
        : block.chargeEndVoltageV * pack.seriesCount;
    return { endV, endLowV: endV, endHighV: endV, float: null, source: lithiumSource };
  }
  const shiftV = leadCyclicPerCellK * cells * warmerK;
  const floatShiftV = leadFloatPerCellK * cells * warmerK;
  const perBlockV = leadPerBlockV(block, thresholds);
  const spreadV = block.chargeEndVoltageV === null ? leadSpreadPerBlockV : 0;
  const whole = (volts: number): number => (volts * cells) / 6 + shiftV;
  return {
    endV: whole(perBlockV),
    endLowV: whole(perBlockV - spreadV),
    endHighV: whole(perBlockV + spreadV),
    float: { lowV: (13.5 * cells) / 6 + floatShiftV, highV: (13.8 * cells) / 6 + floatShiftV },
    source: leadSource,
  };
}

const leadSource =
  "Makers' sheets: 14.4 to 14.7 V per 12 V block cyclic (gel 14.1 to 14.4), 13.5 to 13.8 V float, at 25 °C";
const lithiumSource = "Makers' sheets: LFP 3.65 V, NMC 4.20 V per cell group; no float";

/** End voltage of six cells at 25 °C [V]. */
function leadPerBlockV(block: Block, thresholds: Thresholds): number {
  if (block.chargeEndVoltageV !== null) return (block.chargeEndVoltageV / block.cellGroups) * 6;
  return thresholds.leadCyclicVoltPerBlock - (block.chemistry === 'gel' ? gelLowerPerBlockV : 0);
}

/**
 * Highest voltage the pack's terminals see [V]: the charger's end (at the temperature of the day, or without load for a
 * wall supply) or, without a charger or its figure, the highest its chemistry wants.
 */
export function highestChargeVoltageV(
  pack: Pack,
  charger: {
    readonly endVoltageV: number | null;
    readonly floatVoltageV: number | null;
    readonly compensationMvPerCellK: number | null;
    readonly cellGroups: number;
  } | null,
  temperatureC: number,
  thresholds: Thresholds,
): number {
  const wanted = wantedVoltages(pack, temperatureC, thresholds).endHighV;
  if (charger === null || charger.endVoltageV === null) return wanted;
  const shiftV =
    ((charger.compensationMvPerCellK ?? 0) / 1000) * charger.cellGroups * (temperatureC - 25);
  return Math.max(charger.endVoltageV, charger.floatVoltageV ?? 0) + shiftV;
}
