export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The points of a line that can be told apart on screen: for each of `buckets` equal stretches between `from` and `to`
 * the first, lowest, highest and last point, so that no peak is lost. The neighbours outside are kept, so that the line
 * runs to the edges.
 *
 * @param x rising values, the same length as `y`
 */
export function thinSeries(
  x: Float64Array,
  y: Float64Array,
  from: number,
  to: number,
  buckets: number,
): Point[] {
  const first = Math.max(0, firstAtLeast(x, from) - 1);
  const last = Math.min(x.length - 1, firstAtLeast(x, to) + 1);
  const at = (index: number): Point => ({ x: x[index] ?? 0, y: y[index] ?? 0 });
  const points: Point[] = [];
  if (last - first + 1 <= 4 * buckets) {
    for (let index = first; index <= last; index += 1) points.push(at(index));
    return points;
  }
  const width = (to - from) / buckets;
  let start = first;
  while (start <= last) {
    const bucket = Math.floor(((x[start] ?? 0) - from) / width);
    let end = start;
    let low = start;
    let high = start;
    while (end + 1 <= last && Math.floor(((x[end + 1] ?? 0) - from) / width) === bucket) {
      end += 1;
      if ((y[end] ?? 0) < (y[low] ?? 0)) low = end;
      if ((y[end] ?? 0) > (y[high] ?? 0)) high = end;
    }
    const kept = new Set([start, Math.min(low, high), Math.max(low, high), end]);
    for (const index of kept) points.push(at(index));
    start = end + 1;
  }
  return points;
}

/** Index of the first value that is not below `wanted`; the length where all are below. */
export function firstAtLeast(values: Float64Array, wanted: number): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] ?? 0) < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Value of a line at `wanted`, between its points; null outside of the line. */
export function valueAtX(x: Float64Array, y: Float64Array, wanted: number): number | null {
  const after = firstAtLeast(x, wanted);
  if (x.length === 0 || after >= x.length || wanted < (x[0] ?? 0)) return null;
  const right = x[after] ?? 0;
  if (after === 0 || right === wanted) return y[after] ?? null;
  const left = x[after - 1] ?? 0;
  const share = right === left ? 1 : (wanted - left) / (right - left);
  return (y[after - 1] ?? 0) + share * ((y[after] ?? 0) - (y[after - 1] ?? 0));
}
