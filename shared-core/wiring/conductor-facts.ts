import { ampacityA, gaugeWithin } from '../formulas/wiring/ampacity.ts';
import { insulationClasses } from '../formulas/wiring/ampacity-table.ts';
import { copperResistanceOhm } from '../formulas/wiring/conductor-resistance.ts';
import { flexibleConductors, flexibleOhmPerKm } from '../formulas/wiring/flexible-conductors.ts';
import { strandedGauges, strandedOhmPerKm } from '../formulas/wiring/stranded-gauges.ts';
import type { Conductor, InsulationRating } from '../plan/schema/conductor.ts';
import { formatGauge, formatSignificant, gaugeAreaMm2 } from '../units/index.ts';

/** Copper area [mm²]: as printed, or that of the gauge. */
export function conductorAreaMm2(conductor: Conductor): number {
  return conductor.system === 'metric' ? conductor.areaMm2 : gaugeAreaMm2(conductor.gauge);
}

/**
 * Resistance of one conductor [Ω/km]: IEC 60228 class 5 or NEC chapter 9 table 8 where they have the size, else copper
 * of that area with 3 % for the lay of the strands (common practice, no source).
 *
 * @param temperatureC of the conductor [°C]
 */
export function conductorOhmPerKm(conductor: Conductor, temperatureC: number): number {
  const listed =
    conductor.system === 'metric'
      ? flexibleOhmPerKm(conductor.areaMm2, temperatureC)
      : strandedOhmPerKm(conductor.gauge, temperatureC);
  return listed ?? 1.03 * copperResistanceOhm(conductorAreaMm2(conductor), 1000, temperatureC);
}

/**
 * Current a conductor carries without end [A]: 33 CFR 183.425 for the thickest gauge with no more copper, with bundle and
 * ambient factors. Thinner than 18 AWG: scaled by area to the power 0.75 (common practice, no source).
 *
 * @param ambientC air around it [°C]
 */
export function conductorAmpacityA(
  conductor: Conductor,
  insulationC: InsulationRating,
  bundled: number,
  ambientC: number,
): number {
  const insulation = insulationClasses.find((name) => Number(name) === insulationC)!;
  const areaMm2 = conductorAreaMm2(conductor);
  const gauge = gaugeWithin(areaMm2);
  const inTable = ampacityA(gauge ?? 18, insulation, bundled, ambientC)!;
  return gauge === null ? inTable * (areaMm2 / gaugeAreaMm2(18)) ** 0.75 : inTable;
}

/** `16 mm²` or `6 AWG`. */
export function formatConductor(conductor: Conductor, locale: string): string {
  return conductor.system === 'metric'
    ? `${formatSignificant(conductor.areaMm2, 3, locale)} mm²`
    : formatGauge(conductor.gauge);
}

/** Sizes a shop keeps, thinnest first. */
export function standardConductors(system: Conductor['system']): Conductor[] {
  return system === 'metric'
    ? flexibleConductors.map(([areaMm2]) => ({ system, areaMm2 }))
    : [...strandedGauges.map((row) => row.gauge), 0, -1, -2, -3].map((gauge) => ({
        system,
        gauge,
      }));
}

/** Highest temperature the insulation survives in a short circuit [°C]. IEC 60364-5-54 (published): PVC 160, cross-linked 250. */
export const shortCircuitLimitC = { pvc: 160, 'cross-linked': 250 } as const;
