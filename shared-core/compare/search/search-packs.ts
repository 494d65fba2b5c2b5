import type { Plan } from '../../plan/schema/plan.ts';
import { candidateCount, noneRejected, rejectRules } from './candidate.ts';
import type {
  FoundPack,
  Passed,
  ScreenPart,
  SearchResult,
  SearchWishes,
  TrialPart,
} from './candidate.ts';
import { markBest } from './pareto.ts';
import { openScreener } from './screen-candidates.ts';
import { tryCandidates } from './try-candidates.ts';

/** What is simulated of all that passed: those with the most energy for their mass first. */
export function chooseTrials(
  { mostRuns }: SearchWishes,
  parts: readonly ScreenPart[],
): readonly Passed[] {
  return parts
    .flatMap(({ passed }) => passed)
    .toSorted((one, other) => other.merit - one.merit || one.index - other.index)
    .slice(0, mostRuns);
}

/** Puts screened and simulated parts together, whatever their number and order. */
export function summariseSearch(
  wishes: SearchWishes,
  screened: readonly ScreenPart[],
  tried: readonly TrialPart[],
): SearchResult {
  const rejected = noneRejected();
  for (const part of screened)
    for (const rule of rejectRules) rejected[rule] += part.rejected[rule];
  const passedCount = screened.reduce((sum, { passed }) => sum + passed.length, 0);
  const runs = tried.toSorted((one, other) => one.from - other.from).flatMap(({ found }) => found);
  const found = runs.filter((pack): pack is FoundPack => pack !== null);
  rejected.goal += runs.length - found.length;
  return {
    candidateCount: candidateCount(wishes),
    rejected,
    notRunCount: passedCount - runs.length,
    found: markBest(found).toSorted(
      (one, other) => other.runTimeMin - one.runTimeMin || one.index - other.index,
    ),
  };
}

/**
 * All packs from the blocks given that meet the wishes: every number in series and in parallel is screened by closed
 * forms, what passes is simulated, those with the most energy for their mass first where there are more than `mostRuns`.
 */
export function searchPacks(plan: Plan, wishes: SearchWishes): SearchResult {
  const screened = [openScreener(plan, wishes).screen(0, candidateCount(wishes))];
  const chosen = chooseTrials(wishes, screened);
  return summariseSearch(wishes, screened, [tryCandidates(plan, wishes, chosen, 0, chosen.length)]);
}
