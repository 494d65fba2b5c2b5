import {
  bladeFuseBreaking,
  bladeFuseGates,
  bladeFuseHolds,
} from '../formulas/wiring/blade-fuse-gates.ts';
import type { FuseClass } from '../plan/schema/wiring-branch.ts';

/** Times in which a fuse of a class opens, at multiples of its rating. */
export interface FuseClassData {
  readonly holds: { readonly times: number; readonly atLeastS: number };
  readonly gates: readonly {
    readonly times: number;
    readonly earliestS: number;
    readonly latestS: number;
  }[];
  /** Ratings made [A]. */
  readonly ratingsA: readonly number[];
  /** Rated direct voltages usual for the class [V], lowest first. */
  readonly voltagesV: readonly number[];
  /** Breaking capacity usual for the class [A]. */
  readonly breakingA: number;
  readonly source: string;
}

/**
 * Time-current gates by class. Blade: ISO 8820-3, bolt-down: ISO 8820-5, high-breaking: UL 248-15, glass: UL 248-14,
 * breakers: SAE J553; all from memory, to be replaced by the sheet of the part used. Rated voltages and breaking
 * capacities: common practice; 1000 A at 32 and 58 V of blade fuses: from memory of makers' sheets.
 */
export const fuseClasses: Readonly<Record<FuseClass, FuseClassData>> = {
  blade: {
    holds: bladeFuseHolds,
    gates: bladeFuseGates,
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40],
    voltagesV: bladeFuseBreaking.voltagesV,
    breakingA: bladeFuseBreaking.currentA,
    source: 'ISO 8820-3, from memory',
  },
  'bolt-down': {
    holds: { times: 1.1, atLeastS: 14_400 },
    gates: [
      { times: 1.35, earliestS: 60, latestS: 1800 },
      { times: 2, earliestS: 1, latestS: 15 },
      { times: 3, earliestS: 0.3, latestS: 5 },
      { times: 5, earliestS: 0.1, latestS: 1 },
    ],
    ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500],
    voltagesV: [32, 58, 70],
    breakingA: 2000,
    source: 'ISO 8820-5, from memory',
  },
  'high-breaking': {
    holds: { times: 1.1, atLeastS: 14_400 },
    gates: [
      { times: 1.35, earliestS: 60, latestS: 3600 },
      { times: 2, earliestS: 5, latestS: 480 },
      { times: 3, earliestS: 0.5, latestS: 30 },
      { times: 5, earliestS: 0.02, latestS: 2 },
      { times: 10, earliestS: 0.002, latestS: 0.05 },
    ],
    ratingsA: [
      1, 2, 3, 4, 6, 8, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 110, 125, 150, 175, 200, 225,
      250, 300, 350, 400,
    ],
    voltagesV: [125, 160],
    breakingA: 20_000,
    source: 'UL 248-15, from memory',
  },
  glass: {
    holds: { times: 1.1, atLeastS: 14_400 },
    gates: [
      { times: 1.35, earliestS: 1, latestS: 3600 },
      { times: 2, earliestS: 0.05, latestS: 120 },
      { times: 4, earliestS: 0.005, latestS: 1 },
      { times: 10, earliestS: 0.001, latestS: 0.05 },
    ],
    ratingsA: [0.5, 1, 2, 3, 4, 5, 6.3, 8, 10, 15, 20],
    voltagesV: [32],
    breakingA: 300,
    source: 'UL 248-14, from memory',
  },
  'breaker-manual': {
    holds: { times: 1.1, atLeastS: 3600 },
    gates: [
      { times: 1.35, earliestS: 30, latestS: 3600 },
      { times: 2, earliestS: 8, latestS: 100 },
      { times: 3, earliestS: 2, latestS: 30 },
      { times: 6, earliestS: 0.3, latestS: 6 },
    ],
    ratingsA: [5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200, 300],
    voltagesV: [48],
    breakingA: 3000,
    source: 'SAE J553 type III, from memory',
  },
  'breaker-auto-reset': {
    holds: { times: 1.1, atLeastS: 3600 },
    gates: [
      { times: 1.35, earliestS: 10, latestS: 1800 },
      { times: 2, earliestS: 3, latestS: 60 },
      { times: 3, earliestS: 1, latestS: 20 },
      { times: 6, earliestS: 0.2, latestS: 5 },
    ],
    ratingsA: [5, 8, 10, 15, 20, 25, 30, 40, 50],
    voltagesV: [28],
    breakingA: 1000,
    source: 'SAE J553 type I, from memory',
  },
};
