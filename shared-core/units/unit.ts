/** What a unit measures. Units of one kind convert into each other. */
export type QuantityKind =
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'charge'
  | 'energy'
  | 'power'
  | 'temperature'
  | 'temperature-difference'
  | 'length'
  | 'area'
  | 'volume-flow'
  | 'speed'
  | 'rotation'
  | 'mass'
  | 'force'
  | 'torque'
  | 'time'
  | 'rate'
  | 'capacitance'
  | 'ratio';

/** One unit with its conversion to the unit the core keeps for that kind: `stored = value * factor + offset`. */
export interface Unit {
  /** As written on screen and in field documentation. */
  readonly symbol: string;
  readonly kind: QuantityKind;
  readonly factor: number;
  readonly offset: number;
  /** Other spellings a person may type. */
  readonly spellings: readonly string[];
}
