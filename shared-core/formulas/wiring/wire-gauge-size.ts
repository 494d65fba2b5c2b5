import { gaugeAreaMm2, gaugeDiameterMm } from '../../units/wire-gauge.ts';
import { defineFormula } from '../define-formula.ts';
import { gauge } from '../input-spec.ts';

export const wireGaugeSizeFormula = defineFormula({
  id: 'wire-gauge-size',
  title: 'Diameter and area of a wire gauge',
  equation: 'd = 0.127 · 92^((36 - n)/39) mm; A = pi/4 d²',
  inputs: { gauge: gauge(-3, 40, 'wire gauge') },
  outputs: {
    diameterMm: ['mm', 'diameter of the solid wire'],
    areaMm2: ['mm²', 'copper area'],
    circularMils: ['cmil', 'the same area'],
  },
  assumptions: 'Solid wire; a stranded one has about the same copper area and a larger diameter.',
  validity: '4/0 to 40 AWG.',
  source: { class: 'published', citation: 'ASTM B258' },
  compute: ({ gauge: n }) => {
    const diameterMm = gaugeDiameterMm(n);
    return {
      values: {
        diameterMm,
        areaMm2: gaugeAreaMm2(n),
        circularMils: (diameterMm / 0.0254) ** 2,
      },
    };
  },
});
