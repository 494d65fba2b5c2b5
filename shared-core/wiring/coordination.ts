import type { Language } from '../plan/language.ts';
import type { Fuse, WiringBranch } from '../plan/schema/wiring-branch.ts';
import { conductorOhmPerKm, shortCircuitLimitC } from './conductor-facts.ts';
import { coordinationWords } from './coordination-words.ts';
import { fuseOpening } from './fuse-opening.ts';
import { heatingTimeS } from './wire-heating.ts';
import type { WireHeat } from './wire-heating.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

/** A point of a time-current curve; both positive and finite. */
export interface CurvePoint {
  readonly currentA: number;
  readonly timeS: number;
}

/** A current that occurs, and how long it lasts; null when it may last. */
export interface CurrentMark {
  readonly kind: 'cruising' | 'charge' | 'limit' | 'start' | 'stall' | 'runaway' | 'fault';
  readonly currentA: number;
  readonly timeS: number | null;
}

/** One row of the table twin of the chart; null: never, or not surely. */
export interface CoordinationRow {
  readonly currentA: number;
  /** Which mark this row belongs to, or how many times the fuse rating. */
  readonly label: string;
  readonly fuseEarliestS: number | null;
  readonly fuseLatestS: number | null;
  readonly wireRatedS: number | null;
  readonly wireHarmedS: number | null;
}

export interface CoordinationReading {
  readonly verdict: 'good' | 'warn' | 'stop';
  readonly text: string;
}

/** Everything the coordination chart of one fuse shows. */
export interface Coordination {
  readonly branchId: string;
  readonly fuse: Fuse;
  readonly fuseEarliest: readonly CurvePoint[];
  readonly fuseLatest: readonly CurvePoint[];
  /** Time until the wire reaches its rated temperature, from its surroundings. */
  readonly wireRated: readonly CurvePoint[];
  /** Time until the insulation is destroyed, from its rated temperature. */
  readonly wireHarmed: readonly CurvePoint[];
  readonly marks: readonly CurrentMark[];
  readonly rows: readonly CoordinationRow[];
  readonly readings: readonly CoordinationReading[];
}

/** Frame of the chart [s]. */
export const shortestS = 0.005;
export const longestS = 20_000;

/**
 * Time-current coordination of the fuse of a branch with its wire and with the currents that occur.
 *
 * @returns null where the branch has no fuse of its own
 */
export function coordinate(
  study: WiringStudy,
  branch: WiringBranch,
  startSeconds: number,
  language: Language,
): Coordination | null {
  const found = study.branches.find((candidate) => candidate.id === branch.id);
  if (found === undefined || branch.fuse === null) return null;
  const { fuse } = branch;
  const wire = wireHeat(found, branch);
  const marks = currentMarks(study, found, startSeconds);
  const top = Math.max(10 * fuse.ratedA, found.faultNearA);
  const currents = Array.from(
    { length: 121 },
    (_, index) => fuse.ratedA * (top / fuse.ratedA) ** (index / 120),
  );
  const rated = (currentA: number) => heatingTimeS(wire, currentA, wire.ambientC, wire.ratedC);
  const harmed = (currentA: number) => harmedTimeS(wire, branch, currentA);
  const opening = (currentA: number) => fuseOpening(fuse, currentA);
  const row = (currentA: number, label: string): CoordinationRow => ({
    currentA,
    label,
    fuseEarliestS: finite(opening(currentA).earliestS),
    fuseLatestS: finite(opening(currentA).latestS),
    wireRatedS: rated(currentA),
    wireHarmedS: harmed(currentA),
  });
  return {
    branchId: branch.id,
    fuse,
    fuseEarliest: curve(currents, (currentA) => finite(opening(currentA).earliestS)),
    fuseLatest: curve(currents, (currentA) => finite(opening(currentA).latestS)),
    wireRated: curve(currents, rated),
    wireHarmed: curve(currents, harmed),
    marks,
    rows: [
      ...[1.1, 1.35, 1.6, 2, 3.5, 6].map((times) => row(times * fuse.ratedA, `${times} ×`)),
      ...marks.map((mark) => row(mark.currentA, mark.kind)),
    ].toSorted((one, other) => one.currentA - other.currentA),
    readings: coordinationWords({
      fuse,
      wire: found,
      wireExposedA: exposedRange(currents, opening, harmed),
      wireWarmA: exposedRange(currents, opening, rated),
      ratedC: branch.insulationC,
      marks,
      language,
    }),
  };
}

