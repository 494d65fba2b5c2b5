/** Median time of a call in milliseconds, after warming up. */
export function timed(call: () => unknown, rounds = 60): number {
  const warmUp = Math.min(20, rounds);
  for (let round = 0; round < warmUp; round += 1) call();
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)]!;
}
