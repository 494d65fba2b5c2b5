/** Values on a uniform grid over [0, 1], read by linear interpolation. The grid makes look-up a multiplication. */
export interface UniformTable {
  readonly values: Float64Array;
}

/** Samples `f` at `count` equally spaced points of [0, 1]. `count` >= 2. */
export function sampleUniform(f: (x: number) => number, count: number): UniformTable {
  const values = new Float64Array(count);
  for (let index = 0; index < count; index += 1) values[index] = f(index / (count - 1));
  return { values };
}

/** Value at `x`, linear between samples, clamped outside [0, 1]. */
export function readUniform(table: UniformTable, x: number): number {
  const { values } = table;
  const last = values.length - 1;
  if (x <= 0) return values[0]!;
  if (x >= 1) return values[last]!;
  const place = x * last;
  const index = Math.floor(place);
  const low = values[index]!;
  return low + (values[index + 1]! - low) * (place - index);
}
