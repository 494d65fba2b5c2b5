import type { SeasonResult } from './season-result.ts';

/** Why a routine was chosen, or what still speaks against it. */
export type ProposalReason =
  | 'all-outings'
  | 'fewest-failures'
  | 'lead-full-soonest'
  | 'least-unattended'
  | 'longest-life'
  | 'cheapest'
  | 'all-alike'
  | 'below-minimum';

export interface Proposal {
  readonly trigger: SeasonResult['trigger'];
  readonly reasons: readonly ProposalReason[];
}

interface Criterion {
  readonly reason: ProposalReason;
  /** Smaller is better. */
  readonly badness: (result: SeasonResult) => number;
  /** Differences below this do not count. */
  readonly slack: number;
}

/**
 * Chooses the routine: first the fewest outings lost, then the fewest that end below the lowest charge wanted; for lead
 * then the shortest time without a full charge (undercharged plates sulphate), for lithium the fewest hours charged
 * unattended; then life, then cost. The order is common practice, no source.
 */
export function proposeRoutine(results: readonly SeasonResult[], lithium: boolean): Proposal {
  const care: Criterion = lithium
    ? { reason: 'least-unattended', badness: (result) => result.unattendedHours, slack: 2 }
    : {
        reason: 'lead-full-soonest',
        badness: (result) => result.longestWithoutFullDays,
        slack: 0.5,
      };
  const criteria: readonly Criterion[] = [
    { reason: 'fewest-failures', badness: (result) => result.failedOutings, slack: 0 },
    { reason: 'below-minimum', badness: (result) => result.belowMinimum, slack: 0 },
    care,
    { reason: 'longest-life', badness: (result) => -result.expectedSeasons, slack: 0.2 },
    { reason: 'cheapest', badness: (result) => result.cost ?? result.mainsKWh, slack: 0.01 },
  ];
  let left = [...results];
  const reasons: ProposalReason[] = [];
  for (const { reason, badness, slack } of criteria) {
    const best = Math.min(...left.map(badness));
    const kept = left.filter((result) => badness(result) <= best + slack);
    if (kept.length < left.length && reason !== 'below-minimum') reasons.push(reason);
    left = kept;
    if (left.length === 1) break;
  }
  const chosen = left[0]!;
  if (chosen.failedOutings === 0 && chosen.outings > 0) reasons.unshift('all-outings');
  if (chosen.belowMinimum > 0) reasons.push('below-minimum');
  return { trigger: chosen.trigger, reasons: reasons.length === 0 ? ['all-alike'] : reasons };
}
