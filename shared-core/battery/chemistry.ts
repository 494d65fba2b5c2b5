import type { Chemistry } from '../plan/schema/block.ts';

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

/** A rest curve written for a 12 V block, per cell. */
function perCell(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  return points.map(([charge, voltageV]) => [charge, voltageV / 6] as const);
}

/**
 * Traits of the chemistries.
 *
 * Rest voltages: flooded 100 to 10 % from a published handbook table; AGM, gel and LFP from memory; below 10 % the lead
 * curves bend to the usual 10.5 V end voltage (common practice, no source). NMC: half-cell functions of Chen et al.,
 * J. Electrochem. Soc. 167 (2020) 080534, evaluated at ten charges; the values at 50 % and below 5 % are interpolated.
 * LFP hysteresis: 34 mV between 3.291 and 3.325 V at 50 % (measured).
 * Exponents, polarisation, knee, cold rates, heat capacities: common practice, no source.
 */
export const chemistryTraits: Readonly<Record<Chemistry, ChemistryTraits>> = {
  agm: {
    ...leadCommon,
    openCircuit: perCell([
      [0, 10.5],
      [0.02, 11.0],
      [0.05, 11.38],
      [0.1, 11.72],
      [0.25, 12.0],
      [0.5, 12.3],
      [0.75, 12.6],
      [1, 12.8],
    ]),
  },
  gel: {
    ...leadCommon,
    resistance: { ...leadCommon.resistance, typicalOhm: 0.014 / 6 },
    chargeEndV: 14.2 / 6,
    openCircuit: perCell([
      [0, 10.5],
      [0.02, 11.0],
      [0.05, 11.38],
      [0.1, 11.72],
      [0.25, 12.0],
      [0.5, 12.35],
      [0.75, 12.65],
      [1, 12.85],
    ]),
  },
  flooded: {
    ...leadCommon,
    resistance: { ...leadCommon.resistance, typicalOhm: 0.013 / 6 },
    openCircuit: perCell([
      [0, 10.5],
      [0.02, 11.0],
      [0.05, 11.4],
      [0.1, 11.72],
      [0.2, 11.88],
      [0.3, 12.02],
      [0.4, 12.12],
      [0.5, 12.2],
      [0.6, 12.28],
      [0.7, 12.36],
      [0.8, 12.46],
      [0.9, 12.58],
      [1, 12.7],
    ]),
  },
  lfp: {
    family: 'lithium',
    nominalV: 3.2,
    openCircuit: [
      [0, 2.5],
      [0.03, 2.75],
      [0.1, 3.0],
      [0.2, 3.2],
      [0.3, 3.22],
      [0.4, 3.25],
      [0.5, 3.26],
      [0.6, 3.27],
      [0.7, 3.3],
      [0.8, 3.32],
      [0.9, 3.35],
      [1, 3.4],
    ],
    hysteresisV: 0.017,
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
    openCircuit: [
      [0, 2.5],
      [0.03, 2.95],
      [0.1, 3.2959],
      [0.2, 3.4852],
      [0.3, 3.5814],
      [0.4, 3.667],
      [0.6, 3.8406],
      [0.7, 3.9479],
      [0.8, 4.0421],
      [0.9, 4.0967],
      [1, 4.2],
    ],
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
