/** A quantity as it stands in a working: in words, with its unit. */
export interface WorkingValue {
  readonly label: string;
  readonly value: string;
  /** Path of the plan field it comes from, for a link. */
  readonly field?: string;
}

/** How a figure came about, for the person who wants to check it. */
export interface Working {
  /** In words and signs, one line each. */
  readonly formula: readonly string[];
  readonly inputs: readonly WorkingValue[];
  readonly steps?: readonly WorkingValue[];
  readonly result: WorkingValue;
  /** The result with every digit, to be copied, and the unit it is in. */
  readonly exact?: { readonly value: number; readonly unit: string };
  /** Range of validity or assumptions. */
  readonly validity?: string;
  readonly source: string;
}
