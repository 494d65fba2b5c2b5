/**
 * Fewer points with the same outline: of every stretch of time the first, the lowest, the highest and the last value
 * stay, so that no dip of the voltage is lost.
 *
 * @param pieces stretches, at least 1
 */
export function thinLine(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  pieces: number,
): readonly (readonly [x: number, y: number])[] {
  const { length } = x;
  const point = (index: number) => [x[index]!, y[index]!] as const;
  if (length <= 4 * pieces) return Array.from({ length }, (_, index) => point(index));
  const from = x[0]!;
  const perPiece = pieces / (x[length - 1]! - from);
  const pieceOf = (index: number) =>
    Math.min(pieces - 1, Math.floor((x[index]! - from) * perPiece));
  const kept: (readonly [number, number])[] = [];
  let start = 0;
  let lowest = 0;
  let highest = 0;
  for (let index = 1; index <= length; index += 1) {
    if (index < length && pieceOf(index) === pieceOf(start)) {
      if (y[index]! < y[lowest]!) lowest = index;
      if (y[index]! > y[highest]!) highest = index;
      continue;
    }
    const indices = new Set([start, lowest, highest, index - 1]);
    kept.push(...[...indices].toSorted((a, b) => a - b).map(point));
    start = index;
    lowest = index;
    highest = index;
  }
  return kept;
}
