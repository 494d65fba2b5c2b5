/** Standard acceleration of free fall [m/s²] (CGPM 1901, exact). */
export const gravityMPerS2 = 9.80665;

/** Sine and cosine of a slope given as rise over horizontal distance [%]. */
export function slopeOfGrade(gradePercent: number): {
  readonly sine: number;
  readonly cosine: number;
} {
  const tangent = gradePercent / 100;
  const cosine = 1 / Math.hypot(1, tangent);
  return { sine: tangent * cosine, cosine };
}
