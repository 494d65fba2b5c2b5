/** Last index in [0, count) for which `holds` is true, given that it is true up to some index and false after; -1 when it never is. */
export function bisectLast(count: number, holds: (index: number) => boolean): number {
  let low = -1;
  let high = count;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}
