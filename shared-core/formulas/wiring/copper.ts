/** Temperature coefficient of copper's resistance at 20 °C [1/K]. Source: IEC 60028 (published). */
export const copperAlphaPerK = 0.00393;

/** Conductivity of copper at 20 °C [m/(Ω·mm²)]. Source: IEC 60028 (published). */
export const copperConductivity = 58;

/**
 * Resistance of copper at a temperature against 20 °C [1]: `1 + alpha (theta - 20)`.
 *
 * Source: IEC 60028 (published).
 *
 * @param temperatureC theta [°C], -60 to 250
 */
export function copperFactor(temperatureC: number): number {
  return 1 + copperAlphaPerK * (temperatureC - 20);
}
