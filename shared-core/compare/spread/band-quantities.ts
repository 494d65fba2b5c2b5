/** What of a run is drawn with a band. */
export const bandQuantities = ['bus', 'current', 'charge'] as const;
export type BandQuantity = (typeof bandQuantities)[number];
