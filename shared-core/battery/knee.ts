/** Head below which the knee resistance grows no further; the falling open-circuit curve takes over there. */
export const kneeFloor = 0.02;

/**
 * Growth of the knee resistance as the available well empties: `1/s - 1`, Shepherd's polarisation term
 * (J. Electrochem. Soc. 112 (1965) 657), held constant below `kneeFloor` so that it stays finite.
 */
export function kneeFactor(head: number): number {
  return 1 / Math.min(1, Math.max(kneeFloor, head)) - 1;
}