function wireHeat(found: BranchStudy, branch: WiringBranch): WireHeat {
  return {
    ohmPerM20: conductorOhmPerKm(found.conductor, 20) / 1000,
    areaMm2: found.areaMm2,
    ampacityA: found.ampacityA,
    ratedC: branch.insulationC,
    ambientC: found.ambientC,
  };
}

/** Time until a wire at its rated temperature has its insulation destroyed [s]; null where the current never does it. */
export function harmedTimeS(
  wire: WireHeat,
  branch: Pick<WiringBranch, 'insulation'>,
  currentA: number,
): number | null {
  return heatingTimeS(wire, currentA, wire.ratedC, shortCircuitLimitC[branch.insulation]);
}

/** Currents between which the wire is harmed before the fuse surely opens; null where there are none. */
function exposedRange(
  currents: readonly number[],
  opening: (currentA: number) => { latestS: number },
  harmed: (currentA: number) => number | null,
): { fromA: number; toA: number } | null {
  const exposed = currents.filter((currentA) => {
    const harmedS = harmed(currentA);
    return harmedS !== null && harmedS < opening(currentA).latestS;
  });
  return exposed.length === 0 ? null : { fromA: exposed[0]!, toA: exposed[exposed.length - 1]! };
}

function currentMarks(study: WiringStudy, found: BranchStudy, startSeconds: number): CurrentMark[] {
  const marks: CurrentMark[] = [];
  const add = (kind: CurrentMark['kind'], currentA: number | undefined, timeS: number | null) => {
    if (currentA !== undefined && currentA > 1e-6) marks.push({ kind, currentA, timeS });
  };
  add('cruising', found.states.cruising?.currentA, null);
  add('charge', found.states.charge?.currentA, null);
  const feedsMotors = leadsToMotors(study, found);
  const share = feedsMotors ? stringShare(study, found) : 1;
  if (feedsMotors && study.demand.batteryLimitA !== null)
    add('limit', study.demand.batteryLimitA * share, null);
  const startA = found.states.start?.currentA ?? 0;
  if (startA > 1.05 * (found.states.cruising?.currentA ?? 0)) add('start', startA, startSeconds);
  const stallA = found.states.stall?.currentA ?? 0;
  if (stallA > 1.05 * startA) add('stall', stallA, null);
  if (feedsMotors && study.demand.runawayA !== null)
    add('runaway', study.demand.runawayA * share, null);
  add('fault', found.faultFarA, null);
  return marks;
}

/** A controller lies behind this branch. */
function leadsToMotors(study: WiringStudy, found: BranchStudy): boolean {
  const place = study.topology.branches.findIndex((entry) => entry.branch.id === found.id);
  return study.topology.branches.some(({ branch, path }) => {
    const kind = study.topology.devices.find((device) => device.id === branch.to)?.kind;
    return kind === 'controller' && path.includes(place);
  });
}

/** One of several equal strings carries its part of the pack's current. */
function stringShare(study: WiringStudy, found: BranchStudy): number {
  const from = study.topology.branches.find((entry) => entry.branch.id === found.id)?.branch.from;
  const isString = study.topology.devices.some(
    (device) => device.id === from && device.kind === 'string',
  );
  return isString ? 1 / study.supply.stringCount : 1;
}

function curve(
  currents: readonly number[],
  time: (currentA: number) => number | null,
): CurvePoint[] {
  return currents.flatMap((currentA) => {
    const timeS = time(currentA);
    return timeS === null || timeS > longestS || timeS < shortestS ? [] : [{ currentA, timeS }];
  });
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
