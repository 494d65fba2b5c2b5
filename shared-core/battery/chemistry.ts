import { openCircuitTables } from '../formulas/voltage/open-circuit-tables.ts';
import type { Chemistry } from '../plan/schema/block.ts';
import { restPoints } from './rest-points.ts';

/** What the core assumes of a cell when the user's own figures are silent. Every figure per cell group. */
export interface ChemistryTraits {
  readonly family: 'lead' | 'lithium';
  /** Nominal voltage of a cell [V]. */
  readonly nominalV: number;
  /** Open-circuit voltage at rest, 25 °C: pairs of charge (0 to 1) and volts, charge rising. */
  readonly openCircuit: readonly (readonly [charge: number, voltageV: number])[];
  /** Half the gap between the charging and the discharging rest curves [V]. */
  readonly hysteresisV: number;
  /** Peukert exponent where none is given: likely value and plausible range. */
  readonly exponent: { readonly low: number; readonly likely: number; readonly high: number };
  /** Resistance of a new cell: `typicalOhm * (typicalAh / capacity)^scaling`. */
  readonly resistance: {
    readonly typicalOhm: number;
    readonly typicalAh: number;
    readonly scaling: number;
  };
  /** Polarisation resistance over ohmic resistance, and its time constant [s]. */
  readonly polarisation: { readonly share: number; readonly timeS: number };
  /** Knee resistance over ohmic resistance. */
  readonly kneeShare: number;
  /** Resistance grows by exp(rate * (25 - temperature)) [1/K]. */
  readonly resistanceColdRatePerK: number;
  /** Temperature at which makers rate the capacity [°C]. */
  readonly ratedC: number;
  /** Voltage a reversed cell settles at [V]. */
  readonly reversedV: number;
  /** Charge end and float voltage at 25 °C [V]; float null where the chemistry must not be floated. */
  readonly chargeEndV: number;
  readonly floatV: number | null;
  /** Specific heat of the cell [J/(A·h K)]: heat capacity per ampere-hour. */
  readonly heatJPerAhK: number;
}

const leadCommon = {
  family: 'lead',
  nominalV: 2,
  hysteresisV: 0,
  exponent: { low: 1.1, likely: 1.18, high: 1.25 },
  // 12 V block of 7 Ah: 22 to 30 mΩ, 12 Ah: 14 to 20, 20 Ah: 10 to 14, 40 Ah: <= 8. Common practice, no source.
  resistance: { typicalOhm: 0.012 / 6, typicalAh: 20, scaling: 0.74 },
  polarisation: { share: 0.8, timeS: 90 },
  kneeShare: 0.3,
  resistanceColdRatePerK: 0.012,
  ratedC: 20,
  reversedV: -1,
  chargeEndV: 14.55 / 6,
  floatV: 13.65 / 6,
  heatJPerAhK: 58,
} as const;

/**
 * Traits of the chemistries.
 *
 * Rest voltages: `restPoints`, from the catalogue's tables. LFP hysteresis: half of the gap the catalogue gives.
 * Exponents, polarisation, knee, cold rates, heat capacities: common practice, no source.
 */
export const chemistryTraits: Readonly<Record<Chemistry, ChemistryTraits>> = {
  agm: {
    ...leadCommon,
    openCircuit: restPoints('agm'),
  },
  gel: {
    ...leadCommon,
    resistance: { ...leadCommon.resistance, typicalOhm: 0.014 / 6 },
    chargeEndV: 14.2 / 6,
    openCircuit: restPoints('gel'),
  },
  flooded: {
    ...leadCommon,
    resistance: { ...leadCommon.resistance, typicalOhm: 0.013 / 6 },
    openCircuit: restPoints('flooded'),
  },
  lfp: {
    family: 'lithium',
    nominalV: 3.2,
    openCircuit: restPoints('lfp'),
    hysteresisV: openCircuitTables.lfp.hysteresisV / 2,
    exponent: { low: 1, likely: 1.02, high: 1.05 },
    // 8 groups of 20 Ah with BMS: 10 to 40 mΩ. Common practice, no source.
    resistance: { typicalOhm: 0.0028, typicalAh: 20, scaling: 0.9 },
    polarisation: { share: 0.5, timeS: 40 },
    kneeShare: 0.05,
    resistanceColdRatePerK: 0.03,
    ratedC: 25,
    reversedV: -0.5,
    chargeEndV: 3.65,
    floatV: null,
    heatJPerAhK: 30,
  },
  nmc: {
    family: 'lithium',
    nominalV: 3.65,
    openCircuit: restPoints('nmc'),
    hysteresisV: 0,
    exponent: { low: 1, likely: 1.03, high: 1.06 },
    resistance: { typicalOhm: 0.0035, typicalAh: 20, scaling: 0.9 },
    polarisation: { share: 0.5, timeS: 40 },
    kneeShare: 0.05,
    resistanceColdRatePerK: 0.03,
    ratedC: 25,
    reversedV: -0.5,
    chargeEndV: 4.2,
    floatV: null,
    heatJPerAhK: 17,
  },
};
