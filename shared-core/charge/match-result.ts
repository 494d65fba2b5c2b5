/** How one aspect of a charger compares with the pack. */
export interface MatchAspect {
  readonly aspect:
    | 'chemistry'
    | 'cell-count'
    | 'end-voltage'
    | 'float-voltage'
    | 'current'
    | 'port'
    | 'temperature'
    | 'pulses';
  readonly verdict: 'fits' | 'limits' | 'misfits' | 'unknown';
  /** Which side of the wanted figure the charger is on, where it is off. */
  readonly side?: 'above' | 'below';
  /** One sentence with the numbers. */
  readonly reason: string;
  /** The rule behind it, e.g. CHG-1. */
  readonly findingId: string | null;
}

/** Verdict on a charger for a pack, and how long it takes. */
export interface ChargerMatch {
  readonly verdict: 'fits' | 'limits' | 'misfits' | 'unknown';
  readonly aspects: readonly MatchAspect[];
  /**
   * Hours until the charger calls the pack full, from the state at the end of the run; null where the charger must not
   * be used or data lack.
   */
  readonly hoursToFull: number | null;
  /** Wanted end voltage of the pack at the outing's temperature [V]. */
  readonly wantedEndVoltageV: number;
  /** End voltage the charger gives at that temperature [V]; null when unknown. */
  readonly givenEndVoltageV: number | null;
}
