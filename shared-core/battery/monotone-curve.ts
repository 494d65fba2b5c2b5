/**
 * Monotone cubic interpolation through given points (Fritsch & Carlson, SIAM J. Numer. Anal. 17 (1980) 238): keeps a
 * rising table rising, so that a voltage always maps back to one charge.
 *
 * @param points pairs of x and y with x strictly rising, at least two.
 * @returns a function of x, constant outside the points.
 */
export function monotoneCurve(
  points: readonly (readonly [number, number])[],
): (x: number) => number {
  const count = points.length;
  const x = points.map((point) => point[0]);
  const y = points.map((point) => point[1]);
  const secant = Array.from(
    { length: count - 1 },
    (_, i) => (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!),
  );
  const slope = Array.from({ length: count }, (_, i) => {
    if (i === 0) return secant[0]!;
    if (i === count - 1) return secant[count - 2]!;
    const before = secant[i - 1]!;
    const after = secant[i]!;
    // Harmonic mean keeps the curve monotone and flat where the table turns.
    return before * after <= 0 ? 0 : (2 * before * after) / (before + after);
  });
  return (at) => {
    if (at <= x[0]!) return y[0]!;
    if (at >= x[count - 1]!) return y[count - 1]!;
    let index = 0;
    while (at > x[index + 1]!) index += 1;
    const width = x[index + 1]! - x[index]!;
    const t = (at - x[index]!) / width;
    const u = 1 - t;
    return (
      y[index]! * (1 + 2 * t) * u * u +
      slope[index]! * width * t * u * u +
      y[index + 1]! * t * t * (3 - 2 * t) -
      slope[index + 1]! * width * t * t * u
    );
  };
}
