import type { Chemistry } from '../plan/schema/block.ts';
import { chemistryTraits } from './chemistry.ts';

/** Years on the shelf and full-depth cycles until a fifth of the capacity is gone. Common practice, no source. */
const life: Readonly<Record<Chemistry, { readonly yearsAt20C: number; readonly cycles: number }>> =
  {
    agm: { yearsAt20C: 6, cycles: 200 },
    gel: { yearsAt20C: 8, cycles: 350 },
    flooded: { yearsAt20C: 6, cycles: 250 },
    lfp: { yearsAt20C: 12, cycles: 2500 },
    nmc: { yearsAt20C: 10, cycles: 700 },
  };

/**
 * Share of the new capacity that is left: a fifth is lost over the calendar life and a fifth over the cycle life, added.
 * Calendar life halves with each 10 K above 20 °C (`life * 2^(-dT/10)`, published rule for lead; used for all).
 *
 * @param ageYears calendar age [years]
 * @param cyclesDone full-depth equivalent cycles
 * @param meanC mean temperature of those years [°C]
 * @returns share left [1], never below 0.05
 */
export function capacityShareAtAge(
  chemistry: Chemistry,
  ageYears: number,
  cyclesDone: number,
  meanC = 20,
): number {
  const { yearsAt20C, cycles } = life[chemistry];
  const years = yearsAt20C * 2 ** (-(meanC - 20) / 10);
  return Math.max(0.05, 1 - 0.2 * (ageYears / years) - 0.2 * (cyclesDone / cycles));
}

/**
 * Factor on the resistance once a share of the capacity is gone: 2 when a fifth is lost, in proportion (worn lead blocks
 * show 2 to 5 times the new resistance; lithium half of that). Common practice, no source.
 */
export function resistanceFactorAtAge(chemistry: Chemistry, capacityShare: number): number {
  const perFifth = chemistryTraits[chemistry].family === 'lead' ? 1 : 0.5;
  return 1 + perFifth * (Math.max(0, 1 - capacityShare) / 0.2);
}

/** Cycles of a chemistry until a fifth of the capacity is gone, at full depth. Common practice, no source. */
export function fullDepthCycleLife(chemistry: Chemistry): number {
  return life[chemistry].cycles;
}
