import type { LegLoad } from '../plan/schema/leg-load.ts';
import type { Leg } from '../plan/schema/outing.ts';
import type { LoadSource, LoadTerms } from './load-source.ts';

/** Shortest time to the next switching that is still a step [s]; nearer switchings count as reached. */
const switchingS = 1e-7;

/** Legs with plain electric loads, repeated in order. Legs that need the drive model are not for this source. */
export function legSource(legs: readonly Pick<Leg, 'durationMin' | 'load'>[]): LoadSource {
  const ends: number[] = [];
  let roundS = 0;
  for (const leg of legs) {
    roundS += leg.durationMin * 60;
    ends.push(roundS);
  }
  let stopped = false;
  let legIndex = 0;
  let roundStartS = 0;
  // Time stands still for the legs while the drive is stopped.
  let pausedS = 0;

  const follow = (timeS: number) => {
    let inRound = timeS - pausedS - roundStartS;
    while (ends[legIndex]! - inRound <= switchingS) {
      legIndex += 1;
      if (legIndex === legs.length) {
        legIndex = 0;
        roundStartS += roundS;
        inRound -= roundS;
      }
    }
    return inRound;
  };

  return {
    terms(timeS, _busVoltageV, into) {
      follow(timeS);
      writeTerms(stopped ? null : legs[legIndex]!.load, into);
    },
    longestStepS(timeS) {
      return stopped ? Number.POSITIVE_INFINITY : ends[legIndex]! - follow(timeS);
    },
    advance(_timeS, stepS) {
      if (stopped) pausedS += stepS;
    },
    stop(next) {
      stopped = next;
    },
  };
}

function writeTerms(load: LegLoad | null, into: LoadTerms): void {
  into.currentA = load?.kind === 'current' ? load.currentA : 0;
  into.powerW = load?.kind === 'power' ? load.powerW : 0;
  into.conductanceS = load?.kind === 'resistance' ? 1 / load.resistanceOhm : 0;
}
