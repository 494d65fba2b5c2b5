import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

const copperMeltsC = 1083;

/**
 * Current that melts a copper wire in a time [A]: `I = A sqrt(log10((Tm - Ta)/(234 + Ta) + 1)/(33 t))`.
 *
 * Source: Onderdonk's equation as reprinted in wire handbooks (published), Tm = 1083 °C.
 *
 * @param circularMils A [cmil], above 0
 * @param timeS t [s], up to about 10, in which no heat leaves the wire
 * @param ambientC Ta before the current [°C], above -234
 */
export function fusingCurrentA(circularMils: number, timeS: number, ambientC: number): number {
  const rise = Math.log10((copperMeltsC - ambientC) / (234 + ambientC) + 1);
  return circularMils * Math.sqrt(rise / (33 * timeS));
}

export const fusingCurrentFormula = defineFormula({
  id: 'fusing-current',
  title: 'Current that melts a copper wire',
  equation: 'I = A sqrt(log10((Tm - Ta)/(234 + Ta) + 1)/(33 t))',
  inputs: {
    areaMm2: number('mm²', 0.001, 500, 'copper area (2581 cmil for 16 AWG)'),
    timeS: number('s', 1e-4, 10, 'time of the current'),
    ambientC: number('°C', -40, 200, 'temperature of the wire before', 25),
  },
  outputs: { currentA: ['A', 'current that melts it'] },
  assumptions: 'No heat leaves the wire; constant current.',
  validity: 'Up to about 10 s. Not a design current: insulation burns long before copper melts.',
  source: { class: 'published', citation: 'Onderdonk’s equation, wire handbooks' },
  compute: ({ areaMm2, timeS, ambientC }) => {
    const circularMils = areaMm2 / ((Math.PI / 4) * 0.0254 ** 2);
    return {
      values: { currentA: fusingCurrentA(circularMils, timeS, ambientC) },
      steps: [step('Area', circularMils, 'cmil')],
    };
  },
});
