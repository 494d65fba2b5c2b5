import { fitLine } from '../../numerics/index.ts';
import { chemistryTraits } from '../../battery/index.ts';
import type { HealthPoint } from '../../plan/schema/bench.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { measuredResistance, plannedResistanceOhm } from './block-resistance.ts';

/** A block over the years. */
export interface BlockHealth {
  readonly optionId: string;
  readonly string: number;
  readonly position: number;
  /** In order of time. */
  readonly points: readonly HealthPoint[];
  readonly latest: HealthPoint;
  /** Loss of capacity per year [%]; null with fewer than two dates a month apart. */
  readonly lossPerYearPercent: number | null;
  readonly advice: HealthAdvice;
}

/**
 * sound: nothing to do. watch: measure again in some months. replace: the block is worn. replace-string: it is worn and its
 * neighbours are not, so a new block alone would make an unequal string (PCK-1): replace the blocks of the string together.
 */
export type HealthAdvice = 'sound' | 'watch' | 'replace' | 'replace-string';

/** Capacity and resistance at which a block counts as worn, and as worth watching. Common practice, no source. */
const worn = {
  lead: { capacityPercent: 60, resistancePercent: 250 },
  lithium: { capacityPercent: 70, resistancePercent: 200 },
} as const;
const watched = { capacityPercent: 80, resistancePercent: 160 } as const;

/** Health of every block that was measured, with what to do about it. */
export function blockHealth(plan: Plan): BlockHealth[] {
  const groups = new Map<string, HealthPoint[]>();
  for (const point of [...(plan.bench?.health ?? []), ...pointsOfReadings(plan)]) {
    const key = `${point.optionId}/${point.string}/${point.position}`;
    groups.set(key, [...(groups.get(key) ?? []), point]);
  }
  const latest = [...groups.values()].map((points) =>
    points.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
  );
  return latest.flatMap((points) => {
    const last = lastKnown(points);
    const option = plan.options.find((entry) => entry.id === last.optionId);
    if (option === undefined) return [];
    const limits = worn[chemistryTraits[option.pack.block.chemistry].family];
    const isWorn = (point: HealthPoint) =>
      (point.capacityPercent ?? 100) < limits.capacityPercent ||
      (point.resistancePercent ?? 100) > limits.resistancePercent;
    const neighbours = latest
      .map(lastKnown)
      .filter(
        (other) =>
          other.optionId === last.optionId &&
          other.string === last.string &&
          other.position !== last.position,
      );
    const watch =
      (last.capacityPercent ?? 100) < watched.capacityPercent ||
      (last.resistancePercent ?? 100) > watched.resistancePercent;
    const advice: HealthAdvice = isWorn(last)
      ? option.pack.seriesCount > 1 && !neighbours.every(isWorn)
        ? 'replace-string'
        : 'replace'
      : watch
        ? 'watch'
        : 'sound';
    return [
      {
        optionId: last.optionId,
        string: last.string,
        position: last.position,
        points,
        latest: last,
        lossPerYearPercent: lossPerYear(points),
        advice,
      },
    ];
  });
}

/** The last point, with each figure as it was last known. */
function lastKnown(points: readonly HealthPoint[]): HealthPoint {
  const known = (key: 'capacityPercent' | 'resistancePercent') =>
    points.findLast((point) => point[key] !== null)?.[key] ?? null;
  return {
    ...points.at(-1)!,
    capacityPercent: known('capacityPercent'),
    resistancePercent: known('resistancePercent'),
  };
}

/**
 * Resistance of single blocks read under load, against what their label promises new at the same temperature. A block of
 * which only this was read keeps an unknown capacity.
 */
function pointsOfReadings(plan: Plan): HealthPoint[] {
  return (plan.bench?.readings ?? []).flatMap((reading): HealthPoint[] => {
    const option = plan.options.find((entry) => entry.id === reading.optionId);
    if (option === undefined || reading.kind !== 'loaded-voltage' || reading.position === 0)
      return [];
    const measured = measuredResistance(reading);
    if (measured === null || measured.ohm <= 0) return [];
    const pack = { ...option.pack, ageYears: 0, cyclesDone: 0, differences: [] };
    const asNew = { ...option, pack: { ...pack, block: { ...pack.block, fitted: null } } };
    const { date, optionId, string, position, note } = reading;
    return [
      {
        date,
        optionId,
        string,
        position,
        capacityPercent: null,
        resistancePercent: Math.min(
          5000,
          (100 * measured.ohm) / plannedResistanceOhm(asNew, reading),
        ),
        source: note === '' ? 'reading under load' : note.slice(0, 200),
      },
    ];
  });
}

function lossPerYear(points: readonly HealthPoint[]): number | null {
  const known = points.filter((point) => point.capacityPercent !== null);
  const years = known.map((point) => yearOf(point.date));
  if (known.length < 2 || Math.max(...years) - Math.min(...years) < 1 / 12) return null;
  const line = fitLine(
    years,
    known.map((point) => point.capacityPercent!),
  );
  return line === null ? null : -line.slope;
}

/** A date as years with a fraction; months count alike, which is fine enough for ageing. */
export function yearOf(date: string): number {
  return (
    Number(date.slice(0, 4)) +
    (Number(date.slice(5, 7)) - 1) / 12 +
    (Number(date.slice(8, 10)) - 1) / 365
  );
}
