import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/**
 * Material factor of copper for short faults [A·sqrt(s)/mm²]: `k = 226 sqrt(ln((234.5 + tf)/(234.5 + ti)))`.
 *
 * Source: IEC 60364-5-54, annex on factor k (published).
 *
 * @param initialC ti before the fault [°C]
 * @param finalC tf that the insulation bears [°C], above ti
 */
export function withstandFactor(initialC: number, finalC: number): number {
  return 226 * Math.sqrt(Math.log((234.5 + finalC) / (234.5 + initialC)));
}

/**
 * Least copper area that survives a fault until the fuse opens [mm²]: `S = I sqrt(t)/k`.
 *
 * Source: IEC 60364-5-54 (published).
 *
 * @param currentA I [A]
 * @param timeS t [s], up to 5, in which no heat leaves the wire
 * @param factor k [A·sqrt(s)/mm²]
 */
export function withstandAreaMm2(currentA: number, timeS: number, factor: number): number {
  return (currentA * Math.sqrt(timeS)) / factor;
}

const temperatures = {
  initialC: number('°C', -40, 200, 'conductor before the fault: 70 for PVC, 90 for XLPE', 70),
  finalC: number('°C', 0, 400, 'conductor after it: 160 for PVC, 250 for XLPE', 160),
} as const;

const source = { class: 'published', citation: 'IEC 60364-5-54' } as const;

const notRising = () =>
  fail('finalC', 'is not above initialC', 'Give a final temperature above the initial one.');

export const withstandFactorFormula = defineFormula({
  id: 'withstand-factor',
  title: 'Material factor of copper for short faults',
  equation: 'k = 226 sqrt(ln((234.5 + tf)/(234.5 + ti)))',
  inputs: temperatures,
  outputs: { factor: ['A·√s/mm²', 'factor k'] },
  assumptions: 'Copper; no heat leaves the wire.',
  validity: 'Faults up to 5 s.',
  source,
  compute: ({ initialC, finalC }) =>
    finalC <= initialC ? notRising() : { values: { factor: withstandFactor(initialC, finalC) } },
});

export const faultWithstandFormula = defineFormula({
  id: 'fault-withstand',
  title: 'Least wire area that survives a fault',
  equation: 'S = I sqrt(t)/k',
  inputs: {
    currentA: number('A', 0, 1e6, 'fault current'),
    timeS: number('s', 1e-4, 5, 'time until the fuse opens'),
    factor: number('A·√s/mm²', 10, 400, 'factor k of copper: 115 in PVC, 143 in XLPE', 115),
  },
  outputs: { areaMm2: ['mm²', 'least copper area'] },
  assumptions: 'Copper; no heat leaves the wire; constant current.',
  validity: 'Faults up to 5 s.',
  source,
  compute: ({ currentA, timeS, factor }) => ({
    values: { areaMm2: withstandAreaMm2(currentA, timeS, factor) },
    steps: [step('I² t', currentA ** 2 * timeS, 'A²s')],
  }),
});
