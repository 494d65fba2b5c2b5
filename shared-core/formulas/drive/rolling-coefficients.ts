import { defineFormula } from '../define-formula.ts';
import type { FormulaSource } from '../formula.ts';
import { word } from '../input-spec.ts';

interface Surface {
  readonly low: number;
  readonly high: number;
  readonly source: FormulaSource;
}

const handbook = {
  class: 'published',
  citation:
    'Marks’ Standard Handbook for Mechanical Engineers; Carvill, Mechanical Engineer’s Data Handbook',
} as const;
const practice = { class: 'common-practice', citation: 'common practice, no source' } as const;

/** Rolling coefficients by surface [1]. */
export const rollingCoefficients = {
  'new-asphalt-or-concrete': { low: 0.01, high: 0.01, source: handbook },
  'worn-asphalt-or-concrete': { low: 0.02, high: 0.02, source: handbook },
  'packed-gravel': { low: 0.012, high: 0.012, source: handbook },
  'loose-worn-gravel': { low: 0.04, high: 0.04, source: handbook },
  soil: { low: 0.08, high: 0.08, source: handbook },
  sand: { low: 0.1, high: 0.2, source: handbook },
  grass: { low: 0.06, high: 0.1, source: practice },
  'hard-wheels-on-paving': { low: 0.02, high: 0.04, source: practice },
} as const satisfies Readonly<Record<string, Surface>>;

export type RollingSurface = keyof typeof rollingCoefficients;

export const rollingSurfaces = Object.keys(rollingCoefficients) as RollingSurface[];

export const rollingCoefficientFormula = defineFormula({
  id: 'rolling-coefficient',
  title: 'Rolling coefficient of a surface',
  equation: 'table',
  inputs: { surface: word(rollingSurfaces, 'surface') },
  outputs: {
    low: ['1', 'least'],
    high: ['1', 'largest'],
    foundation: ['', 'class of the source of this row'],
  },
  assumptions: 'Rubber tyres at usual pressure, except hard plastic wheels where named.',
  validity: 'Dry, even ground.',
  source: {
    class: 'published',
    citation: `${handbook.citation}; grass and hard wheels: common practice`,
  },
  compute: ({ surface }) => {
    const { low, high, source } = rollingCoefficients[surface];
    return { values: { low, high, foundation: source.class } };
  },
});
