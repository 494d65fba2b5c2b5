import type { FoundPack } from './candidate.ts';

/** What packs are judged by; a longer run is better, of everything else less is. */
export type Judged = Pick<FoundPack, 'runTimeMin' | 'massKg' | 'price' | 'chargeHours'>;

const costs = ['massKg', 'price', 'chargeHours'] as const;

/**
 * True when one pack is at least as good as another in every figure and better in one. A figure known of one only
 * leaves the two without comparison; a figure known of neither says nothing.
 */
export function beats(one: Judged, other: Judged): boolean {
  if (one.runTimeMin < other.runTimeMin) return false;
  let better = one.runTimeMin > other.runTimeMin;
  for (const figure of costs) {
    const mine = one[figure];
    const theirs = other[figure];
    if (mine === null || theirs === null) {
      if (mine !== theirs) return false;
      continue;
    }
    if (mine > theirs) return false;
    if (mine < theirs) better = true;
  }
  return better;
}

/** Marks the packs no other one beats (Pareto's rule). Equal ones are all kept. */
export function markBest(found: readonly FoundPack[]): FoundPack[] {
  return found.map((pack) => ({ ...pack, isBest: !found.some((other) => beats(other, pack)) }));
}
