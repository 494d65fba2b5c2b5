import { freshId } from '../../plan/fresh-id.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { RoadFit } from './fit-road.ts';

export interface RoadToApply {
  readonly optionId: string;
  readonly fit: RoadFit;
  /** Year-month-day. */
  readonly date: string;
  /** Readings or logs it came from, in words. */
  readonly source: string;
  readonly remarks: readonly string[];
}

const clean = (value: number): number => Number(value.toPrecision(4));

/**
 * The plan with a road fit taken in: the machine's road resistance, its drag area where the readings told it, and where
 * both come from; the bench keeps a record. A machine without a drive stays as it is.
 */
export function applyRoad(plan: Plan, { optionId, fit, date, source, remarks }: RoadToApply): Plan {
  const { drive } = plan.machine;
  if (drive === null) return plan;
  const bench = plan.bench ?? { readings: [], fits: [], health: [] };
  const toPercent = clean(Math.min(1000, Math.max(10, fit.resistancePercent.value)));
  const dragAreaM2 = fit.dragTold
    ? clean(Math.min(10, fit.dragAreaM2.value))
    : drive.wheel.dragAreaM2;
  return {
    ...plan,
    machine: {
      ...plan.machine,
      drive: {
        ...drive,
        resistancePercent: toPercent,
        wheel: { ...drive.wheel, dragAreaM2 },
        scaledTo: {
          source: source.slice(0, 200),
          readA: clean(fit.readA),
          modelA: clean(Math.min(5000, fit.modelA)),
          fromPercent: drive.resistancePercent,
          toPercent,
        },
      },
    },
    bench: {
      ...bench,
      fits: [
        ...bench.fits,
        {
          id: freshId(
            'road',
            bench.fits.map((record) => record.id),
          ),
          date,
          optionId,
          logs: [source.slice(0, 200)],
          values: [
            {
              name: 'road resistance against the table',
              unit: '%',
              ...rounded(fit.resistancePercent),
              identified: true,
            },
            { name: 'drag area', unit: 'm²', ...rounded(fit.dragAreaM2), identified: fit.dragTold },
          ],
          rmsMv: null,
          remarks: remarks.map((remark) => remark.slice(0, 400)),
          before: null,
        },
      ],
    },
  };
}

const rounded = ({ value, low, high }: RoadFit['resistancePercent']) => ({
  value: clean(value),
  low: clean(low),
  high: clean(high),
});
