/**
 * Time gates of blade fuses: at so many times the rating they open between `earliestS` and `latestS`.
 *
 * From memory of ISO 8820-3; to be replaced by the sheet of the fuse used.
 */
export const bladeFuseGates = [
  { times: 1.35, earliestS: 0.75, latestS: 600 },
  { times: 1.6, earliestS: 0.25, latestS: 50 },
  { times: 2, earliestS: 0.15, latestS: 5 },
  { times: 3.5, earliestS: 0.04, latestS: 0.5 },
  { times: 6, earliestS: 0.02, latestS: 0.1 },
] as const;

/** Up to so many times the rating they hold for at least so long. From memory of ISO 8820-3. */
export const bladeFuseHolds = { times: 1.1, atLeastS: 360_000 } as const;

/** Continuous load against rating at 25 °C: makers' guides. Breaking capacity: from memory of makers' sheets. */
export const bladeFuseContinuousShare = 0.75;
export const bladeFuseBreaking = { currentA: 1000, voltagesV: [32, 58] } as const;
