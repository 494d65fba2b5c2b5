import { copperAlphaPerK, copperFactor } from '../formulas/wiring/copper.ts';

/** A wire as a heated rod: one temperature, heat leaving in proportion to its excess over the air. */
export interface WireHeat {
  /** Resistance at 20 °C [Ω/m]. */
  readonly ohmPerM20: number;
  readonly areaMm2: number;
  /** Current that holds the wire at `ratedC` without end [A]. */
  readonly ampacityA: number;
  readonly ratedC: number;
  readonly ambientC: number;
}

/** Heat capacity of copper [J/(K·m·mm²)]. Source: IEC 60364-5-54 annex, 3.45e-3 J/(K·mm³) (published). */
const copperHeat = 3.45;

/**
 * Time in which a constant current heats a wire from one temperature to another [s].
 *
 * `C T' = I^2 r (1 + alpha (T - 20)) - h (T - Ta)` with h such that the ampacity holds the rated temperature; linear in
 * T, so `t = C/a ln((a T1 + b)/(a T0 + b))`. For h = 0 this is the adiabatic withstand of IEC 60364-5-54.
 * Source: derived.
 *
 * @param fromC @param toC temperatures [°C], toC above fromC
 * @returns null where the current never gets it there
 */
export function heatingTimeS(
  wire: WireHeat,
  currentA: number,
  fromC: number,
  toC: number,
): number | null {
  const { ohmPerM20, areaMm2, ampacityA, ratedC, ambientC } = wire;
  const capacity = copperHeat * areaMm2;
  const loss = (ampacityA ** 2 * ohmPerM20 * copperFactor(ratedC)) / Math.max(1, ratedC - ambientC);
  const joule = currentA ** 2 * ohmPerM20;
  const slope = joule * copperAlphaPerK - loss;
  const offset = joule * (1 - 20 * copperAlphaPerK) + loss * ambientC;
  const atFrom = slope * fromC + offset;
  const atTo = slope * toC + offset;
  if (!(atFrom > 0) || !(atTo > 0)) return null;
  if (Math.abs(slope) * (toC - fromC) < 1e-9 * offset) return (capacity * (toC - fromC)) / offset;
  return (capacity / slope) * Math.log(atTo / atFrom);
}

/**
 * Temperature a wire settles at under a lasting current [°C]: `T = (I^2 r (1 - 20 alpha) + h Ta)/(h - I^2 r alpha)`;
 * capped at 1000 where it would run away.
 * Source: derived.
 */
export function settledTemperatureC(wire: WireHeat, currentA: number): number {
  const { ohmPerM20, ampacityA, ratedC, ambientC } = wire;
  const loss = (ampacityA ** 2 * ohmPerM20 * copperFactor(ratedC)) / Math.max(1, ratedC - ambientC);
  const joule = currentA ** 2 * ohmPerM20;
  const rest = loss - joule * copperAlphaPerK;
  if (rest <= 0) return 1000;
  return Math.min(1000, (joule * (1 - 20 * copperAlphaPerK) + loss * ambientC) / rest);
}
