import type { BrakeSizing } from '#core/drive/brake-sizing.ts';
import type { ResistorHeat } from '#core/drive/resistor-heat.ts';
import type { StopHelp } from '#core/drive/stop-help.ts';
import type { Language } from '#core/plan/language.ts';
import type { Working } from '../controls/working.ts';
import { formatFigure, thinSpace } from '../text/format.ts';
import { stopTexts } from '../text/stop.ts';

type Sized = Extract<BrakeSizing, { ok: true }>;

const writer =
  (language: Language) =>
  (value: number, unit: string): string =>
    `${formatFigure(value, language)}${thinSpace}${unit}`;

/** From the wished deceleration to the ohms. */
export function ohmWorking(
  { basis, speedKmh }: StopHelp,
  sizing: Sized,
  wishedMps2: number,
  language: Language,
): Working {
  const text = stopTexts[language];
  const say = writer(language);
  const leftN = basis.massKg * wishedMps2 - basis.rollingN;
  const currentA = (leftN * basis.efficiency) / basis.forcePerA - basis.frictionA;
  return {
    formula: ['I = (m a − F) η/k − I₀', 'Rb = k v/I − R'],
    inputs: [
      { label: text.speed, value: say(speedKmh / 3.6, 'm/s') },
      { label: text.wished, value: say(wishedMps2, 'm/s²') },
      { label: text.mass, value: say(basis.massKg, 'kg') },
      { label: text.rolling, value: say(basis.rollingN, 'N') },
      { label: text.constant, value: say(basis.forcePerA, 'V·s/m') },
      { label: text.winding, value: say(basis.windingOhm, 'Ω') },
      { label: text.friction, value: say(basis.frictionA, 'A') },
      { label: text.efficiency, value: say(100 * basis.efficiency, '%') },
    ],
    steps: [
      { label: text.brakeForce, value: say(leftN, 'N') },
      { label: text.current, value: say(currentA, 'A') },
    ],
    result: { label: text.ohm, value: say(sizing.wishedOhm, 'Ω') },
    validity: text.ohmValidity,
    source: text.derived,
  };
}

/** From peak, energy and average to the rating. */
export function ratingWorking(sizing: Sized, stopsPerHour: number, language: Language): Working {
  const text = stopTexts[language];
  const say = writer(language);
  const { stop } = sizing;
  return {
    formula: ['P ≥ max(P₁/5, E/25 s, P̄/0.5, P↓)'],
    inputs: [
      { label: text.peakPower, value: say(stop.resistorPeakW, 'W') },
      { label: text.energy, value: say(stop.resistorJ, 'J') },
      { label: text.stops, value: formatFigure(stopsPerHour, language) },
    ],
    steps: [
      { label: text.needs.pulse, value: say(stop.resistorPeakW / 5, 'W') },
      { label: text.needs.energy, value: say(stop.resistorJ / 25, 'W') },
      { label: text.needs.average, value: say(2 * sizing.averageW, 'W') },
      { label: text.needs.descent, value: say(sizing.descentW, 'W') },
    ],
    result: { label: text.rating, value: say(sizing.ratedW, 'W') },
    validity: text.ratingValidity,
    source: text.ratingSource,
  };
}

/** Temperature of the resistor after many stops, or one. */
export function heatWorking(
  heat: ResistorHeat,
  stopsPerHour: number,
  which: 'oneStop' | 'repeated',
  language: Language,
): Working {
  const text = stopTexts[language];
  const say = writer(language);
  const one = which === 'oneStop';
  return {
    formula: one ? ['ΔT = E ΔTr/(Pr τ)'] : ['ΔT = ΔT₁/(1 − e^(−t/τ))'],
    inputs: one
      ? [{ label: text.oneStop, value: say(heat.oneStopK, 'K') }]
      : [
          { label: text.oneStop, value: say(heat.oneStopK, 'K') },
          { label: text.stops, value: formatFigure(stopsPerHour, language) },
        ],
    result: {
      label: one ? text.oneStop : text.repeated,
      value: say(25 + (one ? heat.oneStopK : heat.repeatedK), '°C'),
    },
    validity: text.heatValidity,
    source: text.derived,
  };
}
