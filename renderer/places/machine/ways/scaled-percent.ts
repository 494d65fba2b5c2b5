/** A scaled road resistance as it is entered: to a tenth of a percent, within what the field allows. */
export const scaledPercent = (percent: number): number =>
  Math.min(1000, Math.max(10, Math.round(10 * percent) / 10));
