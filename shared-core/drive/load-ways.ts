import type { LegLoad } from '../plan/schema/leg-load.ts';
import type { Leg, Outing } from '../plan/schema/outing.ts';

/** From least to most known: amps (or watts, ohms), a log, the motor and machine model. */
export type LoadWay = 'amps' | 'log' | 'model';
export const loadWays: readonly LoadWay[] = ['amps', 'log', 'model'];

export function wayOf(load: LegLoad): LoadWay {
  return load.kind === 'log' ? 'log' : load.kind === 'drive' ? 'model' : 'amps';
}

/** The leg's load known in a way: the one that counts, else one that is kept beside it. */
function loadInWay({ load, otherLoads }: Leg, way: LoadWay): LegLoad | null {
  if (load !== null && wayOf(load) === way) return load;
  return otherLoads.find((other) => wayOf(other) === way) ?? null;
}

/** An outing with its legs taken in one way where they are known so. */
export interface OutingInWay {
  readonly outing: Outing;
  /** Legs known in this way, and legs that draw at all. */
  readonly known: number;
  readonly of: number;
}

/** Takes every leg in the way asked for; legs not known so keep the load that counts, standing legs stand. */
export function outingInWay(outing: Outing, way: LoadWay): OutingInWay {
  let known = 0;
  let of = 0;
  const legs = outing.legs.map((leg) => {
    if (leg.load === null) return leg;
    of += 1;
    const load = loadInWay(leg, way);
    if (load === null) return leg;
    known += 1;
    return load === leg.load ? leg : { ...leg, load };
  });
  return { outing: { ...outing, legs }, known, of };
}

/** The legs of an outing that are known both in a way and with the motor model; standing legs are left out. */
export function sharedLegs(outing: Outing, way: LoadWay): readonly Leg[] {
  return outing.legs.filter(
    (leg) => leg.load !== null && loadInWay(leg, way) !== null && loadInWay(leg, 'model') !== null,
  );
}

/**
 * The leg with another load that counts. The one it had is kept, one for each kind, so that it can be set beside the new
 * one or taken again.
 */
export function withLoad(leg: Leg, load: LegLoad | null): Leg {
  const kept = leg.load === null ? leg.otherLoads : [leg.load, ...leg.otherLoads];
  const otherLoads = kept.filter(
    (other, at) =>
      other.kind !== load?.kind && kept.findIndex(({ kind }) => kind === other.kind) === at,
  );
  return { ...leg, load, otherLoads: otherLoads.slice(0, 5) };
}
