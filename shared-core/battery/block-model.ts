import type { Chemistry } from '../plan/schema/block.ts';
import type { UniformTable } from './uniform-table.ts';

/** Conditions that turn a block as bought into the block as it is. */
export interface BlockConditions {
  /** Block temperature [°C]. */
  readonly temperatureC: number;
  /** Calendar age [years]. */
  readonly ageYears: number;
  /** Full-depth equivalent cycles done. */
  readonly cyclesDone: number;
  /** Capacity against a block of the same type, age and temperature [%]; 100 for a normal one. */
  readonly capacityPercent: number;
  /** Resistance against a block of the same type, age and temperature [%]. */
  readonly resistancePercent: number;
}

/**
 * One block (or one cell group of it) ready for simulation: two wells, an open-circuit table over the head of the
 * available well, a resistance with knee, a polarisation element.
 *
 * With charge `sigma = (q1 + q2)/Q` and lag `d`, the head is `s = sigma - d`, and
 * `sigma' = -I/Q`, `d' = -k' d + I (1 - c)/(c Q)`, `v_p' = (I R1 - v_p)/tau`,
 * `V = OCV(s) - I (R0 + K (1/s - 1)) - v_p`. This is the two-well model of Manwell & McGowan (Solar Energy 50 (1993) 399)
 * written in the sum and the difference of its wells, with a Shepherd-type knee (J. Electrochem. Soc. 112 (1965) 657).
 */
export interface BlockModel {
  readonly chemistry: Chemistry;
  readonly cellGroups: number;
  /** Charge in both wells when full, in these conditions [A·h]. */
  readonly capacityAh: number;
  /** c: share of the available well, (0, 1]; 1 means no rate loss. */
  readonly availableShare: number;
  /** k': rate at which the wells level [1/s]. */
  readonly levellingPerS: number;
  /** R0 [Ω] in these conditions. */
  readonly resistanceOhm: number;
  /** K [Ω]: knee resistance. */
  readonly kneeOhm: number;
  /** R1 [Ω] and tau [s] of the polarisation element. */
  readonly polarisationOhm: number;
  readonly polarisationS: number;
  /** Open-circuit voltage of the whole block [V] over the head s in [0, 1]. */
  readonly openCircuit: UniformTable;
  /** Half width of the hysteresis of the whole block [V]; 0 where none is modelled. */
  readonly hysteresisV: number;
  /** Temperature for which the figures above hold [°C]. */
  readonly temperatureC: number;
  /** Resistances change by exp(-rate dT) as the block warms by dT [1/K]. */
  readonly resistanceColdRatePerK: number;
  /** Heat capacity [J/K] and resistance to the air [K/W] of the block. */
  readonly heatCapacityJPerK: number;
  readonly heatResistanceKPerW: number;
}
