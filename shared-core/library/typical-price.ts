import type { Block, Chemistry } from '../plan/schema/block.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { FigureRange } from './part.ts';
import { chemistryTraits } from '../battery/chemistry.ts';

/** Price of a watt-hour in blocks of a chemistry: low, typical, high. From memory, retail in Europe. */
const perWattHour: Readonly<Record<Chemistry, readonly [number, number, number]>> = {
  agm: [0.13, 0.2, 0.32],
  gel: [0.17, 0.25, 0.4],
  flooded: [0.09, 0.13, 0.2],
  lfp: [0.25, 0.4, 0.65],
  nmc: [0.35, 0.55, 0.9],
};

/** A charger costs this much, and this much more for each watt it gives. From memory. */
const chargerBase = 15;
const chargerPerWatt = 0.35;
const chargerSpread = 0.4;

/** Currencies that stand near enough to the euro for a rough price to hold. */
const nearEuro = ['EUR', '€', 'USD', '$', 'GBP', '£', 'CHF'];

/** Whether a rough price says anything in a currency. */
export const knowsPricesIn = (currency: string): boolean =>
  nearEuro.includes(currency.trim().toUpperCase());

/** What a block usually costs: for comparing packs whose prices are not known, never for a sum that is paid. */
export function typicalBlockPrice(block: Block): FigureRange {
  const { chemistry, cellGroups, capacityAh } = block;
  const energyWh = cellGroups * chemistryTraits[chemistry].nominalV * capacityAh;
  const [low, typical, high] = perWattHour[chemistry];
  return {
    field: 'price',
    unit: 'EUR',
    low: rounded(low * energyWh),
    typical: rounded(typical * energyWh),
    high: rounded(high * energyWh),
    sourceClass: 'from-memory',
    source: 'Usual retail price of a watt-hour of the chemistry. From memory: ask a dealer.',
  };
}

/** What a charger usually costs. */
export function typicalChargerPrice({ currentA, endVoltageV, cellGroups }: Charger): FigureRange {
  const watts = currentA * (endVoltageV ?? 2.4 * cellGroups);
  const typical = chargerBase + chargerPerWatt * watts;
  return {
    field: 'price',
    unit: 'EUR',
    low: rounded(typical * (1 - chargerSpread)),
    typical: rounded(typical),
    high: rounded(typical * (1 + chargerSpread)),
    sourceClass: 'from-memory',
    source: 'Usual retail price of a charger of its power. From memory: ask a dealer.',
  };
}

/** Two significant digits: a rough price must not look like a quoted one. */
function rounded(price: number): number {
  return Number(price.toPrecision(2));
}
