import { gaugeAreaMm2 } from '../../units/wire-gauge.ts';
import { defineFormula, step } from '../define-formula.ts';
import { gauge, number, word } from '../input-spec.ts';
import { fail } from '../read-input.ts';
import type { InsulationClass } from './ampacity-table.ts';
import { ampacityTable, bundleFactors, insulationClasses } from './ampacity-table.ts';

/** Factor for conductors in one bundle [1]. @param conductors current-carrying ones, 1 to 24; more count as 24 */
export function bundleFactor(conductors: number): number {
  return bundleFactors.find(({ upTo }) => conductors <= upTo)?.factor ?? 0.5;
}

/**
 * Factor for air warmer than 30 °C [1]: `sqrt((T_ins - T_air)/(T_ins - 30))`, the heat that can still leave the wire.
 *
 * Derived; gives the correction factors of 33 CFR 183.425 for 50 °C engine spaces within 0.01.
 *
 * @param insulationC T_ins [°C], above 30
 * @param ambientC T_air [°C]; no bonus below 30
 */
export function ambientFactor(insulationC: number, ambientC: number): number {
  return Math.sqrt(Math.max(0, insulationC - Math.max(30, ambientC)) / (insulationC - 30));
}

/**
 * Current a wire carries without end [A].
 *
 * Source: 33 CFR 183.425, table 5 (published), with bundle and ambient factors.
 *
 * @param gaugeNumber gauge of the table
 * @returns null where the table has no such gauge
 */
export function ampacityA(
  gaugeNumber: number,
  insulation: InsulationClass,
  bundled = 1,
  ambientC = 30,
): number | null {
  const row = ampacityTable.find((each) => each.gauge === gaugeNumber);
  if (row === undefined) return null;
  return (
    row.amperes[insulation] * bundleFactor(bundled) * ambientFactor(Number(insulation), ambientC)
  );
}

/** Thickest gauge of the table that has no more copper than `areaMm2` [mm²]; null where even 18 AWG has more. */
export function gaugeWithin(areaMm2: number): number | null {
  // 1 % allowance: nominal areas are rounded.
  const row = ampacityTable.findLast((each) => gaugeAreaMm2(each.gauge) <= areaMm2 * 1.01);
  return row === undefined ? null : row.gauge;
}

const conditions = {
  insulation: word(insulationClasses, 'temperature class of the insulation in °C', '60'),
  bundled: number('1', 1, 24, 'current-carrying conductors in one bundle', 1),
  ambientC: number('°C', -40, 100, 'temperature of the air around', 30),
} as const;

const guide = {
  assumptions: 'Copper, continuous current.',
  validity: 'Law for boats, used as a guide; local codes and the maker’s sheet come first.',
  source: {
    class: 'published',
    citation: '33 CFR 183.425, table 5 and notes; ambient factor derived',
  },
} as const;

function compute(
  gaugeNumber: number,
  insulation: InsulationClass,
  bundled: number,
  ambientC: number,
) {
  const currentA = ampacityA(gaugeNumber, insulation, bundled, ambientC);
  if (currentA === null) {
    const known = ampacityTable.map((row) => row.gauge).filter((n) => n > 0);
    return fail(
      'gauge',
      'is not in the table',
      `Give gauge as one of: ${known.join(', ')}, 1/0 to 4/0.`,
    );
  }
  if (currentA === 0) {
    return fail(
      'ambientC',
      'is not below the class of the insulation',
      'Give cooler air or a better insulation.',
    );
  }
  return {
    values: { ampacityA: currentA, tableGauge: gaugeNumber },
    steps: [
      step('Single wire in 30 °C air', ampacityA(gaugeNumber, insulation) ?? 0, 'A'),
      step('Bundle factor', bundleFactor(bundled), '1'),
      step('Air factor', ambientFactor(Number(insulation), ambientC), '1'),
    ],
  };
}

const outputs = {
  ampacityA: ['A', 'current without end'],
  tableGauge: ['AWG', 'gauge of the table used; 0 is 1/0, -1 is 2/0'],
} as const;

export const ampacityFormula = defineFormula({
  id: 'ampacity',
  title: 'Current a wire gauge carries',
  equation: 'I = table(gauge, insulation) · f_bundle · f_air',
  inputs: { gauge: gauge(-3, 18, 'wire gauge'), ...conditions },
  outputs,
  ...guide,
  compute: ({ gauge: n, insulation, bundled, ambientC }) =>
    compute(n, insulation, bundled, ambientC),
});

export const ampacityByAreaFormula = defineFormula({
  id: 'ampacity-by-area',
  title: 'Current a wire of a metric area carries',
  equation: 'as for the thickest gauge with no more copper',
  inputs: { areaMm2: number('mm²', 0.8, 120, 'copper area'), ...conditions },
  outputs,
  ...guide,
  compute: ({ areaMm2, insulation, bundled, ambientC }) => {
    const n = gaugeWithin(areaMm2);
    if (n === null) {
      return fail('areaMm2', 'is below the thinnest wire of the table', 'Give at least 0.82 mm².');
    }
    return compute(n, insulation, bundled, ambientC);
  },
});
