import type { Plan } from '../../plan/schema/plan.ts';
import type { EndCause } from '../../run/result.ts';
import { outingOf } from '../scenario.ts';
import { estimatedPercentile } from './percentile-error.ts';
import type {
  Histogram,
  OptionSpread,
  PairedComparison,
  PlanSpread,
  SpreadPart,
} from './spread.ts';
import type { SpreadWishes } from './spread-wishes.ts';

/** Puts the parts together, whatever their number and order, and reads the figures from the whole. */
export function summariseSpread(
  plan: Plan,
  wishes: SpreadWishes,
  parts: readonly SpreadPart[],
): PlanSpread {
  const outing = outingOf(plan, wishes.outingId);
  const { caseCount, seed } = wishes;
  const inOrder = parts.toSorted((one, other) => one.from - other.from);
  const rows = plan.options.map((_, place) => {
    const whole = new Float64Array(caseCount + 1);
    for (const part of inOrder) whole.set(part.runTimeMin[place]!, part.from);
    return whole;
  });
  const times = rows.map((whole) => whole.subarray(0, caseCount));
  const sorted = times.map((whole) => whole.toSorted());
  const width = classWidth(sorted);
  const options = plan.options.map((option, place): OptionSpread => {
    const sortedMin = sorted[place]!;
    const reached = sortedMin.reduce((sum, min) => sum + (min >= outing.goalMin ? 1 : 0), 0);
    return {
      id: option.id,
      name: option.name,
      plannedMin: rows[place]![caseCount]!,
      low: estimatedPercentile(sortedMin, 10),
      likely: estimatedPercentile(sortedMin, 50),
      high: estimatedPercentile(sortedMin, 90),
      goalPercent: outing.goalMin > 0 ? (100 * reached) / caseCount : null,
      endings: endings(inOrder.flatMap(({ endedBy }) => endedBy[place]!).slice(0, caseCount)),
      sortedMin,
      histogram: histogram(sortedMin, width),
    };
  });
  const comparisons = plan.options.flatMap((first, one) =>
    plan.options
      .slice(one + 1)
      .map((second, beyond) => compare(first.id, second.id, times[one]!, times[one + 1 + beyond]!)),
  );
  return { outingId: outing.id, goalMin: outing.goalMin, caseCount, seed, options, comparisons };
}

function endings(causes: readonly EndCause[]): OptionSpread['endings'] {
  const counts = new Map<EndCause, number>();
  for (const cause of causes) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  return [...counts]
    .map(([cause, count]) => ({ cause, percent: (100 * count) / causes.length }))
    .toSorted((one, other) => other.percent - one.percent);
}

function compare(
  firstId: string,
  secondId: string,
  first: Float64Array,
  second: Float64Array,
): PairedComparison {
  const difference = first.map((min, row) => min - second[row]!);
  const wins = difference.reduce((sum, min) => sum + (min > 0 ? 1 : min === 0 ? 0.5 : 0), 0);
  const sorted = difference.toSorted();
  return {
    firstId,
    secondId,
    firstOutlastsPercent: (100 * wins) / difference.length,
    low: estimatedPercentile(sorted, 10),
    likely: estimatedPercentile(sorted, 50),
    high: estimatedPercentile(sorted, 90),
  };
}

/** Most classes of the option with the widest range, and the number that reads best for the narrowest. */
const mostClasses = 40;
const bestClasses = 14;

/**
 * One width of the classes for all options, so that their bars compare: 1, 2 or 5 times a power of ten, right for the
 * narrowest range unless the widest one would then be cut too finely.
 */
function classWidth(sorted: readonly Float64Array[]): number {
  const ranges = sorted.map((times) => times[times.length - 1]! - times[0]!);
  const wanted = Math.max(
    Math.min(...ranges) / bestClasses,
    Math.max(...ranges) / mostClasses,
    1e-4,
  );
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([1, 2, 5, 10].find((step) => step * power >= wanted) ?? 10);
}

function histogram(sorted: Float64Array, width: number): Histogram {
  const least = sorted[0]!;
  const most = sorted[sorted.length - 1]!;
  const start = Math.floor(least / width);
  const count = Math.floor(most / width) - start + 1;
  const counts = new Float64Array(count);
  for (const min of sorted) {
    const place = Math.min(count - 1, Math.floor(min / width) - start);
    counts[place] = counts[place]! + 1;
  }
  return {
    edgesMin: Float64Array.from({ length: count + 1 }, (_, place) => (start + place) * width),
    counts,
  };
}
