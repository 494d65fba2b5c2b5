/** Insulation temperature classes of the table [°C]. */
export const insulationClasses = ['60', '75', '80', '90', '105'] as const;
export type InsulationClass = (typeof insulationClasses)[number];

/**
 * Allowable current [A] by gauge and insulation class, single conductor in 30 °C air.
 *
 * Source: 33 CFR 183.425, table 5 (published): public law for boats, used here as a guide.
 */
export const ampacityTable: readonly {
  readonly gauge: number;
  readonly amperes: Readonly<Record<InsulationClass, number>>;
}[] = [
  { gauge: 18, amperes: { '60': 10, '75': 10, '80': 15, '90': 20, '105': 20 } },
  { gauge: 16, amperes: { '60': 15, '75': 15, '80': 20, '90': 25, '105': 25 } },
  { gauge: 14, amperes: { '60': 20, '75': 20, '80': 25, '90': 30, '105': 35 } },
  { gauge: 12, amperes: { '60': 25, '75': 25, '80': 35, '90': 40, '105': 45 } },
  { gauge: 10, amperes: { '60': 40, '75': 40, '80': 50, '90': 55, '105': 60 } },
  { gauge: 8, amperes: { '60': 55, '75': 65, '80': 70, '90': 70, '105': 80 } },
  { gauge: 6, amperes: { '60': 80, '75': 95, '80': 100, '90': 100, '105': 120 } },
  { gauge: 4, amperes: { '60': 105, '75': 125, '80': 130, '90': 135, '105': 160 } },
  { gauge: 3, amperes: { '60': 120, '75': 145, '80': 150, '90': 155, '105': 180 } },
  { gauge: 2, amperes: { '60': 140, '75': 170, '80': 175, '90': 180, '105': 210 } },
  { gauge: 1, amperes: { '60': 165, '75': 195, '80': 210, '90': 210, '105': 245 } },
  { gauge: 0, amperes: { '60': 195, '75': 230, '80': 245, '90': 245, '105': 285 } },
  { gauge: -1, amperes: { '60': 225, '75': 265, '80': 285, '90': 285, '105': 330 } },
  { gauge: -2, amperes: { '60': 260, '75': 310, '80': 330, '90': 330, '105': 385 } },
  { gauge: -3, amperes: { '60': 300, '75': 360, '80': 385, '90': 385, '105': 445 } },
];

/** Factors for current-carrying conductors in one bundle. Source: the same table, notes (published). */
export const bundleFactors = [
  { upTo: 2, factor: 1 },
  { upTo: 3, factor: 0.7 },
  { upTo: 6, factor: 0.6 },
  { upTo: 24, factor: 0.5 },
] as const;
