import type { OptionStudy } from '#core/study/study.ts';
import type { PacksTexts } from '../text/packs.ts';

export interface CompareRow {
  readonly id: keyof PacksTexts['rows'];
  readonly unit: string;
  /** Which end of the scale is the good one. */
  readonly better: 'more' | 'less';
  readonly read: (study: OptionStudy, goalMin: number) => number | null;
}

/** Figures in which options are compared. */
export const compareRows: readonly CompareRow[] = [
  { id: 'runTime', unit: 'min', better: 'more', read: ({ run }) => run.runTimeMin },
  {
    id: 'goalShare',
    unit: '%',
    better: 'more',
    read: ({ run }, goalMin) => (goalMin > 0 ? (100 * run.runTimeMin) / goalMin : null),
  },
  { id: 'delivered', unit: 'W·h', better: 'more', read: ({ run }) => run.deliveredWh },
  { id: 'energy', unit: 'W·h', better: 'more', read: ({ energyWh }) => energyWh },
  { id: 'lowestBus', unit: 'V', better: 'more', read: ({ run }) => run.minimumBusVoltageV },
  { id: 'accessories', unit: 'min', better: 'less', read: (study) => study.accessoryCostMin },
  {
    id: 'chargeHours',
    unit: 'h',
    better: 'less',
    read: ({ chargerMatch }) => chargerMatch?.hoursToFull ?? null,
  },
  { id: 'mass', unit: 'kg', better: 'less', read: ({ massKg }) => massKg },
  { id: 'price', unit: '¤', better: 'less', read: ({ price }) => price },
  {
    id: 'pricePerMin',
    unit: '¤',
    better: 'less',
    read: ({ price, run }) =>
      price === null || run.runTimeMin <= 0 ? null : price / run.runTimeMin,
  },
  { id: 'standby', unit: 'd', better: 'more', read: ({ standbyDaysToHalf }) => standbyDaysToHalf },
];

/** Positions of the best values; none where all are alike or fewer than two are known. */
export function bestOf(
  values: readonly (number | null)[],
  better: 'more' | 'less',
): ReadonlySet<number> {
  const known = values.filter((value) => value !== null);
  const best = better === 'more' ? Math.max(...known) : Math.min(...known);
  const isBest = (value: number | null): boolean =>
    value !== null && Math.abs(value - best) <= 1e-3 * Math.abs(best);
  if (known.length < 2 || known.every(isBest)) return new Set();
  return new Set(values.flatMap((value, index) => (isBest(value) ? [index] : [])));
}
