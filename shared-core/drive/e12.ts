const steps = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];

/** Standard values of the E12 series around a wished resistance. Source: IEC 60063. */
export interface E12Neighbours {
  readonly nearest: number;
  readonly below: number;
  readonly above: number;
}

/**
 * Nearest E12 value by ratio, with its neighbours: the largest not above and the smallest not below the wish.
 *
 * @param resistanceOhm above 0 [Ω]
 */
export function e12Near(resistanceOhm: number): E12Neighbours {
  const decade = 10 ** Math.floor(Math.log10(resistanceOhm));
  const candidates = [decade / 10, decade, decade * 10].flatMap((scale) =>
    steps.map((step) => round(step * scale)),
  );
  const slack = resistanceOhm * 1e-9;
  const below = candidates.findLast((value) => value <= resistanceOhm + slack)!;
  const above = candidates.find((value) => value >= resistanceOhm - slack)!;
  const nearest = resistanceOhm / below <= above / resistanceOhm ? below : above;
  return { nearest, below, above };
}

/** Powers of ten times a two-digit step are not exact in binary; standard values are. */
function round(value: number): number {
  return Number(value.toPrecision(2));
}
