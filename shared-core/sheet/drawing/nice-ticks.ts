/**
 * Round values that cover a range: steps of 1, 2, 2.5 or 5 times a power of ten.
 *
 * @param count about how many steps are wanted, at least 1
 */
export function niceTicks(low: number, high: number, count: number): number[] {
  const span = high - low;
  if (!(span > 0)) return [low];
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const off = (step: number) => Math.abs(Math.log(step / rough));
  const step = [1, 2, 2.5, 5, 10]
    .map((each) => each * power)
    .reduce((best, each) => (off(each) < off(best) ? each : best));
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}
