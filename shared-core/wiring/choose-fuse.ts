import type { Fuse, FuseClass } from '../plan/schema/wiring-branch.ts';
import { fuseClasses } from './fuse-classes.ts';
import { fuseOpening } from './fuse-opening.ts';

export interface FuseWish {
  /** Lasting current [A]. */
  readonly continuousA: number;
  /** Limit of the controller behind it, at which a climb may last [A]; 0 where there is none. */
  readonly limitA: number;
  /** Current and length of the hardest start [A], [s]. */
  readonly startA: number;
  readonly startS: number;
  /** Highest voltage it must break [V] and the fault current there [A]. */
  readonly voltageV: number;
  readonly faultA: number;
  /** Rating at least this many times the lasting current [1]. */
  readonly margin: number;
}

const classOrder: readonly FuseClass[] = ['blade', 'bolt-down', 'high-breaking'];

/**
 * A fuse for a branch: of the classes blade, bolt-down and high-breaking those that break the fault at the voltage; of
 * their ratings the smallest that carries the lasting current with margin, is not below the controller's limit, and
 * outlasts the start. At equal rating the simpler class.
 *
 * @returns null where no class can
 */
export function chooseFuse(wish: FuseWish): Fuse | null {
  let best: Fuse | null = null;
  for (const fuseClass of classOrder) {
    const data = fuseClasses[fuseClass];
    const ratedVoltageV = data.voltagesV.find((rated) => rated >= wish.voltageV);
    if (ratedVoltageV === undefined || data.breakingA < wish.faultA) continue;
    const ratedA = data.ratingsA.find(
      (rating) =>
        rating >= wish.margin * wish.continuousA &&
        rating >= wish.limitA &&
        fuseOpening({ class: fuseClass, ratedA: rating }, wish.startA).earliestS > wish.startS,
    );
    if (ratedA === undefined || (best !== null && best.ratedA <= ratedA)) continue;
    best = {
      class: fuseClass,
      ratedA,
      ratedVoltageV,
      breakingA: data.breakingA,
      fromSourceMm: 100,
      resistanceOhm: null,
    };
  }
  return best;
}
