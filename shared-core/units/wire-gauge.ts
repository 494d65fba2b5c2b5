/** Thinnest and thickest gauge that is read; thicker ones than 0 count as -1 (2/0), -2 (3/0), -3 (4/0). */
export const thinnestGauge = 40;
export const thickestGauge = -3;

/**
 * Diameter of a solid wire of an American gauge [mm]: `0.127 * 92^((36 - n)/39)`.
 *
 * Source: ASTM B258 (published).
 *
 * @param gauge gauge number [1], -3 (4/0) to 40
 */
export function gaugeDiameterMm(gauge: number): number {
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/** Copper area of a solid wire of an American gauge [mm²]: `pi/4 d²`. A stranded wire of that gauge has about the same. */
export function gaugeAreaMm2(gauge: number): number {
  return (Math.PI / 4) * gaugeDiameterMm(gauge) ** 2;
}

/**
 * Number of the gauge that a person typed: `12`, `12 AWG`, `AWG 12`, `#12`, `1/0`, `4/0 AWG`, `0000`.
 *
 * @returns null where the text is not a gauge
 */
export function parseGauge(text: string): number | null {
  const bare = text
    .trim()
    .toLowerCase()
    .replace(/^(awg|#|no\.?)\s*/, '')
    .replace(/\s*(awg|ga|gauge)$/, '');
  const slashed = /^([1-4])\/0$/.exec(bare);
  if (slashed !== null) return 1 - Number(slashed[1]);
  if (/^0{1,4}$/.test(bare)) return 1 - bare.length;
  if (!/^\d{1,2}$/.test(bare)) return null;
  const gauge = Number(bare);
  return gauge <= thinnestGauge ? gauge : null;
}

/** A gauge as written on a reel: `12 AWG`, `2/0 AWG`. */
export function formatGauge(gauge: number): string {
  return gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`;
}
